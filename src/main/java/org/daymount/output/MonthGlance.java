package org.daymount.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.page.AlbumPage;

/** The month as a calendar: seven columns, each day's page drawn as it will look. */
final class MonthGlance {
  private static final int DAYS_IN_WEEK = 7;

  private final SmallCopies copies;

  MonthGlance(SmallCopies copies) {
    this.copies = copies;
  }

  void write(Html page, Month month) {
    DayOfWeek first = month.album().settings().firstWeekday();
    page.raw("<table class=\"glance\">\n<thead><tr>");
    for (int i = 0; i < DAYS_IN_WEEK; i++) {
      String name = first.plus(i).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
      page.raw("<th scope=\"col\"><abbr title=\"%s\">%s</abbr></th>", name, name.substring(0, 3));
    }
    page.raw("</tr></thead>\n<tbody><tr>");
    int column = 0;
    LocalDate start = month.month().atDay(1);
    int before = Math.floorMod(start.getDayOfWeek().getValue() - first.getValue(), DAYS_IN_WEEK);
    for (; column < before; column++) {
      page.raw("<td class=\"beside\"></td>");
    }
    for (MonthDay day : month.days()) {
      if (column == DAYS_IN_WEEK) {
        page.raw("</tr>\n<tr>");
        column = 0;
      }
      day(page, month, day);
      column++;
    }
    for (; column < DAYS_IN_WEEK; column++) {
      page.raw("<td class=\"beside\"></td>");
    }
    page.raw("</tr></tbody></table>\n");
  }

  private void day(Html page, Month month, MonthDay day) {
    LocalDate date = day.day();
    page.raw("<td class=\"%s\"><a href=\"#d%d\">", day.state().word(), date.getDayOfMonth())
        .element("b", "", Integer.toString(date.getDayOfMonth()));
    Optional<AlbumPage> drawn = month.album().page(date);
    if (drawn.isPresent()) {
      SvgPage canvas =
          new SvgPage(page, photo -> copies.dataAddress(photo, SmallCopies.SMALL_EDGE));
      canvas.open(
          month.album().settings().page(),
          DayWords.shortDay(date)
              + ": "
              + month.units().kind(drawn.get().kind())
              + ", leaf "
              + drawn.get().leaf());
      try {
        PageDrawing.of(month, drawn.get()).draw(canvas);
      } catch (IOException e) {
        throw new UncheckedIOException("nothing is read or written here", e);
      }
      canvas.close();
    } else {
      page.element("span", "none", "left out");
    }
    page.raw("</a></td>\n");
  }
}
