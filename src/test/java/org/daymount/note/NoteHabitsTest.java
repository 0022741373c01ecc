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

/** Habits that whole notes have: forms, chats, lists at the end, one page said by another. */
class NoteHabitsTest {
  private static final YearMonth JUNE = YearMonth.of(2026, 6);

  private static MonthNote read(String text) {
    return NoteParser.parse(text, Set.of(), Optional.of(JUNE), Locale.ENGLISH);
  }

  /** {@code 3 two photos: story}, a line for each date. */
  private static String days(MonthNote note) {
    return note.days().stream()
        .map(
            day ->
                day.names().stream().map(name -> "" + name.day()).collect(Collectors.joining("+"))
                    + " "
                    + PageSpecParser.text(day.words())
                    + ": "
                    + day.story().map(String::strip).orElse(""))
        .collect(Collectors.joining("\n"));
  }

  private static boolean says(MonthNote note, String words) {
    return note.remarks().stream().anyMatch(remark -> remark.toString().contains(words));
  }

  @Test
  void aPageMayBeTheSameAsAnotherWhereThatWasSaid() {
    MonthNote note =
        read("1: two photos. Ferry.\n2: same as yesterday\n3: tall. Fog.\n4: like the 1st. Sun.\n");
    assertEquals(
        "1 photo, photo: Ferry.\n2 photo, photo: \n3 portrait: Fog.\n4 photo, photo: Sun.",
        days(note));
    assertTrue(says(note, "'same as yesterday' is taken for the page of day 2: photo, photo"));
    assertEquals(
        "1 : Rain.\n2 : same as yesterday\n3 : the usual. School, work, tea",
        days(read("1: Rain.\n2: same as yesterday\n3: the usual. School, work, tea\n")));
  }

  @Test
  void whatIsUsualIsSaidAboveTheFirstDay() {
    MonthNote note =
        read("The usual = one 4x6 lying down, and a card\n1 the usual. Carl came.\n2 Fog.\n");
    assertEquals("1 4x6 landscape, journaling card: Carl came.\n2 : Fog.", days(note));
  }

  @Test
  void smallAndLargeAreGuessedAndSaid() {
    MonthNote note = read("1: one big and two small. Ferry.\n2: Fog.\n3: big photo. Sun.\n");
    assertEquals("1 4x6, 3x4, 3x4: Ferry.\n2 : Fog.\n3 4x6: Sun.", days(note));
    assertTrue(says(note, "3x4 for small photos"));
  }

  @Test
  void photosAndTheirCardMayStandApart() {
    assertEquals(
        "1 photo, photo, journaling card: Wrote to Tam.\n2 photo, photo, photo: Cards, wine, rain.",
        days(read("1: two photos. Wrote to Tam. + card\n2: Cards, wine, rain. (3 photos)\n")));
  }

  @Test
  void aFormHasLabelsThatAreNotPrinted() {
    MonthNote note =
        read(
            "Mon 1\npage: tall\nstory: Fog.\n\nTue 2\npage: -\nstory: Rain.\n\n"
                + "Wed 3\npage: pocket page: 4x6, two 3x4\nstory: Sun.\n");
    assertEquals("1 portrait: Fog.\n2 : Rain.\n3 4x6, 3x4, 3x4, pocket page: Sun.", days(note));
  }

  @Test
  void aChatsOtherVoicesAreNotPrinted() {
    MonthNote note =
        read(
            "[30/06/2026, 21:04] Ada: 1 jun - 3x4 - salt in the sugar\n"
                + "[30/06/2026, 21:04] Tam: told you\n"
                + "[30/06/2026, 21:05] Ada: 2 jun - skip\n"
                + "[30/06/2026, 21:05] Ada: 3 jun - found it.\n"
                + "[30/06/2026, 21:06] Ada: in the drain\n");
    assertEquals(
        "1 3x4: salt in the sugar\n2 leave out: \n3 : found it.\nin the drain", days(note));
    assertTrue(note.days().get(0).taken().toString().contains("told you"));
  }

