package org.daymount.evaluate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * A folder of photographs with marks: {@code photos/*.jpg}, {@code faces.json} (name to {@code
 * faces[{box [x, y, w, h]}]} in upright pixels) and {@code subjects.csv} (photo, mask, …; a mask is
 * white where the subject is). It is given on the command line and never part of the project.
 */
final class EvalSet {
  private static final String PERSON = "1"; // of the COCO dataset

  /** {@code -Deval.waist=true}: of people only the upper half is the subject. */
  private static final boolean PEOPLE_TO_THE_WAIST = Boolean.getBoolean("eval.waist");

  private EvalSet() {}

  static List<EvalPhoto> read(Path folder) throws IOException {
    JsonNode marks = new ObjectMapper().readTree(folder.resolve("faces.json").toFile());
    Map<String, Path> masks = new HashMap<>();
    Set<String> persons = new HashSet<>();
    for (String line : Files.readAllLines(folder.resolve("subjects.csv"))) {
      String[] fields = line.split(",");
      masks.put(fields[0], folder.resolve(fields[1]));
      if (fields[2].equals(PERSON)) {
        persons.add(fields[0]);
      }
    }
    List<Path> files;
    try (Stream<Path> all = Files.list(folder.resolve("photos"))) {
      files = all.filter(file -> file.toString().endsWith(".jpg")).sorted().toList();
    }
    List<EvalPhoto> photos = new ArrayList<>();
    for (Path file : files) {
      String name = file.getFileName().toString();
      BufferedImage picture = rgb(ImageIO.read(file.toFile()));
      PixelSize size = new PixelSize(picture.getWidth(), picture.getHeight());
      Optional<Mask> mask = Optional.empty();
      if (masks.containsKey(name)) {
        mask = Optional.of(Mask.of(ImageIO.read(masks.get(name).toFile()), size));
        if (PEOPLE_TO_THE_WAIST && persons.contains(name)) {
          mask = mask.map(Mask::upperHalf);
        }
      }
      photos.add(new EvalPhoto(name, picture, faces(marks.path(name)), mask));
    }
    return photos;
  }

  /**
   * Which half a photograph or a day is in, by a rule that nobody can bend: the lowest bit of the
   * CRC-32 of its name. Rules are tuned on half 0; half 1 is only shown.
   */
  static int half(String name) {
    CRC32 sum = new CRC32();
    sum.update(name.getBytes(StandardCharsets.UTF_8));
    return (int) (sum.getValue() & 1);
  }

  private static List<PixelBox> faces(JsonNode photo) {
    List<PixelBox> boxes = new ArrayList<>();
    for (JsonNode face : photo.path("faces")) {
      JsonNode box = face.path("box");
      boxes.add(
          new PixelBox(
              (int) Math.round(box.get(0).asDouble()),
              (int) Math.round(box.get(1).asDouble()),
              (int) Math.round(box.get(2).asDouble()),
              (int) Math.round(box.get(3).asDouble())));
    }
    return boxes;
  }

  static BufferedImage rgb(BufferedImage any) {
    BufferedImage out =
        new BufferedImage(any.getWidth(), any.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = out.createGraphics();
    pen.drawImage(any, 0, 0, null);
    pen.dispose();
    return out;
  }
}
