package org.daymount.image;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.ByteBuffer;
import java.util.Optional;

/**
 * From the 8-bit colours of a three-primaries profile (ICC.1:2010, 8.3.3: matrix/TRC) to sRGB: each
 * sample through its curve, a matrix by way of XYZ D50, the curve of sRGB. What lies outside sRGB
 * is cut off at its edge. The same as the JDK's colour engine does, within one level, at a tenth of
 * its time (measured on 12 megapixels of Display P3).
 */
final class MatrixConversion {
  private static final int XYZ = 0x58595a20;
  private static final int CURVE = 0x63757276; // curv
  private static final int PARAMETRIC = 0x70617261; // para
  private static final int[] COLORANTS = {
    ICC_Profile.icSigRedColorantTag,
    ICC_Profile.icSigGreenColorantTag,
    ICC_Profile.icSigBlueColorantTag
  };
  private static final int[] CURVES = {
    ICC_Profile.icSigRedTRCTag, ICC_Profile.icSigGreenTRCTag, ICC_Profile.icSigBlueTRCTag
  };
  private static final int FINEST = 65_535;
  private static final byte[] ENCODED = encoded();

  private final float[] red = new float[3 * 256]; // what each red sample adds to R, G and B
  private final float[] green = new float[3 * 256];
  private final float[] blue = new float[3 * 256];

  private MatrixConversion(ICC_Profile profile) {
    double[][] toSrgb = Matrix3.inverse(colorants(ICC_Profile.getInstance(ColorSpace.CS_sRGB)));
    double[][] own = colorants(profile);
    float[][] parts = {red, green, blue};
    for (int channel = 0; channel < 3; channel++) {
      double[] linear = linear(profile, CURVES[channel]);
      for (int row = 0; row < 3; row++) {
        double factor = 0;
        for (int k = 0; k < 3; k++) {
          factor += toSrgb[row][k] * own[k][channel];
        }
        for (int v = 0; v < 256; v++) {
          parts[channel][3 * v + row] = (float) (factor * linear[v] * FINEST);
        }
      }
    }
  }

  /** Empty for profiles of any other build. */
  static Optional<MatrixConversion> of(ICC_Profile profile) {
    try {
      boolean matrix =
          profile.getColorSpaceType() == ColorSpace.TYPE_RGB
              && profile.getPCSType() == ColorSpace.TYPE_XYZ
              && profile.getData(ICC_Profile.icSigAToB0Tag) == null;
      return matrix ? Optional.of(new MatrixConversion(profile)) : Optional.empty();
    } catch (IllegalArgumentException | CMMException | IndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  /** 0xRRGGBB. */
  int srgb(int r, int g, int b) {
    int i = 3 * r;
    int j = 3 * g;
    int k = 3 * b;
    return level(red[i] + green[j] + blue[k]) << 16
        | level(red[i + 1] + green[j + 1] + blue[k + 1]) << 8
        | level(red[i + 2] + green[j + 2] + blue[k + 2]);
  }

  private static int level(float linear) {
    return ENCODED[Math.max(0, Math.min(FINEST, (int) (linear + 0.5f)))] & 0xff;
  }

  /** Of 65,536 steps of light. */
  private static byte[] encoded() {
    byte[] encoded = new byte[FINEST + 1];
    for (int i = 0; i <= FINEST; i++) {
      encoded[i] = (byte) Math.round(255 * SrgbCurve.sample(i / (double) FINEST));
    }
    return encoded;
  }

  /** Rows X, Y, Z; a column for each primary. */
  private static double[][] colorants(ICC_Profile profile) {
    double[][] columns = new double[3][3];
    for (int channel = 0; channel < 3; channel++) {
      ByteBuffer tag = tag(profile, COLORANTS[channel], XYZ);
      for (int row = 0; row < 3; row++) {
        columns[row][channel] = fixed(tag, 8 + 4 * row);
      }
    }
    return columns;
  }

  private static ByteBuffer tag(ICC_Profile profile, int name, int type) {
    byte[] data = profile.getData(name);
    if (data == null || data.length < 12) {
      throw new IllegalArgumentException("a tag is missing");
    }
    ByteBuffer tag = ByteBuffer.wrap(data);
    if (type != 0 && tag.getInt(0) != type) {
      throw new IllegalArgumentException("a tag is of another type");
    }
    return tag;
  }

  private static double fixed(ByteBuffer tag, int at) {
    return tag.getInt(at) / 65536.0;
  }

  /** Light of each of the 256 levels, 0 to 1. */
  private static double[] linear(ICC_Profile profile, int name) {
    ByteBuffer tag = tag(profile, name, 0);
    double[] light = new double[256];
    for (int i = 0; i < light.length; i++) {
      double v = i / 255.0;
      double value =
          switch (tag.getInt(0)) {
            case CURVE -> sampled(tag, v);
            case PARAMETRIC -> parametric(tag, v);
            default -> throw new IllegalArgumentException("an unknown curve");
          };
      light[i] = Math.max(0, Math.min(1, value));
    }
    return light;
  }

  /** curveType, 10.5: nothing, a gamma, or points in between which lines are drawn. */
  private static double sampled(ByteBuffer tag, double v) {
    int points = tag.getInt(8);
    if (points == 0) {
      return v;
    }
    if (points == 1) {
      return Math.pow(v, (tag.getShort(12) & 0xffff) / 256.0);
    }
    if (points < 0 || tag.capacity() < 12 + 2L * points) {
      throw new IllegalArgumentException("a curve is cut off");
    }
    double at = v * (points - 1);
    int before = (int) Math.min(at, points - 2.0);
    double low = tag.getShort(12 + 2 * before) & 0xffff;
    double high = tag.getShort(14 + 2 * before) & 0xffff;
    return (low + (at - before) * (high - low)) / 65535;
  }

  /** parametricCurveType, 10.16, functions 0 to 4. */
  private static double parametric(ByteBuffer tag, double v) {
    int function = tag.getShort(8);
    double[] p = new double[7]; // g a b c d e f
    int given = new int[] {1, 3, 4, 5, 7}[function];
    for (int i = 0; i < given; i++) {
      p[i] = fixed(tag, 12 + 4 * i);
    }
    return switch (function) {
      case 0 -> Math.pow(v, p[0]);
      case 1 -> v >= -p[2] / p[1] ? Math.pow(p[1] * v + p[2], p[0]) : 0;
      case 2 -> v >= -p[2] / p[1] ? Math.pow(p[1] * v + p[2], p[0]) + p[3] : p[3];
      case 3 -> v >= p[4] ? Math.pow(p[1] * v + p[2], p[0]) : p[3] * v;
      default -> v >= p[4] ? Math.pow(p[1] * v + p[2], p[0]) + p[5] : p[3] * v + p[6];
    };
  }
}
