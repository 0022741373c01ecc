package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every step that takes a picture gives a new one, sRGB and TYPE_INT_RGB, of the size promised. */
class StepsLeaveTheirInputAloneTest {
  record Step(Function<BufferedImage, Object> work, PixelSize size) {}

  static Stream<Named<Step>> steps() {
    return Stream.of(
        step("turning upright", p -> ExifRotator.upright(p, ExifOrientation.RIGHT_TOP), 30, 40),
        step("leaving upright", p -> ExifRotator.upright(p, ExifOrientation.TOP_LEFT), 40, 30),
        step(
            "resampling",
            p ->
                Lanczos.resample(
                    new SrgbRows(p),
                    new LanczosTaps(40, 0, 40, 20),
                    new LanczosTaps(30, 0, 30, 10)),
            20,
            10),
        step("scaling for a page", p -> Previews.scaled(p, 20), 20, 15),
        step("not scaling for a page", p -> Previews.scaled(p, 100), 40, 30),
        step("encoding for a page", p -> Previews.jpeg(p, 20, 0.8), 20, 15),
        step("encoding for a lab", p -> PrintJpegEncoder.encode(p, Ppi.ppi(300)), 40, 30));
  }

  private static Named<Step> step(
      String name, Function<BufferedImage, Object> work, int width, int height) {
    return Named.of(name, new Step(work, new PixelSize(width, height)));
  }

  @ParameterizedTest
  @MethodSource("steps")
  void theStepGivesANewPictureAndTheOldOneIsAsItWas(Step step) throws IOException {
    BufferedImage input = Painted.scene(40, 30);
    Object result = step.work().apply(input);
    TestPhotos.assertSamePixels(Painted.scene(40, 30), input, 0);
    BufferedImage picture;
    if (result instanceof byte[] file) {
      picture = ImageIO.read(new ByteArrayInputStream(file));
    } else {
      picture = (BufferedImage) result;
      assertNotSame(input, picture);
      assertEquals(BufferedImage.TYPE_INT_RGB, picture.getType());
    }
    assertTrue(picture.getColorModel().getColorSpace().isCS_sRGB());
    assertEquals(step.size(), new PixelSize(picture.getWidth(), picture.getHeight()));
  }

  @Test
  void readingAPhotoLeavesItsFileAsItWas(@TempDir Path folder) throws IOException {
    byte[] bytes = PrintJpegEncoder.encode(Painted.scene(40, 30), Ppi.ppi(300));
    Path file = Files.write(folder.resolve("photo.jpg"), bytes);
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_600_000_000_000L));
    Photo photo = TestPhotos.upright(file, PhotoFormat.JPEG, 40, 30);

    BufferedImage whole = new Pictures().whole(photo, 20);
    BufferedImage part =
        new Pictures().part(photo, new PixelBox(5, 5, 20, 20), new PixelSize(7, 7));

    assertEquals(BufferedImage.TYPE_INT_RGB, whole.getType());
    assertEquals(BufferedImage.TYPE_INT_RGB, part.getType());
    assertEquals(7, part.getWidth());
    assertArrayEquals(bytes, Files.readAllBytes(file));
    assertEquals(1_600_000_000_000L, Files.getLastModifiedTime(file).toMillis());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(1, files.count(), "something was written beside the photo");
    }
  }
}
