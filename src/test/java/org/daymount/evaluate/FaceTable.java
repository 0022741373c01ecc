package org.daymount.evaluate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.look.Face;
import org.daymount.unit.PixelBox;

/**
 * Counts how many annotated faces the detectors find, and how many they see where there is none.
 * The folder it is given holds {@code photos/} and {@code faces.json}: for each photo {@code faces}
 * (each a {@code box} [x, y, width, height] in upright pixels and whether in {@code profile}),
 * boxes to {@code ignore} (too small or hidden to ask for) and {@code animal}.
 */
final class FaceTable {
  /** Shared area over joint area from which a face counts as found. */
  private static final double FOUND = 0.4;

  /** Part of a found face inside a box to ignore from which it is neither right nor wrong. */
  private static final double IGNORED = 0.3;

  /** A face this large, in pixels of a 640-pixel frame, must not be lost. */
  private static final double LARGE = 40;

  private final Path folder;

  /**
   * @param folder with {@code faces.json}
   */
  FaceTable(Path folder) {
    this.folder = folder;
  }

  /**
   * Prints one line for each of the two thresholds, then every miss and every false face.
   *
   * @param seen what was found in each photo, by its name
   */
  void print(String name, Map<String, List<Face>> seen, PrintStream out) throws IOException {
    Map<String, JsonNode> annotations = annotations();
    out.printf(
        Locale.ROOT,
        "%n%-34s %6s %6s %8s %12s %10s%n",
        "Faces found: " + name,
        "faces",
        "found",
        "recall",
        "false/photo",
        "lost large");
    Tally score = count(annotations, seen, Face.COUNTS_FROM);
    Tally protect = count(annotations, seen, Face.PROTECTED_FROM);
    out.println(score.line("sure enough to count", Face.COUNTS_FROM, seen.size()));
    out.println(protect.line("sure enough to protect", Face.PROTECTED_FROM, seen.size()));
    out.printf(
        Locale.ROOT, "%-34s %6s %6s %8s %12s %10s%n", "wanted", "", "", ">= .990", "<= .080", "0");
    score.details.forEach(line -> out.println("    " + line));
  }

  private Map<String, JsonNode> annotations() throws IOException {
    JsonNode root = new ObjectMapper().readTree(Files.readAllBytes(folder.resolve("faces.json")));
    Map<String, JsonNode> byName = new TreeMap<>();
    root.properties().forEach(entry -> byName.put(entry.getKey(), entry.getValue()));
    return byName;
  }

  private static Tally count(
      Map<String, JsonNode> annotations, Map<String, List<Face>> seen, double threshold) {
    Tally tally = new Tally();
    annotations.forEach(
        (name, annotation) -> {
          List<Face> left = new ArrayList<>(seen.get(name));
          left.removeIf(face -> face.confidence() < threshold);
          boolean lost = false;
          for (JsonNode face : annotation.get("faces")) {
            Box box = Box.of(face.get("box"));
            Face best = best(left, box);
            tally.faces++;
            if (best != null) {
              left.remove(best);
              tally.found++;
            } else {
              tally.details.add("missed: " + name + " " + box);
              lost |= Math.min(box.width, box.height) >= LARGE;
            }
          }
          tally.photosLosing += lost ? 1 : 0;
          for (Face face : left) {
            if (!isIgnored(face, annotation)) {
              tally.falseFaces++;
              tally.details.add(
                  "false: " + name + " " + Box.of(face.box()) + " " + face.confidence());
            }
          }
        });
    return tally;
  }

  private static Face best(List<Face> faces, Box box) {
    Face best = null;
    double bestOverlap = FOUND;
    for (Face face : faces) {
      double overlap = box.overlap(Box.of(face.box()));
      if (overlap >= bestOverlap) {
        best = face;
        bestOverlap = overlap;
      }
    }
    return best;
  }

  private static boolean isIgnored(Face face, JsonNode annotation) {
    Box box = Box.of(face.box());
    for (JsonNode ignored : annotation.get("ignore")) {
      if (Box.of(ignored).shared(box) > IGNORED * box.area()) {
        return true;
      }
    }
    return false;
  }

  private static final class Tally {
    private final List<String> details = new ArrayList<>();
    private int faces;
    private int found;
    private int falseFaces;
    private int photosLosing;

    String line(String name, double threshold, int photos) {
      return String.format(
          Locale.ROOT,
          "%-27s >= %.2f %6d %6d %8.3f %12.3f %10d",
          name,
          threshold,
          faces,
          found,
          found / (double) faces,
          falseFaces / (double) photos,
          photosLosing);
    }
  }

  /** A box with fractions of pixels, as annotations have. */
  private record Box(double x, double y, double width, double height) {
    static Box of(JsonNode box) {
      return new Box(
          box.get(0).asDouble(),
          box.get(1).asDouble(),
          box.get(2).asDouble(),
          box.get(3).asDouble());
    }

    static Box of(PixelBox box) {
      return new Box(box.x(), box.y(), box.width(), box.height());
    }

    double area() {
      return width * height;
    }

    double shared(Box other) {
      double w = Math.min(x + width, other.x + other.width) - Math.max(x, other.x);
      double h = Math.min(y + height, other.y + other.height) - Math.max(y, other.y);
      return w <= 0 || h <= 0 ? 0 : w * h;
    }

    double overlap(Box other) {
      double shared = shared(other);
      return shared / (area() + other.area() - shared);
    }
  }
}
