package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.daymount.look.Face;
import org.daymount.look.Measurer;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.look.SubjectMap;

/**
 * Measures the program's judgement on photographs that a person marked, and prints tables. Run it
 * with {@code mvn -q -Pevaluate test-compile exec:java -Deval.dir=FOLDER}; the folder is laid out
 * as {@link EvalSet} says.
 *
 * <p>References: Chen et al. 2017 (judging crops), Pertuz et al. 2013 (judging focus measures).
 */
public final class Evaluate {
  private static final String ALL = "subjects,faces,sharpness,exposure,copies";

  private final PrintStream out;
  private final List<EvalPhoto> photos;
  private final Map<String, Measures> measured = new HashMap<>();

  private Evaluate(PrintStream out, List<EvalPhoto> photos) {
    this.out = out;
    this.photos = photos;
    Measurer measurer = new Measurer();
    photos.forEach(photo -> measured.put(photo.name(), measurer.measure(photo.picture())));
  }

  public static void main(String[] args) throws IOException {
    if (args.length < 1 || !Files.isDirectory(Path.of(args[0]).resolve("photos"))) {
      System.err.println(
          "say where the marked photographs are: -Deval.dir=FOLDER, with photos/ in it");
      return;
    }
    Set<String> tables = Set.of(args.length > 1 ? args[1].split(",") : ALL.split(","));
    new Evaluate(System.out, EvalSet.read(Path.of(args[0]))).run(tables, Map.of());
  }

  /**
   * @param tables some of subjects, faces, sharpness, exposure, copies
   * @param detectors what looks closely at a picture, by name; each gets its own rows
   */
  void run(Set<String> tables, Map<String, Function<BufferedImage, Measures.CloseLook>> detectors) {
    long masks = photos.stream().filter(photo -> photo.subject().isPresent()).count();
    out.printf("%d photographs, %d with a marked subject%n%n", photos.size(), masks);
    if (tables.contains("subjects")) {
      subjects(detectors);
    }
    if (tables.contains("faces")) {
      faces(detectors);
    }
    if (tables.contains("sharpness")) {
      new BurstLadder(out).print(photos);
    }
    if (tables.contains("exposure")) {
      ExposureLadder.print(photos, out);
    }
    if (tables.contains("copies")) {
      new DuplicateTable(out).print(photos);
    }
  }

  private void faces(Map<String, Function<BufferedImage, Measures.CloseLook>> detectors) {
    out.println();
    FaceCropTable.print("Faces: none known", photos, this::pixelsAlone, out);
    FaceCropTable.print("Faces: as marked by hand", photos, this::withMarkedFaces, out);
    detectors.forEach(
        (name, detector) ->
            FaceCropTable.print("Faces: " + name, photos, p -> looked(p, detector), out));
  }

  private void subjects(Map<String, Function<BufferedImage, Measures.CloseLook>> detectors) {
    SubjectTable table = new SubjectTable(out);
    table.rowOf("centre", photos, photo -> with(photo, SubjectMap.even(1, 1)));
    table.rowOf(
        "histogram contrast x centre",
        photos,
        photo -> with(photo, HistogramContrast.map(photo.picture())));
    table.rowOf("this program, pixels alone", photos, this::pixelsAlone);
    table.rowOf("and the subject's box, by hand", photos, this::withMarkedSubject);
    detectors.forEach((name, detector) -> table.rowOf(name, photos, p -> looked(p, detector)));
  }

  private Measures pixelsAlone(EvalPhoto photo) {
    return measured.get(photo.name());
  }

  private Measures with(EvalPhoto photo, SubjectMap map) {
    Measures m = pixelsAlone(photo);
    return new Measures(
        m.sharpness(), m.clarity(), m.exposure(), m.fingerprint(), map, Optional.empty());
  }

  private Measures looked(EvalPhoto photo, Function<BufferedImage, Measures.CloseLook> detector) {
    return pixelsAlone(photo).withClose(detector.apply(photo.picture()));
  }

  private Measures withMarkedSubject(EvalPhoto photo) {
    List<Subject> subjects =
        photo.subject().map(mask -> new Subject(mask.box(), "subject", 1)).stream().toList();
    return pixelsAlone(photo).withClose(new Measures.CloseLook(List.of(), subjects, 0));
  }

  private Measures withMarkedFaces(EvalPhoto photo) {
    List<Face> faces = photo.faces().stream().map(box -> new Face(box, 1)).toList();
    return pixelsAlone(photo).withClose(new Measures.CloseLook(faces, List.of(), 0));
  }
}
