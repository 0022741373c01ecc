package org.daymount.image;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.WritableRaster;
import java.util.Arrays;
import java.util.Optional;

/**
 * The rows of a decoded picture as sRGB, whatever the decoder gave: palettes, greys, 8 or 16 bits,
 * transparency (laid on white) and foreign colour profiles. Rows are converted a band at a time, so
 * that the picture is not held twice.
 *
 * <p>A profile the colour engine refuses is ignored: the samples are then taken for sRGB. Greys
 * without a profile are taken for sRGB greys; the JDK's own grey space has linear light and would
 * make them too bright.
 */
final class SrgbRows {
  private static final int BAND_ROWS = 64;
  private static final int WHITE = 255;

  private final BufferedImage decoded;
  private final boolean foreign;
  private final ColorConvertOp toSrgb = new ColorConvertOp(null);
  private final Optional<MatrixConversion> matrix;
  private boolean profileRefused;
  private final Optional<ThreeByteRows> threeBytes;
  private BufferedImage band;
  private int bandTop;

  SrgbRows(BufferedImage picture) {
    this.decoded = Profiles.forScreen(picture);
    ColorSpace space = decoded.getColorModel().getColorSpace();
    this.threeBytes = ThreeByteRows.of(decoded);
    this.foreign = !space.isCS_sRGB() && space != ColorSpace.getInstance(ColorSpace.CS_GRAY);
    this.matrix = foreign ? matrix(decoded.getColorModel()) : Optional.empty();
  }

  /** For plain 8-bit pictures of three colours, which nearly all foreign ones are. */
  private static Optional<MatrixConversion> matrix(ColorModel model) {
    return model instanceof ComponentColorModel
            && !model.hasAlpha()
            && model.getTransferType() == DataBuffer.TYPE_BYTE
            && model.getColorSpace() instanceof ICC_ColorSpace space
            && space.getNumComponents() == 3
        ? MatrixConversion.of(space.getProfile())
        : Optional.empty();
  }

  int width() {
    return decoded.getWidth();
  }

  int height() {
    return decoded.getHeight();
  }

  /** All rows as a picture, TYPE_INT_RGB. */
  BufferedImage all() {
    BufferedImage picture = new BufferedImage(width(), height(), BufferedImage.TYPE_INT_RGB);
    int[] row = new int[width()];
    for (int y = 0; y < height(); y++) {
      read(y, row);
      picture.getRaster().setDataElements(0, y, row.length, 1, row);
    }
    return picture;
  }

  /** Puts row {@code y} into {@code rgb} as 0xRRGGBB. */
  void read(int y, int[] rgb) {
    if (matrix.isPresent()) {
      readByMatrix(matrix.get(), y, rgb);
    } else if (foreign && !profileRefused) {
      readConverted(y, rgb);
    } else {
      readAsCoded(y, rgb);
    }
  }

  private void readByMatrix(MatrixConversion conversion, int y, int[] rgb) {
    int[] samples = decoded.getRaster().getPixels(0, y, width(), 1, (int[]) null);
    for (int x = 0, at = 0; x < width(); x++, at += 3) {
      rgb[x] = conversion.srgb(samples[at], samples[at + 1], samples[at + 2]);
    }
  }

  private void readConverted(int y, int[] rgb) {
    if (band == null || y < bandTop || y >= bandTop + band.getHeight()) {
      bandTop = y - y % BAND_ROWS;
      try {
        band = converted(bandTop, Math.min(BAND_ROWS, height() - bandTop));
      } catch (CMMException | IllegalArgumentException e) {
        profileRefused = true;
        readAsCoded(y, rgb);
        return;
      }
    }
    band.getRaster().getDataElements(0, y - bandTop, width(), 1, rgb);
    if (band.getType() == BufferedImage.TYPE_INT_ARGB) {
      layOnWhite(rgb);
    }
  }

  private BufferedImage converted(int top, int rows) {
    // with samples of its own: Java's colour engine copies the whole array that a part lies in
    WritableRaster own = decoded.getRaster().createCompatibleWritableRaster(width(), rows);
    own.setRect(decoded.getRaster().createChild(0, top, width(), rows, 0, 0, null));
    ColorModel model = decoded.getColorModel();
    BufferedImage source = new BufferedImage(model, own, model.isAlphaPremultiplied(), null);
    int type = model.hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
    return toSrgb.filter(source, new BufferedImage(width(), rows, type));
  }

  private void readAsCoded(int y, int[] rgb) {
    ColorModel model = decoded.getColorModel();
    if (decoded.getType() == BufferedImage.TYPE_INT_RGB) {
      decoded.getRaster().getDataElements(0, y, width(), 1, rgb);
    } else if (threeBytes.isPresent()) {
      threeBytes.get().read(y, rgb);
    } else if (model instanceof ComponentColorModel && isWhole(model.getTransferType())) {
      readComponents(y, rgb);
    } else {
      decoded.getRGB(0, y, width(), 1, rgb, 0, width());
      layOnWhite(rgb);
    }
  }

  private static boolean isWhole(int transferType) {
    return transferType == DataBuffer.TYPE_BYTE || transferType == DataBuffer.TYPE_USHORT;
  }

  /** One, three or four colours, with or without alpha, each of its own number of bits. */
  private void readComponents(int y, int[] rgb) {
    ColorModel model = decoded.getColorModel();
    int bands = model.getNumComponents();
    int colours = model.getNumColorComponents();
    int[] samples = decoded.getRaster().getPixels(0, y, width(), 1, (int[]) null);
    int[] full = new int[bands];
    Arrays.setAll(full, b -> (1 << model.getComponentSize(b)) - 1);
    for (int x = 0, at = 0; x < rgb.length; x++, at += bands) {
      for (int b = 0; b < bands; b++) {
        samples[at + b] = to8Bits(samples[at + b], full[b]);
      }
      int alpha = model.hasAlpha() ? samples[at + colours] : WHITE;
      int red = colour(samples, at, 0, colours);
      int green = colour(samples, at, 1, colours);
      int blue = colour(samples, at, 2, colours);
      rgb[x] =
          model.isAlphaPremultiplied()
              ? onWhite(1, WHITE - alpha, red, green, blue)
              : onWhite(alpha / 255.0, WHITE - alpha, red, green, blue);
    }
  }

  private static int to8Bits(int sample, int full) {
    return full == WHITE ? sample : (int) ((sample * 255L * 2 + full) / (2L * full));
  }

  /** Red, green or blue (0, 1, 2) of a pixel of one, three or (ink: CMYK) four colours. */
  private static int colour(int[] samples, int at, int channel, int colours) {
    if (colours >= 4) {
      return (WHITE - samples[at + channel]) * (WHITE - samples[at + 3]) / WHITE;
    }
    return samples[at + (colours == 3 ? channel : 0)];
  }

  private static void layOnWhite(int[] argb) {
    for (int x = 0; x < argb.length; x++) {
      int alpha = argb[x] >>> 24;
      argb[x] =
          alpha == WHITE
              ? argb[x] & 0xffffff
              : onWhite(
                  alpha / 255.0,
                  WHITE - alpha,
                  argb[x] >> 16 & 0xff,
                  argb[x] >> 8 & 0xff,
                  argb[x] & 0xff);
    }
  }

  private static int onWhite(double alpha, int white, int red, int green, int blue) {
    if (white == 0) {
      return red << 16 | green << 8 | blue;
    }
    return level(alpha * red + white) << 16
        | level(alpha * green + white) << 8
        | level(alpha * blue + white);
  }

  private static int level(double value) {
    return Math.min(WHITE, (int) (value + 0.5));
  }
}
