package org.daymount.image;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;

/** PNG files for the tests. */
final class TestPngs {
  private static final int AFTER_HEADER = 8 + 25; // signature and IHDR: W3C PNG, 5.3 and 11.2.1

  private TestPngs() {}

  static byte[] png(BufferedImage picture) {
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageIO.write(picture, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file with an iCCP chunk (W3C PNG, 11.3.2.3) put in. */
  static byte[] withProfile(byte[] png, byte[] profile) {
    Deflater deflater = new Deflater();
    deflater.setInput(profile);
    deflater.finish();
    byte[] compressed = new byte[profile.length + 1000];
    int length = deflater.deflate(compressed);
    deflater.end();
    ByteBuffer content = ByteBuffer.allocate(4 + 3 + length);
    content.put("iCCPp\0\0".getBytes(StandardCharsets.US_ASCII)).put(compressed, 0, length);
    CRC32 checksum = new CRC32();
    checksum.update(content.array());
    ByteBuffer file = ByteBuffer.allocate(png.length + content.capacity() + 8);
    file.put(png, 0, AFTER_HEADER);
    file.putInt(content.capacity() - 4).put(content.array()).putInt((int) checksum.getValue());
    file.put(png, AFTER_HEADER, png.length - AFTER_HEADER);
    return file.array();
  }

  static byte[] withProfile(byte[] png, ICC_Profile profile) {
    return withProfile(png, profile.getData());
  }

  /** 16 bits a sample. @param colours one row of pixels, each red, green, blue of 0 to 1 */
  static BufferedImage row16(double[][] colours) {
    ComponentColorModel model =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            BufferedImage.OPAQUE,
            DataBuffer.TYPE_USHORT);
    WritableRaster raster = model.createCompatibleWritableRaster(colours.length, 1);
    for (int x = 0; x < colours.length; x++) {
      for (int band = 0; band < 3; band++) {
        raster.setSample(x, 0, band, (int) Math.round(colours[x][band] * 65535));
      }
    }
    return new BufferedImage(model, raster, false, null);
  }
}
