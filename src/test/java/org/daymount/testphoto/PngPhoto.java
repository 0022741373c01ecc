package org.daymount.testphoto;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** A painted PNG with chunks of its own after IHDR (PNG 3rd edition, 11.3). */
public final class PngPhoto {
  private static final int AFTER_IHDR = 8 + 25;

  private final ByteArrayOutputStream chunks = new ByteArrayOutputStream();
  private int width = 64;
  private int height = 48;

  private PngPhoto() {}

  public static PngPhoto painted() {
    return new PngPhoto();
  }

  public PngPhoto size(int newWidth, int newHeight) {
    width = newWidth;
    height = newHeight;
    return this;
  }

  public PngPhoto text(String keyword, String text) {
    return chunk("tEXt", (keyword + "\0" + text).getBytes(StandardCharsets.ISO_8859_1));
  }

  public PngPhoto exif(byte[] block) {
    return chunk("eXIf", block);
  }

  public PngPhoto xmp(String attributes) {
    String text = "XML:com.adobe.xmp\0\0\0\0\0" + ExifPhoto.packet(attributes);
    return chunk("iTXt", text.getBytes(StandardCharsets.UTF_8));
  }

  public PngPhoto lastModified(int year, int month, int day, int hour, int minute, int second) {
    return chunk(
        "tIME",
        new byte[] {
          (byte) (year >> 8),
          (byte) year,
          (byte) month,
          (byte) day,
          (byte) hour,
          (byte) minute,
          (byte) second
        });
  }

  public PngPhoto chunk(String name, byte[] content) {
    byte[] type = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(type);
    crc.update(content);
    chunks.writeBytes(
        ByteBuffer.allocate(12 + content.length)
            .putInt(content.length)
            .put(type)
            .put(content)
            .putInt((int) crc.getValue())
            .array());
    return this;
  }

  public byte[] bytes() throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    ImageIO.write(ExifPhoto.plain(width, height), "png", plain);
    byte[] bytes = plain.toByteArray();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, AFTER_IHDR);
    out.writeBytes(chunks.toByteArray());
    out.write(bytes, AFTER_IHDR, bytes.length - AFTER_IHDR);
    return out.toByteArray();
  }

  public Path write(Path file) throws IOException {
    return Files.write(file, bytes());
  }
}
