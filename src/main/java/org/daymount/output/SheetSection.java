package org.daymount.output;

import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.PaperBox;

/** The sheets drawn small, with pieces named and cuts numbered. */
final class SheetSection {
  void write(Html page, Month month) {
    page.raw("<section id=\"sheets\">\n<h2>Sheets</h2>\n<ul class=\"sheets\">\n");
    for (MonthSheet sheet : month.sheets()) {
      page.raw("<li>");
      draw(page, sheet);
      page.element("span", "name", sheet.file()).raw("</li>\n");
    }
    page.raw("</ul>\n</section>\n");
  }

  private static void draw(Html page, MonthSheet monthSheet) {
    double w = monthSheet.sheet().size().width().inInches();
    double h = monthSheet.sheet().size().height().inInches();
    page.raw(
            "<svg viewBox=\"-0.1 -0.1 %.3f %.3f\" style=\"width:%.2frem\">",
            w + 0.2, h + 0.2, w * 1.6)
        .raw("<rect class=\"paper\" x=\"0\" y=\"0\" width=\"%.4f\" height=\"%.4f\"/>", w, h);
    for (PlacedPiece placed : monthSheet.sheet().pieces()) {
      PaperBox box = placed.box();
      page.raw(
              "<rect class=\"piece\" x=\"%.4f\" y=\"%.4f\" width=\"%.4f\" height=\"%.4f\"/>",
              box.x().inInches(),
              box.y().inInches(),
              box.width().inInches(),
              box.height().inInches())
          .raw(
              "<text x=\"%.3f\" y=\"%.3f\">",
              box.x().inInches() + box.width().inInches() / 2,
              box.y().inInches() + box.height().inInches() / 2)
          .text(placed.piece().label())
          .raw("</text>");
    }
    int number = 1;
    for (Cut cut : monthSheet.sheet().cuts()) {
      cut(page, cut, number++);
    }
    page.raw("</svg>");
  }

  private static void cut(Html page, Cut cut, int number) {
    double at = cut.at().inInches();
    double from = cut.from().inInches();
    double to = cut.to().inInches();
    boolean upDown = cut.axis() == Cut.Axis.X;
    double x1 = upDown ? at : from;
    double y1 = upDown ? from : at;
    double x2 = upDown ? at : to;
    double y2 = upDown ? to : at;
    page.raw("<path class=\"cut\" d=\"M%.4f %.4fL%.4f %.4f\"/>", x1, y1, x2, y2)
        .raw("<text class=\"cutno\" x=\"%.3f\" y=\"%.3f\">%d</text>", x1 + 0.16, y1 + 0.2, number);
  }
}
