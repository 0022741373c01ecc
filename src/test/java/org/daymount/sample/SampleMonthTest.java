package org.daymount.sample;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The painted month: what is committed is what the scenario says, and painting is repeatable. */
@Tag("slow")
class SampleMonthTest {
  private static final Path FOLDER = Path.of("sample-photos");
  private static final long MOST_BYTES = 25L << 20;
  private static final long MOST_BYTES_OF_ONE = 2L << 20;

  @Test
  void theFolderHoldsEveryPictureOfTheScenarioAndNoOther() throws IOException {
    Set<String> listed =
        SampleFile.all().stream()
            .map(SampleFile::name)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> found;
    try (Stream<Path> files = Files.list(FOLDER)) {
      found =
          files
              .map(f -> f.getFileName().toString())
              .filter(n -> !n.equals("README.md") && !n.equals("note.txt"))
              .collect(Collectors.toCollection(TreeSet::new));
    }
    assertEquals(listed, found);
    assertEquals(SampleFile.all().size(), listed.size(), "a name is used twice");
  }

  @Test
  void noPictureIsHugeAndAllTogetherAreAtMostTwentyFiveMegabytes() throws IOException {
    long total = 0;
    for (SampleFile file : SampleFile.all()) {
      long size = Files.size(FOLDER.resolve(file.name()));
      assertTrue(size > 4000 && size < MOST_BYTES_OF_ONE, file.name() + " has " + size + " bytes");
      total += size;
    }
    assertTrue(total <= MOST_BYTES, "all pictures together have " + total + " bytes");
  }

  @Test
  void paintingAPictureTwiceGivesTheSameBytes() throws IOException {
    for (String name : List.of("OR9_0478.JPG", Screenshot.NAME)) {
      SampleFile file =
          SampleFile.all().stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
      assertArrayEquals(file.paint(), file.paint(), name);
    }
  }

  @Test
  void aFaceTracedTwiceOnSeveralThreadsGivesTheSamePixels() {
    Shot portrait =
        Scenario.shots().stream()
            .filter(s -> s.name().equals("20260605_101120.jpg"))
            .findFirst()
            .orElseThrow();
    assertArrayEquals(pixels(Studio.take(portrait, .06)), pixels(Studio.take(portrait, .06)));
  }

  @Test
  void everyExifOrientationOccurs() {
    Set<Integer> used =
        Scenario.shots().stream()
            .map(Shot::orientation)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(1, 2, 3, 4, 5, 6, 7, 8), used);
  }

  /** Where stored row 0 and column 0 are seen upright: CIPA DC-008, 4.6.4 A, tag 274. */
  @Test
  void storedPixelsLieAsTheOrientationTagSays() {
    BufferedImage upright = new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 6; i++) {
      upright.setRGB(i % 3, i / 3, i + 1);
    }
    // upright is 1 2 3 / 4 5 6; stored row by row
    int[][] expected = {
      {1, 2, 3, 4, 5, 6}, // 1: row 0 top, column 0 left
      {3, 2, 1, 6, 5, 4}, // 2: top, right
      {6, 5, 4, 3, 2, 1}, // 3: bottom, right
      {4, 5, 6, 1, 2, 3}, // 4: bottom, left
      {1, 4, 2, 5, 3, 6}, // 5: left, top
      {3, 6, 2, 5, 1, 4}, // 6: row 0 right, column 0 top
      {6, 3, 5, 2, 4, 1}, // 7: right, bottom
      {4, 1, 5, 2, 6, 3}, // 8: left, bottom
    };
    for (int exif = 1; exif <= 8; exif++) {
      int[] stored = pixels(Jpeg.stored(upright, exif));
      for (int i = 0; i < 6; i++) {
        assertEquals(
            expected[exif - 1][i], stored[i] & 0xffffff, "orientation " + exif + " at " + i);
      }
    }
  }

  @Test
  void theNinthAndTheTwentyFirstAreEmptyAndTheThirteenthHasOnlyLandscapes() {
    for (Shot shot : Scenario.shots()) {
      assertFalse(shot.clock().startsWith("2026-06-09"), shot.name());
      assertFalse(shot.clock().startsWith("2026-06-21"), shot.name());
      if (shot.clock().startsWith("2026-06-13")) {
        assertFalse(shot.isTall(), shot.name());
      }
      if (shot.clock().startsWith("2026-06-05")) {
        assertTrue(shot.isTall(), shot.name());
      }
    }
  }

  @Test
  void theCommittedCutOffFileHasNoEndMarkerAndTheOthersHave() throws IOException {
    for (SampleFile file : SampleFile.all()) {
      if (file.name().toLowerCase(java.util.Locale.ROOT).endsWith(".jpg")) {
        byte[] bytes = Files.readAllBytes(FOLDER.resolve(file.name()));
        boolean ends =
            (bytes[bytes.length - 2] & 255) == 0xff && (bytes[bytes.length - 1] & 255) == 0xd9;
        assertEquals(!file.name().equals(SampleFile.CUT_OFF), ends, file.name());
      }
    }
  }

  @Test
  void theCommittedChatCopyHasNoExifAndIsSmallerThanItsOriginal() throws IOException {
    byte[] copy = Files.readAllBytes(FOLDER.resolve(SampleFile.CHAT_COPY));
    byte[] original = Files.readAllBytes(FOLDER.resolve(SampleFile.CHAT_ORIGINAL));
    assertFalse(new String(copy, StandardCharsets.ISO_8859_1).contains("Exif\0\0"));
    assertTrue(new String(original, StandardCharsets.ISO_8859_1).contains("Exif\0\0"));
    BufferedImage small = ImageIO.read(new ByteArrayInputStream(copy));
    BufferedImage large = ImageIO.read(new ByteArrayInputStream(original));
    assertTrue(small.getWidth() < large.getWidth() && copy.length < original.length);
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}
