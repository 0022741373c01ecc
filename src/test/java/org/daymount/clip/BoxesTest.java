package org.daymount.clip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clips written box by box (ISO/IEC 14496-12), sound ones and such as ask for too much. */
class BoxesTest {
  @TempDir Path folder;

  // what a test may change
  private int width = 640;
  private int sampleCount = 30;
  private int fixedSize = 0;
  private int perChunk = 30;
  private int syncCount = 3;
  private long firstOffset = 8;
  private int[] matrix = {1, 0, 0, 1};
  private byte[] extra = {};

  private static byte[] box(String name, byte[]... parts) {
    int length = 8;
    for (byte[] part : parts) {
      length += part.length;
    }
    ByteBuffer box = ByteBuffer.allocate(length).putInt(length);
    box.put(name.getBytes(StandardCharsets.ISO_8859_1));
    for (byte[] part : parts) {
      box.put(part);
    }
    return box.array();
  }

  private static byte[] ints(int... values) {
    ByteBuffer bytes = ByteBuffer.allocate(4 * values.length);
    for (int value : values) {
      bytes.putInt(value);
    }
    return bytes.array();
  }

  private static byte[] zeros(int count) {
    return new byte[count];
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private byte[] movie() {
    int one = 1 << 16;
    byte[] header =
        box(
            "tkhd",
            zeros(40),
            ints(matrix[0] * one, matrix[1] * one, 0, matrix[2] * one, matrix[3] * one, 0, 0, 0),
            ints(1 << 30),
            zeros(8));
    ByteBuffer entry = ByteBuffer.allocate(78);
    entry.putShort(24, (short) width).putShort(26, (short) (width * 9 / 16));
    byte[] sizes = fixedSize == 0 ? ints(0, 0, sampleCount) : ints(0, fixedSize, sampleCount);
    ByteArrayOutputStream each = new ByteArrayOutputStream();
    for (int i = 0; fixedSize == 0 && i < Math.min(sampleCount, 30); i++) {
      each.writeBytes(ints(10 + i));
    }
    byte[] offsets =
        firstOffset <= Integer.MAX_VALUE
            ? box("stco", ints(0, 1, (int) firstOffset))
            : box("co64", ints(0, 1, (int) (firstOffset >> 32), (int) firstOffset));
    byte[] table =
        box(
            "stbl",
            box("stsd", ints(0, 1), box("avc1", entry.array(), box("avcC", ints(1, 2)))),
            box("stts", ints(0, 1, 30, 100)),
            box("stss", ints(0, syncCount, 1, 11, 21)),
            box("stsc", ints(0, 1, 1, perChunk, 1)),
            box("stsz", sizes, each.toByteArray()),
            offsets);
    byte[] media =
        box(
            "mdia",
            box("mdhd", ints(0, 0, 0, 1000, 3000, 0)),
            box("hdlr", ints(0, 0), ascii("vide"), zeros(12)),
            box("minf", table));
    int created = (int) (Instant.parse("2026-06-03T12:25:30Z").getEpochSecond() + 2_082_844_800L);
    return box(
        "moov",
        box("mvhd", ints(0, created, created, 1000, 3000), zeros(80)),
        box("trak", header, media),
        extra);
  }

  private Path file(byte[]... parts) throws IOException {
    Path file = folder.resolve("clip.mp4");
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    Files.write(file, all.toByteArray());
    return file;
  }

  private static Clip read(Path file) throws IOException {
    try (ClipFile opened = ClipFile.open(file)) {
      return opened.clip();
    }
  }

  private UnusablePicture refused() {
    return assertThrows(UnusablePicture.class, () -> read(file(box("mdat", zeros(800)), movie())));
  }

  @Test
  void keyFramesLieWhereTheTablesSay() throws IOException {
    Clip clip = read(file(box("mdat", zeros(800)), movie()));
    assertEquals(
        List.of(
            new KeyFrame(Duration.ZERO, 8, 10),
            new KeyFrame(Duration.ofSeconds(1), 8 + 145, 20),
            new KeyFrame(Duration.ofSeconds(2), 8 + 390, 30)),
        clip.keyFrames());
    assertEquals(new PixelSize(640, 360), clip.shown());
    assertEquals(Duration.ofSeconds(3), clip.length());
    assertEquals(Optional.of(Instant.parse("2026-06-03T12:25:30Z")), clip.dates().created());
  }

  @Test
  void theMatrixIsTheOrientation() throws IOException {
    matrix = new int[] {0, 1, -1, 0}; // 8.3.2: a quarter turn clockwise
    Clip clip = read(file(box("mdat", zeros(800)), movie()));
    assertEquals(ExifOrientation.RIGHT_TOP, clip.orientation());
  }

  /** As in QuickTime File Format, Metadata Atoms; in user data as a list of values has it. */
  @Test
  void creationDateAndContentIdentifierAreReadByTheirKeys() throws IOException {
    String dateKey = "com.apple.quicktime.creationdate";
    String pairKey = "com.apple.quicktime.content.identifier";
    extra =
        box(
            "meta",
            box("hdlr", zeros(8), ascii("mdta"), zeros(13)),
            box(
                "keys",
                ints(0, 2, 8 + dateKey.length()),
                ascii("mdta" + dateKey),
                ints(8 + pairKey.length()),
                ascii("mdta" + pairKey)),
            box(
                "ilst",
                box("\0\0\0\1", box("data", ints(1, 0), ascii("2026-06-03T14:25:30+0200"))),
                box("\0\0\0\2", box("data", ints(1, 0), ascii("A-PAIR")))));
    Clip clip = read(file(box("mdat", zeros(800)), movie()));
    assertEquals(Optional.of("2026-06-03T14:25:30+0200"), clip.dates().quickTime());
    assertEquals(Optional.of("A-PAIR"), clip.contentIdentifier());
  }

  @Test
  void userDataTellsTheDayToo() throws IOException {
    extra =
        box("udta", box("\u00a9day", new byte[] {0, 24, 0, 0}, ascii("2026-06-03T14:25:30+0200")));
    Clip clip = read(file(box("mdat", zeros(800)), movie()));
    assertEquals(Optional.of("2026-06-03T14:25:30+0200"), clip.dates().userData());
  }

  @Test
  void countsBeyondTheirBoxCostNothing() throws IOException {
    perChunk = -1; // four thousand million in a chunk
    syncCount = -1;
    assertEquals(3, read(file(box("mdat", zeros(800)), movie())).keyFrames().size());
    sampleCount = -1;
    assertTrue(refused().getMessage().contains("more pictures than a clip has"));
    fixedSize = 1;
    assertTrue(refused().getMessage().contains("more pictures than a clip has"));
  }

  @Test
  void framesOfSixtyThousandPixelsAcrossAreRefusedAtOnce() {
    width = 60_000;
    assertEquals(Problem.Kind.TOO_LARGE, refused().kind());
  }

  @Test
  void aTableShorterThanItSaysIsNamed() {
    sampleCount = 1000;
    perChunk = 1000;
    assertEquals(Problem.Kind.UNREADABLE, refused().kind());
  }

  @Test
  void aDescriptionOfImpossibleLengthIsRefusedUnread() throws IOException {
    byte[] claim = ints(0x7fffffff);
    byte[] name = ascii("moov");
    assertThrows(UnusablePicture.class, () -> read(file(claim, name, zeros(100))));
  }

  /** A sparse file: only its ends are ever read. */
  @Test
  void ofFiveGigabytesOnlyTheDescriptionIsRead() throws IOException {
    long length = 5_000_000_000L;
    firstOffset = 4_999_999_000L;
    Path file = folder.resolve("long.mp4");
    try (RandomAccessFile big = new RandomAccessFile(file.toFile(), "rw")) {
      big.writeInt(1);
      big.write(ascii("mdat"));
      big.writeLong(length);
      big.seek(length);
      big.write(movie());
    }
    long before = bytesRead();
    Clip clip = read(file);
    long read = bytesRead() - before;
    assertTrue(read < 50_000_000, "read " + read); // other tests read at the same time
    assertEquals(3, clip.keyFrames().size());
    assertEquals(firstOffset, clip.keyFrames().get(0).from());
  }

  /** By this process so far, as Linux counts them; 0 on other systems. */
  private static long bytesRead() throws IOException {
    Path counts = Path.of("/proc/self/io");
    return Files.exists(counts)
        ? Long.parseLong(Files.readAllLines(counts).get(0).replace("rchar: ", ""))
        : 0;
  }

  @Test
  void manyKeyFramesAreSpreadEvenlyFromTheFirstToTheLast() throws IOException {
    Clip clip = read(file(box("mdat", zeros(800)), movie()));
    assertEquals(3, clip.spread(40).size());
    assertEquals(List.of(clip.keyFrames().get(0), clip.keyFrames().get(2)), clip.spread(2));
  }
}
