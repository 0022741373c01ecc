package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;

/** What lies on a sheet of 300 ppi, by what month.json says of it. */
final class SheetPixels {
  private SheetPixels() {}

  /** The sheet's file, and where the piece lies on it. */
  static JsonNode[] placed(JsonNode month, String piece) {
    for (JsonNode sheet : month.get("sheets")) {
      for (JsonNode each : sheet.get("pieces")) {
        if (each.get("piece").asText().equals(piece)) {
          return new JsonNode[] {sheet.get("file"), each};
        }
      }
    }
    throw new AssertionError("no piece " + piece);
  }

  /**
   * Mean difference per channel between the piece on the sheet and that crop of the upright photo.
   */
  static double off(JsonNode piece, BufferedImage sheet, BufferedImage photo, JsonNode crop) {
    double ppi = 300;
    double left = piece.get("x").asDouble() * ppi;
    double top = piece.get("y").asDouble() * ppi;
    double wide = piece.get("width").asDouble() * ppi;
    double tall = piece.get("height").asDouble() * ppi;
    boolean turned = piece.get("turned").asBoolean();
    double sum = 0;
    int points = 0;
    for (double v = 0.03; v < 1; v += 0.0173) {
      for (double u = 0.03; u < 1; u += 0.0173) {
        // turned a quarter clockwise: what was the top is on the right
        double x = turned ? (1 - v) * wide : u * wide;
        double y = turned ? u * tall : v * tall;
        int on = sheet.getRGB((int) (left + x), (int) (top + y));
        int in =
            photo.getRGB(
                (int) (crop.get("x").asInt() + u * crop.get("width").asInt()),
                (int) (crop.get("y").asInt() + v * crop.get("height").asInt()));
        sum += apart(on, in);
        points++;
      }
    }
    return sum / points / 3;
  }

  static double apart(int one, int other) {
    double sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      sum += Math.abs((one >> shift & 255) - (other >> shift & 255));
    }
    return sum;
  }
}
