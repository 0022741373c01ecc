package org.daymount.choices;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.daymount.album.AlbumDefaults;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpecParser;
import org.daymount.album.Space;
import org.daymount.note.MonthNote;
import org.daymount.problem.Warning;
import org.daymount.unit.Orientation;

/**
 * Settles what every day's page holds: the defaults, then the month note, then what was changed in
 * the review.
 *
 * <p>Where the note and the review both speak, the review holds, since it was made with the note's
 * words in sight. If the note was edited after that (its story, or its words for the page, is no
 * longer what the review replaced), the note's newer text holds; a remark names both.
 */
public final class AlbumPlanner {
  private final YearMonth month;
  private final Predicate<LocalDate> wanted;
  private final Optional<MonthNote> note;
  private final NotedPages noted;
  private final Choices choices;
  private final List<Warning> remarks = new ArrayList<>();

  private AlbumPlanner(
      YearMonth month,
      Predicate<LocalDate> wanted,
      Optional<MonthNote> note,
      AlbumDefaults defaults,
      Choices choices) {
    this.month = month;
    this.wanted = wanted;
    this.note = note;
    this.noted = new NotedPages(month, note, defaults, remarks);
    this.choices = choices;
  }

  /** As {@link #plan(YearMonth, Predicate, Optional, AlbumDefaults, Choices)}, without choices. */
  public static AlbumPlan plan(
      YearMonth month,
      Predicate<LocalDate> wanted,
      Optional<MonthNote> note,
      AlbumDefaults defaults) {
    return plan(month, wanted, note, defaults, Choices.NONE);
  }

  /**
   * @param wanted which days are to have a page; the others are left out, and keep their stories
   */
  public static AlbumPlan plan(
      YearMonth month,
      Predicate<LocalDate> wanted,
      Optional<MonthNote> note,
      AlbumDefaults defaults,
      Choices choices) {
    return new AlbumPlanner(month, wanted, note, defaults, choices).plan();
  }

