package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Tag("slow")
class PicturesTest {
  /** One photograph in many formats, in the test jar of commons-imaging. */
  private static final String SAME_PHOTO =
      "data/images/%s/Oregon Scientific DS6639 - DSC_0307 - small";

  private static final int WIDTH = 300;
  private static final int HEIGHT = 225;

  @TempDir Path folder;

  private final Pictures pictures = new Pictures();

  @ParameterizedTest
  @CsvSource({
    "BMP, bmp/1, .bmp",
    "JPEG, jpg/1, .jpg",
    "TIFF, tiff/1, .tif",
    "TIFF, tiff/5, ' - LZW - strips.tif'",
    "TIFF, tiff/5, ' - LZW - tiled.tif'",
    "WEBP, webp/1, ' lossless.webp'"
  })
  void thePhotoIsTheSameInEveryFormatThatKeepsAllPixels(
      PhotoFormat format, String place, String ending) throws IOException {
    TestPhotos.assertSamePixels(
        samePhoto(PhotoFormat.PNG, "png/1", ".png"), samePhoto(format, place, ending), 0);
  }

  @ParameterizedTest
  @CsvSource({
    "GIF, gif/single/1, .gif, 6", // 256 colours
    "WEBP, webp/1, ' lossy.webp', 6",
    "TIFF, tiff/7, ' - CMYK.tiff', 7" // colours that ink cannot show are lost
  })
  void thePhotoIsNearlyTheSameInFormatsThatLoseSomething(
      PhotoFormat format, String place, String ending, double most) throws IOException {
    double difference =
        TestPhotos.lumaDifference(
            samePhoto(PhotoFormat.PNG, "png/1", ".png"), samePhoto(format, place, ending));
    assertEquals(0, difference, most, "mean luma difference");
  }

  private BufferedImage samePhoto(PhotoFormat format, String place, String ending)
      throws IOException {
    Path file = TestPhotos.fromJar(String.format(SAME_PHOTO, place) + ending, folder);
    return pictures.whole(TestPhotos.upright(file, format, WIDTH, HEIGHT), WIDTH);
  }

