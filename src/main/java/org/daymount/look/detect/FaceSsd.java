package org.daymount.look.detect;

import ai.onnxruntime.OrtException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A single-shot face detector (SSD, Liu et al. 2016, on MobileNet v1) that sees the whole picture
 * as a square of 512 pixels.
 */
final class FaceSsd implements AutoCloseable {
  /** Of the square it sees: the same as CenterNet's, so that one scaled picture serves both. */
  private static final int SIDE = CenterNet.SIDE;

  /** Of the finest two grids inside the network; coarser ones may be cut unevenly. */
  private static final int STEP = 64;

  private static final int[] GRIDS = {32, 16, 8, 4, 2, 1};
  private static final int CLASSES = 3;
  private static final int FACE = 1;

  /** How far an anchor's encoded box is stretched: place by 10, size by 5 (SSD's variances). */
  private static final double PLACE = 10;

  private static final double SIZE = 5;
  private static final double SAME_FACE = 0.5;

  private final Model model;

  private FaceSsd(Model model) {
    this.model = model;
  }

  static FaceSsd load(int atOnce) throws IOException, OrtException {
    return new FaceSsd(Model.load("face-ssd.onnx", atOnce));
  }

  /**
   * @param square the picture in the top left of the whole square
   */
  List<Detection> detect(Letterbox square, double threshold) {
    Letterbox part = square.withoutEmptyPart(STEP);
    Map<String, float[]> out = model.run(part.signed(), part.size());
    return NonMaximumSuppression.surest(spots(out, part, threshold), SAME_FACE, 1);
  }

  /** Every anchor that is sure enough, in the order of the anchors: by grid, by cell, by shape. */
  static List<Detection> spots(Map<String, float[]> out, Letterbox square, double threshold) {
    float[] anchors = out.get("anchors");
    List<Detection> spots = new ArrayList<>();
    int firstAnchor = 0; // of the grid; anchors are counted over the whole square
    for (int cells : GRIDS) {
      int columns = cellsAlong(square.size().width(), cells);
      int plane = columns * cellsAlong(square.size().height(), cells);
      float[] classes = out.get("classes" + cells);
      float[] boxes = out.get("boxes" + cells);
      int shapes = boxes.length / 4 / plane;
      for (int cell = 0; cell < plane; cell++) {
        int cellOfSquare = cell / columns * cells + cell % columns;
        for (int shape = 0; shape < shapes; shape++) {
          double confidence = Logistic.of(classes[(shape * CLASSES + FACE) * plane + cell]);
          if (confidence >= threshold) {
            double[] code = new double[4];
            for (int i = 0; i < code.length; i++) {
              code[i] = boxes[(shape * code.length + i) * plane + cell];
            }
            int anchor = firstAnchor + cellOfSquare * shapes + shape;
            spots.add(decoded(square, anchors, 4 * anchor, code, confidence));
          }
        }
      }
      firstAnchor += cells * cells * shapes;
    }
    return spots;
  }

  /**
   * How many cells of a grid a picture has that fills only part of the square; begun ones count.
   */
  private static int cellsAlong(int length, int cellsOfSquare) {
    int pixels = SIDE / cellsOfSquare;
    return (length + pixels - 1) / pixels;
  }

  /**
   * @param at of the anchor's top, left, bottom and right, in parts of the square
   * @param code down, right, taller and wider than the anchor
   */
  private static Detection decoded(
      Letterbox square, float[] anchors, int at, double[] code, double confidence) {
    double height = anchors[at + 2] - anchors[at];
    double width = anchors[at + 3] - anchors[at + 1];
    double y = anchors[at] + height / 2 + code[0] / PLACE * height;
    double x = anchors[at + 1] + width / 2 + code[1] / PLACE * width;
    double halfHeight = Math.exp(code[2] / SIZE) * height / 2;
    double halfWidth = Math.exp(code[3] / SIZE) * width / 2;
    return square.inPicture(
        (x - halfWidth) * SIDE,
        (y - halfHeight) * SIDE,
        (x + halfWidth) * SIDE,
        (y + halfHeight) * SIDE,
        confidence);
  }

  @Override
  public void close() {
    model.close();
  }
}
