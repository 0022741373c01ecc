package org.daymount.image;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.util.concurrent.TimeUnit;

/**
 * Decodes as {@link TileServer} does, until it is given a tile of a length that it was told of:
 * then the process is ended by a signal, as by a fault of its native code.
 */
public final class DeadlyTileServer extends TileServer {
  static final String LENGTH = "deadly.length";
  static final String SIGNAL = "deadly.signal";

  private DeadlyTileServer() {
    super(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out));
  }

  /** Takes no arguments. */
  public static void main(String[] arguments) {
    new DeadlyTileServer().run();
  }

  @Override
  void beforeDecoding(byte[] coded) {
    if (coded.length != Integer.getInteger(LENGTH)) {
      return;
    }
    try {
      new ProcessBuilder(
              "kill", "-" + System.getProperty(SIGNAL), "" + ProcessHandle.current().pid())
          .start();
      TimeUnit.MINUTES.sleep(10);
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