  @Test
  void shortLinesThatStandApartAtTheEndAreAList() {
    String days = "1: Fog.\n2: Rain.\n3: Sun.\n4: Fog.\n5: Home.\n\n";
    MonthNote list = read(days + "from town\nglue\nribbon, the narrow one\n");
    assertEquals("5 : Home.", days(list).lines().reduce((before, last) -> last).orElseThrow());
    assertTrue(says(list, "this list stands apart and is not printed"));
    MonthNote story = read(days + "And then we sat on the quay until it was dark.\nAll of us.\n");
    assertTrue(story.days().get(4).story().orElseThrow().contains("All of us."));
    MonthNote key = read(days + "P = portrait, L = landscape\n");
    assertEquals("Home.", key.days().get(4).story().orElseThrow().strip());
  }

  @Test
  void aDictatedLineMayLeaveDaysOut() {
    assertEquals(
        "1 : took the bus\n4 no photo: fog\n9 landscape: the loons came",
        days(
            read(
                "june the first took the bus june the fourth no photo fog june the ninth wide, the"
                    + " loons came\n")));
  }

  @Test
  void aMonthMayBeRoman() {
    MonthNote note =
        NoteParser.parse(
            "1 XI nd\npoziomo\nZimno.\n3 XI wt\nBigos.\n",
            Set.of(),
            Optional.of(YearMonth.of(2026, 11)),
            Locale.ENGLISH);
    assertEquals("1 landscape: Zimno.\n3 : Bigos.", days(note));
  }

  @Test
  void aListOfDaysMayLeaveOneForItsOwnLine() {
    assertEquals(
        "17 : Fog.\n18+20 : Choir practice\n19 3x4 portrait: Piano.\n21 : Sun.",
        days(read("17: Fog.\n18, 20: Choir practice\n19: 3x4 tall. Piano.\n21: Sun.\n")));
  }

  @Test
  void whatWasForgottenDoesNotCountInTheOrder() {
    assertEquals(
        "3 : Fog.\n5 : Supper.\n4 : the boiler went.\n6 : Sun.",
        days(read("3: Fog.\n5: Supper.\n4th (I left it out): the boiler went.\n6: Sun.\n")));
  }

  @Test
  void whereMostDaysBeginWithTheirPageAWordIsEnough() {
    String days = "1 4x6 Ferry\n2 no photo Fog\n3 3x4 Hut\n4 full page Quay\n";
    MonthNote note = read(days + "5 portrait leaf pile\n6 tall ships in the bay\n");
    assertEquals(
        List.of("5 portrait: leaf pile", "6 : tall ships in the bay"),
        days(note).lines().skip(4).toList());
    assertTrue(says(note, "as most days of this note begin"));
  }

  @Test
  void wordsThatSayADayWasForgottenBelongToNoStory() {
    for (String said :
        List.of(
            "forgot one: the 4th: swallows",
            "(forgot thu 4: swallows)",
            "Oh and I forgot\n4: swallows",
            "added: thu 4 swallows",
            "Nachtrag 4. Do swallows",
            "j'ai oublié le 4 : swallows",
            "se me olvidó el 4: swallows",
            "dimenticavo, 4 giugno - swallows",
            "vergeten: do 4 swallows",
            "esqueci-me do 4/6 swallows",
            "zapomniałam 4.06 swallows",
            "glömde tors 4 juni: swallows")) {
      assertEquals(
          "1 : Rain.\n2 : Fog.\n3 : Sun.\n6 : Wind.\n4 : swallows\n7 : Calm.",
          days(read("1: Rain.\n2: Fog.\n3: Sun.\n6: Wind.\n" + said + "\n7: Calm.\n")),
          said);
    }
  }

