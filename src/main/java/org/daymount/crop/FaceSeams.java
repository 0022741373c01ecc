package org.daymount.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Keeps faces off the joins of a piece that is printed on several sheets. A picture of the piece's
 * own shape cannot slide, so a somewhat smaller window may be taken.
 */
final class FaceSeams {
  private static final double SMALLEST = 0.75; // of the largest window's sides
  private static final double SMALLER = 0.05; // from one size to the next
  private static final int PLACES = 40; // tried along each axis

  private final PixelSize picture;
  private final List<Face> faces;
  private final PaperSize piece;
  private final CropSettings settings;
  private final List<PaperBox> parts;

  FaceSeams(PixelSize picture, List<Face> faces, PaperSize piece, CropSettings settings) {
    this.picture = picture;
    this.faces = faces;
    this.piece = piece;
    this.settings = settings;
    this.parts = settings.joins().parts(piece);
  }

  /**
   * Whether a head lies on a join.
   *
   * @param window printed over {@code print}, which lies in the middle of the piece
   */
  boolean cutsFace(PixelBox window, PaperSize print) {
    if (parts.size() < 2) {
      return false;
    }
    FaceRoom room = new FaceRoom(picture, window.size(), print, settings);
    return faces.stream().anyMatch(face -> isOnJoin(room.head(face), window, print));
  }

  private boolean isOnJoin(PixelBox head, PixelBox window, PaperSize print) {
    double scale = print.width().inInches() / window.width();
    double left = (piece.width().inInches() - print.width().inInches()) / 2;
    double top = (piece.height().inInches() - print.height().inInches()) / 2;
    double x0 = left + (Math.max(head.x(), window.x()) - window.x()) * scale;
    double y0 = top + (Math.max(head.y(), window.y()) - window.y()) * scale;
    double x1 = left + (Math.min(head.right(), window.right()) - window.x()) * scale;
    double y1 = top + (Math.min(head.bottom(), window.bottom()) - window.y()) * scale;
    return parts.stream()
            .filter(
                part ->
                    x0 < part.right().inInches()
                        && x1 > part.x().inInches()
                        && y0 < part.bottom().inInches()
                        && y1 > part.y().inInches())
            .count()
        > 1;
  }

  /**
   * The largest window that fills the piece, holds every face with its room and has none on a join;
   * of those as large, the one nearest to the usual one.
   *
   * @param usual the window that would be taken without joins
   * @return empty when there is none
   */
  Optional<PixelBox> window(PixelBox usual) {
    for (double side = 1; side > SMALLEST - SMALLER / 2; side -= SMALLER) {
      PixelSize size = smaller(usual.size(), side);
      if (size.width() / piece.width().inInches() < settings.minimum().value()) {
        return Optional.empty();
      }
      Optional<PixelBox> found = nearest(usual, size);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** Of the piece's shape to half a pixel. */
  private PixelSize smaller(PixelSize usual, double side) {
    if (side == 1) {
      return usual;
    }
    int width = Math.max(1, (int) (usual.width() * side));
    int height = Math.max(1, (int) Math.round(width / piece.aspect()));
    return new PixelSize(width, Math.min(picture.height(), height));
  }

  private Optional<PixelBox> nearest(PixelBox usual, PixelSize size) {
    FaceRoom room = new FaceRoom(picture, size, piece, settings);
    List<PixelBox> needed = faces.stream().map(room::needed).toList();
    List<PixelBox> candidates = new ArrayList<>();
    for (int y : places(picture.height() - size.height())) {
      for (int x : places(picture.width() - size.width())) {
        PixelBox window = new PixelBox(x, y, size.width(), size.height());
        if (needed.stream().allMatch(window::contains) && !cutsFace(window, piece)) {
          candidates.add(window);
        }
      }
    }
    return candidates.stream().min((a, b) -> Double.compare(away(a, usual), away(b, usual)));
  }

  private static double away(PixelBox window, PixelBox usual) {
    return Math.hypot(window.centreX() - usual.centreX(), window.centreY() - usual.centreY());
  }

  private static int[] places(int slack) {
    int count = Math.min(slack, PLACES);
    int[] places = new int[count + 1];
    for (int i = 1; i <= count; i++) {
      places[i] = (int) ((long) slack * i / count);
    }
    return places;
  }
}
