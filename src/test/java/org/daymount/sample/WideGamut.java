package org.daymount.sample;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/**
 * Display P3: DCI-P3 primaries, D65 white, the sRGB curve (CSS Color Module Level 4, 10.3), and the
 * ICC profile that says so (ICC.1:2001-04, matrix/TRC display profile).
 */
final class WideGamut {
  /** Chromaticities x, y of red, green, blue. */
  private static final double[][] P3 = {{.680, .320}, {.265, .690}, {.150, .060}};

  private static final double[][] SRGB = {{.640, .330}, {.300, .600}, {.150, .060}};
  private static final double[] D65 = {.3127 / .3290, 1, (1 - .3127 - .3290) / .3290};
  private static final double[] D50 = {.9642, 1, .8249};

  private WideGamut() {}

  private static double[][] toXyz(double[][] xy) {
    double[][] m = new double[3][3];
    for (int i = 0; i < 3; i++) {
      m[0][i] = xy[i][0] / xy[i][1];
      m[1][i] = 1;
      m[2][i] = (1 - xy[i][0] - xy[i][1]) / xy[i][1];
    }
    double[] s = times(inverse(m), D65);
    for (double[] row : m) {
      for (int i = 0; i < 3; i++) {
        row[i] *= s[i];
      }
    }
    return m;
  }

  private static double[][] inverse(double[][] m) {
    double[][] out = new double[3][3];
    double det = 0;
    for (int i = 0; i < 3; i++) {
      det += m[0][i] * minor(m, 0, i);
    }
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        out[c][r] = minor(m, r, c) / det;
      }
    }
    return out;
  }

  /** Cofactor, sign included by going round cyclically. */
  private static double minor(double[][] m, int r, int c) {
    int r1 = (r + 1) % 3;
    int r2 = (r + 2) % 3;
    int c1 = (c + 1) % 3;
    int c2 = (c + 2) % 3;
    return m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1];
  }

  private static double[] times(double[][] m, double[] v) {
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] = m[i][0] * v[0] + m[i][1] * v[1] + m[i][2] * v[2];
    }
    return out;
  }

  private static double linear(double s) {
    return s <= .04045 ? s / 12.92 : StrictMath.pow((s + .055) / 1.055, 2.4);
  }

  private static double coded(double v) {
    return v <= .0031308 ? v * 12.92 : 1.055 * StrictMath.pow(v, 1 / 2.4) - .055;
  }

  /** From sRGB numbers to P3 numbers, with the reds and greens let out as far as P3 goes. */
  static void convert(BufferedImage image) {
    double[][] in = toXyz(SRGB);
    double[][] out = inverse(toXyz(P3));
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        int rgb = image.getRGB(x, y);
        double[] v = {
          linear((rgb >> 16 & 255) / 255.0),
          linear((rgb >> 8 & 255) / 255.0),
          linear((rgb & 255) / 255.0)
        };
        double grey = .2126 * v[0] + .7152 * v[1] + .0722 * v[2];
        for (int i = 0; i < 3; i++) {
          v[i] = grey + (v[i] - grey) * 1.22; // beyond sRGB where the petal is reddest
        }
        double[] p = times(out, times(in, v));
        int packed = 0;
        for (int i = 0; i < 3; i++) {
          double c = coded(Math.max(0, Math.min(1, p[i])));
          packed = packed << 8 | (int) Math.round(c * 255);
        }
        image.setRGB(x, y, packed);
      }
    }
  }

  static byte[] profile() {
    double[][] bradford = {
      {.8951, .2664, -.1614}, {-.7502, 1.7135, .0367}, {.0389, -.0685, 1.0296}
    };
    double[] from = times(bradford, D65);
    double[] to = times(bradford, D50);
    double[][] xyz = toXyz(P3);
    ByteArrayOutputStream[] tags = new ByteArrayOutputStream[7];
    String[] names = {"desc", "cprt", "wtpt", "rXYZ", "gXYZ", "bXYZ", "rTRC"};
    tags[0] = description("Wide gamut of a phone, P3 with D65");
    tags[1] = new ByteArrayOutputStream();
    text(tags[1], "text\0\0\0\0No rights reserved\0");
    tags[2] = xyz(D50);
    for (int i = 0; i < 3; i++) {
      double[] cone = times(bradford, new double[] {xyz[0][i], xyz[1][i], xyz[2][i]});
      for (int k = 0; k < 3; k++) {
        cone[k] *= to[k] / from[k];
      }
      tags[3 + i] = xyz(times(inverse(bradford), cone));
    }
    tags[6] = new ByteArrayOutputStream();
    text(tags[6], "curv\0\0\0\0");
    number(tags[6], 1024, 4);
    for (int i = 0; i < 1024; i++) {
      number(tags[6], (int) Math.round(linear(i / 1023.0) * 65535), 2);
    }
    return assemble(names, tags);
  }

  private static byte[] assemble(String[] names, ByteArrayOutputStream[] tags) {
    ByteArrayOutputStream table = new ByteArrayOutputStream();
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    int start = 128 + 4 + 12 * 9;
    number(table, 9, 4);
    for (int i = 0; i < names.length; i++) {
      int at = start + data.size();
      int size = tags[i].size();
      data.writeBytes(tags[i].toByteArray());
      while (data.size() % 4 != 0) {
        data.write(0);
      }
      String[] same = i == 6 ? new String[] {"rTRC", "gTRC", "bTRC"} : new String[] {names[i]};
      for (String name : same) {
        text(table, name);
        number(table, at, 4);
        number(table, size, 4);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    number(out, start + data.size(), 4);
    number(out, 0, 4);
    number(out, 0x02400000, 4);
    text(out, "mntrRGB XYZ ");
    int[] date = {2026, 1, 1, 0, 0, 0};
    for (int part : date) {
      number(out, part, 2);
    }
    text(out, "acsp");
    for (int i = 0; i < 7; i++) {
      number(out, 0, 4);
    }
    out.writeBytes(Fixed.xyz(D50));
    while (out.size() < 128) {
      out.write(0);
    }
    out.writeBytes(table.toByteArray());
    out.writeBytes(data.toByteArray());
    return out.toByteArray();
  }

  /** Fixed-point triples, as the header has them. */
  private static final class Fixed {
    static byte[] xyz(double[] v) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      for (double d : v) {
        number(out, (int) Math.round(d * 65536), 4);
      }
      return out.toByteArray();
    }
  }

  private static ByteArrayOutputStream xyz(double[] v) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    text(out, "XYZ \0\0\0\0");
    out.writeBytes(Fixed.xyz(v));
    return out;
  }

  private static ByteArrayOutputStream description(String words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    text(out, "desc\0\0\0\0");
    number(out, words.length() + 1, 4);
    text(out, words + "\0");
    for (int i = 0; i < 78; i++) {
      out.write(0);
    }
    return out;
  }

  private static void text(ByteArrayOutputStream out, String text) {
    out.writeBytes(text.getBytes(StandardCharsets.US_ASCII));
  }

  private static void number(ByteArrayOutputStream out, int value, int bytes) {
    for (int shift = (bytes - 1) * 8; shift >= 0; shift -= 8) {
      out.write(value >>> shift & 255);
    }
  }
}
