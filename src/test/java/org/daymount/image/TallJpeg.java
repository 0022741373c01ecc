package org.daymount.image;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A picture of hundreds of megapixels in no time: a strip is coded by cjpeg with a restart marker
 * behind each row of units, and the coded rows of each scan are written again and again. Absent:
 * the test is skipped.
 */
final class TallJpeg {
  private static final int FIRST_RESTART = 0xd0;

  private TallJpeg() {}

  /** Waves, edges and noise, as the portable pixmap cjpeg reads; half a phone photo's detail. */
  static byte[] strip(int width, int height) {
    Random chance = new Random(11);
    ByteArrayOutputStream ppm = new ByteArrayOutputStream();
    ppm.writeBytes(("P6\n" + width + " " + height + "\n255\n").getBytes(StandardCharsets.US_ASCII));
    byte[] rgb = new byte[3 * width];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double light = (x / 97 + y / 31) % 3 * 60 + 50 + 30 * Math.sin(x * 0.031 + y * 0.11);
        double noise = chance.nextInt(9) - 4;
        rgb[3 * x] = (byte) (int) (light + noise);
        rgb[3 * x + 1] = (byte) (int) (light * 0.9 + noise);
        rgb[3 * x + 2] = (byte) (int) (200 - light * 0.7 + noise);
      }
      ppm.writeBytes(rgb);
    }
    return ppm.toByteArray();
  }

  /**
   * @param strip coded with {@code -restart 1}, a multiple of 16 high
   * @param times how often it is repeated, downwards
   */
  static void write(byte[] strip, int times, Path file) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      int at = 2;
      out.write(strip, 0, 2);
      while (true) {
        int marker = strip[at + 1] & 0xff;
        if (marker == 0xd9) {
          out.write(strip, at, 2);
          return;
        }
        int length = (strip[at + 2] & 0xff) << 8 | strip[at + 3] & 0xff;
        byte[] segment = java.util.Arrays.copyOfRange(strip, at, at + 2 + length);
        at += 2 + length;
        if (marker == 0xc0 || marker == 0xc2) {
          int height = ((segment[5] & 0xff) << 8 | segment[6] & 0xff) * times;
          segment[5] = (byte) (height >> 8);
          segment[6] = (byte) height;
        }
        out.write(segment);
        if (marker == 0xda) {
          List<byte[]> rows = new ArrayList<>();
          at = rows(strip, at, rows);
          repeat(rows, times, out);
        }
      }
    }
  }

  /** The coded rows of a scan; returns where the next marker is. */
  private static int rows(byte[] strip, int from, List<byte[]> rows) {
    int start = from;
    int at = from;
    while (true) {
      if (strip[at] == (byte) 0xff && strip[at + 1] != 0) {
        rows.add(java.util.Arrays.copyOfRange(strip, start, at));
        if ((strip[at + 1] & 0xf8) != FIRST_RESTART) {
          return at;
        }
        at += 2;
        start = at;
      } else {
        at++;
      }
    }
  }

  private static void repeat(List<byte[]> rows, int times, OutputStream out) throws IOException {
    int restarts = 0;
    for (int i = 0; i < times; i++) {
      for (byte[] row : rows) {
        if (i > 0 || row != rows.get(0)) {
          out.write(0xff);
          out.write(FIRST_RESTART + restarts++ % 8);
        }
        out.write(row);
      }
    }
  }
}
