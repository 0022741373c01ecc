package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.daymount.look.Face;
import org.daymount.look.Measurer;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.SaliencyMap;
import org.daymount.look.Subject;
import org.daymount.look.detect.BurstFocus;
import org.daymount.look.detect.Detectors;
import org.daymount.look.detect.DetectorsUnavailable;
import org.daymount.unit.PixelSize;

/**
 * Measures the program's judgement on photographs that a person marked, and prints tables. Run it
 * with {@code mvn -q -Pevaluate test-compile exec:java -Deval.dir=FOLDER}; the folder is laid out
 * as {@link EvalSet} says. {@code -Deval.tables=faces,sharpness} prints some of the tables.
 *
 * <p>References: Chen et al. 2017 (judging crops), Pertuz et al. 2013 (judging focus measures).
 */
public final class Evaluate {
  private final PrintStream out;
  private final Path folder;
  private final List<EvalPhoto> photos;
  private final Map<String, Measures> measured = new HashMap<>();
  private final Map<String, Function<BufferedImage, CloseLook>> detectors;
  private final Map<String, Map<String, CloseLook>> seen = new HashMap<>();

  private Evaluate(
      PrintStream out,
      Path folder,
      List<EvalPhoto> photos,
      Map<String, Function<BufferedImage, CloseLook>> detectors) {
    this.out = out;
    this.folder = folder;
    this.photos = photos;
    this.detectors = detectors;
    Measurer measurer = new Measurer();
    photos.forEach(photo -> measured.put(photo.name(), measurer.measure(photo.picture())));
  }

  public static void main(String[] args) throws IOException {
    if (args.length < 1 || !Files.isDirectory(Path.of(args[0]).resolve("photos"))) {
      System.err.println(
          "say where the marked photographs are: -Deval.dir=FOLDER, with photos/ in it");
      return;
    }
    Path folder = Path.of(args[0]);
    Set<String> tables = Set.of(args.length > 1 ? args[1].split(",") : new String[] {"all"});
    List<EvalPhoto> photos = EvalSet.read(folder);
    try (Detectors detectors = Detectors.load()) {
      Map<String, Function<BufferedImage, CloseLook>> all = new LinkedHashMap<>();
      String file = System.getProperty("eval.remember", "");
      if (file.isEmpty()) {
        all.put("the detectors", picture -> look(detectors, picture));
        new Evaluate(System.out, folder, photos, all).run(tables);
      } else {
        RememberedLooks looks =
            new RememberedLooks(picture -> look(detectors, picture), Path.of(file));
        all.put("the detectors", looks);
        new Evaluate(System.out, folder, photos, all).run(tables);
        looks.write();
      }
    } catch (DetectorsUnavailable e) {
      System.out.println("WITHOUT DETECTORS, their rows are missing: " + e.getMessage());
      new Evaluate(System.out, folder, photos, Map.of()).run(tables);
    }
  }

  /** As the program looks at a photo that is alone. */
  private static CloseLook look(Detectors detectors, BufferedImage picture) {
    CloseLook look = detectors.look(picture);
    PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
    return look.with(new Measurer().mainLook(picture, BurstFocus.mainBox(look, size)));
  }

  /**
   * @param tables some of speed, faces, crops, subjects, bursts, sharpness, exposure, copies, days,
   *     pages, scenes, margins; or all; or sheets, pictures to look at, which all leaves out
   */
  void run(Set<String> tables) throws IOException {
    long masks = photos.stream().filter(photo -> photo.subject().isPresent()).count();
    out.printf("%d photographs, %d with a marked subject%n", photos.size(), masks);
    if (wants(tables, "speed")) {
      detectors.forEach((name, detector) -> SpeedTable.print(name, detector, photos, out));
    }
    if (wants(tables, "faces")) {
      for (String name : detectors.keySet()) {
        new FaceTable(folder).print(name, faces(name), out);
      }
    }
    if (wants(tables, "crops")) {
      crops();
    }
    if (wants(tables, "subjects")) {
      subjects();
    }
    if (wants(tables, "margins")) {
      for (String name : detectors.keySet()) {
        new MarginTable(out).print(name, photos, photo -> looked(photo, name));
      }
    }
    if (wants(tables, "sharpness")) {
      new BurstLadder(out).print(photos);
    }
    if (wants(tables, "bursts")) {
      BurstLadder ladder = new BurstLadder(out);
      detectors.forEach((name, detector) -> ladder.print(name, detector, photos));
    }
    if (wants(tables, "exposure")) {
      ExposureLadder.print(photos, out);
    }
    if (wants(tables, "days") && Files.exists(folder.resolve("days").resolve("days.json"))) {
      for (String name : detectors.keySet()) {
        new DayTable(folder, detectors.get(name), out).print();
      }
    }
    if (wants(tables, "pages") && Files.exists(folder.resolve("days").resolve("days.json"))) {
      for (String name : detectors.keySet()) {
        new PageTable(folder, detectors.get(name), out).print();
      }
    }
    if (tables.contains("sheets")) {
      sheets();
    }
    if (wants(tables, "scenes")) {
      SceneTable.print(photos, out);
    }
    if (wants(tables, "copies")) {
      new DuplicateTable(out).print(photos);
    }
  }

