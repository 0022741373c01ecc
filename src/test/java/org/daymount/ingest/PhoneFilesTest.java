package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.daymount.image.Pictures;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.PngPhoto;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What phones and cameras write besides plain JPEG. */
class PhoneFilesTest {
  /** The head of an MPEG-4 film (ISO/IEC 14496-12, 4.3). */
  private static final byte[] FILM =
      "\0\0\0\030ftypmp42\0\0\0\0mp42isom\0\0\0\010mdat".getBytes(StandardCharsets.ISO_8859_1);

  @TempDir Path folder;

  private static byte[] fromJar(String resource) throws IOException {
    try (InputStream in = PhoneFilesTest.class.getResourceAsStream("/" + resource)) {
      return in.readAllBytes();
    }
  }

  /** IMG_1034.heic of the test jar: its tags as exiftool 12.57 tells them. */
  @Test
  void aPhoneHeicIsAPhotoWithItsTimeAndSize() throws IOException {
    Path file = Files.write(folder.resolve("a.heic"), fromJar("test-documents/IMG_1034.heic"));
    Photo photo = Reading.one(file);
    assertEquals(PhotoFormat.HEIF, photo.format());
    assertEquals(new PixelSize(4032, 3024), photo.size());
    assertEquals(ExifOrientation.TOP_LEFT, photo.orientation());
    assertEquals(TakenFrom.ORIGINAL, photo.taken().from());
  }

  @Test
  void ofALivePhotoTheStillIsUsedAndTheFilmCounted() throws IOException {
    Files.write(folder.resolve("IMG_1.HEIC"), fromJar("test-documents/testHEIF.heic"));
    Files.write(folder.resolve("IMG_1.MOV"), FILM);
    Ingested read = Reading.all(folder);
    assertEquals(1, read.photos().size());
    assertEquals(List.of(), read.problems());
    assertEquals(List.of("IMG_1.MOV"), read.movingParts().stream().map(PhotoFile::name).toList());
  }

  @Test
  void aMotionPhotoIsAPhotoWhateverFollowsItsEnd() throws IOException {
    Path file =
        ExifPhoto.painted()
            .original("2026:06:03 14:25:30")
            .trailing(FILM)
            .write(folder.resolve("PXL_1.MP.jpg"));
    Photo photo = Reading.one(file);
    assertEquals(PhotoFormat.JPEG, photo.format());
    assertEquals(64, new Pictures().whole(photo, 64).getWidth());
  }

  /**
   * A second JPEG behind the first, told of by a multi-picture index (CIPA DC-007, 5.2) and by XMP:
   * how phones add a gain map (ISO 21496-1, annex C). What is printed is the base picture.
   */
  @Test
  void ofAPictureWithAGainMapTheBaseIsUsed() throws IOException {
    byte[] base =
        ExifPhoto.painted()
            .original("2026:06:03 14:25:30")
            .xmp("xmlns:hdrgm=\"http://ns.adobe.com/hdr-gain-map/1.0/\" hdrgm:Version=\"1.0\"")
            .bytes();
    BufferedImage white = new BufferedImage(32, 24, BufferedImage.TYPE_INT_RGB);
    white.createGraphics().fillRect(0, 0, 32, 24);
    byte[] map = ExifPhoto.painted().picture(white).bytes();
    ByteBuffer both = ByteBuffer.allocate(base.length + 90 + map.length);
    both.put(base, 0, 2);
    both.putShort((short) 0xffe2).putShort((short) 88).put(new byte[] {'M', 'P', 'F', 0});
    int index = both.position(); // offsets count from here
    ByteBuffer entries = both.slice().order(ByteOrder.LITTLE_ENDIAN);
    entries.put(new byte[] {'I', 'I', 42, 0}).putInt(8).putShort((short) 3);
    field(entries, 0xb000, 7, 4, 0x30303130); // "0100"
    field(entries, 0xb001, 4, 1, 2);
    field(entries, 0xb002, 7, 32, 50);
    entries.putInt(0);
    entries.putInt(0x030000).putInt(base.length + 90).putInt(0).putInt(0);
    entries.putInt(0).putInt(map.length).putInt(base.length + 90 - index).putInt(0);
    both.position(92).put(base, 2, base.length - 2).put(map);
    Files.write(folder.resolve("plain.jpg"), base);
    Files.write(folder.resolve("with-map.jpg"), both.array());
    Ingested read = Reading.all(folder);
    assertEquals(List.of(), read.problems());
    assertEquals(2, read.photos().size());
    BufferedImage plain = new Pictures().whole(read.photos().get(0), 64);
    BufferedImage seen = new Pictures().whole(read.photos().get(1), 64);
    assertEquals(read.photos().get(0).size(), read.photos().get(1).size());
    for (int y = 0; y < plain.getHeight(); y += 5) {
      for (int x = 0; x < plain.getWidth(); x += 5) {
        assertEquals(plain.getRGB(x, y), seen.getRGB(x, y));
      }
    }
  }

