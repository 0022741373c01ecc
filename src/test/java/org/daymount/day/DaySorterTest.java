package org.daymount.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;
import org.daymount.testphoto.PhotoBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DaySorterTest {
  private final DaySorter sorter = new DaySorter();

  private static Photo photo(String name, Taken taken) {
    return PhotoBuilder.named(name).taken(taken).photo();
  }

  private static Photo at(String local) {
    return builder(local).photo();
  }

  private static PhotoBuilder builder(String local) {
    return PhotoBuilder.named(local.replace(':', '-') + ".jpg")
        .taken(Taken.at(LocalDateTime.parse(local), TakenFrom.ORIGINAL));
  }

  private static Photo screenshot(String local) {
    return builder(local).screenshot("its name says screenshot").photo();
  }

  private static DaySettings starting(DayStart start) {
    return new DaySettings(start, Optional.empty(), DayNumbers.ALL);
  }

  private LocalDate dayOf(String local, DayStart start) {
    Days days = sorter.sort(List.of(at(local)), starting(start));
    List<LocalDate> filled =
        days.days().stream().filter(d -> !d.photos().isEmpty()).map(PhotoDay::day).toList();
    assertEquals(1, filled.size());
    return filled.get(0);
  }

  /** The diary day of the American Time Use Survey runs from 4 a.m. to 4 a.m. */
  @ParameterizedTest
  @CsvSource({
    "2026-06-03T04:00:00, 2026-06-03",
    "2026-06-03T23:59:59, 2026-06-03",
    "2026-06-04T00:00:00, 2026-06-03",
    "2026-06-04T03:59:59.999, 2026-06-03",
    "2026-06-04T04:00:00, 2026-06-04",
    "2026-07-01T01:00:00, 2026-06-30",
    "2026-01-01T03:00:00, 2025-12-31",
    "2024-03-01T00:30:00, 2024-02-29",
    "2100-03-01T00:30:00, 2100-02-28"
  })
  void theDayEndsAtFourInTheMorning(String local, LocalDate day) {
    assertEquals(day, dayOf(local, DayStart.FOUR));
  }

  /**
   * Wall-clock times in the hours that summer time skips or repeats (tzdb as in this Java): the day
   * needs no zone, so that an hour that "does not exist" still has one.
   */
  @ParameterizedTest
  @CsvSource({
    "Europe/Berlin, 2024-03-31T02:30:00, 0",
    "Europe/Berlin, 2024-10-27T02:30:00, 2",
    "America/New_York, 2024-03-10T02:30:00, 0",
    "America/New_York, 2024-11-03T01:30:00, 2",
    "America/Chicago, 2018-11-04T01:25:43, 2",
    "America/Sao_Paulo, 2018-11-04T00:30:00, 0",
    "Asia/Beirut, 2022-03-27T00:30:00, 0",
    "Africa/Cairo, 2024-04-26T00:30:00, 0",
    "America/Havana, 2024-03-10T00:30:00, 0",
    "America/Asuncion, 2023-10-01T00:30:00, 0",
    "Australia/Lord_Howe, 2024-04-07T01:45:00, 2",
    "Australia/Lord_Howe, 2024-10-06T02:15:00, 0",
    "Pacific/Apia, 2011-12-30T12:00:00, 0",
    "Asia/Kathmandu, 2024-05-01T00:30:00, 1",
    "Africa/Casablanca, 2024-03-10T02:30:00, 2",
    "Pacific/Kiritimati, 2024-01-01T00:30:00, 1",
    "Asia/Kolkata, 2024-02-29T23:59:59, 1"
  })
  void skippedAndRepeatedHoursStayOnTheirOwnDay(String zone, String local, int validOffsets) {
    LocalDateTime time = LocalDateTime.parse(local);
    assertEquals(validOffsets, ZoneId.of(zone).getRules().getValidOffsets(time).size());
    assertEquals(time.toLocalDate(), dayOf(local, DayStart.MIDNIGHT));
    LocalDate fromFour =
        time.toLocalTime().isBefore(LocalTime.of(4, 0))
            ? time.toLocalDate().minusDays(1)
            : time.toLocalDate();
    assertEquals(fromFour, dayOf(local, DayStart.FOUR));
  }

  @Test
  void aDayWithoutAnHourIsThatDayWheneverDaysBegin() {
    Taken dayOnly =
        new Taken(
            Optional.of(LocalDateTime.parse("2026-06-03T12:00")),
            Optional.empty(),
            TakenFrom.NAME,
            false);
    assertEquals(LocalDate.of(2026, 6, 3), DayStart.parse("13:00").dayOf(dayOnly));
  }

  @Test
  void theMonthIsTheOneWithMostPhotosAndTheOthersAreCounted() {
    Days days =
        sorter.sort(
            List.of(
                at("2026-05-31T10:00"),
                at("2026-06-03T10:00"),
                at("2026-06-04T10:00"),
                at("2026-07-01T02:00"),
                at("2026-07-02T10:00")),
            DaySettings.DEFAULT);
    assertEquals(Optional.of(YearMonth.of(2026, 6)), days.month());
    assertEquals(Map.of(YearMonth.of(2026, 5), 1, YearMonth.of(2026, 7), 1), days.otherMonths());
    assertEquals(30, days.days().size());
    assertEquals(1, days.days().get(29).photos().size());
    assertEquals(2, days.problems().size());
    assertEquals(Problem.Kind.OTHER_MONTH, days.problems().get(0).kind());
    assertTrue(days.problems().get(0).text().contains("May 2026"), days.problems().toString());
  }

  @Test
  void ofTwoMonthsAsFullTheLaterIsTaken() {
    Days days =
        sorter.sort(List.of(at("2026-05-31T10:00"), at("2026-06-03T10:00")), DaySettings.DEFAULT);
    assertEquals(Optional.of(YearMonth.of(2026, 6)), days.month());
  }

  @Test
  void screenshotsDoNotChooseTheMonth() {
    List<Photo> photos = new ArrayList<>(List.of(at("2026-06-03T10:00")));
    for (int day = 1; day <= 3; day++) {
      photos.add(screenshot("2026-07-0" + day + "T10:00"));
    }
    assertEquals(
        Optional.of(YearMonth.of(2026, 6)), sorter.sort(photos, DaySettings.DEFAULT).month());
  }

  @Test
  void whereThereAreOnlyScreenshotsTheirMonthIsTaken() {
    assertEquals(
        Optional.of(YearMonth.of(2026, 6)),
        sorter.sort(List.of(screenshot("2026-06-03T10:00")), DaySettings.DEFAULT).month());
  }

  @Test
  void whereThereAreOnlyScreenshotsTheMonthWithMostOfThemIsTaken() {
    List<Photo> photos =
        List.of(
            screenshot("2026-05-30T10:00"),
            screenshot("2026-05-31T10:00"),
            screenshot("2026-06-03T10:00"));
    assertEquals(
        Optional.of(YearMonth.of(2026, 5)), sorter.sort(photos, DaySettings.DEFAULT).month());
  }

  @Test
  void problemsAreInTheOrderOfTheirFiles() {
    Photo undated = photo("a.jpg", Taken.UNKNOWN);
    Days days =
        sorter.sort(
            List.of(
                at("2026-05-31T10:00"), at("2026-06-03T10:00"), at("2026-06-04T10:00"), undated),
            DaySettings.DEFAULT);
    List<Problem> sorted = new ArrayList<>(days.problems());
    Collections.sort(sorted);
    assertEquals(sorted, days.problems());
    assertEquals(2, sorted.size());
    assertTrue(days.problems().get(1).text().contains("has no date;"), days.problems().toString());
  }

  @Test
  void daysAreNumbersOfAMonth() {
    DayNumbers ends = DayNumbers.parse("1, 31");
    assertTrue(ends.contains(1) && ends.contains(31));
    assertTrue(!ends.contains(2) && !ends.contains(30) && !ends.contains(0));
    assertEquals(DayNumbers.parse("31,1"), ends);
    assertEquals(DayNumbers.parse("31,1-1").hashCode(), ends.hashCode());
    assertEquals(DayNumbers.parse("5-5"), DayNumbers.parse("5"));
    assertTrue(!DayNumbers.ALL.equals(ends));
    assertEquals("{1, 31}", ends.toString());
  }

  @Test
  void anAskedForMonthWithoutPhotosHasEmptyDays() {
    Days days =
        sorter.sort(
            List.of(at("2026-06-03T10:00")),
            new DaySettings(DayStart.FOUR, Optional.of(YearMonth.of(2024, 2)), DayNumbers.ALL));
    assertEquals(29, days.days().size());
    assertTrue(days.days().stream().allMatch(day -> day.photos().isEmpty()));
    assertEquals(Map.of(YearMonth.of(2026, 6), 1), days.otherMonths());
  }

  @Test
  void daysNotAskedForAreNamed() {
    Days days =
        sorter.sort(
            List.of(at("2026-06-03T10:00"), at("2026-06-04T10:00"), at("2026-06-09T10:00")),
            new DaySettings(DayStart.FOUR, Optional.empty(), DayNumbers.parse("3,5-9")));
    assertEquals(
        List.of(3, 5, 6, 7, 8, 9),
        days.days().stream().map(day -> day.day().getDayOfMonth()).toList());
    assertEquals(List.of(at("2026-06-04T10:00")), days.otherDays());
    assertEquals(Problem.Kind.OTHER_DAYS, days.problems().get(0).kind());
  }

  @Test
  void undatedAndGuessedPhotosAreListedApart() {
    Photo none = photo("none.jpg", Taken.UNKNOWN);
    Photo guessed =
        photo("guess.jpg", Taken.at(LocalDateTime.parse("2026-06-03T10:00"), TakenFrom.FILE_TIME));
    Days days = sorter.sort(List.of(none, guessed), DaySettings.DEFAULT);
    assertEquals(Optional.empty(), days.month());
    assertEquals(List.of(), days.days());
    assertEquals(List.of(guessed, none), days.undated());
    assertEquals(
        List.of(Problem.Kind.NO_DATE, Problem.Kind.NO_DATE),
        days.problems().stream().map(Problem::kind).toList());
    assertTrue(days.problems().get(0).text().contains("3 June 2026"));
  }

  @Test
  void anyOrderOfPhotosGivesTheSameDays() {
    List<Photo> photos = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      photos.add(at("2026-06-" + String.format("%02d", i / 2 + 1) + "T1" + i % 2 + ":00"));
    }
    Days expected = sorter.sort(photos, DaySettings.DEFAULT);
    Collections.shuffle(photos, new Random(7));
    assertEquals(expected, sorter.sort(photos, DaySettings.DEFAULT));
    assertEquals(10, expected.days().get(0).photos().get(0).taken().local().get().getHour());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0", "32", "9-5", "3,,4", "a", "1-", "-3", "1-99"})
  void daysThatAreNoneAreNamed(String text) {
    var e = assertThrows(IllegalArgumentException.class, () -> DayNumbers.parse(text));
    assertTrue(e.getMessage().contains("\"" + text + "\""));
  }

  @Test
  void theStartOfADayIsATime() {
    assertEquals(DayStart.FOUR, DayStart.parse("04:00"));
    assertEquals(DayStart.FOUR, DayStart.parse("4:00"));
    assertThrows(IllegalArgumentException.class, () -> DayStart.parse("4am"));
  }
}
