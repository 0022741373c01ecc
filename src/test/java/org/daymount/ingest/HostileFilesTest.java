package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.DeflaterOutputStream;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.PngPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are broken, cut, random or made to harm: each is used or named, never a crash. */
@Tag("slow")
class HostileFilesTest {
  @TempDir Path folder;

  private static byte[] phonePhoto() {
    return ExifPhoto.painted()
        .orientation(6)
        .make("Tarn")
        .model("Tarn T4")
        .original("2026:06:03 14:25:30")
        .offset("+02:00")
        .subSeconds("007")
        .userComment("a walk")
        .gpsTime("2026:06:03", 12, 25, 30)
        .gpsPlace(new int[] {54, 1, 2}, new int[] {8, 3, 4})
        .thumbnail(ExifPhoto.plain(16, 12))
        .xmp("xmp:CreateDate=\"2026-06-03T14:25:30\"")
        .bytes();
  }

  private void eachIsUsedOrNamed(int files) {
    Ingested ingested = Reading.all(folder);
    long unusable = ingested.problems().stream().filter(p -> p.kind().isUnusable()).count();
    assertEquals(files, ingested.photos().size() + unusable, ingested.problems().toString());
  }

  @Test
  void everyTruncationOfAPhotoIsNamedAndNeverThrows() throws IOException {
    byte[] whole = phonePhoto();
    int files = 0;
    for (int length = 0; length < whole.length; length += 1 + length / 60) {
      Files.write(folder.resolve(length + ".jpg"), Arrays.copyOf(whole, length));
      files++;
    }
    Ingested ingested = Reading.all(folder);
    assertEquals(0, ingested.photos().size());
    assertEquals(files, ingested.problems().size());
    assertTrue(
        ingested.problems().stream()
            .filter(p -> p.kind() != Problem.Kind.CUT_OFF)
            .allMatch(p -> Integer.parseInt(p.file().name().replace(".jpg", "")) < 3),
        ingested.problems().toString());
  }

  @Test
  void flippedBytesNeverThrow() throws IOException {
    byte[][] seeds = {
      phonePhoto(),
      PngPhoto.painted()
          .exif(ExifPhoto.painted().original("2026:06:03 14:25:30").exifBlock())
          .xmp("xmp:CreateDate=\"2026-06-03T14:25:30\"")
          .text("Creation Time", "2026-06-03T14:25:30")
          .bytes(),
      ExifPhoto.painted().original("2026:06:03 14:25:30").size(1, 1).exifBlock()
    };
    Random random = new Random(20260603);
    for (int i = 0; i < 600; i++) {
      byte[] bytes = seeds[i % seeds.length].clone();
      for (int flips = 1 + random.nextInt(12); flips > 0; flips--) {
        int at = random.nextInt(Math.min(bytes.length, random.nextBoolean() ? 700 : bytes.length));
        bytes[at] = (byte) (random.nextBoolean() ? random.nextInt(256) : 0xff);
      }
      Files.write(folder.resolve(i + ".jpg"), bytes);
    }
    Ingested ingested = Reading.all(folder);
    int named = ingested.problems().size();
    assertEquals(600, ingested.photos().size() + named, "each file is used or named");
  }

  @Test
  void randomBytesWithAPicturesNameAreNamed() throws IOException {
    Random random = new Random(3);
    String[] starts = {
      "",
      "\u00ff\u00d8\u00ff",
      "\u0089PNG\r\n\u001a\n",
      "RIFF....WEBPVP8 ",
      "II*\0\b\0\0\0",
      "MM\0*\0\0\0\b",
      "GIF89a",
      "BM",
      "....ftypheic",
      "....ftypavif",
      "II+\0\b\0\0\0"
    };
    for (int i = 0; i < 220; i++) {
      byte[] bytes = new byte[random.nextInt(3000)];
      random.nextBytes(bytes);
      byte[] start = starts[i % starts.length].getBytes(StandardCharsets.ISO_8859_1);
      System.arraycopy(start, 0, bytes, 0, Math.min(start.length, bytes.length));
      Files.write(folder.resolve(i + ".jpg"), bytes);
    }
    eachIsUsedOrNamed(220);
  }

  @Test
  void aTextOfAMegabyteInTheTagsIsSurvived() throws IOException {
    // a JPEG segment ends at 64 KiB; a PNG chunk does not
    byte[] exif =
        ExifPhoto.painted()
            .original("2026:06:03 14:25:30")
            .model("T".repeat(1_000_000))
            .text(0x013b, "a".repeat(1_000_000))
            .exifBlock();
    Path file = PngPhoto.painted().exif(exif).write(folder.resolve("a.png"));
    assertEquals(TakenFrom.ORIGINAL, Reading.one(file).taken().from());
    assertTrue(Reading.one(file).model().orElseThrow().length() <= 200);
    byte[] date = ExifPhoto.painted().original("2".repeat(1_000_000)).exifBlock();
    Path other = PngPhoto.painted().exif(date).write(folder.resolve("b.png"));
    assertFalse(Reading.one(other).taken().from().isTrusted());
  }

  @Test
  void aTextThatUnpacksToAHundredMegabytesTakesNoMemory() throws IOException {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    bomb.writeBytes("Creation Time\0\0".getBytes(StandardCharsets.ISO_8859_1));
    try (DeflaterOutputStream out = new DeflaterOutputStream(bomb)) {
      byte[] zeros = new byte[1 << 20];
      for (int i = 0; i < 100; i++) {
        out.write(zeros);
      }
    }
    PngPhoto png = PngPhoto.painted();
    for (int i = 0; i < 20; i++) {
      png.chunk("zTXt", bomb.toByteArray());
    }
    Path file = png.write(folder.resolve("a.png"));
    assertFalse(Reading.one(file).taken().from().isTrusted());
  }

  @Test
  void aHeaderOfSixtyThousandSquaredIsRefusedAtOnce() throws IOException {
    byte[] png = PngPhoto.painted().bytes();
    ByteBuffer.wrap(png).putInt(16, 60_000).putInt(20, 60_000);
    Files.write(folder.resolve("a.png"), png);
    Ingested ingested = Reading.all(folder);
    assertEquals(Problem.Kind.TOO_LARGE, ingested.problems().get(0).kind());
    assertEquals(60_000, ingested.unusable().get(0).size().width());
  }
}
