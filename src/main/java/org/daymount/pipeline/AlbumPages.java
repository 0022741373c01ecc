package org.daymount.pipeline;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.daymount.album.DayPage;
import org.daymount.album.PageForm;
import org.daymount.album.TradeSizes;
import org.daymount.choices.AlbumPlan;
import org.daymount.choices.AlbumPlanner;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesMerge;
import org.daymount.choices.IgnoredChoices;
import org.daymount.note.MonthNote;
import org.daymount.note.NoteRemark;
import org.daymount.page.PageFitter;
import org.daymount.photo.Photo;
import org.daymount.problem.Warning;

/**
 * What the month's pages are to hold: the defaults, the person's note and the person's choices.
 *
 * @param pages one for every day of the month
 * @param noted the same as the defaults and the note alone would have them
 * @param choices met with the photos that are there now; not for saving
 * @param note as it was read
 */
record AlbumPages(
    List<DayPage> pages,
    Map<LocalDate, DayPage> noted,
    Choices choices,
    Optional<NoteInUse.Reading> note,
    List<Warning> warnings) {
  AlbumPages {
    pages = List.copyOf(pages);
    noted = Map.copyOf(noted);
    warnings = List.copyOf(warnings);
  }

  /**
   * @param photos that are there now; choices are met with them by content
   */
  static AlbumPages read(Request request, YearMonth month, List<Photo> photos, Choices made) {
    ChoicesMerge merged = ChoicesMerge.of(made, photos, request.ingest()::isBelievable);
    Optional<NoteInUse> inUse = NoteInUse.of(request, month);
    Optional<NoteInUse.Reading> reading = inUse.map(file -> file.read(request, month));
    Optional<MonthNote> note = reading.map(NoteInUse.Reading::note);
    Predicate<LocalDate> wanted = day -> request.daySettings().days().contains(day.getDayOfMonth());
    AlbumPlan plan = AlbumPlanner.plan(month, wanted, note, request.defaults(), merged.choices());
    PageFitter fitter = new PageFitter(request.pages());
    UnaryOperator<DayPage> served =
        page -> TradeSizes.servedBy(request.settings().sheet(), fitter.pockets(), page);
    Map<LocalDate, DayPage> noted =
        AlbumPlanner.plan(month, day -> true, note, request.defaults()).pages().stream()
            .map(served)
            .collect(Collectors.toMap(DayPage::day, Function.identity()));
    List<Warning> warnings = new ArrayList<>();
    for (String remark : request.pages().album().remarks()) {
      warnings.add(Warning.general(Warning.Kind.ALBUM, "in the album file, " + remark));
    }
    inUse
        .flatMap(NoteInUse::remark)
        .ifPresent(text -> warnings.add(Warning.general(Warning.Kind.NOTE, text)));
    for (NoteRemark remark : note.map(MonthNote::remarks).orElse(List.of())) {
      warnings.add(Warning.general(Warning.Kind.NOTE, "in the month note, " + remark));
    }
    warnings.addAll(IgnoredChoices.of(made, month));
    warnings.addAll(plan.remarks());
    warnings.addAll(merged.remarks());
    List<DayPage> pages = plan.pages().stream().map(served).toList();
    return new AlbumPages(
        directed(pages, fitter, request), noted, merged.choices(), reading, warnings);
  }

  /** A page gives its spaces their direction before any picture is chosen for them. */
  private static List<DayPage> directed(List<DayPage> pages, PageFitter fitter, Request request) {
    CardSizes cards = CardSizes.of(request);
    return pages.stream()
        .map(
            page ->
                page.form().isPresent() && !page.form().equals(Optional.of(PageForm.POCKET))
                    ? page // its places say how they lie, or nothing but the pictures does
                    : page.withSpaces(
                        fitter.directed(page.spaces(), cards.of(page).stream().toList())))
        .toList();
  }
}
