package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import javax.imageio.stream.ImageInputStreamImpl;
import org.daymount.file.FileBytes;

/**
 * A BMP as Java's reader wants it: with lengths in its headers that are true, and with the padding
 * of the last row or the mark at the end of the runs, where the file lacks them.
 */
final class BmpInput extends ImageInputStreamImpl {
  private static final int HEADERS = 54;
  private static final int FILE_LENGTH = 2;
  private static final int HEADER_LENGTH = 14;
  private static final int PIXELS_LENGTH = 34;
  private static final byte[] END_OF_RUNS = {0, 1};

  private final RandomAccessFile file;
  private final byte[] head;
  private final long real;
  private final byte[] behind;

  BmpInput(Path path) throws IOException {
    try (FileBytes bytes = FileBytes.open(path)) {
      BmpPixels pixels = BmpPixels.read(bytes);
      real = bytes.size();
      if (!pixels.areAllThere()) {
        throw new EOFException("rows are missing");
      }
      behind = pixels.areRuns() ? END_OF_RUNS : padding(pixels);
      head = bytes.copy(0, (int) Math.min(HEADERS, real));
      correct(pixels);
    }
    file = new RandomAccessFile(path.toFile(), "r");
  }

  private static byte[] padding(BmpPixels pixels) {
    long lacking = pixels.from() + pixels.length() - pixels.size();
    return new byte[(int) Math.max(0, Math.min(3, lacking))];
  }

  private void correct(BmpPixels pixels) {
    ByteBuffer header = ByteBuffer.wrap(head).order(ByteOrder.LITTLE_ENDIAN);
    header.putInt(FILE_LENGTH, (int) (real + behind.length));
    if (header.getInt(HEADER_LENGTH) > BmpPixels.OLDEST_HEADER && head.length == HEADERS) {
      header.putInt(PIXELS_LENGTH, (int) (pixels.length() + (pixels.areRuns() ? 2 : 0)));
    }
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws IOException {
    bitOffset = 0;
    if (length == 0) {
      return 0;
    }
    int count;
    if (streamPos < head.length) {
      count = copied(head, (int) streamPos, into, offset, length);
    } else if (streamPos < real) {
      file.seek(streamPos);
      count = file.read(into, offset, length);
    } else if (streamPos < real + behind.length) {
      count = copied(behind, (int) (streamPos - real), into, offset, length);
    } else {
      count = -1;
    }
    streamPos += Math.max(0, count);
    return count;
  }

  private static int copied(byte[] from, int at, byte[] into, int offset, int length) {
    int count = Math.min(length, from.length - at);
    System.arraycopy(from, at, into, offset, count);
    return count;
  }

  @Override
  public long length() {
    return real + behind.length;
  }

  @Override
  public void close() throws IOException {
    super.close();
    file.close();
  }
}
