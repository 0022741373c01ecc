package org.daymount.image;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * A process that decodes tiles ({@link TileServer}), seen from outside. Question and answer take
 * turns on its input and output; nothing it says is believed without a bound. For one thread at a
 * time.
 */
final class TileProcess {
  /** A pipe holds no more at a time, and Java copies what is asked for, not what is there. */
  private static final int SLICE = 1 << 16;

  private static final Duration TO_START = Duration.ofSeconds(60);
  private static final int MOST_SECONDS_TO_END = 2;
  private static final int MOST_PADDING = 1 << 13; // of a row, in bytes

  private static final ScheduledThreadPoolExecutor CLOCK = clock();

  private final Process process;
  private final DataInputStream in;
  private final DataOutputStream out;
  private final Duration patience;
  private final boolean hasDecoder;
  private byte[][] planes = {};
  private volatile long restsSince = System.nanoTime();

  /** The process ended in the middle of a picture. */
  static final class Ended extends IOException {
    private static final long serialVersionUID = 1;

    Ended(String message) {
      super(message);
    }
  }

  /** What the decoder says of a tile; the process goes on. */
  static final class Refused extends IOException {
    private static final long serialVersionUID = 1;

    Refused(String message) {
      super(message);
    }
  }

  private TileProcess(Process process, Duration patience) throws IOException {
    this.process = process;
    this.patience = patience;
    this.in = new DataInputStream(new BufferedInputStream(process.getInputStream(), 512));
    this.out = new DataOutputStream(new BufferedOutputStream(process.getOutputStream(), 512));
    AtomicBoolean late = new AtomicBoolean();
    Future<?> watch = watch(late, TO_START);
    try {
      if (in.readInt() != TileServer.GREETING) {
        throw new IOException("the reader of HEIC pictures does not answer as it should");
      }
      hasDecoder = in.readBoolean();
    } finally {
      watch.cancel(false);
    }
  }

  private static ScheduledThreadPoolExecutor clock() {
    ScheduledThreadPoolExecutor clock =
        new ScheduledThreadPoolExecutor(
            1,
            work -> {
              Thread thread = new Thread(work, "patience with readers of HEIC pictures");
              thread.setDaemon(true);
              return thread;
            });
    clock.setRemoveOnCancelPolicy(true);
    return clock;
  }

  static TileProcess start(TileProcessCommand command) throws IOException {
    Process process = command.start();
    try {
      return new TileProcess(process, command.patience());
    } catch (IOException | RuntimeException | Error e) {
      process.destroyForcibly();
      throw e;
    }
  }

  /** Whether libavcodec loads there. */
  boolean hasDecoder() {
    return hasDecoder;
  }

  boolean isAlive() {
    return process.isAlive();
  }

  /**
   * @param isNew whether the process has not yet been told of this coding, for this picture
   * @return valid until the next call
   * @throws Refused when the tile is damaged or of an unusual kind
   * @throws Ended when the process is no more
   */
  YuvFrame decode(TileCoding coding, boolean isNew, byte[] coded) throws IOException {
    AtomicBoolean late = new AtomicBoolean();
    Future<?> watch = watch(late, patience);
    try {
      ask(coding, isNew, coded);
      return answer(coding);
    } catch (Refused e) {
      throw e;
    } catch (IOException e) {
      if (late.get()) {
        throw new IOException("takes longer than " + patience.toSeconds() + " s to decode");
      }
      throw new Ended("it ended the reader of HEIC pictures");
    } finally {
      watch.cancel(false);
    }
  }

  private Future<?> watch(AtomicBoolean late, Duration most) {
    return CLOCK.schedule(
        () -> {
          late.set(true);
          process.destroyForcibly();
        },
        most.toMillis(),
        TimeUnit.MILLISECONDS);
  }

  private void ask(TileCoding coding, boolean isNew, byte[] coded) throws IOException {
    out.writeBoolean(isNew);
    if (isNew) {
      out.writeUTF(coding.type());
      out.writeInt(coding.tile().width());
      out.writeInt(coding.tile().height());
      out.writeInt(coding.configuration().length);
      out.write(coding.configuration());
    }
    out.writeInt(coded.length);
    for (int at = 0; at < coded.length; at += SLICE) {
      out.write(coded, at, Math.min(SLICE, coded.length - at));
    }
    out.flush();
  }

  private YuvFrame answer(TileCoding coding) throws IOException {
    if (!in.readBoolean()) {
      throw new Refused(in.readUTF());
    }
    PlaneLayout layout =
        new PlaneLayout(
                in.readInt(),
                in.readInt(),
                in.readInt(),
                in.readInt(),
                in.readInt(),
                in.readInt(),
                new Cicp(in.readInt(), in.readInt(), in.readInt(), in.readBoolean()))
            .checked(coding.mostPixels());
    int[] strides = new int[layout.planes()];
    if (planes.length != layout.planes()) {
      planes = new byte[layout.planes()][0];
    }
    for (int i = 0; i < strides.length; i++) {
      strides[i] = in.readInt();
      int padding = strides[i] - layout.rowBytes(i);
      if (padding < 0 || padding > MOST_PADDING) {
        throw new IOException("rows of an impossible length");
      }
      read(i, Math.toIntExact(layout.bytes(i, strides[i])));
    }
    return new YuvFrame(layout, planes, strides);
  }

  private void read(int plane, int length) throws IOException {
    if (planes[plane].length < length) {
      planes[plane] = new byte[length];
    }
    for (int at = 0; at < length; at += SLICE) {
      in.readFully(planes[plane], at, Math.min(SLICE, length - at));
    }
  }

  /** Lets go of the memory of the last answer; the process waits for the next picture. */
  void rest() {
    planes = new byte[0][];
    restsSince = System.nanoTime();
  }

  boolean hasRestedFor(Duration time) {
    return System.nanoTime() - restsSince >= time.toNanos();
  }

  static void later(Duration time, Runnable work) {
    CLOCK.schedule(work, time.toMillis() + 1, TimeUnit.MILLISECONDS);
  }

  /** The process is given time to end by itself, and then ended. */
  void end() {
    try {
      process.getOutputStream().close(); // nothing more is asked
      process.waitFor(MOST_SECONDS_TO_END, TimeUnit.SECONDS);
    } catch (IOException e) {
      // it has ended already
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      process.destroyForcibly();
    }
  }
}
