package org.daymount.choices;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.album.BasePage;
import org.daymount.album.DayPage;
import org.daymount.album.PageDivision;
import org.daymount.album.PageForm;
import org.daymount.album.PageSpec;
import org.daymount.album.Space;
import org.daymount.album.WantedSpace;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteParser;
import org.daymount.problem.Warning;

/** What every day's page holds by what is usual and by the month note alone. */
final class NotedPages {
  private static final int ENOUGH_DAYS = 10;

  private final YearMonth month;
  private final Optional<MonthNote> note;
  private final AlbumDefaults defaults;
  private final List<Warning> remarks;

  /**
   * @param remarks what a person should know is added to them
   */
  NotedPages(
      YearMonth month, Optional<MonthNote> note, AlbumDefaults defaults, List<Warning> remarks) {
    this.month = month;
    this.note = note;
    this.defaults = defaults;
    this.remarks = remarks;
  }

  /** What a person should know of the note as a whole. */
  void remarkOnNote() {
    remarkOnMonth();
    remarkOnEnd();
  }

  private void remarkOnMonth() {
    if (note.isEmpty()) {
      return;
    }
    Optional<YearMonth> said = note.get().month();
    if (said.isEmpty()) {
      // Only now is the month known against which the note's weekdays and days can be checked.
      NoteParser.dateRemarks(note.get().days(), month)
          .forEach(remark -> remarks.add(Warning.general(Warning.Kind.NOTE, "note, " + remark)));
    } else if (!said.get().equals(month)) {
      remarks.add(
          Warning.general(
              Warning.Kind.NOTE_MONTH,
              "the note is for "
                  + NoteParser.name(said.get())
                  + " and the album for "
                  + NoteParser.name(month)
                  + "; only days the note gives to that month are used. Choose with --month, or"
                  + " change the note's first line"));
    }
  }

  /** A note that ends well before its month may mean the album to end there. */
  private void remarkOnEnd() {
    Optional<LocalDate> last = note.flatMap(given -> given.lastDay(month));
    if (last.isEmpty() || !last.get().isBefore(month.atEndOfMonth())) {
      return;
    }
    int day = last.get().getDayOfMonth();
    boolean stopped = note.flatMap(given -> given.stopsAfter(month)).isPresent();
    boolean brokenOff =
        !last.get().isAfter(month.atEndOfMonth().minusDays(4))
            && note.get().days().size() >= ENOUGH_DAYS;
    if (!stopped && !note.get().closes() && !brokenOff) {
      return; // a few words about single days, not a month that was told and broken off
    }
    remarks.add(
        Warning.general(
            Warning.Kind.NOTE_ENDS,
            stopped
                ? "the note stops after day " + day + ", so the days after it have no page"
                : "the note ends with day "
                    + day
                    + "; the days after it still get their pages. To stop there, use --days 1-"
                    + day
                    + " or write stop on a line of its own at the end of the note"));
  }

  DayPage on(LocalDate date) {
    Optional<MonthNote.Joined> said = note.flatMap(given -> given.on(date, month));
    PageSpec words = said.map(MonthNote.Joined::words).orElse(PageSpec.NONE);
    Optional<String> story = said.flatMap(MonthNote.Joined::story);
    return page(date, words, story);
  }

  /** A page in a person's words, with what is usual where they are silent. */
  DayPage page(LocalDate date, PageSpec words, Optional<String> story) {
    Optional<BasePage> base =
        words.form().flatMap(PageForm::base).flatMap(name -> defaults.album().base(name));
    if (base.isPresent()) {
      return ofBase(date, words, base.get(), story);
    }
    Optional<PageForm> form = words.form().filter(said -> said.kind() != PageForm.Kind.BASE);
    return words.kind() == DayPage.Kind.PICTURES
        ? new DayPage(date, words.kind(), spaces(date, words), story, form, words.storyCard())
        : new DayPage(date, words.kind(), List.of(), story, form, words.storyCard());
  }

  /** A ready-made page says itself what it holds. */
  private DayPage ofBase(LocalDate date, PageSpec words, BasePage base, Optional<String> story) {
    if (!words.spaces().isEmpty()) {
      remarks.add(
          Warning.on(
              date,
              Warning.Kind.BASE,
              "its page "
                  + base.name()
                  + " is made already and says what it holds; the sizes beside its name are not"
                  + " used"));
    }
    List<Space> spaces = base.spaces();
    boolean bare = words.kind() != DayPage.Kind.PICTURES || spaces.isEmpty();
    DayPage.Kind kind = bare ? DayPage.Kind.NO_PHOTO : DayPage.Kind.PICTURES;
    return new DayPage(
        date,
        words.kind() == DayPage.Kind.LEFT_OUT ? words.kind() : kind,
        bare ? List.of() : spaces,
        story,
        words.form(),
        words.storyCard());
  }

  private List<Space> spaces(LocalDate date, PageSpec words) {
    if (words.spaces().isEmpty()) {
      return defaults.spaces();
    }
    List<Space> spaces = new ArrayList<>();
    List<WantedSpace> asked =
        words.dividesPage() ? PageDivision.sized(words.spaces()) : words.spaces();
    for (WantedSpace space : asked) {
      try {
        spaces.addAll(space.with(defaults));
      } catch (IllegalArgumentException revealTooWide) {
        remarks.add(
            Warning.on(
                date,
                Warning.Kind.REVEAL,
                revealTooWide.getMessage()
                    + ", so it is planned without a mat; give a smaller reveal"));
        spaces.addAll(withoutMat(space));
      }
    }
    return spaces;
  }

  private List<Space> withoutMat(WantedSpace space) {
    return space.size().isPresent() || space.direction().isPresent()
        ? space.withoutMat().with(defaults)
        : defaults.spaces();
  }
}
