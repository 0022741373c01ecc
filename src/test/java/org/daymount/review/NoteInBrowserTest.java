package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.daymount.pipeline.NoteInUse;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** "The note" of the review, by a person's mouse and keyboard. */
@Tag("slow")
@Isolated
class NoteInBrowserTest {
  private static final String TYPED =
      "June 2026\n1 Ferry.\n4 boats came in\n5 two photos\n2O skip\n21 Last swim.\nThe end\n";

  @TempDir Path home;

  @Test
  void aNoteIsMendedBesideThePersonsFileAndThatIsWhatThePagesGoBy() throws Exception {
    Path photos = SmallMonth.paint(home.resolve("photos"));
    Path own = photos.resolve("note.txt");
    Files.writeString(own, TYPED);
    Path out = home.resolve("out");
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review =
            RunningReview.start(photos.toString(), "--out", out.toString(), "--jobs", "2")) {
      browser.open(review.address());
      browser.find(".month li");
      browser.errors();
      browser.go("#/note");
      browser.waitForText(".read h2", "2 lines to look at");
      assertEquals(TYPED, browser.run("return document.querySelector('#typed').value"));
      assertEquals(List.of("4 boats came in", "2O skip"), texts(browser, ".marks .doubtful"));
      assertEquals(5, browser.all(".read tbody tr").size());

      browser.click("[data-at='story-3']");
      browser.waitForText(".read h2", "1 line to look at");
      browser.click("[data-at='day-5']");
      browser.waitForText(".read h2", "Nothing had to be guessed");
      browser.click("#stop");
      browser.waitForText(".read", "The album ends behind the last day");
      String mended =
          "June 2026\n"
              + "1 Ferry.\n"
              + "\\4 boats came in\n"
              + "5 two photos\n"
              + "20: skip\n"
              + "21 Last swim.\n"
              + "The end\n"
              + "stop\n";
      assertEquals(mended, Files.readString(out.resolve(NoteInUse.MENDED)));
      assertEquals(TYPED, Files.readString(own), "the person's own file is as it was");
      assertEquals(
          List.of("left_out", "left_out"),
          browser.run(
              "const {state, readMonth} = await import('./ask.js'); await readMonth();"
                  + "return [19, 29].map((i) => state.month.days[i].kind)"));

      typeAndKeep(
          browser,
          mended.replace("two photos", "no photo").replace("Ferry.", "Ferry (one tall pic)"));
      browser.waitForText(".read tbody", "not printed: (one tall pic)");
      look(browser, 1280, false);
      look(browser, 390, false);
      browser.size(1280, 900, 1);
      browser.click("[data-at='printed-2']");
      browser.waitForText(".read tbody", "Ferry (one tall pic)");
      assertTrue(
          Files.readString(out.resolve(NoteInUse.MENDED)).contains("1 Ferry (\\one tall pic)"));
      browser.click("#note-back");
      browser.waitForText(".read tbody", "not printed: (one tall pic)");
      assertTrue(Files.readString(out.resolve(NoteInUse.MENDED)).contains("5 no photo"));
      browser.click("#note-back");
      browser.waitForText(".read tbody", "photo, photo");

      for (int width : new int[] {390, 1280}) {
        for (boolean dark : new boolean[] {false, true}) {
          look(browser, width, dark);
        }
      }
      assertEquals(List.of(), browser.errors());

      browser.click("#as-typed");
      browser.waitForText(".read h2", "2 lines to look at");
      assertFalse(Files.exists(out.resolve(NoteInUse.MENDED)));
      assertTrue(Files.exists(out.resolve("note-mended-1.txt")), "and nothing is lost");

      browser.click("[data-at='story-3']");
      browser.waitForText(".read h2", "1 line to look at");
      browser.click("#note-own");
      browser.driver().switchTo().alert().accept();
      browser.waitForText("main .quiet", "note.txt, as you typed it");
      assertEquals(TYPED.replace("4 boats", "\\4 boats"), Files.readString(own));
      assertEquals(TYPED, Files.readString(out.resolve(NoteInUse.AS_TYPED)));
    }
  }

  /** Two texts that cannot both hold: nothing is done until the person says, and both stay. */
  @Test
  void aNoteThatAnotherProgramEditedMeanwhileIsSaidAndNeitherTextIsLost() throws Exception {
    Path photos = SmallMonth.paint(home.resolve("photos"));
    Path own = Files.writeString(photos.resolve("note.txt"), TYPED);
    Path out = home.resolve("out");
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review =
            RunningReview.start(photos.toString(), "--out", out.toString(), "--jobs", "2")) {
      browser.open(review.address());
      browser.find(".month li");
      browser.go("#/note");
      browser.waitForText(".read tbody", "Ferry.");

      String theirs = TYPED.replace("Ferry", "Edited elsewhere");
      Files.writeString(own, theirs);
      typeAndKeep(browser, TYPED.replace("Ferry", "Typed here"));
      browser.waitForText("#notice", "note.txt was edited in another program");
      assertFalse(Files.exists(out.resolve(NoteInUse.MENDED)), "nothing is done unasked");
      browser.click("#take-file");
      browser.waitForText("#notice", "is kept in");
      browser.waitForText(".read tbody", "Edited elsewhere");
      assertEquals(
          TYPED.replace("Ferry", "Typed here"),
          Files.readString(out.resolve("note-not-used-1.txt")));
      assertEquals(theirs, browser.run("return document.querySelector('#typed').value"));

      String newest = TYPED.replace("Ferry", "Edited once more");
      Files.writeString(own, newest);
      typeAndKeep(browser, TYPED.replace("Ferry", "Typed again"));
      browser.waitForText("#notice", "note.txt was edited in another program");
      browser.click("#keep-typed");
      browser.waitForText("main .quiet", "Mended here and kept");
      browser.waitForText(".read tbody", "Typed again");
      assertEquals(newest, Files.readString(own));
      assertTrue(Files.readString(out.resolve(NoteInUse.MENDED)).contains("Typed again"));
      assertEquals(List.of(), browser.all("#two-notes button"));
    }
  }

  private static void typeAndKeep(Browser browser, String text) {
    browser.run(
        "const typed = document.querySelector('#typed'); typed.value = arguments[0];"
            + "typed.dispatchEvent(new Event('input', {bubbles: true}))",
        text);
    browser.click("#keep");
  }

  private static void look(Browser browser, int width, boolean dark) throws IOException {
    browser.size(width, 900, 1);
    browser.dark(dark);
    long beyond =
        ((Number)
                browser.run(
                    "return document.documentElement.scrollWidth"
                        + " - document.documentElement.clientWidth"))
            .longValue();
    assertTrue(beyond <= 0, "wider than " + width);
    browser.checkAccessible("the note, " + width + (dark ? " dark" : " light"));
    String folder = System.getProperty("review.shots", "");
    if (!folder.isEmpty()) {
      browser.shoot(
          Path.of(folder).resolve("note-" + width + (dark ? "-dark" : "") + ".jpg"), 300_000);
    }
  }

  private static List<String> texts(Browser browser, String css) {
    return browser.all(css).stream()
        .map(each -> (String) browser.run("return arguments[0].textContent", each))
        .toList();
  }
}
