package org.daymount.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.crop.Crop;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * The guide on the page: each sheet drawn small with its cuts, then mounting, shopping and care.
 */
final class SheetSection {
  private final SmallCopies copies;

  SheetSection(SmallCopies copies) {
    this.copies = copies;
  }

  void write(Html page, Month month) {
    Guide guide = Guide.of(month);
    page.raw("<section id=\"sheets\">\n<h2>Cut the sheets</h2>\n");
    list(page, "cautions", guide.cautions());
    page.element("p", "onpaper", "The cuts in their order, with measures, stand in guide.pdf.");
    page.raw("<ul class=\"sheets\">\n");
    List<Guide.SheetSteps> all = new ArrayList<>(guide.sheets());
    all.addAll(guide.mats());
    for (Guide.SheetSteps steps : all) {
      page.raw("<li>");
      draw(page, steps.sheet());
      page.raw("<div>").element("h3", "", steps.name());
      list(page, "plain", steps.pieces());
      if (!steps.cuts().isEmpty()) {
        page.raw("<ol>");
        steps.cuts().forEach(cut -> page.element("li", "", cut));
        page.raw("</ol>");
      }
      page.raw("</div></li>\n");
    }
    page.raw("</ul>\n</section>\n<section id=\"mount\">\n<h2>Mount the pages</h2>\n")
        .raw("<div class=\"columns\">\n");
    for (Guide.PageSteps steps : guide.pages()) {
      page.raw("<div class=\"day\">").element("h3", "", steps.heading());
      list(page, "plain", steps.steps());
      page.raw("</div>\n");
    }
    page.raw("</div>\n");
    titled(page, "Still missing", guide.missing());
    titled(page, "Have ready", guide.shopping());
    titled(page, "Tips of the trade", guide.tips());
    page.raw("</section>\n");
  }

  private static void titled(Html page, String title, List<String> lines) {
    if (!lines.isEmpty()) {
      page.element("h3", "", title).raw("\n");
      list(page, "", lines);
    }
  }

  private static void list(Html page, String kind, List<String> lines) {
    page.raw(kind.isEmpty() ? "<ul>" : "<ul class=\"" + kind + "\">");
    lines.forEach(line -> page.element("li", "", line));
    page.raw("</ul>\n");
  }

  private void draw(Html page, MonthSheet monthSheet) {
    double w = monthSheet.sheet().size().width().inInches();
    double h = monthSheet.sheet().size().height().inInches();
    page.raw(
            "<svg viewBox=\"-0.1 -0.1 %.3f %.3f\" style=\"width:%.2frem\">",
            w + 0.2, h + 0.2, w * 1.6)
        .raw("<rect class=\"paper\" x=\"0\" y=\"0\" width=\"%.4f\" height=\"%.4f\"/>", w, h);
    for (PlacedPiece placed : monthSheet.sheet().pieces()) {
      PaperBox box = placed.box();
      PieceContent shown = monthSheet.content().get(placed.piece().label());
      if (shown != null && shown.picture().isPresent()) {
        picture(page, shown.picture().get(), placed);
      }
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

  /** The part of the photo that the piece shows, as it lies on the sheet. */
  private void picture(Html page, PieceContent.Picture shown, PlacedPiece placed) {
    Optional<String> address = copies.dataAddress(shown.photo(), SmallCopies.SMALL_EDGE);
    if (address.isEmpty()) {
      return;
    }
    PaperBox box = placed.box();
    PaperSize read = placed.turned() ? box.size().turned() : box.size();
    Crop crop = shown.crop();
    double left =
        crop.piece()
            .width()
            .minus(crop.picture().width())
            .half()
            .minus(shown.part().x())
            .inInches();
    double top =
        crop.piece()
            .height()
            .minus(crop.picture().height())
            .half()
            .minus(shown.part().y())
            .inInches();
    page.raw(
            "<g transform=\"translate(%.4f %.4f)%s\">",
            (placed.turned() ? box.right() : box.x()).inInches(),
            box.y().inInches(),
            placed.turned() ? " rotate(90)" : "")
        .raw(
            "<svg width=\"%.4f\" height=\"%.4f\">",
            read.width().inInches(), read.height().inInches())
        .raw(
            "<svg x=\"%.4f\" y=\"%.4f\" width=\"%.4f\" height=\"%.4f\" ",
            left, top, crop.picture().width().inInches(), crop.picture().height().inInches())
        .raw(
            "preserveAspectRatio=\"none\" viewBox=\"%d %d %d %d\">",
            crop.window().x(), crop.window().y(), crop.window().width(), crop.window().height())
        .raw(
            "<image width=\"%d\" height=\"%d\" preserveAspectRatio=\"none\" href=\"%s\"/>",
            shown.photo().size().width(), shown.photo().size().height(), address.get())
        .raw("</svg></svg></g>");
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
