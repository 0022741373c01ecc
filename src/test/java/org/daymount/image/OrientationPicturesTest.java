package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * All eight orientations (CIPA DC-008, 4.6.4 A) against pictures made by others: the sixteen EXIF
 * orientation examples in the test jar com.twelvemonkeys.imageio:imageio-jpeg:3.12.0. Each carries
 * the tag value of its name and shows the same scene, but for a numeral in it.
 */
@Tag("slow")
class OrientationPicturesTest {
  /** The numeral differs; the largest difference measured over the sixteen is 6.8. */
  private static final double SAME_SCENE = 7;

  private static final int LONG_EDGE = 600;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "Landscape, 1", "Landscape, 2", "Landscape, 3", "Landscape, 4",
    "Landscape, 5", "Landscape, 6", "Landscape, 7", "Landscape, 8",
    "Portrait, 1", "Portrait, 2", "Portrait, 3", "Portrait, 4",
    "Portrait, 5", "Portrait, 6", "Portrait, 7", "Portrait, 8"
  })
  void everyTagValueShowsTheSceneOfValueOneAndNoOtherValueDoesBetter(String scene, int tag)
      throws UnusablePicture {
    PixelSize upright =
        scene.equals("Landscape") ? new PixelSize(1800, 1200) : new PixelSize(1200, 1800);
    ExifOrientation orientation = ExifOrientation.ofExif(tag);
    Path file = TestPhotos.fromJar("exif/" + scene + "_" + tag + ".jpg", folder);
    BufferedImage expected = shown(reference(scene, tag, file), upright, ExifOrientation.TOP_LEFT);

    double right = TestPhotos.lumaDifference(expected, shown(file, upright, orientation));

    assertTrue(right <= SAME_SCENE, "mean luma difference " + right);
    for (ExifOrientation other : ExifOrientation.values()) {
      if (other != orientation && other.swapsSides() == orientation.swapsSides()) {
        double wrong = TestPhotos.lumaDifference(expected, shown(file, upright, other));
        assertTrue(right < wrong, other + " fits as well: " + wrong + " against " + right);
      }
    }
  }

  private Path reference(String scene, int tag, Path file) {
    return tag == 1 ? file : TestPhotos.fromJar("exif/" + scene + "_1.jpg", folder);
  }

  private static BufferedImage shown(Path file, PixelSize upright, ExifOrientation orientation)
      throws UnusablePicture {
    Photo photo =
        TestPhotos.photo(file, PhotoFormat.JPEG, orientation.stored(upright), orientation);
    BufferedImage shown = new Pictures().whole(photo, LONG_EDGE);
    assertEquals(upright.within(LONG_EDGE), new PixelSize(shown.getWidth(), shown.getHeight()));
    return shown;
  }
}
