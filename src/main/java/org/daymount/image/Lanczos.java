package org.daymount.image;

import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * Resampling by two passes, first down the columns, then along the rows, of which there are fewer
 * by then. Each source row is added at once to the target rows that it has a part in, so only these
 * are held. Sample values are filtered as they are coded in sRGB; ringing beyond black or white is
 * cut.
 */
final class Lanczos {
  private static final int CHANNELS = 3;

  private final SrgbRows source;
  private final LanczosTaps across;
  private final LanczosTaps down;
  private final int width;
  private final int[] packed;
  // all of the reds, then the greens, then the blues
  private final float[] line;

  private Lanczos(SrgbRows source, LanczosTaps across, LanczosTaps down) {
    this.source = source;
    this.across = across;
    this.down = down;
    this.width = source.width();
    this.packed = new int[width];
    this.line = new float[width * CHANNELS];
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
    float[][] sums = new float[mostAtOnce()][line.length];
    int[] row = new int[across.targets()];
    int begun = 0;
    int done = 0;
    for (int y = down.first(0); done < down.targets(); y++) {
      readLine(y);
      for (; begun < down.targets() && down.first(begun) <= y; begun++) {
        Arrays.fill(sums[begun % sums.length], 0);
      }
      for (int target = done; target < begun; target++) {
        add(down.weights(target)[y - down.first(target)], sums[target % sums.length]);
      }
      for (; done < begun && down.end(done) == y + 1; done++) {
        filterAcross(sums[done % sums.length], row);
        result.getRaster().setDataElements(0, done, row.length, 1, row);
      }
    }
    return result;
  }

  /** Of how many target rows a source row is a part, at most. */
  private int mostAtOnce() {
    int most = 1;
    int done = 0;
    for (int target = 0; target < down.targets(); target++) {
      while (down.end(done) <= down.first(target)) {
        done++;
      }
      most = Math.max(most, target - done + 1);
    }
    return most;
  }

  private void readLine(int y) {
    source.read(y, packed);
    int green = width;
    int blue = 2 * width;
    for (int x = 0; x < packed.length; x++) {
      line[x] = packed[x] >> 16 & 0xff;
    }
    for (int x = 0; x < packed.length; x++) {
      line[green + x] = packed[x] >> 8 & 0xff;
    }
    for (int x = 0; x < packed.length; x++) {
      line[blue + x] = packed[x] & 0xff;
    }
  }

  private void add(float weight, float[] sum) {
    for (int i = 0; i < line.length; i++) {
      sum[i] += weight * line[i];
    }
  }

  private void filterAcross(float[] sum, int[] row) {
    for (int x = 0; x < row.length; x++) {
      float[] weights = across.weights(x);
      int red = across.first(x);
      int green = red + width;
      int blue = green + width;
      float reds = 0;
      float greens = 0;
      float blues = 0;
      for (int i = 0; i < weights.length; i++) {
        float weight = weights[i];
        reds += weight * sum[red + i];
        greens += weight * sum[green + i];
        blues += weight * sum[blue + i];
      }
      row[x] = level(reds) << 16 | level(greens) << 8 | level(blues);
    }
  }

  private static int level(float value) {
    return Math.min(255, Math.max(0, (int) (value + 0.5f)));
  }
}
