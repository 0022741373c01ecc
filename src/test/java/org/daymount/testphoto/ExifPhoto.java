package org.daymount.testphoto;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * A painted JPEG with the EXIF block a phone would write, made by the tests themselves so that no
 * library is checked against its own writer. Tag numbers and types from CIPA DC-008 (Exif 2.3);
 * layout from TIFF 6.0, section 2, big-endian. Calls may come in any order and be left out.
 */
public final class ExifPhoto {
  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;
  private static final int UNDEFINED = 7;

  private record Field(int type, int count, byte[] value) {}

  private final SortedMap<Integer, Field> first = new TreeMap<>();
  private final SortedMap<Integer, Field> exif = new TreeMap<>();
  private final SortedMap<Integer, Field> gps = new TreeMap<>();
  private BufferedImage picture = plain(64, 48);
  private byte[] thumbnail = {};
  private String xmp = "";
  private byte[] trailing = {};

  private ExifPhoto() {}

  public static ExifPhoto painted() {
    return new ExifPhoto();
  }

  /** A picture of that many stored pixels in two colours. */
  public ExifPhoto size(int width, int height) {
    return picture(plain(width, height));
  }

  /** The stored picture, before any orientation. */
  public ExifPhoto picture(BufferedImage stored) {
    this.picture = stored;
    return this;
  }

  /** 1 to 8; other values are written too. */
  public ExifPhoto orientation(int value) {
    first.put(0x0112, shortField(value));
    return this;
  }

  public ExifPhoto make(String text) {
    first.put(0x010f, ascii(text));
    return this;
  }

  public ExifPhoto model(String text) {
    first.put(0x0110, ascii(text));
    return this;
  }

  /** DateTimeOriginal, "2026:06:03 14:25:30". */
  public ExifPhoto original(String text) {
    exif.put(0x9003, ascii(text));
    return this;
  }

  public ExifPhoto digitized(String text) {
    exif.put(0x9004, ascii(text));
    return this;
  }

  /** DateTime of the first directory: when the file was changed. */
  public ExifPhoto modified(String text) {
    first.put(0x0132, ascii(text));
    return this;
  }

  /** OffsetTimeOriginal, "+02:00". */
  public ExifPhoto offset(String text) {
    exif.put(0x9011, ascii(text));
    return this;
  }

  /** SubSecTimeOriginal: the digits after the point. */
  public ExifPhoto subSeconds(String digits) {
    exif.put(0x9291, ascii(digits));
    return this;
  }

  /** ExposureTime 1/n s, the sign of a real camera. */
  public ExifPhoto exposure(int onePerSeconds) {
    exif.put(0x829a, rationals(1, onePerSeconds));
    return this;
  }

  /** UserComment in ASCII. */
  public ExifPhoto makerNote(byte[] note) {
    exif.put(0x927c, new Field(UNDEFINED, note.length, note.clone()));
    return this;
  }

  public ExifPhoto userComment(String text) {
    byte[] bytes = ("ASCII\0\0\0" + text).getBytes(StandardCharsets.US_ASCII);
    exif.put(0x9286, new Field(UNDEFINED, bytes.length, bytes));
    return this;
  }

  /** GPSDateStamp and GPSTimeStamp in UTC: "2026:06:03", 14, 25, 30. */
  public ExifPhoto gpsTime(String date, int hour, int minute, int second) {
    gps.put(0x0007, rationals(hour, 1, minute, 1, second, 1));
    gps.put(0x001d, ascii(date));
    return this;
  }

  /** North and east, in whole degrees, minutes and seconds. */
  public ExifPhoto gpsPlace(int[] north, int[] east) {
    gps.put(0x0001, ascii("N"));
    gps.put(0x0002, rationals(north[0], 1, north[1], 1, north[2], 1));
    gps.put(0x0003, ascii("E"));
    gps.put(0x0004, rationals(east[0], 1, east[1], 1, east[2], 1));
    return this;
  }

  /** Any other text tag of the first directory, such as Artist 0x013b. */
  public ExifPhoto text(int tag, String text) {
    first.put(tag, ascii(text));
    return this;
  }

  /** A small JPEG in the second directory, as phones keep for their lists. */
  public ExifPhoto thumbnail(BufferedImage small) {
    this.thumbnail = jpeg(small);
    return this;
  }

  /** An XMP packet with these attributes, such as {@code photoshop:DateCreated="2026-06-03"}. */
  public ExifPhoto xmp(String attributes) {
    this.xmp = packet(attributes);
    return this;
  }

  /** Bytes behind the end marker, as a motion photo has. */
  public ExifPhoto trailing(byte[] bytes) {
    this.trailing = bytes.clone();
    return this;
  }

  /** The whole file. */
  public byte[] bytes() {
    byte[] plain = jpeg(picture);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    if (!first.isEmpty() || !exif.isEmpty() || !gps.isEmpty() || thumbnail.length > 0) {
      out.writeBytes(app1("Exif\0\0", exifBlock()));
    }
    if (!xmp.isEmpty()) {
      byte[] utf8 = xmp.getBytes(StandardCharsets.UTF_8);
      out.writeBytes(app1("http://ns.adobe.com/xap/1.0/\0", utf8));
    }
    out.write(plain, 2, plain.length - 2);
    out.writeBytes(trailing);
    return out.toByteArray();
  }

