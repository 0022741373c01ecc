package org.daymount.image;

import java.awt.color.ICC_Profile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Colour profiles computed from published primaries: matrix/TRC display profiles of version 2.1
 * (ICC.1:2001-04; 6.1 header, 6.5.5 curveType) and 4.3 (ICC.1:2010; 10.16 parametricCurveType),
 * white adapted to D50 with the Bradford matrix; and one of version 4.3 that is a table.
 */
final class TestProfiles {
  private static final double[] D65 = {0.3127, 0.3290};
  private static final double[] D50 = {0.3457, 0.3585};
  private static final int VERSION_2 = 0x02100000;
  private static final int VERSION_4 = 0x04300000;
  private static final double[] D50_XYZ = {0.9642, 1, 0.8249}; // ICC.1:2001-04, 6.1.12
  private static final double[][] BRADFORD = {
    {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
  };
  private static final int CURVE_POINTS = 4096;
  private static final int GRID = 17;
  private static final double[][] P3 = {{0.680, 0.320}, {0.265, 0.690}, {0.150, 0.060}};
  private static final double[][] ADOBE = {{0.64, 0.33}, {0.21, 0.71}, {0.15, 0.06}};

  private TestProfiles() {}

  /** W3C CSS Color 4, 10.4: the primaries of DCI-P3, white D65, the curve of sRGB. */
  static ICC_Profile displayP3() {
    return rgb(P3, D65, VERSION_2, curve(TestProfiles::srgbDecoded));
  }

  /** The same with the curve as a formula: function 3, gamma a b c d (IEC 61966-2-1:1999, 5.2). */
  static ICC_Profile displayP3Version4() {
    return rgb(P3, D65, VERSION_4, formula(3, 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045));
  }

  /** Adobe RGB (1998) Color Image Encoding, version 2005-05, 4.3.1: gamma 2.19921875. */
  static ICC_Profile adobeRgb() {
    return rgb(ADOBE, D65, VERSION_2, curve(v -> Math.pow(v, 563 / 256.0)));
  }

  /** The same with the curve as a formula: function 0, gamma. */
  static ICC_Profile adobeRgbVersion4() {
    return rgb(ADOBE, D65, VERSION_4, formula(0, 563 / 256.0));
  }

  /** ROMM RGB (ProPhoto): ISO 22028-2, values from memory; gamma 1.8 with a straight foot. */
  static ICC_Profile proPhoto() {
    return rgb(
        new double[][] {{0.7347, 0.2653}, {0.1596, 0.8404}, {0.0366, 0.0001}},
        D50,
        VERSION_2,
        curve(v -> v < 1 / 32.0 ? v / 16 : Math.pow(v, 1.8)));
  }

  /**
   * A table of 17 x 17 x 17 colours in Lab (ICC.1:2010, 10.10 lut16Type), for the primaries of
   * Adobe RGB and gamma 2: as printers' and scanners' profiles are built.
   */
  static ICC_Profile table() {
    double[][] toXyz = columns(ADOBE, D65);
    ByteBuffer tag =
        ByteBuffer.allocate(52 + 2 * (6 + 3 * GRID * GRID * GRID + 6)).put(ascii("mft2")).putInt(0);
    tag.put((byte) 3).put((byte) 3).put((byte) GRID).put((byte) 0);
    for (int i = 0; i < 9; i++) {
      tag.putInt(i % 4 == 0 ? 65536 : 0);
    }
    tag.putShort((short) 2).putShort((short) 2);
    straight(tag);
    for (int n = 0; n < GRID * GRID * GRID; n++) {
      double[] rgb = {n / GRID / GRID, n / GRID % GRID, n % GRID};
      for (int i = 0; i < 3; i++) {
        rgb[i] = Math.pow(rgb[i] / (GRID - 1), 2);
      }
      putLab(tag, times(toXyz, rgb));
    }
    straight(tag);
    Map<String, byte[]> tags = common(VERSION_4);
    tags.put("A2B0", tag.array());
    return profile(VERSION_4, "RGB ", "Lab ", tags);
  }

  private static void straight(ByteBuffer tag) {
    for (int i = 0; i < 3; i++) {
      tag.putShort((short) 0).putShort((short) 0xffff);
    }
  }

  /** CIE Lab by its definition, in lut16Type's own code: 100 is 0xff00, and 0 of a is 0x8000. */
  private static void putLab(ByteBuffer tag, double[] xyz) {
    double[] f = new double[3];
    for (int i = 0; i < 3; i++) {
      double t = xyz[i] / D50_XYZ[i];
      f[i] = t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }
    tag.putShort((short) Math.round((116 * f[1] - 16) / 100 * 0xff00));
    tag.putShort((short) Math.round((500 * (f[0] - f[1]) + 128) * 256));
    tag.putShort((short) Math.round((200 * (f[1] - f[2]) + 128) * 256));
  }

  static ICC_Profile grey(double gamma) {
    Map<String, byte[]> tags = common(VERSION_2);
    tags.put("kTRC", curve(v -> Math.pow(v, gamma)));
    return profile(VERSION_2, "GRAY", "XYZ ", tags);
  }

  /** IEC 61966-2-1:1999, 5.2. */
  static double srgbDecoded(double v) {
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }

  private static ICC_Profile rgb(double[][] primaries, double[] white, int version, byte[] curve) {
    double[][] toXyz = columns(primaries, white);
    Map<String, byte[]> tags = common(version);
    for (int i = 0; i < 3; i++) {
      tags.put(
          "rgb".charAt(i) + "XYZ", xyzTag(new double[] {toXyz[0][i], toXyz[1][i], toXyz[2][i]}));
      tags.put("rgb".charAt(i) + "TRC", curve);
    }
    return profile(version, "RGB ", "XYZ ", tags);
  }

  /** From light in these primaries to XYZ D50. */
  private static double[][] columns(double[][] primaries, double[] white) {
    double[][] columns = new double[3][3];
    for (int i = 0; i < 3; i++) {
      double[] xyz = xyz(primaries[i]);
      for (int row = 0; row < 3; row++) {
        columns[row][i] = xyz[row];
      }
    }
    double[] amounts = times(inverse(columns), xyz(white));
    for (double[] row : columns) {
      for (int i = 0; i < 3; i++) {
        row[i] *= amounts[i];
      }
    }
    return times(adaptation(xyz(white), D50_XYZ), columns);
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

  private static Map<String, byte[]> common(int version) {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    if (version == VERSION_4) {
      tags.put("desc", text4("made by a test"));
      tags.put("cprt", text4("none"));
      tags.put("wtpt", xyzTag(D50_XYZ));
      return tags;
    }
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

  /** ICC.1:2010, 10.13 multiLocalizedUnicodeType. */
  private static byte[] text4(String text) {
    ByteBuffer tag = ByteBuffer.allocate(28 + 2 * text.length()).put(ascii("mluc")).putInt(0);
    tag.putInt(1).putInt(12).put(ascii("enUS")).putInt(2 * text.length()).putInt(28);
    return tag.put(text.getBytes(StandardCharsets.UTF_16BE)).array();
  }

  private static byte[] formula(int function, double... parameters) {
    ByteBuffer tag = ByteBuffer.allocate(12 + 4 * parameters.length).put(ascii("para")).putInt(0);
    tag.putShort((short) function).putShort((short) 0);
    for (double parameter : parameters) {
      tag.putInt((int) Math.round(parameter * 65536));
    }
    return tag.array();
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

  private static ICC_Profile profile(
      int version, String colours, String between, Map<String, byte[]> tags) {
    int start = 128 + 4 + 12 * tags.size();
    int size = start;
    for (byte[] tag : tags.values()) {
      size += padded(tag.length);
    }
    ByteBuffer file = ByteBuffer.allocate(size);
    file.putInt(size).putInt(0).putInt(version);
    file.put(ascii("mntr")).put(ascii(colours)).put(ascii(between));
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
