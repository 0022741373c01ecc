package org.daymount.output;

import java.util.Comparator;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.look.Subject;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.photo.Photo;
import org.daymount.pick.Score;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Units;

/** One day: its story, and for each space the whole picture with the crop drawn on it. */
final class DaySection {
  private static final double WHOLE_EDGE_REM = 28;

  private final SmallCopies copies;
  private final Units units;

  DaySection(SmallCopies copies, Units units) {
    this.units = units;
    this.copies = copies;
  }

  void write(Html page, MonthDay day) {
    page.raw("<article id=\"d%d\">\n<h2><b>%<d</b> ", day.day().getDayOfMonth())
        .text(DayWords.weekday(day.day()))
        .raw(" ")
        .element("span", "state", words(day.state()))
        .raw("</h2>\n");
    day.story()
        .filter(story -> !story.isBlank())
        .ifPresent(story -> page.element("p", "story", story).raw("\n"));
    for (MonthSpace space : day.spaces()) {
      space(page, space);
    }
    page.raw("</article>\n");
  }

  private static String words(MonthDay.State state) {
    return switch (state) {
      case FILLED -> "";
      case PARTLY -> "a picture is missing";
      case EMPTY -> "no picture yet";
      case LEFT_OUT -> "left out";
    };
  }

  private void space(Html page, MonthSpace monthSpace) {
    SpacePick pick = monthSpace.pick();
    page.raw("<section class=\"space\">\n")
        .element("h3", "", title(monthSpace))
        .raw("\n<div class=\"pair\">\n");
    pick.hero().ifPresent(hero -> whole(page, hero));
    page.raw("<div class=\"why\">\n");
    pick.hero().ifPresent(hero -> page.element("p", "name", hero.photo().file().name()).raw("\n"));
    page.raw("<ul class=\"reasons\">");
    pick.reasons().forEach(reason -> page.element("li", "", reason));
    page.raw("</ul>\n");
    pick.hero().ifPresent(hero -> bars(page, hero.score()));
    page.raw("</div>\n</div>\n");
    if (!pick.runnersUp().isEmpty()) {
      page.element("h4", "", "Next best").raw("\n<ul class=\"next\">\n");
      pick.runnersUp().forEach(candidate -> runnerUp(page, candidate));
      page.raw("</ul>\n");
    }
    page.raw("</section>\n");
  }

  private String title(MonthSpace space) {
    String where =
        space.pieces().isEmpty() ? "" : ", piece " + String.join(" and ", space.pieces());
    return DayWords.space(space.pick().space(), space.pick().direction(), units)
        + where
        + (space.pick().chosenBy() == SpacePick.ChosenBy.PERSON ? ", your choice" : "");
  }

  private void whole(Html page, ScoredCandidate hero) {
    Photo photo = hero.photo();
    Optional<String> address = copies.dataAddress(photo, SmallCopies.HERO_EDGE);
    if (address.isEmpty()) {
      page.element("p", "none", "the picture can no longer be read");
      return;
    }
    int w = photo.size().width();
    int h = photo.size().height();
    PixelBox window = hero.crop().window();
    page.raw(
            "<figure class=\"whole\" style=\"aspect-ratio:%d/%d;width:min(100%%,%.2frem)\">",
            w, h, WHOLE_EDGE_REM * Math.min(1, w / (double) h))
        .raw("<img alt=\"")
        .text(photo.file().lastName() + ", the part that is printed is left bright")
        .raw("\" src=\"%s\">", address.get())
        .raw("<svg viewBox=\"0 0 %d %d\" aria-hidden=\"true\">", w, h)
        .raw("<path class=\"off\" fill-rule=\"evenodd\" d=\"M0 0H%dV%dH0Z", w, h)
        .raw(
            "M%d %dH%dV%dH%dZ\"/>",
            window.x(), window.y(), window.right(), window.bottom(), window.x())
        .raw("<rect class=\"cutline\" %s/>", attributes(window));
    for (Subject subject : hero.looked().measures().subjects()) {
      box(page, subject.box(), "subject", subject.what(), h);
    }
    for (Face face : hero.looked().measures().faces()) {
      box(page, face.box(), "face", "face", h);
    }
    page.raw("</svg></figure>\n");
  }

  private static void box(Html page, PixelBox box, String kind, String what, int pictureHeight) {
    int letters = Math.max(8, pictureHeight / 28);
    page.raw("<g class=\"box %s\"><rect %s/>", kind, attributes(box))
        .raw("<text x=\"%d\" y=\"%d\" font-size=\"%d\">", box.x(), box.y() - letters / 4, letters)
        .text(what)
        .raw("</text></g>");
  }

  private static String attributes(PixelBox box) {
    return "x=\""
        + box.x()
        + "\" y=\""
        + box.y()
        + "\" width=\""
        + box.width()
        + "\" height=\""
        + box.height()
        + "\"";
  }

  private static void bars(Html page, Score score) {
    double largest =
        score.parts().stream()
            .map(part -> Math.abs(part.value()))
            .max(Comparator.naturalOrder())
            .orElse(1.0);
    page.raw("<details class=\"scores\"><summary>In figures</summary>")
        .raw("<table class=\"sumofparts\">");
    for (Score.Part part : score.parts()) {
      page.raw("<tr>")
          .element("th", "", part.name())
          .raw(
              "<td><span class=\"bar%s\" style=\"width:%.1f%%\"></span></td><td>%+.2f</td></tr>",
              part.value() < 0 ? " less" : "",
              largest > 0 ? 100 * Math.abs(part.value()) / largest : 0,
              part.value());
    }
    page.raw("<tr class=\"total\"><th>together</th><td></td><td>%.2f</td></tr>", score.total())
        .raw("</table></details>\n");
  }

  private void runnerUp(Html page, ScoredCandidate candidate) {
    page.raw("<li>");
    copies
        .dataAddress(candidate.photo(), SmallCopies.SMALL_EDGE)
        .ifPresent(address -> page.raw("<img alt=\"\" src=\"%s\">", address));
    page.element("span", "name", candidate.photo().file().lastName())
        .element("span", "reason", String.join("; ", candidate.reasons()))
        .raw("</li>\n");
  }
}