  @Test
  void whatElseWasForgottenStaysInItsStory() {
    for (String told :
        List.of(
            "forgot 3 bags in the car",
            "missed 3 calls from mum",
            "also 4 boats came by",
            "olvidé los 3 bolsos",
            "I forgot the 4 eggs on the shelf",
            "Oh and I forgot")) {
      assertEquals(
          "1 : Rain.\n2 : Fog.\n6 : Wind.\n" + told + "\n7 : Calm.",
          days(read("1: Rain.\n2: Fog.\n6: Wind.\n" + told + "\n7: Calm.\n")),
          told);
    }
  }

  @Test
  void twoLettersBehindADotAreAWeekdayWhereTheNoteWritesItSo() {
    assertEquals(
        "2 : Regen\n3 : Nebel\n4 : Sonne\n5 : Wind",
        days(read("2. Di Regen\n3. Mi Nebel\n4. Do Sonne\n5. Fr Wind\n")));
    assertEquals(
        "2 : Regen\n3 : Nebel\n4 : Sonne\n7 : So ein Wind\n8 : Eis",
        days(read("2. Regen\n3. Nebel\n4. Sonne\n7. So ein Wind\n8. Eis\n")));
  }

  @Test
  void theHeadingOfAWeekSaysWhichWeekdaysAreMeant() {
    assertEquals(
        "15 : Fog.\n19 photo, photo: Ferry.\n22 : Sun.\n28 : Calm.",
        days(
            read(
                "Week of June 15\nMon - Fog.\nFri - 2 photos - Ferry.\n\nWeek of June 22 (short)\n"
                    + "Mon - Sun.\nSun - Calm.\n")));
  }

  @Test
  void onesOwnLettersAreReadWhereTheyAreExplained() {
    String key = "T = tall photo\nW = wide photo\nJ = with a journaling card\nX = skip the day\n\n";
    assertEquals(
        "1 portrait: Ferry.\n2 landscape, journaling card: Fog.\n3 leave out: \n"
            + "4 portrait, portrait: Sun.\n5 : Tea at noon.",
        days(read(key + "1 T Ferry.\n2 WJ Fog.\n3 X\n4 TT Sun.\n5 Tea at noon.\n"))
            .replace("photo portrait", "portrait"));
    assertEquals(
        "1 : T Ferry.\n2 : W Fog.\n3 : Sun.", days(read("1: T Ferry.\n2: W Fog.\n3: Sun.\n")));
  }

  @Test
  void whatIsAddedForWhoChoosesThePhotosIsNotPrinted() {
    assertEquals(
        "2 photo, photo: Your aunt came.\n3 landscape: Rain. It blew.",
        days(
            read(
                "Tue 2. Your aunt came. (Two photos, whichever.)\n"
                    + "Wed 3. Rain. It blew. Page, one wide photo.\n")));
  }

  @Test
  void aDayThatWasLeftOutIsNoDayToLeaveOut() {
    assertEquals(
        "12 : Fog.\n15 : Sun.\n13 : Bought a hat.\n16 leave out:",
        days(read(
                "June 12 Fog.\nJune 15 Sun.\nJune 13 I left out. Bought a hat.\nJune 16 leave out\n"))
            .strip());
  }

  @Test
  void aWeekdayInALetterOrTwoStandsBeforeADateInNumbers() {
    MonthNote note =
        read(
            "June '26 - the quiet one\n\nM 6/1 1 photo -- Spiders.\nTu 6/2 no photo -- Bent it.\n");
    assertEquals("1 photo: Spiders.\n2 no photo: Bent it.", days(note));
  }

  @Test
  void thePageMayStandBeforeTheDateWithAFullStop() {
    MonthNote note =
        read("2 pics. June 1st Monday. To the quarry.\nNo pic. June 2nd Tuesday. Home at 10.\n");
    assertEquals("1 photo, photo: To the quarry.\n2 no photo: Home at 10.", days(note));
  }

  @Test
  void aMonthMayHaveATitle() {
    MonthNote note = read("June - the quiet one\n\n1 Walked.\n2 Slept.\n");
    assertEquals("1 : Walked.\n2 : Slept.", days(note));
    assertTrue(says(note, "the month needs a year"));
  }
}
