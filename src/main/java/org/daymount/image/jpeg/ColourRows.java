package org.daymount.image.jpeg;

import org.daymount.unit.PixelSize;

/**
 * Rows of a colour difference at the resolution of brightness. Where it has fewer samples, each
 * lies in the middle of the pixels it stands for (ITU-T T.871, 10), and what is between two is
 * interpolated.
 */
final class ColourRows {
  private static final int BITS = 8; // of an interpolation's weights

  private final Component component;
  private final Span across;
  private final Span down;
  private final int[] blended;

  /** For each pixel the sample before it and the weight of the one after, of 256. */
  private record Span(int[] before, int[] after, int[] weight) {
    static Span of(int pixels, int ratio, int samples) {
      int[] before = new int[pixels];
      int[] after = new int[pixels];
      int[] weight = new int[pixels];
      for (int i = 0; i < pixels; i++) {
        int place = ((2 * i + 1) << BITS) / (2 * ratio) - (1 << BITS - 1); // in samples, times 256
        int sample = place >> BITS;
        before[i] = Math.max(0, Math.min(sample, samples - 1));
        after[i] = Math.max(0, Math.min(sample + 1, samples - 1));
        weight[i] = place & (1 << BITS) - 1;
      }
      return new Span(before, after, weight);
    }
  }

  ColourRows(Component component, Frame frame, PixelSize size) {
    this.component = component;
    int ratioAcross = frame.mostAcross() / component.across;
    int ratioDown = frame.mostDown() / component.down;
    int columns = (size.width() + ratioAcross - 1) / ratioAcross;
    int rows = (size.height() + ratioDown - 1) / ratioDown;
    across = Span.of(size.width(), ratioAcross, columns);
    down = Span.of(size.height(), ratioDown, rows);
    blended = new int[columns];
  }

  /**
   * @param row takes the values, -128 to 127, one for each pixel
   */
  void read(int y, int[] row) {
    byte[] samples = component.samples();
    int above = down.before[y] * component.stride();
    int below = down.after[y] * component.stride();
    int weight = down.weight[y];
    for (int x = 0; x < blended.length; x++) {
      int first = samples[above + x] & 0xff;
      int second = samples[below + x] & 0xff;
      blended[x] = (first << BITS) + (second - first) * weight;
    }
    int half = 1 << 2 * BITS - 1;
    for (int x = 0; x < row.length; x++) {
      int first = blended[across.before[x]];
      int second = blended[across.after[x]];
      row[x] = ((first << BITS) + (second - first) * across.weight[x] + half >> 2 * BITS) - 128;
    }
  }
}
