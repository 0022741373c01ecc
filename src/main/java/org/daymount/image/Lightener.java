package org.daymount.image;

import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * Makes pictures lighter for the print without changing their hues.
 *
 * <p>Red, green and blue get one factor, that of the strongest of them on the curve of {@link
 * Lightening}: so no colour runs out of what sRGB has, and one that is as strong as can be stays as
 * it is. The ratios of X, Y and Z stay too, and with them the hue of CIELAB wherever it takes cube
 * roots. In the darkest colours, where it takes a straight line instead, the lightness is taken
 * from that, and a* and b* keep their ratio; a colour that sRGB does not have then pales until it
 * does.
 */
public final class Lightener {
  private static final int LEVELS = 256;
  private static final int FINE = 1 << 16;
  private static final int HALVINGS = 20;
  private static final double ALMOST = 1e-4;
  private static final int REMEMBERED = 1 << 12; // colours; a power of two
  private static final double[] LINEAR = linear();
  private static final byte[] LEVEL = levels();

  private final double[] factor = new double[LEVELS];
  private final boolean none;

  public Lightener(Lightening lightening) {
    this.none = lightening.isNone();
    for (int level = 1; level < LEVELS; level++) {
      factor[level] = lightening.of(LINEAR[level]) / LINEAR[level];
    }
  }

  /**
   * @param picture sRGB, TYPE_INT_RGB; it stays as it is
   * @return another one, or the same when nothing is to be changed
   */
  public BufferedImage lighten(BufferedImage picture) {
    if (none) {
      return picture;
    }
    int width = picture.getWidth();
    BufferedImage lighter =
        new BufferedImage(width, picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    int[] line = new int[width];
    int[] known = new int[REMEMBERED];
    int[] answer = new int[REMEMBERED];
    Arrays.fill(known, -1);
    for (int y = 0; y < picture.getHeight(); y++) {
      picture.getRGB(0, y, width, 1, line, 0, width);
      for (int x = 0; x < width; x++) {
        int rgb = line[x] & 0xffffff;
        int at = (rgb * 0x9E3779B1) >>> 20;
        if (known[at] != rgb) {
          known[at] = rgb;
          answer[at] = lighten(rgb);
        }
        line[x] = answer[at];
      }
      lighter.setRGB(0, y, width, 1, line, 0, width);
    }
    return lighter;
  }

  /**
   * @param rgb eight bits each, red highest
   */
  int lighten(int rgb) {
    int red = rgb >> 16 & 0xff;
    int green = rgb >> 8 & 0xff;
    int blue = rgb & 0xff;
    double r = LINEAR[red];
    double g = LINEAR[green];
    double b = LINEAR[blue];
    double k = factor[Math.max(red, Math.max(green, blue))];
    if (none || k == 0) { // black
      return rgb;
    }
    return CieLab.isAboveStraight(r, g, b)
        ? packed(k * r, k * g, k * b)
        : dark(CieLab.of(r, g, b), CieLab.of(k * r, k * g, k * b)[0]);
  }

  /** The hue of a colour at another lightness, as strong as sRGB has it. */
  private static int dark(double[] lab, double light) {
    double grown = (light + 16) / (lab[0] + 16); // the cube root of the factor, where there is one
    double[] full = CieLab.toLinear(light, lab[1] * grown, lab[2] * grown);
    if (isInSrgb(full)) {
      return packed(full[0], full[1], full[2]);
    }
    double least = 0;
    double most = grown;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (least + most) / 2;
      if (isInSrgb(CieLab.toLinear(light, lab[1] * middle, lab[2] * middle))) {
        least = middle;
      } else {
        most = middle;
      }
    }
    double[] rgb = CieLab.toLinear(light, lab[1] * least, lab[2] * least);
    return packed(rgb[0], rgb[1], rgb[2]);
  }

  private static boolean isInSrgb(double[] rgb) {
    for (double part : rgb) {
      if (part < -ALMOST || part > 1 + ALMOST) {
        return false;
      }
    }
    return true;
  }

  private static int packed(double r, double g, double b) {
    return level(r) << 16 | level(g) << 8 | level(b);
  }

  private static int level(double light) {
    return LEVEL[(int) (Math.max(0, Math.min(1, light)) * FINE + 0.5)] & 0xff;
  }

  private static double[] linear() {
    double[] table = new double[LEVELS];
    for (int i = 0; i < LEVELS; i++) {
      table[i] = SrgbCurve.light(i / 255.0);
    }
    return table;
  }

  private static byte[] levels() {
    byte[] table = new byte[FINE + 1];
    for (int i = 0; i <= FINE; i++) {
      table[i] = (byte) (int) (SrgbCurve.sample(i / (double) FINE) * 255 + 0.5);
    }
    return table;
  }
}
