package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.daymount.crop.CropSettings;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.page.PagePlanner;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.SpacePick;
import org.daymount.problem.Problem;
import org.daymount.problem.Warning;
import org.daymount.sheet.Packing;
import org.daymount.unit.Ppi;
import org.daymount.unit.Units;

/** All that a person should know about the finished month, in the order in which it is told. */
final class MonthWarnings {
  private final Request request;
  private final Survey surveyed;
  private final Selected picked;
  private final Stories stories;
  private final Map<PhotoFile, Problem> problems;

  MonthWarnings(Request request, Survey surveyed, Selected picked, Stories stories) {
    this.request = request;
    this.surveyed = surveyed;
    this.picked = picked;
    this.stories = stories;
    this.problems = picked.problems();
  }

  List<Warning> of(List<MonthDay> days, Packing packing, PagePlanner.Plan pages) {
    List<Warning> warnings = ofTheMonth(days, packing);
    pages
        .misfits()
        .forEach((day, text) -> warnings.add(Warning.on(day, Warning.Kind.PAGE_FULL, text)));
    onDays(
            pages.withoutCards(),
            PlannedPages.NO_PLACE_FOR_CARD,
            request.cardStyle().fitted()
                ? ": the story is longer than its place; shorten it, or give the page fewer"
                    + " pictures"
                : ": it is printed, and lies on no page; --cards auto makes each card as large as"
                    + " its place")
        .ifPresent(warnings::add);
    if (request.cardStyle().fitted()) {
      onDays(
              days.stream().filter(this::isToldOnNoCard).map(MonthDay::day).toList(),
              "the pictures leave no place for the story",
              ": no card is made; give the page fewer or smaller pictures, or write it elsewhere")
          .ifPresent(warnings::add);
    }
    return warnings;
  }

  private List<Warning> ofTheMonth(List<MonthDay> days, Packing packing) {
    List<Warning> warnings = new ArrayList<>();
    picked
        .close()
        .without()
        .ifPresent(why -> warnings.add(Warning.general(Warning.Kind.NO_DETECTORS, why)));
    for (String model : surveyed.found().unmatchedClocks()) {
      warnings.add(
          Warning.general(
              Warning.Kind.CLOCK,
              "no photo was taken with a " + model + "; look at the spelling in --clock"));
    }
    surveyed
        .found()
        .notes()
        .forEach(note -> warnings.add(Warning.general(Warning.Kind.DATES, note)));
    warnings.addAll(picked.pageWarnings());
    for (MonthDay day : days) {
      for (MonthSpace space : day.spaces()) {
        missing(day, space).ifPresent(warnings::add);
        smallPrint(day, space).ifPresent(warnings::add);
      }
    }
    warnings.addAll(stories.warnings());
    if (!packing.provenFewest()) {
      warnings.add(
          Warning.general(
              Warning.Kind.PACKING, "there may be a way with fewer sheets: " + packing.how()));
    }
    Set<String> ofClips = new HashSet<>();
    for (Problem problem : problems.values()) { // what is said of a clip's stills alike, once
      boolean still = problem.file().frame().isPresent();
      if (!still || ofClips.add(problem.file().path() + problem.kind().code())) {
        warnings.add(warning(problem));
      }
    }
    for (Problem remark : surveyed.found().remarks()) {
      if (!problems.containsKey(remark.file())) { // a file of the month, and not left out
        warnings.add(Warning.of(remark));
      }
    }
    return warnings;
  }

  /** A damaged picture may be printed all the same, which has to be said. */
  private Warning warning(Problem problem) {
    Warning warning = Warning.of(problem);
    if (problem.kind() != Problem.Kind.DAMAGED) {
      return warning;
    }
    boolean printed = picked.usedFiles().contains(problem.file());
    return new Warning(
        warning.kind(),
        warning.file(),
        warning.day(),
        warning.text()
            + (printed
                ? ". It is printed, for there is no sound one: look at the print"
                : ". It is not printed"));
  }

  private Optional<Warning> missing(MonthDay day, MonthSpace space) {
    SpacePick pick = space.pick();
    if (pick.hero().isPresent()) {
      return Optional.empty();
    }
    String text =
        "the "
            + units().name(pick.space().upright())
            + pick.space().direction().map(way -> " " + way.word()).orElse("")
            + " picture is missing: "
            + String.join("; ", pick.reasons());
    return Optional.of(Warning.on(day.day(), Warning.Kind.MISSING_PICTURE, text));
  }

  /** The tool never goes below the least resolution by itself; a person's crop may. */
  private Optional<Warning> smallPrint(MonthDay day, MonthSpace space) {
    Ppi least = request.crop().minimum();
    return space
        .pick()
        .hero()
        .filter(hero -> hero.crop().ppi().isBelow(least))
        .map(
            hero ->
                Warning.on(
                    day.day(),
                    Warning.Kind.SMALL_PRINT,
                    "%s is %s in its %s space; draw a larger crop, or give it a smaller space"
                        .formatted(
                            hero.photo().file(),
                            CropSettings.softness(hero.crop().ppi(), least),
                            units().name(space.pick().space().upright()))));
  }

  private Units units() {
    return request.pages().units();
  }

  /** One sentence for all such days; they are many where cards are larger than most places. */
  private static Optional<Warning> onDays(List<LocalDate> days, String fact, String next) {
    if (days.isEmpty()) {
      return Optional.empty();
    }
    String numbers =
        days.stream()
            .map(day -> Integer.toString(day.getDayOfMonth()))
            .collect(Collectors.joining(", "));
    return Optional.of(
        Warning.general(
            Warning.Kind.PAGE_FULL,
            fact + (days.size() == 1 ? " on day " : " on days ") + numbers + next));
  }

  private boolean isToldOnNoCard(MonthDay day) {
    return day.state() != MonthDay.State.LEFT_OUT
        && day.story().filter(story -> !story.isBlank()).isPresent()
        && stories.cards(day.day()).isEmpty();
  }
}
