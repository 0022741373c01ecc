package org.daymount.pipeline;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.album.BasePage;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.album.TradeSizes;
import org.daymount.choices.AlbumPlan;
import org.daymount.choices.AlbumPlanner;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.month.Settings;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteParser;
import org.daymount.page.DayContents;
import org.daymount.page.PageFitter;
import org.daymount.page.PagePlanner;
import org.daymount.page.PageSettings;
import org.daymount.pick.SpacePick;
import org.daymount.problem.Warning;
import org.daymount.sheet.MatPlan;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * Pages that are made before there is a picture: what lies on each, and the card they are cut from.
 *
 * @param month days without pictures, on their pages
 * @param papers all mats and papers on sheets of card, named by their days
 */
public record AlbumAhead(Month month, MatPlan papers) {
  /** What is narrower is called a strip. */
  private static final Length STRIP = Length.inches(1);

  /**
   * @param note which day has which page
   * @param card size of the sheets that mats and papers are cut from
   */
  public static AlbumAhead plan(
      YearMonth month,
      String note,
      Locale locale,
      AlbumDefaults defaults,
      PageSettings pages,
      Settings settings,
      PaperSize card) {
    MonthNote read = NoteParser.parse(note, pages.album().names(), locale);
    AlbumPlan plan =
        AlbumPlanner.plan(month, day -> true, Optional.of(read), defaults.with(pages.album()));
    PageFitter fitter = new PageFitter(pages);
    List<DayContents> contents = new ArrayList<>();
    List<MonthDay> days = new ArrayList<>();
    Map<String, PaperSize> papers = new LinkedHashMap<>();
    for (DayPage planned : plan.pages()) {
      DayPage page = TradeSizes.servedBy(settings.sheet(), fitter.pockets(), planned);
      boolean isThere = page.kind() != DayPage.Kind.LEFT_OUT;
      Optional<BasePage> base = page.base().flatMap(pages.album()::base);
      List<Space> spaces =
          base.isPresent() ? page.spaces() : fitter.directed(page.spaces(), List.of());
      List<MonthSpace> shown = new ArrayList<>();
      for (int i = 0; isThere && i < spaces.size(); i++) {
        shown.add(shown(page.day(), i, spaces, papers));
      }
      if (isThere) {
        base.ifPresent(made -> made.papers().forEach(size -> add(page.day(), size, papers)));
        contents.add(contents(page, base, spaces));
      }
      days.add(
          new MonthDay(
              page.day(),
              isThere ? MonthDay.State.EMPTY : MonthDay.State.LEFT_OUT,
              page.story(),
              shown));
    }
    PagePlanner.Plan laid = new PagePlanner(pages).plan(contents);
    List<Warning> warnings = new ArrayList<>();
    pages.album().remarks().forEach(text -> warnings.add(general("in the album file, " + text)));
    read.remarks().forEach(remark -> warnings.add(general("in the month note, " + remark)));
    plan.remarks().forEach(remark -> warnings.add(on(remark.day(), remark.text())));
    laid.misfits().forEach((day, text) -> warnings.add(on(Optional.of(day), text)));
    Month made = new Month(month, settings, List.of(), days, List.of(), laid.layout(), warnings);
    return new AlbumAhead(made, MatPlan.of(papers, card));
  }

  private static DayContents contents(DayPage page, Optional<BasePage> base, List<Space> spaces) {
    boolean keepsStory = page.story().isPresent() || base.flatMap(BasePage::story).isPresent();
    return new DayContents(
        page.day(),
        spaces,
        spaces.stream().map(AlbumAhead::way).toList(),
        List.of(),
        page.form(),
        base,
        keepsStory);
  }

  private static Orientation way(Space space) {
    return space.ways().get(0);
  }

  private static MonthSpace shown(
      LocalDate day, int index, List<Space> spaces, Map<String, PaperSize> papers) {
    Space space = spaces.get(index);
    List<String> mat = new ArrayList<>();
    if (space.onMat()) {
      String letter = spaces.size() > 1 ? Character.toString('a' + index) : "";
      String name = "mat " + day.getDayOfMonth() + letter;
      papers.put(name, space.size(way(space)));
      mat.add(name);
    }
    return new MonthSpace(
        new SpacePick(
            space,
            way(space),
            Optional.empty(),
            SpacePick.ChosenBy.TOOL,
            List.of(),
            List.of("the page is made before its pictures")),
        mat);
  }

  private static void add(LocalDate day, PaperSize size, Map<String, PaperSize> papers) {
    boolean isStrip = STRIP.isLongerThan(size.width().min(size.height()));
    String name = (isStrip ? "strip " : "paper ") + day.getDayOfMonth();
    String unique = name;
    for (char letter = 'b'; papers.containsKey(unique); letter++) {
      unique = name + letter;
    }
    papers.put(unique, size);
  }

  private static Warning general(String text) {
    return Warning.general(Warning.Kind.ALBUM, text);
  }

  private static Warning on(Optional<LocalDate> day, String text) {
    return new Warning(Warning.Kind.PAGE, Optional.empty(), day, text);
  }
}
