package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.daymount.album.PageSpecParser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordsBehindStoryTest {
  private static NoteDay day(String line) {
    return NoteParser.parse("June 2026\n3 " + line + "\n").days().get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "First day of the holidays. 4x6 | 4x6",
        "painted the hall (two photos) | photo, photo",
        "rain, no pics | no photo",
        "fog again no pics | no photo",
        "Market day 3x4 x2 | 3x4, 3x4",
        "at Mo's, 4x6 sideways | 4x6 landscape",
        "Lena's birthday! Portrait, on a mat. | portrait on mat",
        "dentist (skip) | leave out"
      })
  void wordsForThePageBehindTheStoryCountAndStay(String line, String page) {
    NoteDay read = day(line);
    assertEquals(page, PageSpecParser.text(read.words()));
    String last = line.strip().substring(line.strip().lastIndexOf(' ') + 1);
    assertTrue(read.story().orElseThrow().strip().endsWith(last), read.story().toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "it rained. Nothing.",
        "we did nothing",
        "we saw the tower, tall",
        "took two photos of the wide river",
        "no one came",
        "he is 4 by now"
      })
  void aSentenceStaysOne(String line) {
    assertEquals("", PageSpecParser.text(day(line).words()));
  }
}
