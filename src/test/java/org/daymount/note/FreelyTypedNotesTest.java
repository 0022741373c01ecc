package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Of the days in notes typed freely, how many are read as meant. */
class FreelyTypedNotesTest {
  private static final Path NOTES = Path.of("src/test/resources/notes/freely");

  @Test
  void ofTheNotesTheParserWasTunedOnNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare(1, "tuned on");
  }

  @Test
  void ofTheNotesSetApartNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare(0, "set apart");
  }

  /** Written after the parser was changed, and not tuned on. */
  @Test
  void ofNotesWrittenAfterwardsMostDaysAreReadAsMeant() throws IOException {
    FreelyTypedNotes.Score score = new FreelyTypedNotes.Score(0, 0, List.of());
    for (Path file : FreelyTypedNotes.in(Path.of("src/test/resources/notes/later"))) {
      MonthNote note = NoteParser.parse(Files.readString(file), Locale.ENGLISH);
      score = score.plus(FreelyTypedNotes.score(file, note));
    }
    System.out.printf("notes written afterwards: %d of %d days%n", score.right(), score.all());
    score.wrong().forEach(System.out::println);
    assertTrue(score.share() >= 0.8, String.join("\n", score.wrong()));
  }

  private static void assertShare(int remainder, String what) throws IOException {
    List<Path> files = FreelyTypedNotes.in(NOTES);
    FreelyTypedNotes.Score score = new FreelyTypedNotes.Score(0, 0, List.of());
    for (int i = 0; i < files.size(); i++) {
      if ((i + 1) % 2 == remainder) {
        MonthNote note = NoteParser.parse(Files.readString(files.get(i)), Locale.ENGLISH);
        score = score.plus(FreelyTypedNotes.score(files.get(i), note));
      }
    }
    System.out.printf("notes %s: %d of %d days%n", what, score.right(), score.all());
    score.wrong().forEach(System.out::println);
    assertTrue(score.share() >= 0.95, String.join("\n", score.wrong()));
  }
}
