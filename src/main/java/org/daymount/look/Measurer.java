package org.daymount.look;

import java.awt.image.BufferedImage;
import java.util.Optional;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Measures one decoded picture by its pixels alone. Pictures come in upright, as sRGB in
 * TYPE_INT_RGB, and are left as they are.
 */
public final class Measurer {
  /**
   * Long edge in pixels at which sharpness, clarity and light are measured. A larger picture is
   * averaged down to it first; a smaller one, or one hardly larger, is measured as it is. An eighth
   * of the commonest photo (4000 or 4032 pixels) is just not smaller, and that is by far the
   * quickest to decode.
   */
  public static final int WORKING_EDGE = 500;

  /** Up to here a picture is not worth averaging down. */
  private static final int LONGEST_EDGE = 560;

  private static final int SMALL_EDGE = 160; // for the subject map and the fingerprint

  private static final double AROUND = 0.1; // of a box's side, so that its outline counts as well

  private static final int REACH = 4; // pixels around one that its blurred Laplacian depends on

  /** Everything but the close look. */
  public Measures measure(BufferedImage picture) {
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
    Plane luma =
        Rgb.luma(picture, size.longEdge() <= LONGEST_EDGE ? size : size.within(WORKING_EDGE));
    Rgb small = Rgb.of(picture, size.within(SMALL_EDGE));
    SaliencyMap map = SaliencyMapper.map(small);
    return new Measures(
        Sharpness.of(luma).weighted(map),
        DefocusEstimate.of(luma).whole(),
        Exposure.of(luma),
        Fingerprinter.of(small),
        map,
        Optional.empty());
  }

  /**
   * How the main thing looks.
   *
   * @param picture of the working size or somewhat larger
   * @param box of the main thing in pixels of {@code picture}; empty for the whole picture
   */
  public MainLook mainLook(BufferedImage picture, Optional<PixelBox> box) {
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
    PixelSize working = size.longEdge() <= LONGEST_EDGE ? size : size.within(WORKING_EDGE);
    Plane luma = Rgb.luma(picture, working);
    PixelBox part = box.orElse(size.whole()).scaled(size, working).within(working);
    Plane there = luma.part(part);
    int beside = (int) (AROUND * part.width());
    int over = (int) (AROUND * part.height());
    return new MainLook(
        DefocusEstimate.of(luma).inside(part.grown(beside, over, beside, over)),
        Exposure.of(there),
        Math.max(there.quantile(0.95), luma.quantile(0.98)));
  }

  /**
   * The sharpness of what one box is about, at the scale of the picture given: compare it only
   * between pictures of one burst, decoded to the same size. For the close look at a face or a
   * subject.
   *
   * @param box in pixels of {@code picture}; what lies outside does not count
   * @param map of the whole picture
   */
  public double sharpnessIn(BufferedImage picture, PixelBox box, SaliencyMap map) {
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
    PixelBox part = box.within(size);
    PixelBox seen = part.grown(REACH, REACH, REACH, REACH).within(size);
    BufferedImage cut = picture.getSubimage(seen.x(), seen.y(), seen.width(), seen.height());
    PixelBox there =
        new PixelBox(box.x() - seen.x(), box.y() - seen.y(), box.width(), box.height());
    return Sharpness.of(Rgb.luma(cut, seen.size()))
        .inside(there, (x, y) -> map.weightAt(seen.x() + x, seen.y() + y, size));
  }
}
