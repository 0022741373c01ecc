package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoteMenderTest {
  private static final NoteMender MENDER = new NoteMender(NoteParser::parse);

  @Test
  void aLineThatWasKeptAsStoryBecomesADayByOneSign() {
    String text = "June 2026\r\n17: Fog.\r\n19 boats in the harbour\r\n20: Paint.\r\n";
    assertEquals(
        Optional.of("June 2026\r\n17: Fog.\r\n19: boats in the harbour\r\n20: Paint.\r\n"),
        MENDER.asDay(text, 3, 19));
  }

  @Test
  void aLineThatWasTakenForADayBecomesStoryByABackslashThatIsNotPrinted() {
    String text = "June 2026\n3: Fog.\n4 boats in the harbour\n5: Paint.\n";
    assertEquals(List.of(3, 4, 5), days(text));
    String mended = MENDER.asStory(text, 3).orElseThrow();
    assertEquals("June 2026\n3: Fog.\n\\4 boats in the harbour\n5: Paint.\n", mended);
    assertEquals(List.of(3, 5), days(mended));
    assertEquals(
        Optional.of("Fog.\n4 boats in the harbour"),
        NoteParser.parse(mended).days().get(0).story());
  }

  @Test
  void wordsTakenOffACardGoBackIntoItsStoryByABackslashThatIsNotPrinted() {
    String text =
        "June 2026\n3 Painted the hall (two photos)\n4 Fog, no pics\n5\n4x6 tall\nSun.\n6 Rain\nno photo\n";
    assertEquals(Optional.of("Painted the hall"), story(text, 0));
    String hall = MENDER.asPrinted(text, 2).orElseThrow();
    assertEquals(Optional.of("Painted the hall (two photos)"), story(hall, 0));
    assertTrue(NoteParser.parse(hall).days().get(0).words().saysNothing());
    String rain = MENDER.asPrinted(text, 7).orElseThrow();
    assertEquals(Optional.of("Rain\nno photo"), story(rain, 3));
    assertEquals(Optional.empty(), MENDER.asPrinted("June 2026\n3 Fog.\n", 9));
  }

  private static Optional<String> story(String text, int day) {
    return NoteParser.parse(text).days().get(day).story();
  }

  @Test
  void aPersonWhoCheersWithABackslashKeepsIt() {
    assertEquals(
        Optional.of("\\o/ she floats"),
        NoteParser.parse("June 2026\n3:\n\\o/ she floats\n").days().get(0).story());
  }

  @Test
  void aNoteThatEndsEarlyIsStoppedBehindItsLastDay() {
    MonthNote note = NoteParser.parse(MENDER.stopped("June 2026\n3: Fog.\nThe end"));
    assertEquals("stop\n", note.ending());
    assertEquals(Optional.of("Fog."), note.days().get(0).story());
    assertEquals(List.of("The end"), note.days().get(0).taken());
  }

  @Test
  void aLineThatIsNotThereIsNotMended() {
    assertTrue(MENDER.asDay("June 2026\n3: Fog.\n", 9, 4).isEmpty());
    assertTrue(MENDER.asStory("", 1).isEmpty());
  }

  private static List<Integer> days(String text) {
    return NoteParser.parse(text).days().stream().map(day -> day.name().day()).toList();
  }
}
