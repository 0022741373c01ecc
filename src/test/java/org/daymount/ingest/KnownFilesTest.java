package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.daymount.cache.Cache;
import org.daymount.cache.Cache.Keep;
import org.daymount.file.Sha256;
import org.daymount.image.PictureHeader;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KnownFilesTest {
  @TempDir Path folder;

  private static final FileFacts FULL =
      new FileFacts(
          new PictureHeader(
              PhotoFormat.HEIF, new PixelSize(4032, 3024), Optional.of(ExifOrientation.RIGHT_TOP)),
          new Tags(
              Optional.of(ExifOrientation.BOTTOM_RIGHT),
              new Tags.DateTag("2026:06:03 10:00:00", null, "+02:00"),
              new Tags.DateTag("", "123", null),
              List.of("2026-06-03T10:00:00", ""),
              Optional.of("a\nb \u00e9 \ud83d\udc15"),
              Optional.of(LocalDateTime.of(2026, 6, 3, 8, 0)),
              Optional.of(LocalDateTime.of(2026, 6, 3, 8, 0, 1, 5)),
              List.of("+02:00"),
              Optional.of(Tags.UNNAMED),
              Optional.of("Screenshot"),
              Optional.of("0123456789abcdef"),
              Optional.of("fedcba9876543210"),
              true),
          "x".repeat(70_000),
          Optional.of(Problem.Kind.CUT_OFF),
          "is cut\noff",
          Optional.of("pale"));

  private static final FileFacts EMPTY =
      new FileFacts(
          new PictureHeader(PhotoFormat.PNG, new PixelSize(1, 1)),
          Tags.NONE,
          "",
          Optional.empty(),
          "",
          Optional.empty());

  private Cache afterARun(Cache cache) throws IOException {
    Path file = folder.resolve(Cache.FILE);
    cache.write(file);
    return Cache.read(List.of(file), "test");
  }

  @Test
  void factsComeBackAsTheyWere() throws IOException {
    for (FileFacts facts : List.of(FULL, EMPTY)) {
      Cache cache = Cache.empty("test");
      cache.put(Keep.MEASURED, "a", facts);
      assertEquals(Optional.of(facts), afterARun(cache).get(Keep.MEASURED, "a", FileFacts.class));
    }
  }

  @Test
  void whatCouldTellOfThePersonIsNotKept() {
    Tags kept = FULL.with(tags("Tarn T4", "tea with the ferryman")).impersonal().tags();
    assertEquals(Optional.of(Tags.UNNAMED), kept.model());
    assertEquals(Optional.empty(), kept.userComment());
    assertEquals(FULL, FULL.impersonal());
  }

  @Test
  void aFileIsReadAgainWhenItsLengthItsTimeOrAByteAnywhereInItHasChanged() throws IOException {
    Path file = folder.resolve("a.png");
    BufferedImage picture = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(picture, "png", file.toFile());
    byte[] content = Files.readAllBytes(file);
    FileTime time = FileTime.fromMillis(1_000_000);
    Files.setLastModifiedTime(file, time);
    String sum = sum(Cache.NONE, file);
    Cache cache = Cache.empty("test");
    assertEquals(sum, sum(cache, file));

    FileFacts told = FULL.with(Tags.NONE);
    String key = content.length + " " + time.toMillis() + " " + QuickHash.of(file);
    cache.put(Keep.MEASURED, key, told); // told apart from what reading the file gives
    assertEquals(told.sha256(), sum(cache, file));
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_001));
    assertEquals(sum, sum(cache, file));
    content[content.length / 2]++; // as in the middle of a picture that is not packed
    Files.write(file, content);
    Files.setLastModifiedTime(file, time);
    assertEquals(Sha256.hex(content), sum(cache, file));
    content = Arrays.copyOf(content, content.length + 1);
    Files.write(file, content);
    Files.setLastModifiedTime(file, time);
    assertEquals(Sha256.hex(content), sum(cache, file));
  }

  private String sum(Cache cache, Path file) {
    return new PhotoReader(Reading.SETTINGS, cache)
        .read(new PhotoFile(folder, "a.png"))
        .photo()
        .orElseThrow()
        .sha256();
  }

  private static Tags tags(String model, String comment) {
    Tags none = Tags.NONE;
    return new Tags(
        none.orientation(),
        none.original(),
        none.digitized(),
        none.xmp(),
        none.pngCreation(),
        none.pngModified(),
        none.gpsUtc(),
        none.offsets(),
        Optional.of(model),
        Optional.of(comment),
        none.burst(),
        none.pair(),
        true);
  }
}
