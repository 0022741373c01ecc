package org.daymount.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.daymount.testphoto.PngPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Small files that unpack to very large ones, each read in a Java of 512 MB as a run reads it: used
 * or named within ten seconds of processor time, and in bounded memory.
 */
@Tag("slow")
class BombsTest {
  private static final long MOST_MILLIS = 10_000;
  private static final long MOST_KB = 700_000;
  private static final int MEGABYTE = 1 << 20;

  @TempDir Path folder;

  private record Outcome(String word, long millis, String reason) {}

  private Map<String, Outcome> read(List<Path> files) throws IOException {
    Process process =
        new ProcessBuilder(FuzzWorker.command(files)).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    for (String line : said.lines().toList()) {
      String[] words = line.split(" ", 4);
      if (List.of("used", "named", "left").contains(words[0])) {
        outcomes.put(words[1], new Outcome(words[0], Long.parseLong(words[2]), words[3]));
      } else if (words[0].equals("memory")) {
        assertTrue(Long.parseLong(words[1]) <= MOST_KB, line);
      }
    }
    assertEquals(files.size(), outcomes.size(), said);
    outcomes.forEach((name, outcome) -> assertTrue(outcome.millis <= MOST_MILLIS, name + outcome));
    return outcomes;
  }

  private static byte[] zeros(String before, int megabytes) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(before.getBytes(StandardCharsets.ISO_8859_1));
    try (DeflaterOutputStream out =
        new DeflaterOutputStream(bytes, new Deflater(Deflater.BEST_COMPRESSION))) {
      for (int i = 0; i < megabytes; i++) {
        out.write(new byte[MEGABYTE]);
      }
    }
    return bytes.toByteArray();
  }

  @Test
  void chunksOfAPngThatUnpackToHundredsOfMegabytesDoNoHarm() throws IOException {
    Path profile =
        PngPhoto.painted().chunk("iCCP", zeros("p\0\0", 100)).write(folder.resolve("iccp.png"));
    Path packet =
        PngPhoto.painted()
            .chunk("iTXt", zeros("XML:com.adobe.xmp\0\1\0\0\0", 100))
            .write(folder.resolve("itxt.png"));
    PngPhoto manyTexts = PngPhoto.painted();
    byte[] text = zeros("Comment\0\0", 1);
    for (int i = 0; i < 2_000; i++) {
      manyTexts.chunk("zTXt", text);
    }
    Path texts = manyTexts.write(folder.resolve("ztxt.png"));
    Map<String, Outcome> outcomes = read(List.of(profile, packet, texts));
    outcomes.forEach((name, outcome) -> assertEquals("used", outcome.word, name + outcome));
  }

  /** Pixels: 100 MB behind the header of a small picture, and a plain one of 30 megapixels. */
  @Test
  void pixelsOfAPngThatUnpackToHundredsOfMegabytesDoNoHarm() throws IOException {
    Path behind = Files.write(folder.resolve("behind.png"), png(64, 48, zeros("", 100)));
    Path large = Files.write(folder.resolve("large.png"), png(6_000, 5_000, zeros("", 86)));
    Map<String, Outcome> outcomes = read(List.of(behind, large));
    assertEquals("used", outcomes.get("large.png").word, outcomes.toString());
  }

  /** Width and height in 8-bit colour, and one IDAT chunk (W3C PNG, 11.2). */
  private static byte[] png(int width, int height, byte[] pixels) {
    ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
    header.put((byte) 8).put((byte) 2);
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1));
    chunk(file, "IHDR", header.array());
    chunk(file, "IDAT", pixels);
    chunk(file, "IEND", new byte[0]);
    return file.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream file, String name, byte[] content) {
    byte[] named =
        ByteBuffer.allocate(4 + content.length)
            .put(name.getBytes(StandardCharsets.US_ASCII))
            .put(content)
            .array();
    java.util.zip.CRC32 check = new java.util.zip.CRC32();
    check.update(named);
    file.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    file.writeBytes(named);
    file.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
  }

  /** RFC 9649, 3: five codes of one symbol each, so that every pixel takes no bit at all. */
  @Test
  void aWebpOfFortyBytesAndTwoHundredMegapixelsDoesNoHarm() throws IOException {
    Path small = Files.write(folder.resolve("small.webp"), webp(3000, 2000));
    Path large = Files.write(folder.resolve("large.webp"), webp(16_000, 15_000));
    Map<String, Outcome> outcomes = read(List.of(small, large));
    assertEquals("used", outcomes.get("small.webp").word, outcomes.toString());
    assertEquals("named", outcomes.get("large.webp").word, outcomes.toString());
    assertTrue(outcomes.get("large.webp").reason.contains("memory"), outcomes.toString());
  }

  private static byte[] webp(int width, int height) {
    long bits = 0;
    int at = 3; // no transform, no colour cache, no other codes
    for (int i = 0; i < 5; i++) {
      bits |= 1L << at; // a simple code
      at += 2; // of one symbol
      at += 2; // that has one bit: 0
    }
    ByteBuffer file = ByteBuffer.allocate(20 + 16).order(ByteOrder.LITTLE_ENDIAN);
    file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(28);
    file.put("WEBPVP8L".getBytes(StandardCharsets.US_ASCII)).putInt(16);
    file.put((byte) 0x2f).putInt(width - 1 | height - 1 << 14).putLong(bits);
    return file.array();
  }
}
