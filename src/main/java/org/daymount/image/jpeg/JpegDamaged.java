package org.daymount.image.jpeg;

/** What stands in the file is not what any encoder writes. */
final class JpegDamaged extends JpegRefused {
  private static final long serialVersionUID = 1L;

  /**
   * @param fact in words for a person, as the end of "is damaged: "
   */
  JpegDamaged(String fact) {
    super(fact);
  }
}
