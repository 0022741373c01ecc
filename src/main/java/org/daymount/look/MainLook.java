package org.daymount.look;

/**
 * How the thing looks that a picture is most about: its main face, or else the heaviest thing in
 * it; the whole picture where nothing was found.
 *
 * @param clarity 0 (soft, or nothing to see) to 1 (crisp); one half is a blur of 0.9 mm on a 6 in
 *     print
 * @param exposure 0 to 1, as {@link Measures#exposure()}, of the thing alone
 * @param highlights the luma, 0 to 255, that one in twenty pixels of the thing is above, or one in
 *     fifty of the whole picture: the larger of the two
 */
public record MainLook(double clarity, double exposure, double highlights) {
  /** Of 155 pictures those that are crisper can be used, and all spoilt by blur are softer. */
  private static final double SPOILT_CLARITY = 0.5;

  /** In the darkest picture that someone would keep it is 106; in those nearly black 67 at most. */
  private static final double SPOILT_HIGHLIGHTS = 80;

  /** Out of focus or shaken. */
  public boolean isBlurred() {
    return clarity < SPOILT_CLARITY;
  }

  /** Nearly black. */
  public boolean isTooDark() {
    return highlights < SPOILT_HIGHLIGHTS;
  }

  /** Whether nobody would want it printed while there is another. */
  public boolean isSpoilt() {
    return isBlurred() || isTooDark();
  }
}
