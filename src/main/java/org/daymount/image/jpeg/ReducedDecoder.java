package org.daymount.image.jpeg;

import java.util.Optional;

/** Goes through a file's segments in order (figure B.2): tables, the frame, scans. */
final class ReducedDecoder {
  private static final int TABLES = 4;

  private final MarkerReader in;
  private final Reduction reduction;
  private final int[][] quantization = new int[TABLES][];
  private final HuffmanTable[] dcTables = new HuffmanTable[TABLES];
  private final HuffmanTable[] acTables = new HuffmanTable[TABLES];
  private final ColourTags colours = new ColourTags();
  private final BitReader bits = new BitReader();
  private int restartInterval;
  private Frame frame;
  private boolean cutOff;

  ReducedDecoder(byte[] file, Reduction reduction) throws JpegRefused {
    this.in = new MarkerReader(file);
    this.reduction = reduction;
  }

  ReducedJpeg decode() throws JpegRefused {
    boolean ended = false;
    while (!ended && !cutOff) {
      if (!in.next()) {
        cutOff = true;
        break;
      }
      ended = segment();
    }
    if (frame == null) {
      throw new JpegRefused("has no picture in it");
    }
    if (!cutOff && !isScanned()) {
      throw new JpegRefused("ends without some of its colours");
    }
    if (frame.components().stream().noneMatch(Component::isScanned)) {
      throw new JpegRefused("ends before its picture");
    }
    if (frame.progressive()) {
      CellMeans cells = cells();
      frame.components().stream().filter(Component::isScanned).forEach(c -> c.finish(cells));
    }
    Optional<byte[]> profile = colours.profile();
    return new ReducedJpeg(frame, reduction, profile, cutOff);
  }

  /**
   * @return whether nothing of interest can follow
   */
  private boolean segment() throws JpegRefused {
    if (in.isFrame()) {
      readFrame();
      return false;
    }
    switch (in.marker()) {
      case MarkerReader.QUANTIZATION_TABLES -> readQuantization();
      case MarkerReader.HUFFMAN_TABLES -> readHuffman();
      case MarkerReader.RESTART_INTERVAL -> restartInterval = in.u16();
      case MarkerReader.APP0, MarkerReader.APP2, MarkerReader.APP14 -> colours.read(in);
      case MarkerReader.START_OF_SCAN -> readScan();
      case MarkerReader.END_OF_IMAGE -> {
        return true;
      }
      default -> {}
    }
    return frame != null && !frame.progressive() && isScanned();
  }

  private boolean isScanned() {
    return frame.components().stream().allMatch(Component::isScanned);
  }

  private void readFrame() throws JpegRefused {
    boolean progressive = in.marker() == MarkerReader.PROGRESSIVE;
    if (!progressive
        && in.marker() != MarkerReader.BASELINE
        && in.marker() != MarkerReader.EXTENDED) {
      throw new JpegRefused("is coded in a way that only full decoders read");
    }
    if (frame != null) {
      throw new JpegRefused("has more than one frame");
    }
    frame = Frame.read(in, progressive);
    frame.allocate(reduction, in.file().length);
  }

  /** B.2.4.1. */
  private void readQuantization() throws JpegRefused {
    while (in.hasMore()) {
      int precisionAndPlace = in.u8();
      int[] steps = new int[Block.COEFFICIENTS];
      for (int k = 0; k < steps.length; k++) {
        steps[k] = precisionAndPlace >> 4 == 0 ? in.u8() : in.u16();
      }
      quantization[precisionAndPlace & 3] = steps;
    }
  }

  /** B.2.4.2. */
  private void readHuffman() throws JpegRefused {
    while (in.hasMore()) {
      int kindAndPlace = in.u8();
      int[] counts = new int[HuffmanTable.LONGEST_CODE + 1];
      int all = 0;
      for (int length = 1; length <= HuffmanTable.LONGEST_CODE; length++) {
        counts[length] = in.u8();
        all += counts[length];
      }
      HuffmanTable table = new HuffmanTable(counts, in.bytes(all));
      (kindAndPlace >> 4 == 0 ? dcTables : acTables)[kindAndPlace & 3] = table;
    }
  }

  private void readScan() throws JpegRefused {
    if (frame == null) {
      throw new JpegRefused("has a scan without a frame");
    }
    colours.refuseOtherColours(frame);
    ScanHeader header = ScanHeader.read(in, frame, dcTables, acTables);
    int from = in.behindSegment();
    boolean dc = header.firstCoefficient() == 0;
    if (frame.progressive() && !dc && reduction == Reduction.EIGHTH) {
      in.continueAt(from); // the data hold no marker but restarts, which are stepped over
      return;
    }
    for (ScanHeader.Part part : header.parts()) {
      part.component().latch(quantization);
    }
    ScanReader scan;
    if (!frame.progressive()) {
      scan = new BaselineScan(frame, header, bits, cells());
    } else if (dc) {
      scan = new ProgressiveDcScan(frame, header, bits);
    } else {
      scan = new ProgressiveAcScan(frame, header, bits);
    }
    ScanReader.End end = scan.read(in.file(), from, restartInterval);
    cutOff |= end.isCutOff();
    in.continueAt(end.place());
  }

  private CellMeans cells() {
    return switch (reduction) {
      case HALF -> new HalfCells();
      case QUARTER -> new QuarterCells();
      case EIGHTH -> null;
    };
  }
}
