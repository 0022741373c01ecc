package org.daymount.look.detect;

import ai.onnxruntime.OrtException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Finds the eighty kinds of things of the COCO dataset as peaks of a heat map with their reach to
 * each side (CenterNet, Zhou et al. 2019), in the whole picture as a square of 512 pixels.
 */
final class CenterNet implements AutoCloseable {
  private static final int SIDE = 512;

  /** Width and height of the heat map. */
  private static final int CELLS = 128;

  private static final int PLANE = CELLS * CELLS;
  private static final double PIXELS_PER_CELL = SIDE / (double) CELLS;

  private final Model model;

  private CenterNet(Model model) {
    this.model = model;
  }

  static CenterNet load() throws IOException, OrtException {
    return new CenterNet(Model.load("centernet.onnx", SIDE));
  }

  /** Surest first. */
  List<Thing> detect(Pixels picture, double threshold) {
    Letterbox square = picture.fitted(SIDE, false);
    Map<String, float[]> out = model.run(square.planes());
    float[] heat = out.get("heat");
    float[] reach = out.get("reach");
    List<Thing> things = new ArrayList<>();
    for (ThingKind kind : ThingKind.values()) {
      int plane = kind.ordinal() * PLANE;
      for (int cell = 0; cell < PLANE; cell++) {
        float confidence = heat[plane + cell];
        if (confidence >= threshold && isPeak(heat, plane, cell)) {
          things.add(new Thing(kind, box(square, reach, cell, confidence)));
        }
      }
    }
    things.sort(Comparator.comparingDouble((Thing thing) -> thing.spot().confidence()).reversed());
    return things;
  }

  private static Spot box(Letterbox square, float[] reach, int cell, double confidence) {
    double x = cell % CELLS * PIXELS_PER_CELL;
    double y = cell / CELLS * PIXELS_PER_CELL;
    return square.inPicture(
        x - reach[cell],
        y - reach[PLANE + cell],
        x + reach[2 * PLANE + cell],
        y + reach[3 * PLANE + cell],
        confidence);
  }

  /** Whether none of the eight neighbours is warmer. */
  private static boolean isPeak(float[] heat, int plane, int cell) {
    int x = cell % CELLS;
    int y = cell / CELLS;
    for (int row = Math.max(0, y - 1); row <= Math.min(CELLS - 1, y + 1); row++) {
      for (int column = Math.max(0, x - 1); column <= Math.min(CELLS - 1, x + 1); column++) {
        if (heat[plane + row * CELLS + column] > heat[plane + cell]) {
          return false;
        }
      }
    }
    return true;
  }

  @Override
  public void close() {
    model.close();
  }
}
