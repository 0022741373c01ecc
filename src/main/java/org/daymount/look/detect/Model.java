package org.daymount.look.detect;

import ai.onnxruntime.OnnxTensor;
import ai.onnxruntime.OnnxValue;
import ai.onnxruntime.OrtEnvironment;
import ai.onnxruntime.OrtException;
import ai.onnxruntime.OrtLoggingLevel;
import ai.onnxruntime.OrtSession;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.FloatBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** One trained network. Safe to run from many threads; each run uses its caller's thread only. */
final class Model implements AutoCloseable {
  private static final long DEEP_STACK_BYTES = 16L << 20;

  private final OrtEnvironment environment;
  private final OrtSession session;
  private final int side;

  private Model(OrtEnvironment environment, OrtSession session, int side) {
    this.environment = environment;
    this.session = session;
    this.side = side;
  }

  /**
   * @param resource file beside this class
   * @param side width and height of the picture the network takes
   */
  static Model load(String resource, int side) throws IOException, OrtException {
    OrtEnvironment environment =
        OrtEnvironment.getEnvironment(OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR);
    try (OrtSession.SessionOptions options = new OrtSession.SessionOptions()) {
      // One thread: the caller has as many as the computer, and sums come out in the same order.
      options.setIntraOpNumThreads(1);
      options.setInterOpNumThreads(1);
      options.setSessionLogLevel(OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR);
      byte[] bytes = bytes(resource);
      return new Model(
          environment, onADeepStack(() -> environment.createSession(bytes, options)), side);
    }
  }

  /**
   * ONNX Runtime calls itself once for every step of a network on the way from its end to its
   * beginning. For the largest one that is more than the stack of an ordinary Java thread holds,
   * and running over it ends the process without a word.
   */
  private static OrtSession onADeepStack(Callable<OrtSession> reading)
      throws IOException, OrtException {
    FutureTask<OrtSession> task = new FutureTask<>(reading);
    new Thread(null, task, "reading a model", DEEP_STACK_BYTES).start();
    try {
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof OrtException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted while reading a model");
    }
  }

  private static byte[] bytes(String resource) throws IOException {
    try (InputStream in = Model.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new FileNotFoundException(resource + " is not among the program's files");
      }
      return in.readAllBytes();
    }
  }

  /** The network's outputs by name, each flat, for a picture as red, green and blue planes. */
  Map<String, float[]> run(float[] planes) {
    return run(planes, side, side);
  }

  /** The same for one that is not square, where the model allows it. */
  Map<String, float[]> run(float[] planes, int rows, int columns) {
    long[] shape = {1, 3, rows, columns};
    try (OnnxTensor picture =
            OnnxTensor.createTensor(environment, FloatBuffer.wrap(planes), shape);
        OrtSession.Result result = session.run(Map.of("picture", picture))) {
      Map<String, float[]> outputs = new HashMap<>();
      for (Map.Entry<String, OnnxValue> output : result) {
        FloatBuffer values = ((OnnxTensor) output.getValue()).getFloatBuffer();
        float[] flat = new float[values.remaining()];
        values.get(flat);
        outputs.put(output.getKey(), flat);
      }
      return outputs;
    } catch (OrtException e) {
      // Input and model are ours and fixed in shape: this is a fault in the program.
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    try {
      session.close();
    } catch (OrtException e) {
      throw new IllegalStateException(e);
    }
  }
}
