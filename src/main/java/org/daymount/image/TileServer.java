package org.daymount.image;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.WritableByteChannel;
import org.daymount.unit.PixelSize;

/**
 * The process that decodes tiles for {@link TileProcess}: on its input come coded tiles, on its
 * output go samples. It opens no file but its own libraries, and ends with its input, or when
 * nobody has asked for a while, or when a tile takes too long.
 */
public class TileServer {
  /** The launcher's hidden command that serves. */
  public static final String COMMAND = "read-tiles";

  static final int GREETING = 0x54696c65;

  private static final long MOST_SECONDS = 120; // at one tile, or without any
  private static final int MOST_CODED_BYTES = 1 << 28;
  private static final int MOST_CONFIGURATION = 1 << 20;

  private final DataInputStream in;
  private final WritableByteChannel out;
  private volatile long lastMoved = System.nanoTime();
  private TileDecoder decoder;

  TileServer(FileInputStream in, FileOutputStream out) {
    this.in = new DataInputStream(new BufferedInputStream(in, 1 << 16));
    this.out = out.getChannel();
  }

  /** Takes no arguments; started by {@link TileProcess} alone. */
  public static void main(String[] arguments) {
    serve();
  }

  /** On the standard streams, until the input ends. */
  public static void serve() {
    System.setOut(System.err); // whoever prints must not be taken for an answer
    new TileServer(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out))
        .run();
  }

  /** Answers until nobody asks any more. */
  final void run() {
    endWhenForgotten();
    try {
      greet();
      while (true) {
        answer();
        lastMoved = System.nanoTime();
      }
    } catch (IOException e) {
      // whoever asked is gone
    }
  }

  private void endWhenForgotten() {
    Thread watch =
        new Thread(
            () -> {
              try {
                while (System.nanoTime() - lastMoved < MOST_SECONDS * 1_000_000_000L) {
                  Thread.sleep(1000);
                }
              } catch (InterruptedException e) {
                // nobody does that
              }
              Runtime.getRuntime().halt(1);
            },
            "watch");
    watch.setDaemon(true);
    watch.start();
  }

  private void greet() throws IOException {
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(head);
    data.writeInt(GREETING);
    data.writeBoolean(TileDecoder.isAvailable());
    send(ByteBuffer.wrap(head.toByteArray()));
  }

  private void answer() throws IOException {
    TileCoding coding = in.readBoolean() ? coding() : null;
    byte[] coded = in.readNBytes(checked(in.readInt(), MOST_CODED_BYTES));
    lastMoved = System.nanoTime();
    DecodedFrame frame;
    try {
      frame = decoded(coding, coded);
    } catch (IOException e) {
      refuse(e.getMessage());
      return;
    } catch (OutOfMemoryError e) {
      refuse("its tiles need more memory than there is");
      return;
    }
    send(frame);
  }

  private TileCoding coding() throws IOException {
    String type = in.readUTF();
    PixelSize tile = new PixelSize(in.readInt(), in.readInt());
    byte[] configuration = in.readNBytes(checked(in.readInt(), MOST_CONFIGURATION));
    return new TileCoding(type, configuration, tile);
  }

  private static int checked(int length, int most) throws IOException {
    if (length < 0 || length > most) {
      throw new EOFException("out of step");
    }
    return length;
  }

  /**
   * @param coding null when it is as before
   */
  private DecodedFrame decoded(TileCoding coding, byte[] coded) throws IOException {
    if (coding != null && decoder != null) {
      decoder.close();
      decoder = null;
    }
    if (coding != null) {
      decoder = new TileDecoder(coding);
    }
    if (decoder == null) {
      throw new IOException("no decoder was started for it");
    }
    beforeDecoding(coded);
    return decoder.decode(coded);
  }

  /** For tests, which end the process here. */
  void beforeDecoding(byte[] coded) {}

  private void refuse(String message) throws IOException {
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(head);
    data.writeBoolean(false);
    data.writeUTF(message);
    send(ByteBuffer.wrap(head.toByteArray()));
  }

  private void send(DecodedFrame frame) throws IOException {
    PlaneLayout layout = frame.layout();
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(head);
    data.writeBoolean(true);
    data.writeInt(layout.width());
    data.writeInt(layout.height());
    data.writeInt(layout.planes());
    data.writeInt(layout.bits());
    data.writeInt(layout.chromaAcross());
    data.writeInt(layout.chromaDown());
    data.writeInt(layout.colour().primaries());
    data.writeInt(layout.colour().transfer());
    data.writeInt(layout.colour().matrix());
    data.writeBoolean(layout.colour().fullRange());
    for (int i = 0; i < layout.planes(); i++) {
      data.writeInt(frame.stride(i));
      send(ByteBuffer.wrap(head.toByteArray()));
      head.reset();
      send(frame.plane(i)); // from where the decoder left it
    }
  }

  private void send(ByteBuffer bytes) throws IOException {
    while (bytes.hasRemaining()) {
      out.write(bytes);
      lastMoved = System.nanoTime();
    }
  }
}
