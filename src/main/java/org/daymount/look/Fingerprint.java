package org.daymount.look;

import java.util.List;

/**
 * What a picture looks like from afar, for telling bursts and copies: 128 bits of neighbour
 * differences (8 rows of 8 horizontal, 8 of 8 vertical) and the first three colour moments of each
 * cell of a 3 by 3 grid.
 *
 * @param horizontal 64 bits, one per comparison with the cell to the right
 * @param vertical 64 bits, one per comparison with the cell below
 * @param moments 3 x 3 cells x 3 channels x 3 moments, each scaled to 0..1
 * @param miniature for finding a closer crop in its whole
 */
public record Fingerprint(
    long horizontal, long vertical, List<Float> moments, Miniature miniature) {
  public Fingerprint(long horizontal, long vertical, List<Float> moments) {
    this(horizontal, vertical, moments, Miniature.NONE);
  }

  public Fingerprint {
    moments = List.copyOf(moments);
  }

  /** Number of differing bits, 0 to 128. */
  public int bitsApart(Fingerprint other) {
    return Long.bitCount(horizontal ^ other.horizontal) + Long.bitCount(vertical ^ other.vertical);
  }

  /** Root mean square difference of the colour moments, 0 to 1. */
  public double coloursApart(Fingerprint other) {
    double sum = 0;
    for (int i = 0; i < moments.size(); i++) {
      double difference = moments.get(i) - other.moments.get(i);
      sum += difference * difference;
    }
    return Math.sqrt(sum / moments.size());
  }
}
