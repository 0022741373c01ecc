package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.daymount.album.PageSpecParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single lines and short notes, by what a person means with them. */
class DayLineTest {
  private static final YearMonth JUNE = YearMonth.of(2026, 6);

  private static MonthNote read(String text) {
    return NoteParser.parse(text, Set.of("quay"), Optional.of(JUNE), Locale.ENGLISH);
  }

  private static String days(String text) {
    return read(text).days().stream()
        .flatMap(day -> day.names().stream())
        .map(name -> Integer.toString(name.day()))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "3",
        "3.",
        "3)",
        "3/",
        "3 -",
        "3 –",
        "3 →",
        "#3",
        "*3*",
        "• 3rd",
        "- 3",
        "３",
        "٣",
        "Wed 3",
        "wednesday the 3rd",
        "3 June",
        "June 3",
        "3rd of june",
        "the third",
        "Day 3",
        "day three",
        "W3",
        "2026-06-03",
        "6/3",
        "3️⃣",
        "③",
        "Mittwoch, 3. Juni",
        "mercredi 3 juin",
        "miércoles 3"
      })
  void aLineThatBeginsWithTheNextDayIsThatDay(String start) {
    assertEquals("2 3 4", days("June 2026\n2: Rain.\n" + start + "\nFog.\n4: Sun.\n"), start);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"14 years ago", "3 eggs for breakfast", "12 boats", "22 June 1944 was the day"})
  void aSentenceThatOnlyBeginsWithANumberStaysStory(String line) {
    assertEquals("3 4", days("June 2026\n3: Rain.\n" + line + "\n4: Sun.\n"), line);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "= landscape photo|landscape",
        "(tall)|portrait",
        "2 pics, both tall|photo portrait, photo portrait",
        "one photo|photo",
        "two photos|photo, photo",
        "three pics (3x4)|3x4, 3x4, 3x4",
        "1 tall 1 wide|photo portrait, photo landscape",
        "two photos, one tall one wide|photo portrait, photo landscape",
        "photo portrait|portrait",
        "upright|portrait",
        "pic wide|landscape",
        "matted|on mat",
        "with a mat|on mat",
        "on the mat|on mat",
        "4\" x 6\"|4x6",
        "4 by 6|4x6",
        "10x15|100x150mm",
        "full page|full page",
        "pocket page|pocket page",
        "+ journaling card|journaling card",
        "words only|no photo",
        "no pic|no photo",
        "text only|no photo",
        "blank|no photo",
        "skip|leave out",
        "nothing|leave out",
        "two 3x4's|3x4, 3x4",
        "potrait|portrait",
        "landscpe|landscape",
        "no phtoo|no photo",
        "portrait or landscape|''",
        "photos: 2|photo, photo",
        "two photos please|photo, photo",
        "zwei Bilder, beide quer|photo landscape, photo landscape",
        "sans photo|no photo",
        "dos fotos verticales|photo portrait, photo portrait",
        "pagina intera|full page",
        "geen foto|no photo",
        "pular|leave out",
        "bez zdjęcia|no photo",
        "hela sidan|full page"
      })
  void whatStandsOnTheDayLineIsReadAsWordsForThePage(String words, String page) {
    MonthNote note = read("June 2026\n2: Rain.\n3 " + words + "\nFog.\n4: Sun.\n");
    assertEquals(3, note.days().size(), words);
    assertEquals(page, PageSpecParser.text(note.days().get(1).words()), words);
    assertEquals(Optional.of("Fog."), note.days().get(1).story(), words);
  }

  @Test
  void aReadyMadePageOfTheAlbumIsAWordForThePage() {
    assertEquals("quay", PageSpecParser.text(read("June 2026\n3 quay\n").days().get(0).words()));
  }

  @Test
  void wordsOnTheLineBelowABareDayAreForItsPageAndThatIsSaid() {
    MonthNote note = read("June 2026\n3\ntwo photos\nFog.\n");
    assertEquals("photo, photo", PageSpecParser.text(note.days().get(0).words()));
    assertEquals(Optional.of("Fog."), note.days().get(0).story());
    assertEquals(
        "line 3, column 1: 'two photos' is taken for the page of day 3",
        note.remarks().get(0).toString());
  }

  @Test
  void daysThatFollowEachOtherOnOneLineAreEachADay() {
    MonthNote note = read("June 2026\n1: ferry, 14 gulls 2: no photo 3: Fog.\n4: lunch 6:30\n");
    assertEquals("1 2 3 4", days(NoteWriter.write(note)));
    assertEquals(Optional.of("ferry, 14 gulls"), note.days().get(0).story());
    assertEquals(Optional.of("lunch 6:30"), note.days().get(3).story());
  }

  @Test
  void aNoteDictatedInOneBreathIsReadDayByDay() {
    assertEquals(
        "1 2 3",
        days("june first we took the ferry june second two photos june third no photo it was fog"));
  }

  @Test
  void aListInAStoryDoesNotBeginTheMonthAnew() {
    assertEquals("3 4", days("Wed 3 June\n1. wake\n2. swim\n3. sleep\nThu 4 June\nRain.\n"));
  }

  @Test
  void whereTheMessagesOfAChatNameTheirDaysTheStampsDoNot() {
    MonthNote note =
        read(
            "[6/30/26, 10:02 PM] Ada: 1st two pics\n[6/30/26, 10:03 PM] Ada: 2nd skip\n"
                + "[6/30/26, 10:04 PM] Ada: 3rd fog\n");
    assertEquals(
        "1 2 3",
        note.days().stream().map(d -> "" + d.name().day()).collect(Collectors.joining(" ")));
  }

  @Test
  void weekdaysAloneCountTheMonth() {
    assertEquals("1 2 4", days("Monday - ferry\nTuesday - 3 walks\nThursday we rested\n"));
  }

  @Test
  void stopOnALineOfItsOwnEndsTheAlbumAndWhatStandsBelowIsSaid() {
    MonthNote note = read("June 2026\n3: Fog.\nstop\nbuy more pockets\n");
    assertEquals("stop\nbuy more pockets\n", note.ending());
    assertEquals(Optional.of("Fog."), note.days().get(0).story());
    assertTrue(note.remarks().get(0).text().contains("not printed"), note.remarks().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"the end", "The End!", "stopping here", "Last page.", "Rain. The end"})
  void lastWordsThatSoundLikeAnEndAreNoticedAndEndNothing(String words) {
    MonthNote note = read("June 2026\n3: Fog.\n" + words + "\n");
    assertTrue(note.closes(), words);
    assertEquals("", note.ending());
  }

  @Test
  void whatCouldAsWellBeCountedIsSaid() {
    List<NoteRemark> remarks = read("June 2026\n3 fog\n4 boats came in\n7 sun\n").remarks();
    assertTrue(remarks.get(0).text().contains("if it is story"), remarks.toString());
    String settled = "June 2026\n3 fog\n4 boats came in\n5 sun\n";
    assertEquals(List.of(), read(settled).remarks(), "the days around it bear it out");
  }

  @Test
  void theTableShowsDayPageStoryAndWhatWasGuessed() {
    List<String> lines = NoteTable.lines(read("June 2026\n1 Ferry.\n6-7 camping\n1O two photos\n"));
    assertEquals("June 2026", lines.get(0));
    assertEquals("  1     as usual      Ferry.", lines.get(1));
    assertTrue(lines.get(3).startsWith("? 10"), lines.toString());
    assertTrue(lines.stream().anyMatch(line -> line.contains("taken as day 10")), lines.toString());
  }
}
