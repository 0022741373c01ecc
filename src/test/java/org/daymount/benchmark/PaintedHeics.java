package org.daymount.benchmark;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A few HEIC photos of 12 megapixels beside a painted month, one for twenty of its photos. One
 * picture is coded with {@code heif-enc} (libheif) and kept; the files differ in their dates, and
 * in length by a {@code free} box (ISO/IEC 14496-12, 8.1.2). It is coded in one piece, where a
 * phone codes tiles.
 */
final class PaintedHeics {
  private static final int ONE_IN = 20;
  private static final int SCENE = 2;
  private static final LocalDateTime CODED_DATE = LocalDateTime.of(2026, 6, 1, 0, 0);

  private PaintedHeics() {}

  /**
   * Makes what is not there yet, beside the folder the one that is coded.
   *
   * @param photos how many others the month has
   * @return nothing, and says so, when {@code heif-enc} is not installed
   */
  static List<Path> make(Path folder, int photos) throws IOException, InterruptedException {
    Path coded = folder.resolveSibling("scene.heic");
    if (!Files.exists(coded) && !MeasuredProcess.isInstalled("heif-enc")) {
      System.out.println("left out: HEIC, because heif-enc is not installed");
      return List.of();
    }
    Files.createDirectories(folder);
    if (!Files.exists(coded)) {
      code(coded);
    }
    byte[] heic = Files.readAllBytes(coded);
    int date = indexOf(heic, date(CODED_DATE));
    int count = Math.max(1, photos / ONE_IN);
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Path file = folder.resolve(String.format("photo-%05d.heic", i));
      files.add(file);
      byte[] taken = date(PaintedMonth.taken(i, count));
      System.arraycopy(taken, 0, heic, date, taken.length);
      int spare = i;
      PaintedMonth.writeIfMissing(file, out -> write(out, heic, spare));
    }
    return files;
  }

  private static void code(Path coded) throws IOException, InterruptedException {
    Path jpeg = coded.resolveSibling("scene.jpg");
    Path unfinished = coded.resolveSibling("unfinished.heic");
    PaintedMonth.writePlain(jpeg, SCENE, CODED_DATE);
    Process encoder =
        new ProcessBuilder(
                "heif-enc",
                "-q",
                "60",
                "-p",
                "preset=veryfast",
                "-o",
                unfinished.toString(),
                jpeg.toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (encoder.waitFor() != 0) {
      throw new IOException("heif-enc could not code " + jpeg);
    }
    Files.move(unfinished, coded, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void write(OutputStream out, byte[] heic, int spare) throws IOException {
    out.write(heic);
    out.write(
        ByteBuffer.allocate(8 + spare)
            .putInt(8 + spare)
            .put("free".getBytes(StandardCharsets.US_ASCII))
            .array());
  }

  private static byte[] date(LocalDateTime taken) {
    return PaintedMonth.EXIF.format(taken).getBytes(StandardCharsets.US_ASCII);
  }

  private static int indexOf(byte[] bytes, byte[] wanted) throws IOException {
    for (int i = 0; i + wanted.length <= bytes.length; i++) {
      if (Arrays.equals(bytes, i, i + wanted.length, wanted, 0, wanted.length)) {
        return i;
      }
    }
    throw new IOException("heif-enc has not kept the date");
  }
}