  private static boolean wants(Set<String> tables, String table) {
    return tables.contains(table) || tables.contains("all");
  }

  private void crops() {
    FaceCropTable table = new FaceCropTable(out);
    table.rowOf("no face known", photos, this::pixelsAlone, false);
    table.rowOf("faces as marked by hand", photos, this::withMarkedFaces, true);
    detectors.keySet().forEach(name -> table.rowOf(name, photos, p -> looked(p, name), true));
    out.printf("%-34s %25s %8s %14s%n", "wanted", "0", "", "0");
  }

  /** Written to {@code -Deval.sheets=FOLDER}. */
  private void sheets() throws IOException {
    ContactSheets sheets = new ContactSheets(Path.of(System.getProperty("eval.sheets")));
    for (String name : detectors.keySet()) {
      new CropSheets(sheets, photos, photo -> looked(photo, name)).write();
      new DaySheets(sheets, folder, detectors.get(name)).write();
    }
  }

  private void subjects() {
    SubjectTable table = new SubjectTable(out);
    table.rowOf("centre", photos, photo -> with(photo, SaliencyMap.even(1, 1)), false);
    table.rowOf(
        "histogram contrast x centre",
        photos,
        photo -> with(photo, HistogramContrast.map(photo.picture())),
        false);
    table.rowOf("this program, pixels alone", photos, this::pixelsAlone, false);
    table.rowOf("and the subject's box, by hand", photos, this::withMarkedSubject, false);
    for (String name : detectors.keySet()) {
      table.rowOf(name + ", things alone", photos, p -> withoutFaces(looked(p, name)), false);
      table.rowOf(name, photos, p -> looked(p, name), true);
    }
    out.printf("%-34s %35s%n", "wanted", ">= 80% / <= 7%");
  }

  private Map<String, List<Face>> faces(String detector) {
    Map<String, List<Face>> faces = new TreeMap<>();
    photos.forEach(photo -> faces.put(photo.name(), looked(photo, detector).faces()));
    return faces;
  }

  private Measures pixelsAlone(EvalPhoto photo) {
    return measured.get(photo.name());
  }

  private Measures with(EvalPhoto photo, SaliencyMap map) {
    Measures m = pixelsAlone(photo);
    return new Measures(
        m.sharpness(), m.clarity(), m.exposure(), m.fingerprint(), map, Optional.empty());
  }

  /** Each photograph is looked at once. */
  private Measures looked(EvalPhoto photo, String detector) {
    CloseLook look =
        seen.computeIfAbsent(detector, key -> new HashMap<>())
            .computeIfAbsent(photo.name(), key -> detectors.get(detector).apply(photo.picture()));
    return pixelsAlone(photo).withClose(look);
  }

  private static Measures withoutFaces(Measures measures) {
    return measures.withClose(new CloseLook(List.of(), measures.subjects(), 0));
  }

  private Measures withMarkedSubject(EvalPhoto photo) {
    List<Subject> subjects =
        photo.subject().map(mask -> new Subject(mask.box(), "subject", 1)).stream().toList();
    return pixelsAlone(photo).withClose(new CloseLook(List.of(), subjects, 0));
  }

  private Measures withMarkedFaces(EvalPhoto photo) {
    List<Face> faces = photo.faces().stream().map(box -> new Face(box, 1)).toList();
    return pixelsAlone(photo).withClose(new CloseLook(faces, List.of(), 0));
  }
}
