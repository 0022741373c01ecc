package org.daymount.look.detect;

import ai.onnxruntime.OrtException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The face detector BlazeFace in its long-range form (Bazarevsky et al. 2019), which sees a square
 * of 256 pixels. Each face comes as a box from brow to chin and six points, of which the box is
 * used.
 */
final class BlazeFace implements AutoCloseable {
  private static final int SIDE = 256;

  /** Numbers for one anchor: box and six points. */
  private static final int STRIDE = 16;

  private static final double SAME_FACE = 0.3;

  private final Model model;

  private BlazeFace(Model model) {
    this.model = model;
  }

  static BlazeFace load(int atOnce) throws IOException, OrtException {
    return new BlazeFace(Model.load("blazeface.onnx", atOnce));
  }

  List<Detection> detect(Pixels picture, double threshold) {
    Letterbox square = picture.centred(SIDE);
    Map<String, float[]> out = model.run(square.signed(), square.size());
    List<Detection> spots = new ArrayList<>();
    addGrid(spots, square, out.get("scores16"), out.get("boxes16"), 16, 2, threshold);
    addGrid(spots, square, out.get("scores8"), out.get("boxes8"), 8, 6, threshold);
    return NonMaximumSuppression.blended(spots, SAME_FACE);
  }

  /** Anchors sit in the middle of the grid's cells; boxes are given from there, in pixels. */
  private static void addGrid(
      List<Detection> spots,
      Letterbox square,
      float[] scores,
      float[] boxes,
      int cells,
      int anchorsPerCell,
      double threshold) {
    for (int i = 0; i < scores.length; i++) {
      double confidence = Logistic.of(scores[i]);
      if (confidence < threshold) {
        continue;
      }
      int cell = i / anchorsPerCell;
      double anchorX = (cell % cells + 0.5) / cells * SIDE;
      double anchorY = (cell / cells + 0.5) / cells * SIDE;
      double x = anchorX + boxes[i * STRIDE];
      double y = anchorY + boxes[i * STRIDE + 1];
      double halfWidth = boxes[i * STRIDE + 2] / 2;
      double halfHeight = boxes[i * STRIDE + 3] / 2;
      if (halfWidth > 0 && halfHeight > 0) {
        spots.add(
            square.inPicture(
                x - halfWidth, y - halfHeight, x + halfWidth, y + halfHeight, confidence));
      }
    }
  }

  @Override
  public void close() {
    model.close();
  }
}
