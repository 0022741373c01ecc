package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.daymount.image.Pictures;
import org.daymount.image.Tool;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures with a second one inside: what is printed is the one the file is about. */
@Tag("slow")
class AuxiliaryPicturesTest {
  /** An auxiliary picture of that kind is transparency (ISO/IEC 23008-12, 6.5.8; H.265). */
  private static final List<String> ALPHA =
      List.of("urn:mpeg:hevc:2015:auxid:1", "urn:mpeg:mpegB:cicp:systems:auxiliary:alpha");

  /** Of the kind of one maker's gain maps, as far as the place goes (from memory). */
  private static final String GAIN_MAP = "urn:com:apple:photo:2020:aux:hdrgainmap";

  @TempDir Path folder;

  /** A scene of which the right half is transparent: heif-enc stores that as a second picture. */
  private Path png(String name, boolean withSecond) throws IOException {
    BufferedImage scene = Scenes.scene(4, 640, 480);
    BufferedImage picture = new BufferedImage(640, 480, BufferedImage.TYPE_INT_ARGB);
    Graphics2D pen = picture.createGraphics();
    pen.drawImage(scene, 0, 0, null);
    pen.dispose();
    for (int y = 0; withSecond && y < 480; y++) {
      for (int x = 320; x < 640; x++) {
        picture.setRGB(x, y, picture.getRGB(x, y) & 0xffffff | 0x40000000);
      }
    }
    Path file = folder.resolve(name);
    ImageIO.write(withSecond ? picture : opaque(picture), "png", file.toFile());
    return file;
  }

  private static BufferedImage opaque(BufferedImage picture) {
    BufferedImage plain =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = plain.createGraphics();
    pen.setComposite(AlphaComposite.Src);
    pen.drawImage(picture, 0, 0, null);
    pen.dispose();
    return plain;
  }

  private Path heif(Path png, String name) throws IOException {
    Path file = folder.resolve("pictures").resolve(name);
    Files.createDirectories(file.getParent());
    Tool.orSkip("heif-enc", "--help").run("-q", "90", png.toString(), "-o", file.toString());
    assertTrue(Files.exists(file), "heif-enc made no file");
    return file;
  }

  @ParameterizedTest
  @ValueSource(strings = {"heic", "avif"})
  void ofAHeifWithAGainMapTheBaseIsUsed(String ending) throws IOException {
    Path plain = heif(png("plain.png", false), "plain." + ending);
    Path both = heif(png("both.png", true), "with-map." + ending);
    byte[] bytes = Files.readAllBytes(both);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    String kind = ALPHA.stream().filter(text::contains).findFirst().orElseThrow();
    byte[] other = GAIN_MAP.getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < kind.length(); i++) { // the text ends with a zero
      bytes[text.indexOf(kind) + i] = i < other.length ? other[i] : 0;
    }
    Files.write(both, bytes);
    Tool exiftool = Tool.orSkip("exiftool", "-ver");
    String told = exiftool.run("-s3", "-AuxiliaryImageType", both.toString()).strip();
    assertTrue(GAIN_MAP.startsWith(told) && !told.isEmpty(), told);

