package org.daymount.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.daymount.image.PrintJpegEncoder;
import org.daymount.month.MonthSheet;
import org.daymount.photo.Photo;
import org.daymount.sheet.Piece;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** The test print as files: a JPEG for a lab, and the same as a PDF at true size. */
public final class Strip {
  private static final String JPEG = "sheets/strip.jpg";
  private static final String PDF = "strip.pdf";

  /** Kept free for a ruler on paper that is printed at home. */
  private static final Length RULER = Length.inchFraction(7, 8);

  /** Stands for the date of the PDF, which must not come from the clock, where none is known. */
  private static final YearMonth UNDATED = YearMonth.of(2000, 1);

  private Strip() {}

  /**
   * Stages both files; they are there, whole, when the folder is finished.
   *
   * @throws IOException when the photo cannot be decoded
   */
  public static void stage(Photo photo, PictureSource pictures, StripPaper paper, OutputFolder out)
      throws IOException {
    Length foot = paper.margin().isPositive() ? RULER : Length.ZERO;
    BufferedImage picture =
        new StripPainter(pictures).paint(photo, paper.sheet(), paper.margin(), foot, paper.ppi());
    boolean turned =
        (picture.getWidth() > picture.getHeight())
            != paper.sheet().width().isLongerThan(paper.sheet().height());
    PaperSize size = turned ? paper.sheet().turned() : paper.sheet();
    byte[] jpeg = PrintJpegEncoder.encode(picture, paper.ppi());
    SheetPrints prints =
        new SheetPrints(
            "Test print of " + photo.file().lastName(),
            "Test print",
            photo.taken().local().map(YearMonth::from).orElse(UNDATED),
            List.of(sheet(size, paper.margin().plus(foot))),
            paper.paged(),
            paper.margin(),
            paper.units());
    out.stage(JPEG, jpeg);
    out.stage(PDF, SheetsPdf.write(prints, file -> jpeg));
  }

  /** The strip is one piece, so that a ruler finds its room below. */
  private static MonthSheet sheet(PaperSize size, Length foot) {
    PaperSize drawn = new PaperSize(size.width(), size.height().minus(foot));
    PlacedPiece strip =
        new PlacedPiece(
            new Piece("strip", drawn, 0), PaperBox.at(Length.ZERO, Length.ZERO, drawn), false);
    return new MonthSheet(JPEG, new Sheet(size, List.of(strip), List.of()), Map.of());
  }
}