  @ParameterizedTest
  @CsvSource({
    "jpeg/cmyk-sample.jpg, 160, 227", "jpeg/exif-jfif-app13-app14ycck-3channel.jpg, 310, 384",
    "jpeg/gray-sample.jpg, 386, 396", "jpeg/cmm-exception-adobe-rgb.jpg, 626, 76",
    "jpeg/cmyk-sample-no-icc.jpg, 114, 199", "jpeg/adobe-unknown-rgb-ids.jpg, 225, 156"
  })
  void unusualJpegsAgreeWithImageMagick(String resource, int width, int height) throws IOException {
    Tool convert = Tool.imageMagickOrSkip();
    Path file = TestPhotos.fromJar(resource, folder);
    Path srgb =
        Files.write(
            folder.resolve("srgb.icc"), ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
    Path png = folder.resolve("theirs.png");
    convert.run(
        file.toString(), "-profile", srgb.toString(), "-colorspace", "sRGB", "PNG24:" + png);
    BufferedImage theirs = ImageIO.read(png.toFile());
    BufferedImage ours =
        pictures.whole(TestPhotos.upright(file, PhotoFormat.JPEG, width, height), width + height);
    assertEquals(0, TestPhotos.lumaDifference(theirs, ours), 1.2, "mean luma difference");
  }

  @ParameterizedTest
  @EnumSource
  void aWindowOfATurnedPhotoShowsWhatTheUprightOneShows(ExifOrientation orientation)
      throws IOException {
    BufferedImage scene = Painted.scene(90, 60);
    PixelBox window = new PixelBox(11, 7, 60, 41);
    PixelSize target = new PixelSize(30, 20);
    BufferedImage expected =
        pictures.part(written(scene, ExifOrientation.TOP_LEFT), window, target);
    Photo turned = written(ExifRotator.upright(scene, orientation.back()), orientation);
    TestPhotos.assertSamePixels(expected, pictures.part(turned, window, target), 1);
  }

  @ParameterizedTest
  @CsvSource({"400, 300, 200, 150", "600, 200, 220, 70", "360, 300, 360, 300", "300, 90, 420, 126"})
  void twoHalvesThatMeetAreTheWholeAtTheSameScale(int width, int height, int across, int down)
      throws IOException {
    Photo photo = written(Painted.noise(width, height), ExifOrientation.TOP_LEFT);
    PixelSize half = new PixelSize(across / 2, down);
    BufferedImage left = pictures.part(photo, new PixelBox(0, 0, width / 2, height), half);
    BufferedImage right = pictures.part(photo, new PixelBox(width / 2, 0, width / 2, height), half);
    BufferedImage whole = pictures.part(photo, photo.size().whole(), new PixelSize(across, down));
    TestPhotos.assertSamePixels(whole.getSubimage(0, 0, across / 2, down), left, 0);
    TestPhotos.assertSamePixels(whole.getSubimage(across / 2, 0, across / 2, down), right, 0);
  }

  @Test
  void aWindowAtItsOwnSizeIsThePixelsThemselves() throws IOException {
    BufferedImage noise = Painted.noise(70, 50);
    PixelBox window = new PixelBox(13, 8, 40, 30);
    TestPhotos.assertSamePixels(
        noise.getSubimage(13, 8, 40, 30),
        pictures.part(written(noise, ExifOrientation.TOP_LEFT), window, window.size()),
        0);
  }

  @Test
  void aPictureIsNeverEnlargedWhenTheWholeIsAskedFor() throws IOException {
    BufferedImage shown =
        pictures.whole(written(Painted.noise(30, 20), ExifOrientation.TOP_LEFT), 1000);
    assertEquals(30, shown.getWidth());
    assertEquals(20, shown.getHeight());
  }

  @Test
  void whatIsTransparentLiesOnWhite() throws IOException {
    BufferedImage glass = new BufferedImage(3, 1, BufferedImage.TYPE_INT_ARGB);
    glass.setRGB(0, 0, 0x00123456);
    glass.setRGB(1, 0, 0x80000000);
    glass.setRGB(2, 0, 0xff102030);
    BufferedImage shown = pictures.whole(written(glass, ExifOrientation.TOP_LEFT), 10);
    assertEquals(0xffffff, shown.getRGB(0, 0) & 0xffffff);
    assertEquals(0x7f7f7f, shown.getRGB(1, 0) & 0xffffff);
    assertEquals(0x102030, shown.getRGB(2, 0) & 0xffffff);
  }

  @Test
  void sixteenBitsPalettesAndGreysAreShownAsCoded() throws IOException {
    double[][] colours = {{0, 0.5, 1}, {200 / 255.0, 100 / 255.0, 50 / 255.0}};
    BufferedImage deep = shown(TestPngs.row16(colours));
    assertEquals(0x0080ff, deep.getRGB(0, 0) & 0xffffff);
    assertEquals(0xc86432, deep.getRGB(1, 0) & 0xffffff);

    BufferedImage palette = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_INDEXED);
    palette.setRGB(3, 4, 0xffff0000);
    assertEquals(0xff0000, shown(palette).getRGB(3, 4) & 0xffffff);

    BufferedImage grey = new BufferedImage(16, 16, BufferedImage.TYPE_USHORT_GRAY);
    grey.getRaster().setSample(3, 4, 0, 100 * 257);
    assertEquals(0x646464, shown(grey).getRGB(3, 4) & 0xffffff);
  }

  /** The same picture saved both ways, in the test jar of commons-imaging. */
  @Test
  void aTiffLooksTheSameWhicheverWayItsTransparencyIsSaved() throws IOException {
    BufferedImage associated = transparencyTest("TransparencyTestStripAssociated.tif");
    BufferedImage unassociated = transparencyTest("TransparencyTestStripUnassociated.tif");
    TestPhotos.assertSamePixels(unassociated, associated, 1);
  }

