package org.daymount.output;

import java.time.LocalDate;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.pick.Candidate;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** All days on one screen, each with its pictures cropped as they will print. */
final class MonthGlance {
  private static final double TALLEST_REM = 6.5;

  private final PictureStrip strip;

  MonthGlance(PictureStrip strip) {
    this.strip = strip;
  }

  void write(Html page, Month month) {
    page.raw("<ol class=\"glance\">\n");
    for (MonthDay day : month.days()) {
      LocalDate date = day.day();
      page.raw("<li class=\"%s\"><a href=\"#d%d\">", day.state().word(), date.getDayOfMonth())
          .element("b", "", Integer.toString(date.getDayOfMonth()))
          .element("span", "wd", DayWords.weekday(date).substring(0, 3))
          .raw("<span class=\"page\">");
      if (day.spaces().isEmpty()) {
        page.element(
            "span", "none", day.state() == MonthDay.State.LEFT_OUT ? "left out" : "no photo");
      }
      for (MonthSpace space : day.spaces()) {
        miniature(page, space, day.spaces().size());
      }
      page.raw("</span></a></li>\n");
    }
    page.raw("</ol>\n");
  }

  private void miniature(Html page, MonthSpace space, int onPage) {
    PaperSize size = space.pick().space().size(space.pick().direction());
    double scale = TALLEST_REM / 6 / Math.max(1, Math.sqrt(onPage)); // 6 in is the usual long side
    double width = Math.min(size.width().inInches(), 8) * scale;
    double height = width / size.aspect();
    page.raw("<span class=\"mini\" style=\"width:%.3frem;height:%.3frem\">", width, height);
    if (space.pick().hero().isPresent()) {
      cropped(page, space.pick().hero().get(), width, height);
    } else {
      page.element("span", "none", "missing");
    }
    page.raw("</span>");
  }

  private void cropped(Html page, Candidate hero, double width, double height) {
    strip
        .dataAddress(hero.looked().photo(), IndexPage.HERO_EDGE)
        .ifPresent(
            address -> {
              PixelSize whole = hero.looked().photo().size();
              PixelBox window = hero.crop().window();
              double inner =
                  hero.crop().picture().width().inInches() / hero.crop().piece().width().inInches();
              double innerTall =
                  hero.crop().picture().height().inInches()
                      / hero.crop().piece().height().inInches();
              double scale = width * inner / window.width();
              page.raw(
                      "<span class=\"cut\" style=\"width:%.3frem;height:%.3frem\">",
                      width * inner, height * innerTall)
                  .raw(
                      "<img alt=\"\" src=\"%s\" style=\"width:%.3frem;left:%.3frem;top:%.3frem\">",
                      address, whole.width() * scale, -window.x() * scale, -window.y() * scale)
                  .raw("</span>");
            });
  }
}
