package org.daymount.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import org.daymount.image.PrintJpegEncoder;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.month.Settings;
import org.daymount.page.AlbumLayout;
import org.daymount.page.PageSettings;
import org.daymount.photo.Photo;
import org.daymount.sheet.Piece;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Ppi;
import org.daymount.unit.Units;

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
   * @param settings for the paper: sheet, margin, ppi and how the PDF is paged
   * @param units which is read first
   * @throws IOException when the photo cannot be decoded
   */
  public static void stage(
      Photo photo, PictureSource pictures, Settings settings, Units units, OutputFolder out)
      throws IOException {
    Ppi ppi = settings.ppi();
    Length foot = settings.margin().isPositive() ? RULER : Length.ZERO;
    BufferedImage picture =
        new StripPainter(pictures).paint(photo, settings.sheet(), settings.margin(), foot, ppi);
    boolean turned =
        (picture.getWidth() > picture.getHeight())
            != settings.sheet().width().isLongerThan(settings.sheet().height());
    PaperSize size = turned ? settings.sheet().turned() : settings.sheet();
    PageSettings any = PageSettings.STANDARD;
    PageSettings pages =
        new PageSettings(any.page(), any.start(), any.firstWeekday(), any.album(), units);
    byte[] jpeg = PrintJpegEncoder.encode(picture, ppi);
    Month month =
        new Month(
            photo.taken().local().map(YearMonth::from).orElse(UNDATED),
            settings,
            List.of(),
            List.of(),
            List.of(sheet(size, settings.margin().plus(foot))),
            new AlbumLayout(pages, List.of(), List.of()),
            List.of());
    String title = "Test print of " + photo.file().lastName();
    out.stage(JPEG, jpeg);
    out.stage(PDF, new SheetsPdf(title, "Test print").write(month, file -> jpeg));
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
