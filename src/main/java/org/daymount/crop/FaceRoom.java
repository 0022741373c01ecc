package org.daymount.crop;

import org.daymount.look.Face;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * What a face needs around it. A detector's box runs from brow to chin, so hair, ears and chin come
 * on top (found by looking at boxes on photographs), and then the safe edge of the piece.
 */
final class FaceRoom {
  private static final double UP = 0.60; // of the face's height
  private static final double ASIDE = 0.25; // of its width
  private static final double DOWN = 0.20;
  private static final double AIR = 0.40; // more above the hair, where there is a choice

  /**
   * A face so high fills its window: then hair may be cut, as in a close-up (common practice in
   * portraits, no source), but never brow or chin.
   */
  static final double FILLS = 0.35; // of the window's height

  private static final double MOST = 0.6; // from here on no hair is asked for

  private final PixelSize picture;
  private final int windowHeight;
  private final int safeEdge;

  /**
   * @param window the pixels that are spread over {@code piece}; they set the scale of the safe
   *     edge
   */
  FaceRoom(PixelSize picture, PixelSize window, PaperSize piece, CropSettings settings) {
    this.picture = picture;
    this.windowHeight = window.height();
    this.safeEdge =
        (int) Math.ceil(settings.safeEdge().inInches() * window.width() / piece.width().inInches());
  }

  /** The head, cut to the picture: beyond its edge nothing can be asked for. */
  PixelBox head(Face face) {
    return grown(face, 0, 0);
  }

  /** The head and the safe edge around it. */
  PixelBox needed(Face face) {
    return grown(face, safeEdge, 0);
  }

  /** The same with air above the hair. */
  PixelBox liked(Face face) {
    return grown(face, safeEdge, (int) Math.ceil(AIR * face.box().height()));
  }

  private PixelBox grown(Face face, int allAround, int above) {
    int aside = (int) Math.ceil(ASIDE * face.box().width()) + allAround;
    int up = (int) Math.ceil(hair(face) * face.box().height()) + allAround + above;
    int down = (int) Math.ceil(DOWN * face.box().height()) + allAround;
    return face.box().grown(aside, up, aside, down).within(picture);
  }

  /** Of the face's height; less of it the more of its window a face fills. */
  private double hair(Face face) {
    double share = face.box().height() / (double) windowHeight;
    return UP * Math.max(0, Math.min(1, (MOST - share) / (MOST - FILLS)));
  }
}
