package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.PngPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScreenshotTest {
  @TempDir Path folder;

  private Optional<String> of(ExifPhoto photo, String name) throws IOException {
    photo.write(folder.resolve(name));
    return Reading.all(folder).photos().get(0).screenshot();
  }

  @ParameterizedTest
  @CsvSource({
    "Screenshot_20260603-142530.jpg, its name says screenshot",
    "screen shot 2026-06-03.jpg, its name says screenshot",
    "Pictures/Screenshots/a.jpg, it lies in a folder of screenshots",
  })
  void nameAndFolderTell(String name, String reason) throws IOException {
    assertEquals(Optional.of(reason), of(ExifPhoto.painted(), name));
  }

  @Test
  void aCommentTells() throws IOException {
    assertEquals(
        Optional.of("its comment says screenshot"),
        of(ExifPhoto.painted().userComment("Screenshot"), "IMG_0412.JPG"));
  }

  @Test
  void aPhotoWithCameraSettingsIsAPhotoWhereverItLies() throws IOException {
    ExifPhoto photo = ExifPhoto.painted().exposure(250).userComment("Screenshot");
    assertEquals(Optional.empty(), of(photo, "Screenshots/Screenshot_1.jpg"));
  }

  @ParameterizedTest
  @CsvSource({"IMG_0412.JPG", "sunscreenshotgun.jpg", "Screenshotting the sky/a.jpg"})
  void otherNamesDoNotTell(String name) throws IOException {
    assertEquals(Optional.empty(), of(ExifPhoto.painted(), name));
  }

  @Test
  void theSizeOfAScreenTellsOnlyTogetherWithOtherSigns() throws IOException {
    Path png = PngPhoto.painted().size(1170, 2532).write(folder.resolve("a.png"));
    assertEquals(
        Optional.of("it is a PNG without a camera, exactly the size of a phone's screen"),
        Reading.one(png).screenshot());
    Path turned = PngPhoto.painted().size(2532, 1170).write(folder.resolve("b.png"));
    assertEquals(true, Reading.one(turned).screenshot().isPresent());
    Path layout = PngPhoto.painted().size(1080, 1920).write(folder.resolve("c.png"));
    assertEquals(Optional.empty(), Reading.one(layout).screenshot());
    Path jpeg = ExifPhoto.painted().size(1170, 2532).write(folder.resolve("d.jpg"));
    assertEquals(Optional.empty(), Reading.one(jpeg).screenshot());
    byte[] exif = ExifPhoto.painted().model("Tarn T4").exifBlock();
    Path camera = PngPhoto.painted().size(1170, 2532).exif(exif).write(folder.resolve("e.png"));
    assertEquals(Optional.empty(), Reading.one(camera).screenshot());
  }
}