  public Path write(Path file) throws IOException {
    if (file.getParent() != null) {
      Files.createDirectories(file.getParent());
    }
    return Files.write(file, bytes());
  }

  /** The TIFF structure alone, for the EXIF chunks of PNG and WebP. */
  public byte[] exifBlock() {
    SortedMap<Integer, Field> head = new TreeMap<>(first);
    int start = 8;
    int exifAt = start + length(withPointers(head, 0, 0));
    int gpsAt = exifAt + (exif.isEmpty() ? 0 : length(exif));
    head = withPointers(head, exifAt, gpsAt);
    int thumbnailAt = gpsAt + (gps.isEmpty() ? 0 : length(gps));
    SortedMap<Integer, Field> second = new TreeMap<>();
    second.put(0x0103, shortField(6)); // JPEG compression
    second.put(0x0201, longField(0));
    second.put(0x0202, longField(thumbnail.length));
    second.put(0x0201, longField(thumbnailAt + length(second)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(new byte[] {'M', 'M', 0, 42, 0, 0, 0, 8});
    out.writeBytes(directory(head, start, thumbnail.length > 0 ? thumbnailAt : 0));
    if (!exif.isEmpty()) {
      out.writeBytes(directory(exif, exifAt, 0));
    }
    if (!gps.isEmpty()) {
      out.writeBytes(directory(gps, gpsAt, 0));
    }
    if (thumbnail.length > 0) {
      out.writeBytes(directory(second, thumbnailAt, 0));
      out.writeBytes(thumbnail);
    }
    return out.toByteArray();
  }

  private SortedMap<Integer, Field> withPointers(
      SortedMap<Integer, Field> head, int exifAt, int gpsAt) {
    SortedMap<Integer, Field> all = new TreeMap<>(head);
    if (!exif.isEmpty()) {
      all.put(0x8769, longField(exifAt));
    }
    if (!gps.isEmpty()) {
      all.put(0x8825, longField(gpsAt));
    }
    return all;
  }

  private static int length(SortedMap<Integer, Field> fields) {
    int values = fields.values().stream().mapToInt(f -> f.value().length > 4 ? even(f) : 0).sum();
    return 2 + 12 * fields.size() + 4 + values;
  }

  private static int even(Field field) {
    return field.value().length + field.value().length % 2;
  }

  private static byte[] directory(SortedMap<Integer, Field> fields, int at, int next) {
    ByteBuffer out = ByteBuffer.allocate(length(fields));
    int values = at + 2 + 12 * fields.size() + 4;
    out.putShort((short) fields.size());
    for (var entry : fields.entrySet()) {
      Field field = entry.getValue();
      out.putShort(entry.getKey().shortValue()).putShort((short) field.type());
      out.putInt(field.count());
      if (field.value().length > 4) {
        out.putInt(values);
        values += even(field);
      } else {
        out.put(Arrays.copyOf(field.value(), 4));
      }
    }
    out.putInt(next);
    for (Field field : fields.values()) {
      if (field.value().length > 4) {
        out.put(Arrays.copyOf(field.value(), even(field)));
      }
    }
    return out.array();
  }

  private static Field ascii(String text) {
    byte[] bytes = (text + "\0").getBytes(StandardCharsets.US_ASCII);
    return new Field(ASCII, bytes.length, bytes);
  }

  private static Field shortField(int value) {
    return new Field(SHORT, 1, new byte[] {(byte) (value >> 8), (byte) value});
  }

  private static Field longField(int value) {
    return new Field(LONG, 1, ByteBuffer.allocate(4).putInt(value).array());
  }

  private static Field rationals(int... parts) {
    ByteBuffer bytes = ByteBuffer.allocate(4 * parts.length);
    Arrays.stream(parts).forEach(bytes::putInt);
    return new Field(RATIONAL, parts.length / 2, bytes.array());
  }

  /** One APP1 segment, at most 64 KiB (ITU-T T.81, B.1.1.4). */
  private static byte[] app1(String heading, byte[] content) {
    byte[] name = heading.getBytes(StandardCharsets.US_ASCII);
    int length = 2 + name.length + content.length;
    if (length > 0xffff) {
      throw new IllegalArgumentException("a JPEG segment holds 65,533 bytes, not " + length);
    }
    return ByteBuffer.allocate(2 + length)
        .put((byte) 0xff)
        .put((byte) 0xe1)
        .putShort((short) length)
        .put(name)
        .put(content)
        .array();
  }

  /** An XMP packet with these attributes of the one description (ISO 16684-1). */
  public static String packet(String attributes) {
    return "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF"
        + " xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description"
        + " rdf:about=\"\" xmlns:exif=\"http://ns.adobe.com/exif/1.0/\""
        + " xmlns:photoshop=\"http://ns.adobe.com/photoshop/1.0/\""
        + " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" "
        + attributes
        + "/></rdf:RDF></x:xmpmeta>";
  }

  /** Two colours, the upper left quarter unlike the rest. */
  public static BufferedImage plain(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(70, 120, 160));
    pen.fillRect(0, 0, width, height);
    pen.setColor(new Color(230, 200, 90));
    pen.fillRect(0, 0, width / 2, height / 2);
    pen.dispose();
    return image;
  }

  private static byte[] jpeg(BufferedImage image) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      if (!ImageIO.write(image, "jpeg", out)) {
        throw new IllegalStateException("no JPEG writer");
      }
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
