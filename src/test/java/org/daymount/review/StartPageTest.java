package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.cli.DoubleClicked;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** From the start page to the sheets and the end, as a person without a terminal goes. */
@Tag("slow")
@Isolated
class StartPageTest {
  private static final List<String> FEW =
      List.of("20260601_171240.jpg", "20260601_181502.jpg", "20260602_094410.jpg");

  /** For a machine that does a great deal besides; nothing is asserted about how long it takes. */
  private static final Duration PATIENCE = Duration.ofMinutes(8);

  @TempDir Path home;

  @Test
  void folderNoteMonthChangeSheetsAndQuitInChromium() throws Exception {
    try (Browser browser = Browser.start(1280, 900)) {
      fromTheStartPageToTheEnd(browser);
    }
  }

  @Test
  void folderNoteMonthChangeSheetsAndQuitInWebKit() throws Exception {
    try (Browser browser = Browser.webKit(1280, 900)) {
      fromTheStartPageToTheEnd(browser);
    }
  }

  @Test
  void folderNoteMonthChangeSheetsAndQuitInFirefox() throws Exception {
    try (Browser browser = Browser.firefox(1280, 900)) {
      fromTheStartPageToTheEnd(browser);
    }
  }

  private void fromTheStartPageToTheEnd(Browser browser) throws Exception {
    Path pictures = Files.createDirectories(home.resolve("Pictures/Island June"));
    for (String name : FEW) {
      Files.copy(Path.of("sample-photos", name), pictures.resolve(name));
    }
    try (RunningReview start = RunningReview.startPage(home)) {
      browser.open(start.address());
      browser.waitForText("h1", "Which month");
      browser.checkAccessible("the start page");
      shootIfAsked(browser, "start.jpg");
      browser.click(".folders button"); // Pictures
      browser.waitForText(".walk .here", "Pictures");
      browser.click(".folders button"); // Island June
      browser.waitForText(".walk .here", "Island June");
      browser.click("#take");
      browser.waitForText("#go", "Open June 2026");
      assertEquals(30, browser.all(".dates li").size(), "a count for each day of June");
      browser.find("#note-text").sendKeys("June 2026\n\n1 4x6\nThe ferry came late.\n");
      browser.choose("#album-cards", "3x4");
      browser.checkAccessible("the start page, filled in");
      shootIfAsked(browser, "start-filled.jpg");
      browser.click("#go");
      browser.find(".month li");
      browser.checkAccessible("the month");
      browser.go("#/day/2026-06-01");
      browser.find(".photos li");
      browser.click("[data-at='turn-left']");
      browser.saved();
      browser.go("#/sheets");
      browser.click("#make");
      browser.waitForText("#made", "Made:");
      browser.checkAccessible("the sheets");
      shootIfAsked(browser, "start-sheets.jpg");
      browser.go("#/start");
      browser.waitForText(".earlier", "June 2026");
      browser.click("#quit");
      browser.waitForText("h1", "has ended");
      assertTrue(start.hasEnded(), "the program ended");
    }
    Path out = home.resolve("Daymount/2026-06");
    for (String name :
        List.of("note.txt", "choices.json", "sheets.pdf", "guide.pdf", "index.html")) {
      assertTrue(Files.size(out.resolve(name)) > 0, name);
    }
    assertTrue(Files.readString(out.resolve("choices.json")).contains("2026-06-01"));
    try (Stream<Path> left = Files.list(pictures)) {
      assertEquals(FEW.size(), left.count(), "nothing was written beside the pictures");
    }
  }

  /** A double-click, no word said: the invented June is offered, and its sheets are soon there. */
  @Test
  void theFirstMinutesOfAPersonWhoWasNeverTold() throws Exception {
    DoubleClicked program = new DoubleClicked(home);
    program.opener("xdg-open", 0);
    long begun = System.nanoTime();
    Process daymount = program.start();
    try (Browser browser = Browser.start(1280, 900)) {
      browser.open(program.opened());
      browser.waitForText("#try", "invented June");
      browser.click("#try");
      browser.waitFor("the month", PATIENCE, () -> browser.all(".month li").stream().findFirst());
      browser.click("#to-sheets");
      browser.click("#make");
      browser.waitFor(
          "the sheets", PATIENCE, () -> browser.all(".sheets li img").stream().findFirst());
      System.out.printf(
          "from the double-click to the sheets: %d s, %d s of processor%n",
          (System.nanoTime() - begun) / 1_000_000_000,
          daymount.info().totalCpuDuration().orElse(Duration.ZERO).toSeconds());
      assertTrue(browser.all(".sheets li").size() > 20, "a month of sheets");
      assertTrue(
          browser.text(".told").contains("20260618_184011.jpg"), "what was left out is told");
      browser.click("#quit");
      browser.waitForText("h1", "has ended");
      assertEquals(0, daymount.waitFor());
    } finally {
      daymount.destroy();
    }
  }

  private static void shootIfAsked(Browser browser, String name) throws Exception {
    String folder = System.getProperty("review.shots", "");
    if (!folder.isEmpty()) {
      browser.shoot(Path.of(folder, name), 150_000);
    }
  }
}
