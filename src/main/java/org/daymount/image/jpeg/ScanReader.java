package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Arrays;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.ScanHeader.Part;

/** The order of the blocks in a scan (A.2) and its restarts (E.2.4); subclasses read the blocks. */
abstract sealed class ScanReader
    permits BaselineScan, ProgressiveDcScan, ProgressiveAcScan, ArithmeticScan {
  final BitReader bits;
  private final CodedStretch stretch;
  private final Frame frame;
  private final ScanHeader header;

  /** A block's DC coefficient is told as the step from that of the component's block before. */
  final int[] dcBefore;

  ScanReader(Frame frame, ScanHeader header, BitReader bits) {
    this(frame, header, bits, bits);
  }

  ScanReader(Frame frame, ScanHeader header, ArithmeticDecoder arithmetic) {
    this(frame, header, arithmetic, null);
  }

  private ScanReader(Frame frame, ScanHeader header, CodedStretch stretch, BitReader bits) {
    this.frame = frame;
    this.header = header;
    this.stretch = stretch;
    this.bits = bits;
    this.dcBefore = new int[header.parts().size()];
  }

  /**
   * @param n which part of the scan's header the block belongs to
   */
  abstract void block(int n, Component component, int blockX, int blockY) throws IOException;

  /** What is remembered from block to block is forgotten (E.1.3). */
  void restart() {}

  /**
   * Where a scan ended, whether the file ended before it, and whether each of its stretches held
   * what it should: known only of those that were read to their ends.
   */
  record End(long place, boolean isCutOff, boolean isInOrder) {}

  /**
   * Reads the whole scan, or as far down as something is wanted.
   *
   * @param from where its coded data begin
   * @param restartInterval units between restart markers; 0: there are none
   * @throws JpegDamaged when the data end before the picture does, but the file goes on
   */
  End read(FileBytes file, long from, int restartInterval) throws IOException {
    boolean alone = header.parts().size() == 1;
    Component first = header.parts().get(0).component();
    int across = alone ? frame.blocksAcrossAlone(first) : frame.unitsAcross();
    int all = across * (alone ? frame.blocksDownAlone(first) : frame.unitsDown());
    int units =
        Math.min(all, across * (alone ? first.unitBottom() * first.down : first.unitBottom()));
    boolean inOrder = units == all; // what lies below is of no use to what is wanted
    for (int unit = 0; unit < units; unit++) {
      if (unit == 0 || restartInterval > 0 && unit % restartInterval == 0) {
        long start = from;
        if (unit > 0) {
          inOrder &= stretch.isUsedUp();
          if (stretch.end() >= file.size()) {
            return new End(stretch.end(), true, false);
          }
          start = behindRestart(file, stretch.end(), unit / restartInterval - 1);
        }
        stretch.load(file, start);
        Arrays.fill(dcBefore, 0);
        restart();
      }
      if (alone) {
        stretch.prepare();
        block(0, first, unit % across, unit / across);
      } else {
        unit(unit % across, unit / across);
      }
      if (stretch.isPastEnd()) {
        if (stretch.end() >= file.size()) {
          return new End(stretch.end(), true, false);
        }
        throw new JpegDamaged("some of its picture data are missing");
      }
    }
    return new End(
        units == 0 ? from : stretch.end(), false, inOrder && (units == 0 || stretch.isUsedUp()));
  }

  private void unit(int unitX, int unitY) throws IOException {
    for (int n = 0; n < dcBefore.length; n++) {
      Part part = header.parts().get(n);
      Component component = part.component();
      for (int y = 0; y < component.down; y++) {
        for (int x = 0; x < component.across; x++) {
          stretch.prepare();
          block(n, component, unitX * component.across + x, unitY * component.down + y);
          if (stretch.isPastEnd()) {
            return;
          }
        }
      }
    }
  }

  private static long behindRestart(FileBytes file, long marker, int number) throws IOException {
    long at = marker;
    while (file.peek(at) == 0xff) {
      at++;
    }
    int expected = MarkerReader.RESTART_FIRST + number % 8;
    if (file.peek(at) != expected) {
      throw new JpegDamaged("a mark in its picture data is missing or out of step");
    }
    return at + 1;
  }

  static HuffmanTable present(HuffmanTable table) throws IOException {
    if (table == null) {
      throw new JpegDamaged("a table of its codes is missing");
    }
    return table;
  }

  static HuffmanTable presentDc(HuffmanTable table) throws IOException {
    if (!present(table).isForDc()) {
      throw new JpegDamaged("a table of its codes cannot be");
    }
    return table;
  }

  /** A DC coefficient's step from the one before (F.2.2.1): its size, then that many bits. */
  final int dcStep(HuffmanTable table) throws IOException {
    long next = bits.peek();
    int entry = HuffmanTable.entry(table.lookup(), next);
    if (entry == 0) {
      entry = known(table.longEntry(next));
    }
    int used = HuffmanTable.used(entry);
    if (HuffmanTable.isComplete(entry)) {
      bits.position += used;
      return HuffmanTable.value(entry);
    }
    int size = HuffmanTable.size(entry);
    bits.position += used + size;
    return HuffmanTable.extended((int) (next << used >>> Long.SIZE - size), size);
  }

  /** The entry of a code too long for the lookup, if it is a code of the table at all. */
  static int known(int entry) throws IOException {
    if (entry == HuffmanTable.NO_CODE) {
      throw noSuchCode();
    }
    return entry;
  }

  static JpegDamaged noSuchCode() {
    return new JpegDamaged("some of its picture data mean nothing");
  }
}
