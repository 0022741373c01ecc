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
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.FloatBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Semaphore;
import org.daymount.unit.PixelSize;

/** One trained network. Safe to run from many threads; each run uses its caller's thread only. */
final class Model implements AutoCloseable {
  private final OrtEnvironment environment;
  private final OrtSession session;

  /**
   * For pictures on their way in, used again and again: Java frees such memory so late that one for
   * each run would add up to hundreds of megabytes.
   */
  private final Queue<FloatBuffer> idle = new ConcurrentLinkedQueue<>();

  /** Each run has its own memory for all that the network computes, up to 50 MB. */
  private final Semaphore free;

  private Model(OrtEnvironment environment, OrtSession session, int atOnce) {
    this.environment = environment;
    this.session = session;
    this.free = new Semaphore(atOnce);
  }

  /**
   * @param resource file beside this class
   * @param atOnce how many threads may run it at a time; others wait
   */
  static Model load(String resource, int atOnce) throws IOException, OrtException {
    OrtEnvironment environment = environment();
    try (OrtSession.SessionOptions options = new OrtSession.SessionOptions()) {
      // One thread: the caller has as many as the computer, and sums come out in the same order.
      options.setIntraOpNumThreads(1);
      options.setInterOpNumThreads(1);
      // Planned ahead, one block for all of a run comes on top of those taken before: 70 MB more.
      options.setMemoryPatternOptimization(false);
      options.setSessionLogLevel(OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR);
      return new Model(environment, environment.createSession(bytes(resource), options), atOnce);
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

  /**
   * The network's outputs by name, each flat.
   *
   * @param planes red, green and blue, each row by row
   * @param size of the planes: the network's own, or another where it allows that
   */
  Map<String, float[]> run(float[] planes, PixelSize size) {
    free.acquireUninterruptibly();
    try {
      return runNow(planes, size);
    } finally {
      free.release();
    }
  }

  private Map<String, float[]> runNow(float[] planes, PixelSize size) {
    FloatBuffer buffer = buffer(planes.length);
    buffer.clear().put(planes).flip();
    try (OnnxTensor picture =
            OnnxTensor.createTensor(
                environment, buffer, new long[] {1, 3, size.height(), size.width()});
        OrtSession.Result result = session.run(Map.of("picture", picture))) {
      Map<String, float[]> outputs = new HashMap<>();
      for (Map.Entry<String, OnnxValue> output : result) {
        // a copy in the heap that is ours alone, so its array may be taken as it is
        outputs.put(output.getKey(), ((OnnxTensor) output.getValue()).getFloatBuffer().array());
      }
      return outputs;
    } catch (OrtException e) {
      // Input and model are ours and fixed in shape: this is a fault in the program.
      throw new IllegalStateException(e);
    } finally {
      idle.add(buffer);
    }
  }

  /** An idle one if it is large enough, else a new one; native order, as the library wants it. */
  private FloatBuffer buffer(int numbers) {
    FloatBuffer buffer = idle.poll();
    return buffer != null && buffer.capacity() >= numbers
        ? buffer
        : ByteBuffer.allocateDirect(Float.BYTES * numbers)
            .order(ByteOrder.nativeOrder())
            .asFloatBuffer();
  }

  @Override
  public void close() {
    try {
      session.close();
    } catch (OrtException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The one of this process: whoever asks first settles how much it says. */
  static OrtEnvironment environment() throws IOException {
    OnnxNatives.unpack();
    OrtEnvironment environment =
        OrtEnvironment.getEnvironment(OrtLoggingLevel.ORT_LOGGING_LEVEL_ERROR);
    OnnxNatives.clearTemporary();
    return environment;
  }
}