  /** A raw file as DNG lays it out: TIFF with DNGVersion, its preview in a sub-directory. */
  private static byte[] raw(byte[] preview) throws IOException {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(preview));
    ByteBuffer out = ByteBuffer.allocate(200 + preview.length).order(ByteOrder.LITTLE_ENDIAN);
    out.put(new byte[] {'I', 'I', 42, 0}).putInt(8);
    out.putShort((short) 6);
    field(out, 254, 4, 1, 1);
    field(out, 256, 4, 1, 64);
    field(out, 257, 4, 1, 48);
    field(out, 274, 3, 1, 6);
    field(out, 330, 4, 1, 100); // SubIFDs
    field(out, 50706, 1, 4, 0x00000401); // DNGVersion 1.4
    out.putInt(0);
    out.position(100).putShort((short) 5);
    field(out, 254, 4, 1, 1);
    field(out, 256, 4, 1, read.getWidth());
    field(out, 257, 4, 1, read.getHeight());
    field(out, 273, 4, 1, 200);
    field(out, 279, 4, 1, preview.length);
    out.putInt(0);
    return out.position(200).put(preview).array();
  }

  private static void field(ByteBuffer out, int tag, int type, int count, int value) {
    out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
  }

  @Test
  void ofARawFileThePreviewIsUsedTurnedAsItsTagSays() throws IOException {
    byte[] preview = ExifPhoto.painted().size(1600, 1200).bytes();
    Photo photo = Reading.one(Files.write(folder.resolve("a.dng"), raw(preview)));
    assertEquals(PhotoFormat.RAW, photo.format());
    assertEquals(new PixelSize(1200, 1600), photo.size());
    BufferedImage shown = new Pictures().whole(photo, 160);
    int corner = shown.getRGB(110, 10); // the painted corner, upper left, lies upper right
    assertTrue((corner >> 16 & 0xff) > 200, Integer.toHexString(corner));
  }

  @Test
  void aRawFileWithASmallPreviewIsNamedWithTheNextStep() throws IOException {
    byte[] preview = ExifPhoto.painted().size(640, 480).bytes();
    Files.write(folder.resolve("a.dng"), raw(preview));
    Ingested read = Reading.all(folder);
    Problem problem = read.problems().get(0);
    assertEquals(Problem.Kind.NOT_YET_READABLE, problem.kind());
    assertEquals(
        "is a raw file whose preview has only 640 x 480 pixels; save a JPEG copy of it beside it",
        problem.text());
  }

  /** Files of the test jar of imageio-jpeg; which profiles are broken its own tests say. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "jpeg/cmm-exception-invalid-icc-profile-data.jpg",
        "jpeg/exif-empty-icc-profile.jpeg"
      })
  void aBrokenProfileIsRemarkedAndThePhotoUsed(String resource) throws IOException {
    Files.write(folder.resolve("a.jpg"), fromJar(resource));
    Ingested read = Reading.all(folder);
    assertEquals(1, read.photos().size());
    assertEquals(
        List.of(Problem.Kind.COLOUR_PROFILE_IGNORED),
        read.remarks().stream().map(Problem::kind).toList());
  }

  @Test
  void aPhotoWithoutAProfileOrWithASoundOneIsNotRemarked() throws IOException {
    ExifPhoto.painted().write(folder.resolve("a.jpg"));
    Files.write(folder.resolve("b.png"), PngPhoto.painted().bytes());
    Files.write(folder.resolve("c.heic"), fromJar("test-documents/IMG_1034.heic"));
    ByteArrayOutputStream tiff = new ByteArrayOutputStream();
    ImageIO.write(ExifPhoto.plain(20, 10), "tiff", tiff);
    Files.write(folder.resolve("d.tif"), tiff.toByteArray());
    Ingested read = Reading.all(folder);
    assertEquals(4, read.photos().size());
    assertEquals(List.of(), read.remarks());
  }
}
