package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Of the days in notes typed freely, how many are read as meant. Each folder was written before the
 * parser was run on it; which of its halves was then tuned on is said at the test, and the shares
 * at the first run are in docs/evaluation.md.
 */
class FreelyTypedNotesTest {
  private static final Path NOTES = Path.of("src/test/resources/notes");
  private static final int ODD = 1;
  private static final int EVEN = 0;

  @Test
  void ofTheFirstNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("freely", ODD, 0.95);
    assertShare("freely", EVEN, 0.95);
  }

  @Test
  void ofTheSecondNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("later", ODD, 0.95);
    assertShare("later", EVEN, 0.95);
  }

  @Test
  void ofTheThirdNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("third", ODD, 0.95);
    assertShare("third", EVEN, 0.95);
  }

  @Test
  void ofTheFourthNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("fourth", ODD, 0.95);
    assertShare("fourth", EVEN, 0.95);
  }

  @Test
  void ofTheFifthNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("fifth", ODD, 0.95);
    assertShare("fifth", EVEN, 0.95);
  }

  @Test
  void ofTheSixthNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("sixth", ODD, 0.95);
    assertShare("sixth", EVEN, 0.9);
  }

  @Test
  void ofTheSeventhNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("seventh", ODD, 0.95);
    assertShare("seventh", EVEN, 0.95);
  }

  @Test
  void ofTheEighthNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("eighth", ODD, 0.95);
    assertShare("eighth", EVEN, 0.95);
  }

  @Test
  void ofTheNinthNotesMoreThanHalfOfTheDaysAreReadAsMeant() throws IOException {
    // The hard ones on purpose: codes of the writer's own, days named by "next day". Not mended
    // yet.
    assertShare("ninth", ODD, 0.65, 4);
    assertShare("ninth", EVEN, 0.55, 5);
  }

  @Test
  void ofTheTenthNotesNearlyAllDaysAreReadAsMeant() throws IOException {
    assertShare("tenth", ODD, 0.95);
    assertShare("tenth", EVEN, 0.95);
  }

  private static void assertShare(String folder, int half, double least) throws IOException {
    assertShare(folder, half, least, 0);
  }

  private static void assertShare(String folder, int half, double least, int mostMisplaced)
      throws IOException {
    FreelyTypedNotes.Score score = FreelyTypedNotes.score(NOTES.resolve(folder), half);
    String what = folder + (half == ODD ? ", odd: " : ", even: ");
    System.out.print(what + score.text());
    assertTrue(score.share() >= least, what + score.text());
    assertTrue(score.misplaced().size() <= mostMisplaced, score.misplaced().toString());
  }
}