  private AlbumPlan plan() {
    noted.remarkOnNote();
    Map<LocalDate, DayPage> asNoted = new HashMap<>();
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      LocalDate date = month.atDay(day);
      asNoted.put(date, noted.on(date));
    }
    List<DayPage> pages = new ArrayList<>();
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      LocalDate date = month.atDay(day);
      pages.add(settled(date, asNoted));
    }
    return new AlbumPlan(pages, remarks);
  }

  private DayPage settled(LocalDate date, Map<LocalDate, DayPage> asNoted) {
    DayPage own = asNoted.get(date);
    LocalDate from = choices.pageOf(date);
    DayPage base = asNoted.getOrDefault(from, own);
    if (!asNoted.containsKey(from)) {
      remarks.add(
          Warning.on(
              date,
              Warning.Kind.SWAP,
              "its page was swapped with that of " + from + ", which is not in this month"));
    }
    DayChoice choice = choices.day(date);
    Optional<String> story = story(date, own.story(), choice.story());
    DayPage page = changed(date, base, choice);
    Optional<LocalDate> stop = note.flatMap(given -> given.stopsAfter(month));
    if (stop.filter(date::isAfter).isPresent() && choice.page().isEmpty()) {
      return new DayPage(date, DayPage.Kind.LEFT_OUT, List.of(), story);
    }
    if (!wanted.test(date)) {
      if (note.flatMap(given -> given.on(date, month)).isPresent()) {
        remarks.add(
            Warning.on(
                date,
                Warning.Kind.OUTSIDE_DAYS,
                "the note speaks of it, but --days leaves it out"));
      }
      return new DayPage(date, DayPage.Kind.LEFT_OUT, List.of(), story);
    }
    remarkOnSpaces(date, page.spaces(), choice);
    return new DayPage(date, page.kind(), page.spaces(), story, page.form(), page.storyCard());
  }

  /** What was chosen for a space that the page does not have is kept, and named. */
  private void remarkOnSpaces(LocalDate date, List<Space> spaces, DayChoice choice) {
    for (Map.Entry<Integer, SpaceChoice> each : choice.spaces().entrySet()) {
      int place = each.getKey();
      if (place >= spaces.size() && isSaidWithThePage(date, each.getValue())) {
        continue;
      }
      if (place >= spaces.size()) {
        remarks.add(
            Warning.on(
                date,
                Warning.Kind.NO_SUCH_SPACE,
                "something was chosen in the review for space "
                    + (place + 1)
                    + ", but its page has "
                    + (spaces.isEmpty() ? "none" : "only " + spaces.size())
                    + "; it is kept, and not used"));
      } else if (each.getValue().direction().equals(Optional.of(Orientation.SQUARE))
          && !spaces.get(place).size().isSquare()) {
        remarks.add(
            Warning.on(
                date,
                Warning.Kind.NO_SUCH_DIRECTION,
                "space " + (place + 1) + " is to lie square, but is not; it lies as it was"));
      }
    }
  }

  /** A size or direction goes with the page that the note's newer words replaced. */
  private boolean isSaidWithThePage(LocalDate date, SpaceChoice space) {
    SpaceChoice onIt = space.withSize(Optional.empty()).withDirection(Optional.empty());
    return onIt.equals(SpaceChoice.NONE)
        && remarks.stream()
            .anyMatch(
                r -> r.kind() == Warning.Kind.PAGE_CONFLICT && r.day().equals(Optional.of(date)));
  }

  private Optional<String> story(
      LocalDate date, Optional<String> noted, Optional<StoryChoice> chosen) {
    if (chosen.isEmpty()) {
      return noted;
    }
    Optional<String> written = chosen.map(StoryChoice::text).filter(text -> !text.isBlank());
    if (noted.equals(chosen.get().replaced()) || noted.equals(written)) {
      return written;
    }
    remarks.add(
        Warning.on(
            date,
            Warning.Kind.STORY_CONFLICT,
            "its story was written in the review ("
                + start(written)
                + ") and changed in the note since ("
                + start(noted)
                + "); the note's is used. To use the other, open the day in the review and write"
                + " it again"));
    return noted;
  }

  private DayPage changed(LocalDate date, DayPage base, DayChoice choice) {
    if (!choice.changesPage()) {
      return base;
    }
    String now = PageSpecParser.text(base);
    if (choice.pageReplaced().filter(before -> !before.equals(now)).isPresent()) {
      remarks.add(
          Warning.on(
              date,
              Warning.Kind.PAGE_CONFLICT,
              "its page was changed in the review (from "
                  + choice.pageReplaced().get()
                  + ") and in the note or the defaults since (to "
                  + now
                  + "); the latter are used"));
      return base;
    }
    DayPage page = choice.page().map(words -> noted.page(date, words, base.story())).orElse(base);
    return page.withSpaces(changed(date, page.spaces(), choice));
  }

  private List<Space> changed(LocalDate date, List<Space> onPage, DayChoice choice) {
    List<Space> spaces = new ArrayList<>(onPage);
    choice
        .spaces()
        .forEach(
            (place, space) -> {
              if (place < spaces.size()) {
                spaces.set(place, changed(date, spaces.get(place), space));
              }
            });
    return spaces;
  }

  private Space changed(LocalDate date, Space space, SpaceChoice choice) {
    try {
      return new Space(
          choice.size().orElse(space.size()),
          choice.direction().filter(way -> way != Orientation.SQUARE).or(space::direction),
          space.reveal(),
          space.onSide());
    } catch (IllegalArgumentException revealTooWide) {
      remarks.add(
          Warning.on(
              date,
              Warning.Kind.REVEAL,
              revealTooWide.getMessage() + ", so its size is left as it was"));
      return space;
    }
  }

  /** The first words of a story, for a message. */
  private static String start(Optional<String> story) {
    if (story.isEmpty()) {
      return "no story";
    }
    String line = story.get().strip().split("\n", 2)[0];
    int end = line.offsetByCodePoints(0, Math.min(40, line.codePointCount(0, line.length())));
    return "'" + line.substring(0, end) + (end < line.length() ? "…" : "") + "'";
  }
}
