package org.daymount.evaluate;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.daymount.crop.Crop;
import org.daymount.crop.Cropper;
import org.daymount.evaluate.ContactSheets.Frame;
import org.daymount.evaluate.ContactSheets.Tile;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Crops for a person to look at: a choice of 120 that is always the same, all with white borders
 * (beside the window that would else fill the piece), and of the half that is tuned on those that
 * keep little of the marked subject. Beside each print is the whole picture with the window
 * (white), what was found (things cyan, the sure ones wider; faces red), and what was marked
 * (green).
 */
final class CropSheets {
  private static final int LOOKED_AT = 120;
  private static final int SEED = 18;
  private static final int PAIRS_IN_A_ROW = 4;
  private static final int ROWS = 5;
  private static final double MISSED = 0.95;

  private record Shown(EvalPhoto photo, Measures measures, PaperSize piece, Crop crop, Crop fill) {}

  private final ContactSheets sheets;
  private final List<Shown> all = new ArrayList<>();

  CropSheets(
      ContactSheets sheets, List<EvalPhoto> photos, Function<EvalPhoto, Measures> measuring) {
    this.sheets = sheets;
    Cropper cropper = new Cropper();
    for (EvalPhoto photo : photos) {
      Measures measures = measuring.apply(photo);
      AnalysedPhoto looked = new AnalysedPhoto(photo.photo(), measures);
      for (PaperSize piece : TriedCrops.SHAPES) {
        all.add(
            new Shown(
                photo,
                measures,
                piece,
                cropper.crop(looked, piece, TriedCrops.ANY_PPI),
                cropper.fill(looked, piece, TriedCrops.ANY_PPI)));
      }
    }
  }

  void write() throws IOException {
    List<Shown> some = new ArrayList<>(all);
    Collections.shuffle(some, new Random(SEED));
    write("crops", some.subList(0, Math.min(LOOKED_AT, some.size())), shown -> tiles(shown));
    write("borders", where(shown -> shown.crop.fit() == Crop.Fit.BORDER), shown -> beside(shown));
    write(
        "missed",
        where(shown -> EvalSet.half(shown.photo.name()) == 0 && isMissed(shown)),
        shown -> tiles(shown));
  }

  private List<Shown> where(Predicate<Shown> wanted) {
    return all.stream().filter(wanted).toList();
  }

  private void write(String name, List<Shown> shown, Function<Shown, List<Tile>> drawing)
      throws IOException {
    List<List<Tile>> rows = new ArrayList<>();
    for (int first = 0; first < shown.size(); first += PAIRS_IN_A_ROW) {
      int end = Math.min(shown.size(), first + PAIRS_IN_A_ROW);
      rows.add(
          IntStream.range(first, end)
              .mapToObj(shown::get)
              .flatMap(one -> drawing.apply(one).stream())
              .toList());
    }
    sheets.write(name, rows, ROWS);
  }

  private static boolean isMissed(Shown shown) {
    return shown.photo.subject().isPresent()
        && shown.crop.fit() == Crop.Fit.FILL
        && SubjectTable.shareOfBest(shown.photo, shown.crop.window()) < MISSED;
  }

  private static List<Tile> tiles(Shown shown) {
    return List.of(whole(shown), printed(shown, shown.crop));
  }

  private static List<Tile> beside(Shown shown) {
    return List.of(whole(shown), printed(shown, shown.fill));
  }

  private static Tile printed(Shown shown, Crop crop) {
    String kept =
        shown.photo.subject().isPresent()
            ? String.format(
                Locale.ROOT, " %.2f", SubjectTable.shareOfBest(shown.photo, crop.window()))
            : "";
    return new Tile(
        ContactSheets.printed(shown.photo.picture(), crop),
        number(shown.photo) + " " + shown.piece + kept);
  }

  private static Tile whole(Shown shown) {
    PixelSize size = shown.photo.size();
    List<Frame> frames = new ArrayList<>();
    shown.photo.subject().ifPresent(mask -> frames.add(new Frame(mask.box(), Color.GREEN)));
    List<Subject> things =
        shown.measures.subjects().stream()
            .sorted(Comparator.comparingDouble((Subject thing) -> -thing.weight(size)))
            .limit(3)
            .toList();
    StringBuilder words = new StringBuilder();
    for (Subject thing : things) {
      frames.add(
          new Frame(thing.box(), thing.confidence() >= Subject.SURE ? Color.CYAN : Color.BLUE));
      words.append(
          String.format(
              Locale.ROOT,
              "%s.%02.0f ",
              thing.what().substring(0, Math.min(6, thing.what().length())),
              100 * thing.confidence()));
    }
    for (Face face : shown.measures.faces()) {
      frames.add(new Frame(face.box(), face.isProtected() ? Color.RED : Color.PINK));
    }
    PixelBox window = shown.fill.window();
    frames.add(new Frame(window, Color.WHITE));
    return new Tile(ContactSheets.framed(shown.photo.picture(), frames), words.toString());
  }

  private static String number(EvalPhoto photo) {
    return photo.name().replaceAll("^0*|\\..*$", "");
  }
}
