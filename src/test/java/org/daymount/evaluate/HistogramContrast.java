package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;
import org.daymount.look.SaliencyMap;

/**
 * A yardstick for the program's own subject map: how unlike the rest of the picture a colour is
 * (Cheng et al., "Global contrast based salient region detection", CVPR 2011; here over 8 x 8 x 8
 * sRGB bins with distances in sRGB), times a Gaussian around the centre.
 */
final class HistogramContrast {
  private static final int COLUMNS = 48;
  private static final int BINS = 8;
  private static final double CENTRE_SIGMA = 0.3;

  private HistogramContrast() {}

  static SaliencyMap map(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    Map<Integer, double[]> bins = new HashMap<>(); // count, sums of r, g, b
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int rgb = picture.getRGB(x, y);
        double[] bin = bins.computeIfAbsent(bin(rgb), key -> new double[4]);
        bin[0]++;
        bin[1] += (rgb >> 16) & 0xff;
        bin[2] += (rgb >> 8) & 0xff;
        bin[3] += rgb & 0xff;
      }
    }
    Map<Integer, Double> contrast = new HashMap<>();
    bins.forEach((key, bin) -> contrast.put(key, contrast(bin, bins)));
    int rows = Math.max(1, COLUMNS * height / width);
    float[] weights = new float[COLUMNS * rows];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double dx = ((x + 0.5) / width - 0.5) / CENTRE_SIGMA;
        double dy = ((y + 0.5) / height - 0.5) / CENTRE_SIGMA;
        int cell = y * rows / height * COLUMNS + x * COLUMNS / width;
        weights[cell] +=
            (float) (contrast.get(bin(picture.getRGB(x, y))) * Math.exp(-(dx * dx + dy * dy) / 2));
      }
    }
    return new SaliencyMap(COLUMNS, rows, weights);
  }

  private static int bin(int rgb) {
    int r = ((rgb >> 16) & 0xff) * BINS / 256;
    int g = ((rgb >> 8) & 0xff) * BINS / 256;
    int b = (rgb & 0xff) * BINS / 256;
    return (r * BINS + g) * BINS + b;
  }

  private static double contrast(double[] one, Map<Integer, double[]> bins) {
    double sum = 0;
    for (double[] other : bins.values()) {
      double squared = 0;
      for (int c = 1; c < 4; c++) {
        double difference = one[c] / one[0] - other[c] / other[0];
        squared += difference * difference;
      }
      sum += other[0] * Math.sqrt(squared);
    }
    return sum;
  }
}
