package org.daymount.image;

import java.awt.image.BufferedImage;

/**
 * Resampling by two passes, first along the rows, then down the columns. Only the filtered rows
 * that the next target row needs are held. Sample values are filtered as they are coded in sRGB;
 * ringing beyond black or white is cut.
 */
final class Lanczos {
  private static final int CHANNELS = 3;

  private final SrgbRows source;
  private final LanczosTaps across;
  private final LanczosTaps down;
  private final int[] packed;
  private final float[] line;

  private Lanczos(SrgbRows source, LanczosTaps across, LanczosTaps down) {
    this.source = source;
    this.across = across;
    this.down = down;
    this.packed = new int[source.width()];
    this.line = new float[source.width() * CHANNELS];
  }

  static BufferedImage resample(SrgbRows source, LanczosTaps across, LanczosTaps down) {
    return new Lanczos(source, across, down).run();
  }

  /** How many samples beside a window the filter may ask for at a reduction of {@code scale}. */
  static int reach(double scale) {
    return (int) Math.ceil(LanczosTaps.LOBES * Math.max(1, scale)) + 1;
  }

  private BufferedImage run() {
    BufferedImage result =
        new BufferedImage(across.targets(), down.targets(), BufferedImage.TYPE_INT_RGB);
    float[][] window = new float[mostRows()][across.targets() * CHANNELS];
    int[] row = new int[across.targets()];
    int next = 0;
    for (int y = 0; y < down.targets(); y++) {
      for (next = Math.max(next, down.first(y)); next < down.end(y); next++) {
        filterRow(next, window[next % window.length]);
      }
      filterColumns(y, window, row);
      result.getRaster().setDataElements(0, y, row.length, 1, row);
    }
    return result;
  }

  private int mostRows() {
    int most = 1;
    for (int y = 0; y < down.targets(); y++) {
      most = Math.max(most, down.weights(y).length);
    }
    return most;
  }

  private void filterRow(int y, float[] filtered) {
    source.read(y, packed);
    for (int x = 0, i = 0; x < packed.length; x++) {
      int rgb = packed[x];
      line[i++] = rgb >> 16 & 0xff;
      line[i++] = rgb >> 8 & 0xff;
      line[i++] = rgb & 0xff;
    }
    for (int x = 0, i = 0; x < across.targets(); x++) {
      float red = 0;
      float green = 0;
      float blue = 0;
      int from = across.first(x) * CHANNELS;
      for (float weight : across.weights(x)) {
        red += weight * line[from++];
        green += weight * line[from++];
        blue += weight * line[from++];
      }
      filtered[i++] = red;
      filtered[i++] = green;
      filtered[i++] = blue;
    }
  }

  private void filterColumns(int y, float[][] window, int[] row) {
    float[] sums = new float[row.length * CHANNELS];
    int sourceRow = down.first(y);
    for (float weight : down.weights(y)) {
      float[] filtered = window[sourceRow++ % window.length];
      for (int i = 0; i < sums.length; i++) {
        sums[i] += weight * filtered[i];
      }
    }
    for (int x = 0, i = 0; x < row.length; x++) {
      row[x] = level(sums[i++]) << 16 | level(sums[i++]) << 8 | level(sums[i++]);
    }
  }

  private static int level(float value) {
    return Math.min(255, Math.max(0, (int) (value + 0.5f)));
  }
}
