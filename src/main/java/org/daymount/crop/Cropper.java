package org.daymount.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.photo.Shape;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Finds the part of a photo to print in a piece: the largest window of the piece's exact shape that
 * cuts no face, placed to keep most of the subject; where there is none, the whole picture with
 * white around it. Pixels are never made up: a picture with too few is printed smaller.
 */
public final class Cropper {
  private static final double PANORAMA_KEEPS = 0.75; // of its area, or it is shown whole
  private static final double WHOLE_MAIN = 0.98; // of its length along the slide

  private static final double FACE_ON_JOIN = 0.4; // of its worth; another picture or way is better
  private static final String MOVED =
      "moved so that no face lies where the sheets of this piece meet";

  /** The crop to propose. */
  public Crop crop(AnalysedPhoto looked, PaperSize piece, CropSettings settings) {
    CropSearch placing = new CropSearch(looked, piece, settings);
    Optional<String> against = againstFilling(looked, placing, piece);
    return against.isPresent()
        ? whole(looked, piece, settings, against.get())
        : filled(looked, placing, piece, settings);
  }

  /**
   * The best window that fills the piece, whatever it cuts: for a person who will have it so. It is
   * still printed smaller when it has too few pixels.
   */
  public Crop fill(AnalysedPhoto looked, PaperSize piece, CropSettings settings) {
    return filled(looked, new CropSearch(looked, piece, settings), piece, settings);
  }

  private static Optional<String> againstFilling(
      AnalysedPhoto looked, CropSearch placing, PaperSize piece) {
    if (!placing.holdsFaces()) {
      int faces = placing.faces().size();
      return Optional.of(
          "no crop to "
              + piece
              + " holds "
              + (faces == 1 ? "the face" : faces == 2 ? "both faces" : "all " + faces + " faces"));
    }
    double area = placing.window().area() / (double) looked.photo().size().area();
    if (looked.photo().shape() == Shape.PANORAMA && area < PANORAMA_KEEPS) {
      return Optional.of("a panorama");
    }
    WhiteBorder border = new WhiteBorder(placing, looked.photo().size());
    return liesAcross(looked.photo().size(), piece) && !placing.isOneOfMany()
        ? placing
            .main()
            .filter(main -> border.isBetterThan(placing.window(), main))
            .map(main -> "no crop to " + piece + " holds the whole " + main.word())
        : Optional.empty();
  }

  private static boolean liesAcross(PixelSize picture, PaperSize piece) {
    return picture.direction() != Orientation.SQUARE
        && piece.direction() == picture.direction().other();
  }

  private static Crop filled(
      AnalysedPhoto looked, CropSearch placing, PaperSize piece, CropSettings settings) {
    PixelSize picture = looked.photo().size();
    FaceSeams joined = new FaceSeams(picture, placing.faces(), piece, settings);
    PixelBox usual = placing.window();
    PixelBox window =
        placing.holdsFaces() && joined.cutsFace(usual, piece)
            ? joined.window(usual).orElse(usual)
            : usual;
    List<String> reasons = new ArrayList<>();
    sidesCut(window, picture)
        .ifPresent(sides -> reasons.add("cropped " + sides + inside(looked, placing, window)));
    if (!window.equals(usual)) {
      reasons.add(window.size().equals(usual.size()) ? MOVED : MOVED + ", and closer for it");
    }
    PrintSize printed = PrintSize.in(piece, piece, window.size(), settings);
    printed.reason().ifPresent(reasons::add);
    double quality =
        placing.kept()
            * sitting(placing, window)
            * printed.seemliness()
            * Math.sqrt(window.area() / (double) usual.area())
            * offJoins(joined, window, printed, reasons);
    return new Crop(window, piece, printed.size(), printed.fit(), printed.ppi(), quality, reasons);
  }

  /** What a face on a join leaves of a crop's worth; says so if there is one. */
  private static double offJoins(
      FaceSeams joined, PixelBox window, PrintSize printed, List<String> reasons) {
    if (!joined.cutsFace(window, printed.size())) {
      return 1;
    }
    reasons.add("a face lies where the sheets of this piece meet; no crop avoids it");
    return FACE_ON_JOIN;
  }

  /** Which sides lose something, in words; empty when none does. */
  private static Optional<String> sidesCut(PixelBox window, PixelSize picture) {
    List<String> sides = new ArrayList<>();
    if (window.x() > 0) {
      sides.add("left");
    }
    if (window.right() < picture.width()) {
      sides.add("right");
    }
    if (window.y() > 0) {
      sides.add("top");
    }
    if (window.bottom() < picture.height()) {
      sides.add("bottom");
    }
    return sides.isEmpty() ? Optional.empty() : Optional.of(inWords(sides));
  }

  private static String inWords(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  private static double sitting(CropSearch placing, PixelBox window) {
    double faces = placing.holdsFaces() ? 1 : 0.3;
    double main = 0.6 + 0.4 * placing.keptOfMain(window);
    return faces * main * (placing.hasAir() ? 1 : 0.95);
  }

  /** Only faces that are sure are spoken of; what may be one is kept inside all the same. */
  private static String inside(AnalysedPhoto looked, CropSearch placing, PixelBox window) {
    if (!placing.holdsFaces()) {
      return "; not every face inside";
    }
    int faces = looked.measures().countedFaces(looked.photo().size()).size();
    if (faces > 0) {
      String who = faces == 1 ? "the face" : faces == 2 ? "both faces" : "all " + faces + " faces";
      return "; " + who + " inside";
    }
    return placing
        .main()
        .map(
            main ->
                placing.keptOfMain(window) >= WHOLE_MAIN
                    ? "; the whole " + main.word() + " inside"
                    : "; part of the " + main.word() + " is lost")
        .orElse("");
  }

  private static Crop whole(
      AnalysedPhoto looked, PaperSize piece, CropSettings settings, String against) {
    List<String> reasons = new ArrayList<>();
    reasons.add("the whole picture with white around it: " + against);
    PixelSize picture = looked.photo().size();
    PaperSize space = inner(piece, settings.safeEdge());
    PrintSize printed = PrintSize.in(piece, within(space, picture), picture, settings);
    printed.reason().ifPresent(reasons::add);
    List<Face> faces = looked.measures().mainFaces(picture);
    FaceSeams joined = new FaceSeams(picture, faces, piece, settings);
    double quality = printed.seemliness() * offJoins(joined, picture.whole(), printed, reasons);
    return new Crop(
        picture.whole(), piece, printed.size(), Crop.Fit.BORDER, printed.ppi(), quality, reasons);
  }

  private static PaperSize inner(PaperSize piece, Length margin) {
    Length shorter = piece.width().min(piece.height());
    return shorter.isLongerThan(margin.times(2)) ? piece.inset(margin) : piece;
  }

  /** The largest size of the picture's shape that fits, to a nanometre. */
  private static PaperSize within(PaperSize space, PixelSize picture) {
    long width = space.width().nanometres();
    long height = Math.round(width / picture.aspect());
    if (height > space.height().nanometres()) {
      height = space.height().nanometres();
      width = Math.min(width, Math.round(height * picture.aspect()));
    }
    return new PaperSize(new Length(Math.max(1, width)), new Length(Math.max(1, height)));
  }
}
