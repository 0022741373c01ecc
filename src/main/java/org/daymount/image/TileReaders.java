package org.daymount.image;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Semaphore;

/**
 * Decodes HEIC and AVIF in processes of their own, so that a fault of the native decoder ends only
 * the reading of one picture. They are started when the first such picture is met, one for each
 * picture that is read at the same time, and used again. Where none can be started, pictures are
 * decoded in this process.
 */
final class TileReaders {
  private static final int MOST = 4; // at once; what each holds is outside of Java's heap

  /** A month may hold a few such pictures among many others; a new process takes half a second. */
  private static final Duration MOST_IDLE = Duration.ofSeconds(10);

  private static final Semaphore FREE = new Semaphore(MOST, true);
  private static final ConcurrentLinkedDeque<TileProcess> IDLE = new ConcurrentLinkedDeque<>();
  private static volatile TileProcessCommand command = TileProcessCommand.usual();

  private TileReaders() {}

  private enum Place {
    OWN_PROCESS,
    HERE,
    NOWHERE
  }

  /** Asked once, when the first picture is met. */
  private static final class Found {
    private static final Place PLACE = place();

    private static Place place() {
      try {
        TileProcess first = TileDecoder.withLibrary(() -> TileProcess.start(command));
        if (first.hasDecoder()) {
          IDLE.push(first);
          Runtime.getRuntime().addShutdownHook(new Thread(TileReaders::endAll));
          return Place.OWN_PROCESS;
        }
        first.end();
        return Place.NOWHERE;
      } catch (IOException e) {
        return TileDecoder.isAvailable() ? Place.HERE : Place.NOWHERE;
      }
    }
  }

  static boolean isAvailable() {
    return Found.PLACE != Place.NOWHERE;
  }

  static boolean inOwnProcess() {
    return Found.PLACE == Place.OWN_PROCESS;
  }

  /** For tests: how processes are started from now on. */
  static void startBy(TileProcessCommand other) {
    command = other;
    endAll();
  }

  /** Of those that wait, all that waited long: the one that waits longest is the last. */
  private static void endIdle() {
    for (TileProcess last = IDLE.pollLast(); last != null; last = IDLE.pollLast()) {
      if (!last.hasRestedFor(MOST_IDLE)) {
        IDLE.addLast(last);
        return;
      }
      last.end();
    }
  }

  private static void endAll() {
    for (TileProcess idle = IDLE.poll(); idle != null; idle = IDLE.poll()) {
      idle.end();
    }
  }

  /** Waits while as many pictures are being read as may be. */
  static TileReader open() throws IOException {
    if (!isAvailable()) {
      throw new IOException("no decoder for it on this system");
    }
    if (!inOwnProcess()) {
      return TileReader.here();
    }
    FREE.acquireUninterruptibly();
    return new Session();
  }

  /** One picture's. */
  private static final class Session implements TileReader {
    private TileProcess process;
    private TileCoding told;
    private boolean closed;

    /** A process may end for other reasons (little memory, a person), so a tile is tried twice. */
    @Override
    public YuvFrame decode(TileCoding coding, byte[] coded) throws IOException {
      try {
        return decodeOnce(coding, coded);
      } catch (TileProcess.Ended e) {
        return decodeOnce(coding, coded);
      }
    }

    private YuvFrame decodeOnce(TileCoding coding, byte[] coded) throws IOException {
      if (process == null) {
        process = idleOrNew();
        told = null;
      }
      try {
        YuvFrame planes = process.decode(coding, coding != told, coded);
        told = coding;
        return planes;
      } catch (TileProcess.Refused e) {
        throw new IOException(e.getMessage());
      } catch (IOException | RuntimeException | Error e) {
        process.end(); // what it still has to say would be taken for the next answer
        process = null;
        throw e;
      }
    }

    private static TileProcess idleOrNew() throws IOException {
      for (TileProcess idle = IDLE.poll(); idle != null; idle = IDLE.poll()) {
        if (idle.isAlive()) {
          return idle;
        }
      }
      return TileProcess.start(command);
    }

    @Override
    public void close() {
      if (closed) {
        return;
      }
      closed = true;
      if (process != null) {
        process.rest();
        IDLE.push(process);
        TileProcess.later(MOST_IDLE, TileReaders::endIdle);
      }
      FREE.release();
    }
  }
}
