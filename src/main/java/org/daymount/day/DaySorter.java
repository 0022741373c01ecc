package org.daymount.day;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.daymount.photo.Photo;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;

/** Photos to the days of one month. */
public final class DaySorter {
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private static final Comparator<Photo> EARLIEST_FIRST =
      Comparator.comparing((Photo photo) -> photo.taken().local().orElseThrow())
          .thenComparing(Photo::file);

  /** The same photos in any order give the same days. */
  public Days sort(List<Photo> photos, DaySettings settings) {
    Map<Boolean, List<Photo>> byTrust =
        photos.stream()
            .sorted(Comparator.comparing(Photo::file))
            .collect(Collectors.partitioningBy(photo -> photo.taken().from().isTrusted()));
    SortedMap<LocalDate, List<Photo>> byDay = byDay(byTrust.get(true), settings.dayStarts());
    Optional<YearMonth> month = settings.month().or(() -> fullestMonth(byDay));
    SortedMap<YearMonth, Integer> otherMonths = new TreeMap<>();
    List<Photo> otherDays = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    byTrust.get(false).forEach(photo -> problems.add(withoutDate(photo, settings.dayStarts())));
    byDay.forEach(
        (day, taken) -> {
          YearMonth own = YearMonth.from(day);
          if (!month.equals(Optional.of(own))) {
            otherMonths.merge(own, files(taken), Integer::sum);
            taken.forEach(photo -> problems.add(ofOtherMonth(photo, own)));
          } else if (!settings.days().contains(day.getDayOfMonth())) {
            otherDays.addAll(taken);
            taken.forEach(photo -> problems.add(ofOtherDay(photo, day)));
          }
        });
    Collections.sort(problems);
    List<PhotoDay> days = month.map(m -> days(m, settings.days(), byDay)).orElse(List.of());
    return new Days(month, days, otherMonths, otherDays, byTrust.get(false), problems);
  }

  private static boolean isStill(Photo photo) {
    return photo.file().frame().isPresent();
  }

  /** Stills from one clip count as one. */
  private static int files(List<Photo> photos) {
    return (int) photos.stream().map(photo -> photo.file().path()).distinct().count();
  }

  private static SortedMap<LocalDate, List<Photo>> byDay(List<Photo> dated, DayStart start) {
    return dated.stream()
        .sorted(EARLIEST_FIRST)
        .collect(
            Collectors.groupingBy(
                photo -> start.dayOf(photo.taken()), TreeMap::new, Collectors.toList()));
  }

  /**
   * The month with most photos, screenshots not counted unless there is nothing else; of several as
   * full, the latest: an album is made of the month just past.
   */
  private static Optional<YearMonth> fullestMonth(SortedMap<LocalDate, List<Photo>> byDay) {
    return fullest(byDay, photo -> photo.screenshot().isPresent() || isStill(photo) ? 0 : 1)
        .or(() -> fullest(byDay, photo -> 1));
  }

  private static Optional<YearMonth> fullest(
      SortedMap<LocalDate, List<Photo>> byDay, Function<Photo, Integer> weight) {
    SortedMap<YearMonth, Integer> counts = new TreeMap<>();
    byDay.forEach(
        (day, photos) -> {
          int count = photos.stream().map(weight).mapToInt(Integer::intValue).sum();
          counts.merge(YearMonth.from(day), count, Integer::sum);
        });
    return counts.entrySet().stream()
        .filter(entry -> entry.getValue() > 0)
        .max(Map.Entry.<YearMonth, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey);
  }

  private static List<PhotoDay> days(
      YearMonth month, DayNumbers wanted, SortedMap<LocalDate, List<Photo>> byDay) {
    List<PhotoDay> days = new ArrayList<>();
    for (int number = 1; number <= month.lengthOfMonth(); number++) {
      if (wanted.contains(number)) {
        LocalDate day = month.atDay(number);
        days.add(new PhotoDay(day, byDay.getOrDefault(day, List.of())));
      }
    }
    return days;
  }

  private static Problem withoutDate(Photo photo, DayStart start) {
    String guess =
        photo.taken().from() == TakenFrom.FILE_TIME
            ? "has no date but the file's own (" + DAY.format(start.dayOf(photo.taken())) + ")"
            : "has no date";
    return new Problem(
        photo.file(),
        Problem.Kind.NO_DATE,
        guess + "; put the date into its name, like 2026-06-03 14.25.30, to use it");
  }

  private static Problem ofOtherMonth(Photo photo, YearMonth month) {
    return new Problem(
        photo.file(),
        Problem.Kind.OTHER_MONTH,
        "was taken in " + MONTH.format(month) + "; choose that month with --month " + month);
  }

  private static Problem ofOtherDay(Photo photo, LocalDate day) {
    return new Problem(
        photo.file(),
        Problem.Kind.OTHER_DAYS,
        "was taken on " + DAY.format(day) + ", not one of the days asked for");
  }
}
