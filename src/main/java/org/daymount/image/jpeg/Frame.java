package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The frame header (B.2.2): the picture's size and its components. A picture is coded in minimum
 * coded units (A.2), each holding a few blocks of every component: for brightness at twice the
 * resolution of colour both ways, 2 x 2 blocks of brightness and one of each colour difference.
 *
 * @param mostAcross the largest horizontal sampling factor
 * @param mostDown the largest vertical one
 */
record Frame(
    int width,
    int height,
    boolean progressive,
    List<Component> components,
    int mostAcross,
    int mostDown) {

  private static final long MOST_SAMPLES = 200_000_000;

  static Frame read(MarkerReader in, boolean progressive) throws IOException {
    int bits = in.u8();
    if (bits != 8) {
      throw new JpegRefused("has " + bits + " bits a sample, only 8 are read");
    }
    int height = in.u16();
    int width = in.u16();
    int count = in.u8();
    if (width == 0 || height == 0) {
      throw new JpegDamaged("its header does not say its size");
    }
    if (in.left() != 3 * count || count == 0) {
      throw new JpegDamaged("its header is broken");
    }
    List<Component> components = new ArrayList<>();
    int mostAcross = 1;
    int mostDown = 1;
    for (int i = 0; i < count; i++) {
      int id = in.u8();
      int sampling = in.u8();
      int across = sampling >> 4;
      int down = sampling & 15;
      int table = in.u8();
      if (across < 1 || across > 4 || down < 1 || down > 4 || table > 3) {
        throw new JpegDamaged("its header is broken");
      }
      components.add(new Component(id, across, down, table));
      mostAcross = Math.max(mostAcross, across);
      mostDown = Math.max(mostDown, down);
    }
    return new Frame(width, height, progressive, List.copyOf(components), mostAcross, mostDown);
  }

  /**
   * @throws JpegRefused for divisions that only full decoders read
   */
  void refuseOtherDivisions() throws JpegRefused {
    int count = components.size();
    if (count != 1 && count != 3) {
      throw new JpegRefused("has " + count + " components, only grey and colour are read");
    }
    for (Component component : components) {
      if (mostAcross % component.across != 0 || mostDown % component.down != 0) {
        throw new JpegRefused("has components whose resolutions do not divide evenly");
      }
    }
    if (components.get(0).across != mostAcross || components.get(0).down != mostDown) {
      throw new JpegRefused("has more detail in its colours than in its brightness");
    }
  }

  /** Whether scans of all components were read. */
  boolean isScanned() {
    return components.stream().allMatch(Component::isScanned);
  }

  int unitsAcross() {
    return ceil(width, Block.SIDE * mostAcross);
  }

  int unitsDown() {
    return ceil(height, Block.SIDE * mostDown);
  }

  /** Blocks across that a scan of this component alone has: none beyond the picture (A.2.3). */
  int blocksAcrossAlone(Component component) {
    return ceil(ceil(width * component.across, mostAcross), Block.SIDE);
  }

  int blocksDownAlone(Component component) {
    return ceil(ceil(height * component.down, mostDown), Block.SIDE);
  }

  /**
   * Each block takes two bits of the file at least, one of them in a first scan, so a header that
   * claims more is not believed before memory is taken. (Arithmetic coding may spend less.)
   */
  void refuseMoreThanFits(long codedBytes) throws JpegDamaged {
    if (blocks(unitsAcross(), unitsDown()) > 8L * codedBytes) {
      throw new JpegDamaged("its header claims more pixels than its data can hold");
    }
  }

  /** Takes the memory for the samples that are wanted. */
  void allocate(UnitWindow wanted, Reduction reduction, boolean alsoEighth) throws IOException {
    int side = reduction.blockSide();
    if (blocks(wanted.across(), wanted.down()) * side * side > MOST_SAMPLES) {
      throw new JpegRefused("has too many pixels");
    }
    for (Component component : components) {
      component.allocate(wanted, side, alsoEighth);
    }
  }

  /** With the samples at an eighth that were made beside others. */
  Frame eighth() {
    List<Component> small = components.stream().map(Component::eighth).toList();
    return new Frame(width, height, progressive, small, mostAcross, mostDown);
  }

  /** Of all components in a rectangle of units. */
  long blocks(int unitsAcross, int unitsDown) {
    long inUnit = 0;
    for (Component component : components) {
      inUnit += (long) component.across * component.down;
    }
    return inUnit * unitsAcross * unitsDown;
  }

  static int ceil(int value, int unit) {
    return (value + unit - 1) / unit;
  }
}
