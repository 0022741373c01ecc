package org.daymount.image;

import java.awt.color.ICC_Profile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Colour profiles computed from published primaries: matrix/TRC display profiles of version 2.1
 * (ICC.1:2001-04; 6.1 header, 6.5.5 curveType), white adapted from D65 to D50 with the Bradford
 * matrix.
 */
final class TestProfiles {
  private static final double[] D65 = {0.3127, 0.3290};
  private static final double[] D50_XYZ = {0.9642, 1, 0.8249}; // ICC.1:2001-04, 6.1.12
  private static final double[][] BRADFORD = {
    {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
  };
  private static final int CURVE_POINTS = 4096;

  private TestProfiles() {}

  /** W3C CSS Color 4, 10.4: the primaries of DCI-P3, white D65, the curve of sRGB. */
  static ICC_Profile displayP3() {
    return rgb(
        new double[][] {{0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060}}, TestProfiles::srgbDecoded);
  }

  /** Adobe RGB (1998) Color Image Encoding, version 2005-05, 4.3.1: gamma 2.19921875. */
  static ICC_Profile adobeRgb() {
    return rgb(
        new double[][] {{0.64, 0.33}, {0.21, 0.71}, {0.15, 0.06}}, v -> Math.pow(v, 563 / 256.0));
  }

  static ICC_Profile grey(double gamma) {
    Map<String, byte[]> tags = common();
    tags.put("kTRC", curve(v -> Math.pow(v, gamma)));
    return profile("GRAY", tags);
  }

  /** IEC 61966-2-1:1999, 5.2. */
  static double srgbDecoded(double v) {
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static ICC_Profile rgb(double[][] primaries, DoubleUnaryOperator decoded) {
    double[][] columns = new double[3][3];
    for (int i = 0; i < 3; i++) {
      double[] xyz = xyz(primaries[i]);
      for (int row = 0; row < 3; row++) {
        columns[row][i] = xyz[row];
      }
    }
    double[] amounts = times(inverse(columns), xyz(D65));
    double[][] adaptation = adaptation(xyz(D65), D50_XYZ);
    Map<String, byte[]> tags = common();
    for (int i = 0; i < 3; i++) {
      double[] xyz = xyz(primaries[i]);
      for (int row = 0; row < 3; row++) {
        xyz[row] *= amounts[i];
      }
      tags.put("rgb".charAt(i) + "XYZ", xyzTag(times(adaptation, xyz)));
      tags.put("rgb".charAt(i) + "TRC", curve(decoded));
    }
    return profile("RGB ", tags);
  }

  private static double[] xyz(double[] xy) {
    return new double[] {xy[0] / xy[1], 1, (1 - xy[0] - xy[1]) / xy[1]};
  }

  private static double[][] adaptation(double[] from, double[] to) {
    double[] fromCones = times(BRADFORD, from);
    double[] toCones = times(BRADFORD, to);
    double[][] scaled = new double[3][3];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        scaled[row][column] = BRADFORD[row][column] * toCones[row] / fromCones[row];
      }
    }
    return times(inverse(BRADFORD), scaled);
  }

  private static double[] times(double[][] m, double[] v) {
    double[] product = new double[3];
    for (int row = 0; row < 3; row++) {
      product[row] = m[row][0] * v[0] + m[row][1] * v[1] + m[row][2] * v[2];
    }
    return product;
  }

  private static double[][] times(double[][] a, double[][] b) {
    double[][] product = new double[3][3];
    for (int column = 0; column < 3; column++) {
      double[] v = times(a, new double[] {b[0][column], b[1][column], b[2][column]});
      for (int row = 0; row < 3; row++) {
        product[row][column] = v[row];
      }
    }
    return product;
  }

  private static double[][] inverse(double[][] m) {
    double[][] cofactors = new double[3][3];
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        cofactors[r][c] =
            m[(r + 1) % 3][(c + 1) % 3] * m[(r + 2) % 3][(c + 2) % 3]
                - m[(r + 1) % 3][(c + 2) % 3] * m[(r + 2) % 3][(c + 1) % 3];
      }
    }
    double determinant =
        m[0][0] * cofactors[0][0] + m[0][1] * cofactors[0][1] + m[0][2] * cofactors[0][2];
    double[][] inverse = new double[3][3];
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        inverse[r][c] = cofactors[c][r] / determinant;
      }
    }
    return inverse;
  }

  private static Map<String, byte[]> common() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    byte[] name = "made by a test\0".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer description = ByteBuffer.allocate(12 + name.length + 78);
    description.put(ascii("desc")).putInt(0).putInt(name.length).put(name);
    tags.put("desc", description.array());
    tags.put(
        "cprt",
        ByteBuffer.allocate(8 + name.length).put(ascii("text")).putInt(0).put(name).array());
    tags.put("wtpt", xyzTag(D50_XYZ));
    return tags;
  }

  private static byte[] xyzTag(double[] xyz) {
    ByteBuffer tag = ByteBuffer.allocate(20).put(ascii("XYZ ")).putInt(0);
    for (double v : xyz) {
      tag.putInt((int) Math.round(v * 65536));
    }
    return tag.array();
  }

  private static byte[] curve(DoubleUnaryOperator decoded) {
    ByteBuffer tag = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
    tag.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
    for (int i = 0; i < CURVE_POINTS; i++) {
      tag.putShort((short) Math.round(65535 * decoded.applyAsDouble(i / (CURVE_POINTS - 1.0))));
    }
    return tag.array();
  }

  private static ICC_Profile profile(String colours, Map<String, byte[]> tags) {
    int start = 128 + 4 + 12 * tags.size();
    int size = start;
    for (byte[] tag : tags.values()) {
      size += padded(tag.length);
    }
    ByteBuffer file = ByteBuffer.allocate(size);
    file.putInt(size).putInt(0).putInt(0x02100000);
    file.put(ascii("mntr")).put(ascii(colours)).put(ascii("XYZ "));
    file.position(36);
    file.put(ascii("acsp"));
    file.position(68);
    for (double v : D50_XYZ) {
      file.putInt((int) Math.round(v * 65536));
    }
    file.position(128);
    file.putInt(tags.size());
    int at = start;
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      file.put(ascii(tag.getKey())).putInt(at).putInt(tag.getValue().length);
      at += padded(tag.getValue().length);
    }
    for (byte[] tag : tags.values()) {
      file.put(tag);
      file.position(file.position() + padded(tag.length) - tag.length);
    }
    return ICC_Profile.getInstance(file.array());
  }

  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }

  private static byte[] ascii(String four) {
    return four.getBytes(StandardCharsets.US_ASCII);
  }
}