  private BufferedImage transparencyTest(String name) throws IOException {
    Path file = TestPhotos.fromJar("data/images/tiff/12/" + name, folder);
    return pictures.whole(TestPhotos.upright(file, PhotoFormat.TIFF, 100, 100), 100);
  }

  @Test
  void aTiffOfSeveralPagesShowsItsFirst() throws IOException {
    Path file = folder.resolve("pages.tif");
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
      writer.setOutput(out);
      writer.prepareWriteSequence(null);
      writer.writeToSequence(new IIOImage(Painted.plain(20, 10, 0xff0000), null, null), null);
      writer.writeToSequence(new IIOImage(Painted.plain(30, 40, 0x0000ff), null, null), null);
      writer.endWriteSequence();
    } finally {
      writer.dispose();
    }
    TestPhotos.assertSamePixels(
        Painted.plain(20, 10, 0xff0000),
        pictures.whole(TestPhotos.upright(file, PhotoFormat.TIFF, 20, 10), 20),
        0);
  }

  @Test
  void anAnimationShowsItsFirstFrame() throws IOException {
    Path file = TestPhotos.fromJar("images/webp/animation/example.webp", folder);
    BufferedImage shown = pictures.whole(TestPhotos.upright(file, PhotoFormat.WEBP, 480, 480), 240);
    assertEquals(240, shown.getWidth());
  }

  @Test
  void aPictureTooLargeForMemoryIsReadThinnedAndStaysInPlace() throws IOException {
    int side = 6000; // 36 megapixels: every second row and column is kept
    BufferedImage halves = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_BINARY);
    for (int y = 0; y < side; y++) {
      for (int x = side / 2; x < side; x++) {
        halves.getRaster().setSample(x, y, 0, 1);
      }
    }
    BufferedImage shown = shown(halves, 300);
    assertEquals(0x000000, shown.getRGB(145, 150) & 0xffffff);
    assertEquals(0xffffff, shown.getRGB(154, 150) & 0xffffff);
    int leftOfTheEdge = shown.getRGB(149, 150) & 0xff;
    int rightOfTheEdge = shown.getRGB(150, 150) & 0xff;
    // Whatever lies between two kept pixels is unknown: half a stored pixel, 1/40 of one shown.
    assertEquals(255, leftOfTheEdge + rightOfTheEdge, 10, "the edge is not in the middle");
  }

  @Test
  void manyThreadsShareOneReaderAndGetTheSamePictures() throws IOException {
    Photo photo = written(Painted.noise(200, 150), ExifOrientation.RIGHT_TOP);
    BufferedImage expected = pictures.whole(photo, 80);
    List<BufferedImage> all =
        IntStream.range(0, 24).parallel().mapToObj(i -> unchecked(photo)).toList();
    for (BufferedImage one : all) {
      TestPhotos.assertSamePixels(expected, one, 0);
    }
  }

  private BufferedImage unchecked(Photo photo) {
    try {
      return pictures.whole(photo, 80);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private BufferedImage shown(BufferedImage picture) throws IOException {
    return shown(picture, Math.max(picture.getWidth(), picture.getHeight()));
  }

  private BufferedImage shown(BufferedImage picture, int longEdge) throws IOException {
    return pictures.whole(written(picture, ExifOrientation.TOP_LEFT), longEdge);
  }

  private Photo written(BufferedImage stored, ExifOrientation orientation) throws IOException {
    Path file = Files.write(folder.resolve(orientation + ".png"), TestPngs.png(stored));
    PixelSize size = new PixelSize(stored.getWidth(), stored.getHeight());
    return TestPhotos.photo(file, PhotoFormat.PNG, size, orientation);
  }
}
