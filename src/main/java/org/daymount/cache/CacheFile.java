package org.daymount.cache;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.CRC32C;
import java.util.zip.CheckedInputStream;
import java.util.zip.CheckedOutputStream;
import org.daymount.file.WholeFile;

/**
 * A file of keys and values: a heading, who made it, how many there are, each as its length and its
 * bytes, and a checksum over everything. It is read as a whole and replaced as a whole, so a run
 * that reads while another writes sees the old file or the new one.
 *
 * <p>A month of 1,000 photos takes 9 MB and is read in some 30 ms; a database would bring megabytes
 * of native code for nothing that is missed here.
 */
final class CacheFile {
  private static final String HEADING = "daymount measurements, may be deleted\n";
  private static final int LONGEST_KEY = 1 << 10;
  private static final int LONGEST_VALUE = 1 << 24;

  private CacheFile() {}

  /** What a file holds, or why nothing of it can be used. */
  record Read(Map<String, byte[]> values, Optional<String> useless) {}

  /**
   * @param maker a file made by another one is as good as none: it may have measured differently
   */
  static Read read(Path file, String maker) {
    if (!Files.isRegularFile(file)) {
      return new Read(Map.of(), Optional.empty());
    }
    CRC32C sum = new CRC32C();
    try (DataInputStream in =
        new DataInputStream(
            new CheckedInputStream(
                new BufferedInputStream(Files.newInputStream(file), 1 << 16), sum))) {
      String heading = new String(in.readNBytes(HEADING.length()), StandardCharsets.US_ASCII);
      if (!heading.equals(HEADING)) {
        return damaged("it does not begin as it should");
      }
      if (!new String(bytes(in, LONGEST_KEY), StandardCharsets.UTF_8).equals(maker)) {
        return new Read(
            Map.of(), Optional.of("it holds what another build of the program measured"));
      }
      Map<String, byte[]> values = new TreeMap<>();
      int count = in.readInt();
      for (int i = 0; i < count; i++) {
        String key = new String(bytes(in, LONGEST_KEY), StandardCharsets.UTF_8);
        values.put(key, bytes(in, LONGEST_VALUE));
      }
      long expected = sum.getValue();
      return in.readLong() == expected && in.read() < 0
          ? new Read(values, Optional.empty())
          : damaged("its checksum is wrong");
    } catch (IOException e) {
      return damaged("it ends too early or cannot be read");
    }
  }

  private static Read damaged(String why) {
    return new Read(Map.of(), Optional.of(why));
  }

  private static byte[] bytes(DataInputStream in, int most) throws IOException {
    int length = in.readInt();
    if (length < 0 || length > most) {
      throw new IOException("a length that cannot be");
    }
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new IOException("the file ends");
    }
    return bytes;
  }

  /** Replaces the file; the same values give the same bytes. */
  static void write(Path file, String maker, Map<String, byte[]> values) throws IOException {
    Path part = WholeFile.part(file);
    try {
      CRC32C sum = new CRC32C();
      try (OutputStream raw = new BufferedOutputStream(Files.newOutputStream(part), 1 << 16);
          DataOutputStream out = new DataOutputStream(new CheckedOutputStream(raw, sum))) {
        out.write(HEADING.getBytes(StandardCharsets.US_ASCII));
        put(out, maker.getBytes(StandardCharsets.UTF_8));
        out.writeInt(values.size());
        for (Map.Entry<String, byte[]> value : new TreeMap<>(values).entrySet()) {
          put(out, value.getKey().getBytes(StandardCharsets.UTF_8));
          put(out, value.getValue());
        }
        out.writeLong(sum.getValue());
      }
      WholeFile.replace(part, file);
    } catch (IOException e) {
      Files.deleteIfExists(part); // not after the move: the name may be another run's by then
      throw e;
    }
  }

  private static void put(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }
}
