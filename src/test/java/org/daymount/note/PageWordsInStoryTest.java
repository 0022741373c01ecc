package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.daymount.album.PageSpecParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PageWordsInStoryTest {
  private static NoteDay day(String line) {
    return NoteParser.parse("June 2026\n3 " + line + "\n").days().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "First day of the holidays. 4x6 | 4x6 | First day of the holidays.",
        "painted the hall (two photos) | photo, photo | painted the hall",
        "rain, no pics | no photo | rain",
        "at Mo's, 4x6 sideways | 4x6 landscape | at Mo's",
        "Lena's birthday! Portrait, on a mat. | portrait on mat | Lena's birthday!",
        "Visited camp: three photos: canoe, hug | photo, photo, photo | Visited camp: canoe, hug",
        "Camp! (2 pics, both tall) At 8:15. | photo portrait, photo portrait | Camp! At 8:15.",
        "Farm stand. 3x4 + 3x4. Peaches 3 for $5 | 3x4, 3x4 | Farm stand. Peaches 3 for $5",
        "hike - need: 4x6 tall | 4x6 portrait | hike",
        "Hail, and I'd like a tall photo here to show it | portrait | Hail, and I'd like a tall"
            + " photo here to show it",
        "Sem says: \"they are done\" - upright | portrait | Sem says: \"they are done\"",
        "Got a card with her name on it / pocket page w/ two 3x4 | 3x4, 3x4, pocket page | Got a card"
            + " with her name on it",
        "dentist (skip) | leave out | dentist",
        "fog again no pics | no photo | fog again no pics",
        "Market day 3x4 x2 | 3x4, 3x4 | Market day 3x4 x2",
        "Two vans. Two photos please, one of each | photo, photo | Two vans. Two photos please, one"
            + " of each"
      })
  void wordsForThePageCountWhereverTheyStandAndAreNotPrintedWhereTheyAreSetOff(
      String line, String page, String story) {
    NoteDay read = day(line);
    assertEquals(page, PageSpecParser.text(read.words()));
    assertEquals(story, read.story().orElseThrow());
  }

  @Test
  void aLineOfWordsForThePageBelowTheStoryIsNotPrinted() {
    NoteDay read = day("Snow.\nDug out the car.\n> 4x6 landscape");
    assertEquals("4x6 landscape", PageSpecParser.text(read.words()));
    assertEquals("Snow.\nDug out the car.", read.story().orElseThrow());
    assertEquals(List.of("> 4x6 landscape"), read.taken());
  }

  @Test
  void whatANoteDoesAgainAndAgainCountsWithoutAMarkToo() {
    MonthNote note =
        NoteParser.parse("June 2026\n1 school one tall\n2 pancakes 2 pics\n3 baked a pie tall\n");
    assertEquals(
        List.of("portrait", "photo, photo", "portrait"),
        note.days().stream().map(day -> PageSpecParser.text(day.words())).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it rained. Nothing.",
        "we did nothing",
        "we saw the tower, tall",
        "took two photos of the wide river",
        "no one came",
        "he is 4 by now",
        "sleeping, soup, ironing",
        "played cards, then rain. Cards, wine, rain.",
        "little boy asleep",
        "14 photos of chickens and not one of them sharp"
      })
  void aSentenceStaysOne(String line) {
    assertEquals("", PageSpecParser.text(day(line).words()));
  }
}
