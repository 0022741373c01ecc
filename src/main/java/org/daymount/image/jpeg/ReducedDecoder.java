package org.daymount.image.jpeg;

import java.util.List;
import org.daymount.unit.PixelBox;

/** Goes through a file's segments in order (figure B.2): tables, the frame, scans. */
final class ReducedDecoder {
  private static final int TABLES = 4;

  /** Of a progressive picture, held at once, 2 bytes each. */
  private static final long MOST_COEFFICIENTS = 30_000_000;

  private final CodedFile file;
  private final Reduction reduction;
  private final PixelBox region;
  private final int[][] quantization = new int[TABLES][];
  private final HuffmanTable[] dcTables = new HuffmanTable[TABLES];
  private final HuffmanTable[] acTables = new HuffmanTable[TABLES];
  private final ColourTags colours = new ColourTags();
  private final BitReader bits = new BitReader();
  private MarkerReader in;
  private UnitWindow wanted;
  private int stripRows;
  private int restartInterval;
  private Frame frame;
  private long behindFrame;
  private boolean cutOff;
  private boolean inOrder = true; // so far, and all of it was read
  private final boolean checking;
  private final boolean alsoEighth;
  private boolean arithmetic;
  private final ArithmeticConditioning conditioning = new ArithmeticConditioning();
  private final Progression progression = new Progression();

  /**
   * @param region stored pixels that are wanted; what lies beyond the picture is ignored
   */
  ReducedDecoder(CodedFile file, Reduction reduction, PixelBox region) throws JpegRefused {
    this(file, reduction, region, false, false);
  }

  private ReducedDecoder(
      CodedFile file, Reduction reduction, PixelBox region, boolean checking, boolean alsoEighth)
      throws JpegRefused {
    this.file = file;
    this.in = new MarkerReader(file);
    this.reduction = reduction;
    this.region = region;
    this.checking = checking;
    this.alsoEighth = alsoEighth;
    HuffmanTables.putUsual(dcTables, acTables);
  }

  /**
   * Goes through all of a file without making pixels.
   *
   * @throws JpegDamaged when it is not as it should be
   * @throws JpegRefused when it is of a kind that is not checked here
   */
  static void check(CodedFile file) throws JpegRefused {
    ReducedDecoder decoder = new ReducedDecoder(file, Reduction.HALF, null, true, false);
    decoder.readThrough();
    if (decoder.cutOff) {
      throw new JpegDamaged("it ends before its picture does");
    }
    decoder.check();
    if (!decoder.inOrder) {
      throw new JpegDamaged("there are bytes in it that belong to nothing");
    }
  }

  /**
   * A progressive picture whose numbers are too many to be held is decoded strip by strip: the file
   * is gone through once for each.
   */
  ReducedJpeg decode() throws JpegRefused {
    readPicture();
    return result(frame, reduction);
  }

  /** The picture at a half or a quarter, and at an eighth from the same pass. */
  static List<ReducedJpeg> decodeWithEighth(CodedFile file, Reduction reduction, PixelBox region)
      throws JpegRefused {
    ReducedDecoder decoder = new ReducedDecoder(file, reduction, region, false, true);
    decoder.readPicture();
    return List.of(
        decoder.result(decoder.frame, reduction),
        decoder.result(decoder.frame.eighth(), Reduction.EIGHTH));
  }

  private void readPicture() throws JpegRefused {
    readThrough();
    check();
    if (frame.progressive()) {
      ScaledIdct cells = cells();
      int top = wanted.top();
      while (true) {
        int bottom = Math.min(wanted.bottom(), top + stripRows);
        for (Component component : frame.components()) {
          if (component.isScanned()) {
            component.finishStrip(cells, top, bottom);
          }
        }
        top = bottom;
        if (top >= wanted.bottom()) {
          break;
        }
        beginStrip(top);
        progression.forget();
        in = new MarkerReader(file);
        restartInterval = 0;
        cutOff = false;
        readThrough();
      }
      frame.components().forEach(Component::forgetBlocks);
    }
  }

  private ReducedJpeg result(Frame made, Reduction at) throws JpegRefused {
    return new ReducedJpeg(made, at, wanted.pixels(frame), colours.profile(), cutOff, inOrder);
  }

  private void readThrough() throws JpegRefused {
    boolean ended = false;
    while (!ended && !cutOff) {
      if (!in.next()) {
        cutOff = true;
        break;
      }
      inOrder &= !in.hasStrayBytes();
      ended = segment();
    }
  }

  private void check() throws JpegRefused {
    if (frame == null) {
      throw new JpegDamaged("there is no picture in it");
    }
    if (!cutOff && !isScanned()) {
      throw new JpegDamaged("it ends without some of its colours");
    }
    if (frame.components().stream().noneMatch(Component::isScanned)) {
      throw new JpegDamaged("it ends before its picture");
    }
  }

  private void beginStrip(int top) {
    int bottom = Math.min(wanted.bottom(), top + stripRows);
    frame.components().forEach(component -> component.beginStrip(top, bottom));
  }

