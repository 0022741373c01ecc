package org.daymount.image.jpeg;

import java.util.Optional;
import org.daymount.unit.PixelSize;

/** How many times smaller than stored a picture is decoded, each way. */
public enum Reduction {
  NONE(1),
  HALF(2),
  QUARTER(4),
  EIGHTH(8);

  private final int factor;

  Reduction(int factor) {
    this.factor = factor;
  }

  public int factor() {
    return factor;
  }

  /** Pixels along a side that are left of a block of 8. */
  int blockSide() {
    return Block.SIDE / factor;
  }

  /** The last row and column may stand for fewer stored pixels than the others. */
  public PixelSize of(PixelSize stored) {
    return new PixelSize(
        (stored.width() + factor - 1) / factor, (stored.height() + factor - 1) / factor);
  }

  /**
   * The greatest one but {@link #NONE} that leaves a long edge of at least {@code longEdge} whole
   * pixels.
   */
  public static Optional<Reduction> leaving(int longEdge, PixelSize stored) {
    Optional<Reduction> greatest = Optional.empty();
    for (Reduction reduction : values()) {
      if (reduction != NONE && stored.longEdge() / reduction.factor >= longEdge) {
        greatest = Optional.of(reduction);
      }
    }
    return greatest;
  }
}
