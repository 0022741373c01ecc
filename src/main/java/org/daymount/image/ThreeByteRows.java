package org.daymount.image;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.WritableRaster;
import java.util.Optional;

/**
 * Rows of a picture that lies in memory as three bytes a pixel, which nearly every decoded photo
 * does: read where they lie, without a copy.
 */
final class ThreeByteRows {
  private final byte[] bytes;
  private final int width;
  private final int stride;
  private final int[] first;

  private ThreeByteRows(
      byte[] bytes, int width, PixelInterleavedSampleModel samples, WritableRaster raster) {
    this.bytes = bytes;
    this.width = width;
    this.stride = samples.getScanlineStride();
    int start =
        raster.getDataBuffer().getOffset()
            - raster.getSampleModelTranslateY() * stride
            - raster.getSampleModelTranslateX() * samples.getPixelStride();
    int[] offsets = samples.getBandOffsets();
    this.first = new int[] {start + offsets[0], start + offsets[1], start + offsets[2]};
  }

  /**
   * @return empty when the pixels are coded in another way
   */
  static Optional<ThreeByteRows> of(BufferedImage picture) {
    WritableRaster raster = picture.getRaster();
    return isThreeBytes(picture.getColorModel())
            && raster.getSampleModel() instanceof PixelInterleavedSampleModel samples
            && samples.getPixelStride() == 3
            && raster.getDataBuffer() instanceof DataBufferByte buffer
        ? Optional.of(new ThreeByteRows(buffer.getData(), picture.getWidth(), samples, raster))
        : Optional.empty();
  }

  private static boolean isThreeBytes(ColorModel model) {
    return model instanceof ComponentColorModel
        && model.getTransferType() == DataBuffer.TYPE_BYTE
        && model.getNumComponents() == 3
        && model.getNumColorComponents() == 3
        && model.getPixelSize() == 3 * Byte.SIZE;
  }

  /** Puts row {@code y} into {@code rgb} as 0xRRGGBB, the samples as they are. */
  void read(int y, int[] rgb) {
    int red = first[0] + y * stride;
    int green = first[1] + y * stride;
    int blue = first[2] + y * stride;
    for (int x = 0, at = 0; x < width; x++, at += 3) {
      rgb[x] =
          (bytes[red + at] & 0xff) << 16
              | (bytes[green + at] & 0xff) << 8
              | bytes[blue + at] & 0xff;
    }
  }
}