    assertTheBaseIsUsed(ending);
  }

  /**
   * The gain map as a part of a derived picture that is offered beside the base (a tone map,
   * ISO/IEC 23008-12 of 2025 and ISO 21496-1, from memory): heif-enc's two pictures, described anew
   * behind them. Its parameters are no real ones: nobody is to ask for them.
   */
  @Test
  void ofAHeifWithAToneMapTheBaseIsUsed() throws IOException {
    heif(png("plain.png", false), "plain.heic");
    Path both = heif(png("both.png", true), "with-map.heic");
    byte[] bytes = Files.readAllBytes(both);
    int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("meta") - 4;
    int length = ByteBuffer.wrap(bytes).getInt(at);
    ByteArrayOutputStream meta = new ByteArrayOutputStream();
    meta.write(new byte[4]);
    for (int child = at + 12; child < at + length; ) {
      int size = ByteBuffer.wrap(bytes).getInt(child);
      String name = new String(bytes, child + 4, 4, StandardCharsets.US_ASCII);
      ByteBuffer content = ByteBuffer.wrap(bytes, child + 8, size - 8).slice();
      meta.write(
          switch (name) {
            case "iinf" -> box(name, new byte[4], shorts(3), rest(content, 6), toneMap());
            case "iloc" -> {
              assertEquals(0x00000000_4440_0002L, content.getLong(0), "its kind of places");
              byte[] place = ByteBuffer.allocate(18).putInt(3 << 16).putInt(at).array();
              ByteBuffer.wrap(place).putShort(8, (short) 1).putInt(14, 16);
              yield box(name, rest(content, 0, 6), shorts(3), rest(content, 8), place);
            }
            case "iref" -> box(name, new byte[4], box("dimg", shorts(3, 2, 1, 2)));
            default -> Arrays.copyOfRange(bytes, child, child + size);
          });
      child += size;
    }
    meta.write(box("grpl", box("altr", new byte[4], shorts(0, 9, 0, 2, 0, 3, 0, 1))));
    System.arraycopy("free".getBytes(StandardCharsets.US_ASCII), 0, bytes, at + 4, 4);
    Files.write(both, bytes);
    Files.write(both, box("meta", meta.toByteArray()), StandardOpenOption.APPEND);
    assertTheBaseIsUsed("heic");
  }

  private static byte[] toneMap() {
    byte[] kind = "tmap".getBytes(StandardCharsets.US_ASCII);
    return box("infe", new byte[] {2, 0, 0, 0}, shorts(3, 0), kind, new byte[1]);
  }

  private static byte[] box(String name, byte[]... parts) {
    int size = 8 + Arrays.stream(parts).mapToInt(part -> part.length).sum();
    ByteBuffer box = ByteBuffer.allocate(size).putInt(size);
    box.put(name.getBytes(StandardCharsets.US_ASCII));
    Arrays.stream(parts).forEach(box::put);
    return box.array();
  }

  private static byte[] shorts(int... values) {
    ByteBuffer bytes = ByteBuffer.allocate(2 * values.length);
    Arrays.stream(values).forEach(value -> bytes.putShort((short) value));
    return bytes.array();
  }

  private static byte[] rest(ByteBuffer content, int from) {
    return rest(content, from, content.limit());
  }

  private static byte[] rest(ByteBuffer content, int from, int to) {
    byte[] part = new byte[to - from];
    content.get(from, part);
    return part;
  }

  private void assertTheBaseIsUsed(String ending) throws IOException {
    Ingested read = Reading.all(folder.resolve("pictures"));
    assertEquals(List.of(), read.problems());
    assertEquals(2, read.photos().size());
    BufferedImage alone = new Pictures().whole(read.photos().get(0), 640);
    BufferedImage base = new Pictures().whole(read.photos().get(1), 640);
    assertEquals("plain." + ending, read.photos().get(0).file().name());
    double off = 0;
    for (int y = 0; y < 480; y++) {
      for (int x = 0; x < 640; x++) {
        off += Math.abs((alone.getRGB(x, y) >> 8 & 255) - (base.getRGB(x, y) >> 8 & 255));
      }
    }
    assertTrue(off / 640 / 480 < 2, "the base alone differs by " + off / 640 / 480);
  }

  /** As some phones lay a raw file out: the preview in the first directory, the sensor's behind. */
  @Test
  void ofARawFileWithItsPreviewInFrontThatIsUsed() throws IOException {
    byte[] preview = ExifPhoto.painted().size(1600, 1200).bytes();
    BufferedImage seen = ImageIO.read(new ByteArrayInputStream(preview));
    ByteBuffer out = ByteBuffer.allocate(400 + preview.length).order(ByteOrder.LITTLE_ENDIAN);
    out.put(new byte[] {'I', 'I', 42, 0}).putInt(8).putShort((short) 9);
    field(out, 254, 4, 1, 1); // a reduced picture
    field(out, 256, 4, 1, seen.getWidth());
    field(out, 257, 4, 1, seen.getHeight());
    field(out, 259, 3, 1, 7); // JPEG
    field(out, 273, 4, 1, 400);
    field(out, 274, 3, 1, 1);
    field(out, 279, 4, 1, preview.length);
    field(out, 330, 4, 1, 200);
    field(out, 50706, 1, 4, 0x00000601); // DNGVersion 1.6
    out.putInt(0);
    out.position(200).putShort((short) 5);
    field(out, 254, 4, 1, 0);
    field(out, 256, 4, 1, 4032);
    field(out, 257, 4, 1, 3024);
    field(out, 259, 3, 1, 52546); // JPEG XL (DNG 1.7), which is not developed here
    field(out, 262, 3, 1, 34892); // linear raw
    out.putInt(0);
    Path file = Files.write(folder.resolve("a.dng"), out.position(400).put(preview).array());
    Tool exiftool = Tool.orSkip("exiftool", "-ver");
    assertEquals("DNG", exiftool.run("-s3", "-FileType", file.toString()).strip());
    Photo photo = Reading.one(file);
    assertEquals(PhotoFormat.RAW, photo.format());
    assertEquals(1600, photo.size().width());
    assertEquals(160, new Pictures().whole(photo, 160).getWidth());
  }

  private static void field(ByteBuffer out, int tag, int type, int count, int value) {
    out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
  }
}
