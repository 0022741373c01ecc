package org.daymount.sample;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * JPEG files with the segments a phone adds. The pixels are coded by the JDK's own writer, so the
 * same JDK gives the same bytes; another JDK's encoder may give others.
 */
final class Jpeg {
  private Jpeg() {}

  /** The JDK's own JPEG writer, whatever other plug-ins are on the class path. */
  private static ImageWriter writer() {
    var all = ImageIO.getImageWritersByFormatName("jpeg");
    while (all.hasNext()) {
      ImageWriter writer = all.next();
      if (writer.getClass().getName().startsWith("com.sun.")) {
        return writer;
      }
    }
    throw new IllegalStateException("this JDK has no JPEG writer; use one with java.desktop");
  }

  static byte[] encode(BufferedImage image, double quality) throws IOException {
    ImageWriter writer = writer();
    ImageWriteParam parameters = writer.getDefaultWriteParam();
    parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    parameters.setCompressionQuality((float) quality);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), parameters);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** Puts segments between the start of the file and what follows; an empty one is skipped. */
  static byte[] with(byte[] jpeg, byte[] exif, byte[] icc) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    segment(out, 0xe1, new byte[] {}, exif);
    int rest = 2;
    if (exif.length > 0 && (jpeg[3] & 255) == 0xe0) {
      rest += 2 + ((jpeg[4] & 255) << 8 | jpeg[5] & 255); // Exif files carry no JFIF segment
    }
    byte[] head = {'I', 'C', 'C', '_', 'P', 'R', 'O', 'F', 'I', 'L', 'E', 0, 1, 1};
    segment(out, 0xe2, head, icc);
    out.write(jpeg, rest, jpeg.length - rest);
    return out.toByteArray();
  }

  private static void segment(ByteArrayOutputStream out, int marker, byte[] head, byte[] body) {
    if (body.length == 0) {
      return;
    }
    int length = 2 + head.length + body.length;
    if (length > 65535) {
      throw new IllegalArgumentException("a JPEG segment holds 65533 bytes, not " + length);
    }
    out.write(0xff);
    out.write(marker);
    out.write(length >> 8);
    out.write(length & 255);
    out.writeBytes(head);
    out.writeBytes(body);
  }

  static BufferedImage scaled(BufferedImage image, int width, int height) {
    BufferedImage current = image;
    while (current.getWidth() / 2 >= width) {
      current = draw(current, current.getWidth() / 2, current.getHeight() / 2);
    }
    return draw(current, width, height);
  }

  private static BufferedImage draw(BufferedImage image, int width, int height) {
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = small.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(image, 0, 0, width, height, null);
    g.dispose();
    return small;
  }

  /** The pixels as a camera stores them so that this EXIF orientation shows them upright. */
  static BufferedImage stored(BufferedImage upright, int orientation) {
    int w = upright.getWidth();
    int h = upright.getHeight();
    boolean turned = orientation >= 5;
    BufferedImage out =
        new BufferedImage(turned ? h : w, turned ? w : h, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < out.getHeight(); y++) {
      for (int x = 0; x < out.getWidth(); x++) {
        // CIPA DC-008: where stored row 0 and column 0 lie in the upright picture
        int ux;
        int uy;
        switch (orientation) {
          case 2 -> {
            ux = w - 1 - x;
            uy = y;
          }
          case 3 -> {
            ux = w - 1 - x;
            uy = h - 1 - y;
          }
          case 4 -> {
            ux = x;
            uy = h - 1 - y;
          }
          case 5 -> {
            ux = y;
            uy = x;
          }
          case 6 -> {
            ux = w - 1 - y;
            uy = x;
          }
          case 7 -> {
            ux = w - 1 - y;
            uy = h - 1 - x;
          }
          case 8 -> {
            ux = y;
            uy = h - 1 - x;
          }
          default -> {
            ux = x;
            uy = y;
          }
        }
        out.setRGB(x, y, upright.getRGB(ux, uy));
      }
    }
    return out;
  }
}
