package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.List;
import org.daymount.file.FileBytes;
import org.daymount.unit.PixelBox;

/** Goes through a file's segments in order (figure B.2): tables, the frame, scans. */
final class ReducedDecoder {
  private final FileBytes file;
  private final Reduction reduction;
  private final PixelBox region;
  private final CodingTables tables;
  private final ColourTags colours = new ColourTags();
  private final BitReader bits = new BitReader();
  private MarkerReader in;
  private UnitWindow wanted;
  private ProgressiveStrips strips;
  private Frame frame;
  private long behindFrame;
  private boolean cutOff;
  private boolean inOrder = true; // so far, and all of it was read
  private final boolean checking;
  private final boolean alsoEighth;
  private CodingProcess process;
  private final Progression progression = new Progression();

  /**
   * @param region stored pixels that are wanted; what lies beyond the picture is ignored
   */
  ReducedDecoder(FileBytes file, Reduction reduction, PixelBox region) throws IOException {
    this(file, reduction, region, false, false);
  }

  private ReducedDecoder(
      FileBytes file, Reduction reduction, PixelBox region, boolean checking, boolean alsoEighth)
      throws IOException {
    this.file = file;
    this.tables = new CodingTables();
    this.in = new MarkerReader(file);
    this.reduction = reduction;
    this.region = region;
    this.checking = checking;
    this.alsoEighth = alsoEighth;
  }

  /**
   * Goes through all of a file without making pixels.
   *
   * @throws JpegDamaged when it is not as it should be
   * @throws JpegRefused when it is of a kind that is not checked here
   */
  static void check(FileBytes file) throws IOException {
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
  ReducedJpeg decode() throws IOException {
    readPicture();
    return result(frame, reduction);
  }

  /** The picture at a half or a quarter, and at an eighth from the same pass. */
  static List<ReducedJpeg> decodeWithEighth(FileBytes file, Reduction reduction, PixelBox region)
      throws IOException {
    ReducedDecoder decoder = new ReducedDecoder(file, reduction, region, false, true);
    decoder.readPicture();
    return List.of(
        decoder.result(decoder.frame, reduction),
        decoder.result(decoder.frame.eighth(), Reduction.EIGHTH));
  }

  private void readPicture() throws IOException {
    readThrough();
    check();
    if (frame.progressive()) {
      while (!strips.finish()) {
        progression.forget();
        in = new MarkerReader(file);
        tables.forgetRestarts();
        cutOff = false;
        readThrough();
      }
      frame.components().forEach(Component::forgetBlocks);
    }
  }

  private ReducedJpeg result(Frame made, Reduction at) throws IOException {
    return new ReducedJpeg(made, at, wanted.pixels(frame), colours.profile(), cutOff, inOrder);
  }

  private void readThrough() throws IOException {
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

  private void check() throws IOException {
    if (frame == null) {
      throw new JpegDamaged("there is no picture in it");
    }
    if (!cutOff && !frame.isScanned()) {
      throw new JpegDamaged("it ends without some of its colours");
    }
    if (frame.components().stream().noneMatch(Component::isScanned)) {
      throw new JpegDamaged("it ends before its picture");
    }
  }

  /**
   * @return whether nothing of interest can follow
   */
  private boolean segment() throws IOException {
    if (in.isFrame()) {
      if (frame == null || in.behindSegment() != behindFrame) {
        readFrame();
      }
      return false;
    }
    if (tables.read(in)) {
      inOrder &= in.marker() != MarkerReader.RESTART_INTERVAL || in.left() == 0;
      return isAllThatIsWanted();
    }
    switch (in.marker()) {
      case MarkerReader.APP0, MarkerReader.APP2, MarkerReader.APP14 -> colours.read(file, in);
      case MarkerReader.START_OF_SCAN -> readScan();
      case MarkerReader.END_OF_IMAGE -> {
        return true;
      }
      default -> inOrder &= in.isKnown();
    }
    return isAllThatIsWanted();
  }

  private boolean isAllThatIsWanted() {
    return !checking && frame != null && !frame.progressive() && frame.isScanned();
  }

  private void readFrame() throws IOException {
    if (frame != null) {
      throw new JpegDamaged("it has two headers");
    }
    process = CodingProcess.of(in.marker());
    if (!process.isKnown() || process.arithmetic() && !checking) {
      throw new JpegRefused("is coded in a way that only full decoders read");
    }
    frame = Frame.read(in, process.progressive());
    behindFrame = in.behindSegment();
    if (checking) {
      wanted = UnitWindow.none(frame);
    } else {
      frame.refuseOtherDivisions();
      wanted = UnitWindow.around(region, frame);
      inOrder &= wanted.bottom() == frame.unitsDown();
    }
    if (!process.arithmetic()) {
      frame.refuseMoreThanFits(file.size());
    }
    frame.allocate(wanted, reduction, alsoEighth);
    if (frame.progressive()) {
      strips = new ProgressiveStrips(frame, wanted, cells());
    }
  }

  private void readScan() throws IOException {
    if (frame == null) {
      throw new JpegDamaged("its picture comes before its header");
    }
    if (checking) {
      inOrder &= colours.areKnown(frame);
    } else {
      colours.refuseOtherColours(frame);
    }
    ScanHeader header = ScanHeader.read(in, frame, tables.dc(), tables.ac());
    long from = in.behindSegment();
    boolean isFine = frame.progressive() && header.firstCoefficient() > 0;
    if (isFine && reduction == Reduction.EIGHTH) {
      inOrder = false;
      in.continueAt(from); // the data hold no marker but restarts, which are stepped over
      return;
    }
    for (ScanHeader.Part part : header.parts()) {
      part.component().latch(tables.quantization());
    }
    inOrder &= frame.progressive() ? progression.goesOn(frame, header) : header.isSequential();
    ScanReader scan = scanReader(header);
    ScanReader.End end = scan.read(file, from, tables.restartInterval());
    cutOff |= end.isCutOff();
    inOrder &= end.isInOrder();
    in.continueAt(end.place());
    if (!checking && !frame.progressive() && frame.isScanned()) {
      inOrder &= MarkerReader.isEnd(file, end.place()); // it is not gone through further
    }
  }

  private ScanReader scanReader(ScanHeader header) throws IOException {
    if (process.arithmetic()) {
      return new ArithmeticScan(frame, header, new ArithmeticDecoder(), tables.conditioning());
    }
    if (!frame.progressive()) {
      return new BaselineScan(frame, header, bits, cells());
    }
    return header.firstCoefficient() == 0
        ? new ProgressiveDcScan(frame, header, bits)
        : new ProgressiveAcScan(frame, header, bits);
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
