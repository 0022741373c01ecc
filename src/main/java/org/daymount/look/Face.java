package org.daymount.look;

import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * A face as a detector found it: from brow to chin, without hair. This is the one place that says
 * what a face is good for.
 *
 * @param box upright pixels of the whole picture
 * @param confidence that it is a person's face, 0 to 1
 * @param facing how surely it looks out of the picture, with eyes, nose and mouth to be seen, 0 to
 *     1; near 0 for one that is turned away, hidden or only a few pixels wide
 */
public record Face(PixelBox box, double confidence, double facing) {
  /** From here on a crop must not cut it. */
  public static final double PROTECTED_FROM = 0.6;

  /** From here on it counts in favour of a photo. */
  public static final double COUNTS_FROM = 0.65;

  private static final double FACING_FROM = 0.5;

  /** A face whose mesh nobody looked for: taken to look at us. */
  public Face(PixelBox box, double confidence) {
    this(box, confidence, 1);
  }

  public Face at(PixelBox other) {
    return new Face(other, confidence, facing);
  }

  /** The person below it, where no detector saw one: a face to each side, two down. */
  public Subject headAndShoulders(PixelSize picture) {
    int width = box.width();
    int height = box.height();
    PixelBox body = box.grown(width, height / 2, width, 2 * height).within(picture);
    return new Subject(body, Subject.PERSON, confidence);
  }

  public boolean isProtected() {
    return confidence >= PROTECTED_FROM;
  }

  public boolean counts() {
    return confidence >= COUNTS_FROM;
  }

  /** Whether eyes, nose and mouth are to be seen. */
  public boolean isFacing() {
    return facing >= FACING_FROM;
  }
}
