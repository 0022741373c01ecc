package org.daymount.look.detect;

import ai.onnxruntime.OrtException;
import java.io.IOException;
import org.daymount.unit.PixelSize;

/**
 * A second opinion on a face: the network behind the face mesh (Kartynnik et al. 2019) sees a
 * square of 192 pixels around it and says how surely eyes, nose and mouth are there. It knows
 * nothing of profiles, and little of faces under some 25 pixels; of heads from behind, helmets,
 * toys and pans it is never sure.
 */
final class FaceMesh implements AutoCloseable {
  private static final int SIDE = 192;

  /** Of the face's longer side: hair and chin are to be seen as well. */
  private static final double AROUND = 1.5;

  private final Model model;

  private FaceMesh(Model model) {
    this.model = model;
  }

  static FaceMesh load(int atOnce) throws IOException, OrtException {
    return new FaceMesh(Model.load("face-mesh.onnx", atOnce));
  }

  /** How surely there is a face that looks out of the picture, 0 to 1. */
  double presence(Pixels picture, Detection face) {
    double side = AROUND * Math.max(face.width(), face.height());
    float[] planes =
        picture.patch(face.centreX() - side / 2, face.centreY() - side / 2, side, SIDE);
    for (int i = 0; i < planes.length; i++) {
      planes[i] /= 255;
    }
    return model.run(planes, new PixelSize(SIDE, SIDE)).get("presence")[0];
  }

  @Override
  public void close() {
    model.close();
  }
}
