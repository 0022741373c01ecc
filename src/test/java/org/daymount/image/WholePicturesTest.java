package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick way to a whole picture against the thorough one. */
@Tag("slow")
class WholePicturesTest {
  private static final int WIDTH = 1613; // no multiple of 2, 4 or 8
  private static final int HEIGHT = 1207;
  private static final double NEARLY_THE_SAME = 1.5; // levels, mean over all pixels

  @TempDir Path folder;

  private final Pictures pictures = new Pictures();

  @ParameterizedTest
  @ValueSource(ints = {150, 201, 300, 403, 700, 806})
  void aPictureReadAtAFractionIsNearlyTheOneReadInFull(int longEdge) throws IOException {
    assertNearlyTheSame(photo(jpeg(), ExifOrientation.TOP_LEFT), longEdge);
  }

  @ParameterizedTest
  @EnumSource(ExifOrientation.class)
  void itIsTurnedUprightJustOnce(ExifOrientation orientation) throws IOException {
    assertNearlyTheSame(photo(jpeg(), orientation), 190);
  }

  @Test
  void coloursOfAForeignProfileBecomeSrgb() throws IOException {
    byte[] p3 = JpegSegments.withProfile(jpeg(), TestProfiles.displayP3().getData());
    Photo photo = photo(p3, ExifOrientation.TOP_LEFT);
    assertNearlyTheSame(photo, 400);
    BufferedImage managed = pictures.whole(photo, 400);
    BufferedImage unmanaged = pictures.whole(photo(jpeg(), ExifOrientation.TOP_LEFT), 400);
    assertTrue(TestPhotos.lumaDifference(unmanaged, managed) > 0.3, "the profile has an effect");
  }

  /**
   * Such a profile is ignored with a warning by the thorough way, which the quick one leaves it to.
   */
  @Test
  void aBrokenProfileDoesNotCostThePicture() throws IOException {
    byte[] broken = new byte[300];
    assertNearlyTheSame(
        photo(JpegSegments.withProfile(jpeg(), broken), ExifOrientation.TOP_LEFT), 400);
  }

  @Test
  void aPictureThatIsCutOffIsSaidToBe() throws IOException {
    byte[] whole = jpeg();
    Photo photo = photo(Arrays.copyOf(whole, whole.length / 2), ExifOrientation.TOP_LEFT);
    UnusablePicture said = assertThrows(UnusablePicture.class, () -> pictures.whole(photo, 400));
    assertEquals(Problem.Kind.CUT_OFF, said.kind());
  }

  private void assertNearlyTheSame(Photo photo, int longEdge) throws IOException {
    BufferedImage quick = pictures.whole(photo, longEdge);
    PixelSize size = photo.size().within(longEdge);
    BufferedImage thorough = pictures.part(photo, photo.size().whole(), size);
    assertEquals(size, new PixelSize(quick.getWidth(), quick.getHeight()));
    assertEquals(BufferedImage.TYPE_INT_RGB, quick.getType());
    assertEquals(0, TestPhotos.lumaDifference(thorough, quick), NEARLY_THE_SAME);
  }

  private static byte[] jpeg() {
    return new JpegEncoder(0.95f, false, Optional.empty(), false)
        .encode(Painted.scene(WIDTH, HEIGHT));
  }

  private Photo photo(byte[] jpeg, ExifOrientation orientation) throws IOException {
    Path file = folder.resolve("photo.jpg");
    Files.write(file, jpeg);
    return TestPhotos.photo(file, PhotoFormat.JPEG, new PixelSize(WIDTH, HEIGHT), orientation);
  }
}
