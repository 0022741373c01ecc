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
  /** Of the square it sees. */
  static final int SIDE = 512;

  /** Of the heat map. */
  private static final int PIXELS_PER_CELL = 4;

  private final Model model;

  private CenterNet(Model model) {
    this.model = model;
  }

  static CenterNet load(int atOnce) throws IOException, OrtException {
    return new CenterNet(Model.load("centernet.onnx", atOnce));
  }

  /**
   * @param square the picture in the top left of the whole square, empty part and all: without it
   *     more things are missed (docs/evaluation.md, cost of a look)
   * @return surest first
   */
  List<LabelledDetection> detect(Letterbox square, double threshold) {
    Map<String, float[]> out = model.run(square.planes(), square.size());
    Grid heat = new Grid(out.get("heat"), SIDE / PIXELS_PER_CELL, SIDE / PIXELS_PER_CELL);
    Grid reach = new Grid(out.get("reach"), heat.columns, heat.rows);
    double warmth = Logistic.inverse(threshold);
    List<LabelledDetection> things = new ArrayList<>();
    for (ThingKind kind : ThingKind.values()) {
      for (int cell = 0; cell < heat.cells(); cell++) {
        float warm = heat.at(kind.ordinal(), cell);
        if (warm >= warmth && heat.isPeak(kind.ordinal(), cell)) {
          things.add(new LabelledDetection(kind, box(square, reach, cell, Logistic.of(warm))));
        }
      }
    }
    things.sort(
        Comparator.comparingDouble((LabelledDetection thing) -> thing.spot().confidence())
            .reversed());
    return things;
  }

  private static Detection box(Letterbox square, Grid reach, int cell, double confidence) {
    double x = cell % reach.columns * PIXELS_PER_CELL;
    double y = cell / reach.columns * PIXELS_PER_CELL;
    return square.inPicture(
        x - reach.at(0, cell),
        y - reach.at(1, cell),
        x + reach.at(2, cell),
        y + reach.at(3, cell),
        confidence);
  }

  /** Planes of cells, one after the other. */
  private record Grid(float[] values, int columns, int rows) {
    int cells() {
      return columns * rows;
    }

    float at(int plane, int cell) {
      return values[plane * cells() + cell];
    }

    /** Whether none of the eight neighbours is warmer. */
    boolean isPeak(int plane, int cell) {
      int x = cell % columns;
      int y = cell / columns;
      for (int row = Math.max(0, y - 1); row <= Math.min(rows - 1, y + 1); row++) {
        for (int column = Math.max(0, x - 1); column <= Math.min(columns - 1, x + 1); column++) {
          if (at(plane, row * columns + column) > at(plane, cell)) {
            return false;
          }
        }
      }
      return true;
    }
  }

  @Override
  public void close() {
    model.close();
  }
}
