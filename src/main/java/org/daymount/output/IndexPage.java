package org.daymount.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthPhoto;
import org.daymount.month.MonthSpace;
import org.daymount.photo.Photo;
import org.daymount.pick.ScoredCandidate;
import org.daymount.problem.Warning;

/**
 * index.html: the month at a glance. One file without script, readable offline, made to be printed
 * too. Drawn from the month alone.
 */
public final class IndexPage {
  private final SmallCopies copies;

  public IndexPage(SmallCopies copies) {
    this.copies = copies;
  }

  /** UTF-8. */
  public byte[] write(Month month) {
    preparePictures(month);
    Html page = new Html();
    String title = DayWords.month(month.month());
    page.raw("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ")
        .raw("img-src data:; style-src 'unsafe-inline'\">\n")
        .element("title", "", title + " · Daymount")
        .raw("\n<style>\n")
        .raw(resource("page.css"))
        .raw(resource("index.css"))
        .raw("</style>\n</head>\n<body>\n")
        .raw("<input type=\"checkbox\" id=\"found\"><header>\n")
        .element("h1", "", title);
    page.raw("\n<p class=\"sum\">").text(summary(month)).raw("</p>\n");
    page.raw("<nav><a href=\"#days\">Days</a> <a href=\"#sheets\">Cutting</a> ")
        .raw("<a href=\"#mount\">Mounting</a> ")
        .raw("<a href=\"#left\">Left out</a> ")
        .raw("<label for=\"found\">Show what was found in the pictures</label></nav>\n</header>\n");
    new MonthGlance(copies).write(page, month);
    page.raw("<main id=\"days\">\n");
    DaySection days = new DaySection(copies, month.units());
    month.days().forEach(day -> days.write(page, day));
    page.raw("</main>\n");
    new SheetSection(copies).write(page, month);
    leftOut(page, month);
    page.raw("<footer>").text("Made by Daymount from your own files; nothing left this computer.");
    page.raw("</footer>\n</body>\n</html>\n");
    return page.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Decodes in parallel what the page will show, so that writing it is only putting together. */
  private void preparePictures(Month month) {
    List<MonthSpace> spaces = month.days().stream().flatMap(day -> day.spaces().stream()).toList();
    Stream<Photo> heroes =
        spaces.stream().flatMap(s -> s.pick().hero().stream()).map(ScoredCandidate::photo);
    Stream<Photo> others =
        spaces.stream().flatMap(s -> s.pick().runnersUp().stream()).map(ScoredCandidate::photo);
    heroes
        .parallel()
        .forEach(
            photo -> {
              copies.dataAddress(photo, SmallCopies.HERO_EDGE);
              copies.dataAddress(photo, SmallCopies.SMALL_EDGE);
            });
    others.parallel().forEach(photo -> copies.dataAddress(photo, SmallCopies.SMALL_EDGE));
  }

  static String summary(Month month) {
    int filled = 0;
    int missing = 0;
    for (MonthDay day : month.days()) {
      for (MonthSpace space : day.spaces()) {
        if (space.pick().hero().isPresent()) {
          filled++;
        } else {
          missing++;
        }
      }
    }
    return DayWords.counted(files(month), "file")
        + " read, "
        + DayWords.counted(filled, "space")
        + " filled, "
        + (missing == 0 ? "nothing missing" : missing + " still missing")
        + ", "
        + DayWords.counted(month.sheets().size(), "sheet")
        + " of "
        + month.units().sized(month.settings().sheet())
        + " to print.";
  }

  /** Stills from one clip are one file. */
  private static int files(Month month) {
    return (int) month.photos().stream().map(photo -> photo.file().path()).distinct().count();
  }

  private static void leftOut(Html page, Month month) {
    page.raw("<section id=\"left\">\n<h2>Left out, and what to know</h2>\n<ul>\n");
    for (Warning warning : month.warnings()) {
      page.raw("<li>");
      warning.file().ifPresent(file -> page.element("b", "", file.name()).raw(" "));
      warning.day().ifPresent(day -> page.element("b", "", DayWords.shortDay(day)).raw(" "));
      page.text(warning.text()).raw("</li>\n");
    }
    for (MonthPhoto photo : month.photos()) {
      photo
          .problem()
          .filter(text -> month.warnings().stream().noneMatch(w -> isAbout(w, photo)))
          .ifPresent(
              text ->
                  page.raw("<li>")
                      .element("b", "", photo.file().name())
                      .raw(" ")
                      .text(text)
                      .raw("</li>\n"));
    }
    page.raw("</ul>\n</section>\n");
  }

  private static boolean isAbout(Warning warning, MonthPhoto photo) {
    return warning
        .file()
        .filter(
            file ->
                file.equals(photo.file())
                    || file.frame().isPresent() && file.path().equals(photo.file().path()))
        .isPresent();
  }

  private static String resource(String name) {
    try (InputStream in = IndexPage.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
