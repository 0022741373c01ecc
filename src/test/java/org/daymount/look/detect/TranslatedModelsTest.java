package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Our ONNX models against TensorFlow.js 4.22 (npm, WebAssembly backend) running the published
 * files, on a drawn picture: src/test/weights/reference.mjs, run by the build. The face detector
 * that is published without a graph is run there by its publisher's own package.
 */
@Tag("slow")
class TranslatedModelsTest {
  private static final Path RESULTS =
      Path.of(System.getProperty("weights.directory", "target/weights"), "reference", "results");

  /** Of the value, or of 1 for smaller ones. */
  private static final double TOLERANCE = 1e-3;

  @Test
  void blazeFaceGivesTheNumbersTensorFlowGives() throws Exception {
    Map<String, float[]> ours = outputs("blazeface", 256);
    for (String output : List.of("scores16", "scores8", "boxes16", "boxes8")) {
      assertClose(output, read("blazeface." + output), ours.get(output));
    }
  }

  @Test
  void theFaceMeshGivesTheNumberTensorFlowGives() throws Exception {
    assertClose("presence", read("facemesh.presence"), outputs("face-mesh", 192).get("presence"));
  }

  @Test
  void centerNetGivesTheNumbersTensorFlowGives() throws Exception {
    Map<String, float[]> ours = outputs("centernet", 512);
    float[] heat = ours.get("heat"); // before the logistic, which the program leaves to the peaks
    for (int i = 0; i < heat.length; i++) {
      heat[i] = (float) Logistic.of(heat[i]);
    }
    assertClose("heat", planes(read("centernet.heat"), 80), heat);
    assertClose("reach", planes(read("centernet.reach"), 4), ours.get("reach"));
  }

  @Test
  void theFaceSsdGivesTheBoxesAndScoresItsPublisherGets() throws Exception {
    Letterbox asIs =
        new Letterbox(new PixelSize(512, 512), new float[0], 1, new PixelBox(0, 0, 512, 512));
    List<Detection> ours = FaceSsd.spots(outputs("face-ssd", 512), asIs, 0);
    float[] edges = read("face-ssd.edges");
    float[] scores = read("face-ssd.scores");
    assertEquals(scores.length, ours.size());
    float[] ourEdges = new float[edges.length];
    float[] ourScores = new float[scores.length];
    for (int i = 0; i < scores.length; i++) {
      Detection spot = ours.get(i);
      ourScores[i] = (float) spot.confidence();
      ourEdges[4 * i] = (float) (spot.y() / 512);
      ourEdges[4 * i + 1] = (float) (spot.x() / 512);
      ourEdges[4 * i + 2] = (float) (spot.bottom() / 512);
      ourEdges[4 * i + 3] = (float) (spot.right() / 512);
    }
    assertClose("scores", scores, ourScores);
    assertClose("edges", edges, ourEdges);
  }

  private static Map<String, float[]> outputs(String name, int side) throws Exception {
    try (Model model = Model.load(name + ".onnx", 1)) {
      String picture = name.replace("face-mesh", "facemesh") + ".picture";
      return model.run(planes(read(picture), 3), new PixelSize(side, side));
    }
  }

  private static void assertClose(String what, float[] expected, float[] actual) {
    assertEquals(expected.length, actual.length, what);
    for (int i = 0; i < expected.length; i++) {
      double tolerance = TOLERANCE * Math.max(1, Math.abs(expected[i]));
      assertEquals(expected[i], actual[i], tolerance, what + " number " + i);
    }
  }

  /** From [row, column, channel] to [channel, row, column]. */
  private static float[] planes(float[] interleaved, int channels) {
    float[] planes = new float[interleaved.length];
    int plane = interleaved.length / channels;
    for (int i = 0; i < interleaved.length; i++) {
      planes[i % channels * plane + i / channels] = interleaved[i];
    }
    return planes;
  }

  private static float[] read(String name) throws IOException {
    byte[] bytes = Files.readAllBytes(RESULTS.resolve(name + ".f32"));
    float[] values = new float[bytes.length / Float.BYTES];
    ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asFloatBuffer().get(values);
    return values;
  }
}