  /**
   * @return whether nothing of interest can follow
   */
  private boolean segment() throws JpegRefused {
    if (in.isFrame()) {
      if (frame == null || in.behindSegment() != behindFrame) {
        readFrame();
      }
      return false;
    }
    switch (in.marker()) {
      case MarkerReader.QUANTIZATION_TABLES -> readQuantization();
      case MarkerReader.HUFFMAN_TABLES -> HuffmanTables.read(in, dcTables, acTables);
      case MarkerReader.ARITHMETIC_CONDITIONING -> conditioning.read(in);
      case MarkerReader.RESTART_INTERVAL -> {
        restartInterval = in.u16();
        inOrder &= in.left() == 0;
      }
      case MarkerReader.APP0, MarkerReader.APP2, MarkerReader.APP14 -> colours.read(in);
      case MarkerReader.START_OF_SCAN -> readScan();
      case MarkerReader.END_OF_IMAGE -> {
        return true;
      }
      default -> inOrder &= in.isKnown();
    }
    if (checking) {
      return false;
    }
    return frame != null && !frame.progressive() && isScanned();
  }

  private boolean isScanned() {
    return frame.components().stream().allMatch(Component::isScanned);
  }

  private void readFrame() throws JpegRefused {
    if (frame != null) {
      throw new JpegDamaged("it has two headers");
    }
    boolean progressive =
        in.marker() == MarkerReader.PROGRESSIVE
            || in.marker() == MarkerReader.ARITHMETIC_PROGRESSIVE;
    arithmetic =
        in.marker() == MarkerReader.ARITHMETIC
            || in.marker() == MarkerReader.ARITHMETIC_PROGRESSIVE;
    boolean sequential =
        in.marker() == MarkerReader.BASELINE
            || in.marker() == MarkerReader.EXTENDED
            || in.marker() == MarkerReader.ARITHMETIC;
    if (!progressive && !sequential || arithmetic && !checking) {
      throw new JpegRefused("is coded in a way that only full decoders read");
    }
    frame = Frame.read(in, progressive);
    behindFrame = in.behindSegment();
    if (checking) {
      wanted = UnitWindow.none(frame);
    } else {
      frame.refuseOtherDivisions();
      wanted = UnitWindow.around(region, frame);
      inOrder &= wanted.bottom() == frame.unitsDown();
    }
    if (!arithmetic) {
      frame.refuseMoreThanFits(file.length());
    }
    frame.allocate(wanted, reduction, alsoEighth);
    if (progressive) {
      allocateBlocks();
    }
  }

  private void allocateBlocks() {
    ScaledIdct cells = cells();
    long unitRow = frame.blocks(wanted.across(), 1) * ProgressiveBlocks.needed(cells);
    stripRows =
        (int) Math.max(1, Math.min(wanted.down(), MOST_COEFFICIENTS / Math.max(1, unitRow)));
    for (Component component : frame.components()) {
      component.allocateBlocks(cells, frame.unitsAcross(), frame.unitsDown(), stripRows);
    }
    beginStrip(wanted.top());
  }

  /** B.2.4.1. */
  private void readQuantization() throws JpegRefused {
    while (in.hasMore()) {
      int precisionAndPlace = in.u8();
      int[] steps = new int[Block.COEFFICIENTS];
      if ((precisionAndPlace & 15) >= TABLES) {
        throw new JpegDamaged("a table inside of it cannot be");
      }
      for (int k = 0; k < steps.length; k++) {
        steps[k] = precisionAndPlace >> 4 == 0 ? in.u8() : in.u16();
      }
      quantization[precisionAndPlace & 3] = steps;
    }
  }

  private void readScan() throws JpegRefused {
    if (frame == null) {
      throw new JpegDamaged("its picture comes before its header");
    }
    if (checking) {
      inOrder &= colours.areKnown(frame);
    } else {
      colours.refuseOtherColours(frame);
    }
    ScanHeader header = ScanHeader.read(in, frame, dcTables, acTables);
    long from = in.behindSegment();
    boolean dc = header.firstCoefficient() == 0;
    if (frame.progressive() && !dc && reduction == Reduction.EIGHTH) {
      inOrder = false;
      in.continueAt(from); // the data hold no marker but restarts, which are stepped over
      return;
    }
    for (ScanHeader.Part part : header.parts()) {
      part.component().latch(quantization);
    }
    inOrder &= frame.progressive() ? progression.goesOn(frame, header) : header.isSequential();
    ScanReader scan;
    if (arithmetic) {
      scan = new ArithmeticScan(frame, header, new ArithmeticDecoder(), conditioning);
    } else if (!frame.progressive()) {
      scan = new BaselineScan(frame, header, bits, cells());
    } else if (dc) {
      scan = new ProgressiveDcScan(frame, header, bits);
    } else {
      scan = new ProgressiveAcScan(frame, header, bits);
    }
    ScanReader.End end = scan.read(file, from, restartInterval);
    cutOff |= end.isCutOff();
    inOrder &= end.isInOrder();
    in.continueAt(end.place());
    if (!checking && !frame.progressive() && isScanned()) {
      inOrder &= MarkerReader.isEnd(file, end.place()); // it is not gone through further
    }
  }

  private ScaledIdct cells() {
    return switch (reduction) {
      case NONE -> new Idct8x8();
      case HALF -> new Idct4x4();
      case QUARTER -> new Idct2x2();
      case EIGHTH -> null;
    };
  }
}
