package org.daymount.image;

import java.awt.color.ICC_Profile;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A small display profile of three primaries and the curve of sRGB (ICC.1:2010, version 4.3: 8.3
 * required tags, 10.16 parametricCurveType).
 */
final class MatrixProfile {
  private static final double[] D50 = {0.9642, 1, 0.8249};

  /** Display P3 (W3C CSS Color 4, 10.4), adapted to D50 with the Bradford matrix. */
  private static final double[][] DISPLAY_P3 = {
    {0.51512, 0.24120, -0.00105}, {0.29198, 0.69225, 0.04189}, {0.15710, 0.06657, 0.78407}
  };

  /** IEC 61966-2-1, 5.2: gamma, a, b, c, d. */
  private static final double[] SRGB_CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

  private MatrixProfile() {}

  static ICC_Profile displayP3() {
    Map<String, byte[]> tags = new LinkedHashMap<>();
    tags.put("desc", text("P3"));
    tags.put("cprt", text("none"));
    tags.put("wtpt", xyz(D50));
    for (int i = 0; i < 3; i++) {
      tags.put("rgb".charAt(i) + "XYZ", xyz(DISPLAY_P3[i]));
      tags.put("rgb".charAt(i) + "TRC", curve());
    }
    return profile(tags);
  }

  private static byte[] text(String text) {
    ByteBuffer tag = ByteBuffer.allocate(28 + 2 * text.length());
    tag.put(ascii("mluc")).putInt(0).putInt(1).putInt(12);
    tag.put(ascii("enUS")).putInt(2 * text.length()).putInt(28);
    tag.put(text.getBytes(StandardCharsets.UTF_16BE));
    return tag.array();
  }

  private static byte[] xyz(double[] values) {
    ByteBuffer tag = ByteBuffer.allocate(20).put(ascii("XYZ ")).putInt(0);
    putFixed(tag, values);
    return tag.array();
  }

  private static byte[] curve() {
    ByteBuffer tag = ByteBuffer.allocate(32).put(ascii("para")).putInt(0);
    tag.putShort((short) 3).putShort((short) 0);
    putFixed(tag, SRGB_CURVE);
    return tag.array();
  }

  /** s15Fixed16. */
  private static void putFixed(ByteBuffer tag, double[] values) {
    for (double value : values) {
      tag.putInt((int) Math.round(value * 65536));
    }
  }

  private static ICC_Profile profile(Map<String, byte[]> tags) {
    int start = 128 + 4 + 12 * tags.size();
    int size = start + tags.values().stream().mapToInt(tag -> padded(tag.length)).sum();
    ByteBuffer file = ByteBuffer.allocate(size);
    file.putInt(size).putInt(0).putInt(0x04300000);
    file.put(ascii("mntr")).put(ascii("RGB ")).put(ascii("XYZ "));
    file.position(36).put(ascii("acsp"));
    file.position(68);
    putFixed(file, D50);
    file.position(128).putInt(tags.size());
    int at = start;
    for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
      byte[] content = tag.getValue();
      file.put(ascii(tag.getKey())).putInt(at).putInt(content.length);
      file.put(at, content);
      at += padded(content.length);
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
