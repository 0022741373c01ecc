package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/**
 * From the start page to the end, and at every view on the way: axe finds nothing, nothing is wider
 * than the screen, nothing moves for those who want that, and the words are the page's own; at four
 * widths, in light and dark, with more contrast, in a person's own few colours, and without motion.
 */
@Tag("slow")
@Isolated
class EveryViewTest {
  private static final int MOST_USUAL = 1280; // pixels
  private static final int[] WIDTHS = {390, 768, MOST_USUAL, 2560};

  private static final Map<String, Map<String, String>> MODES = new LinkedHashMap<>();

  private static final String USUAL = "light";

  /** {@code -Dviews.all=true}: every way of showing at every width, which takes twice as long. */
  private static final boolean EACH_WITH_EACH = Boolean.getBoolean("views.all");

  static {
    MODES.put(USUAL, Map.of());
    MODES.put(
        "dark, no motion",
        Map.of("prefers-color-scheme", "dark", "prefers-reduced-motion", "reduce"));
    MODES.put("more contrast", Map.of("prefers-contrast", "more"));
    MODES.put("few colours", Map.of("forced-colors", "active"));
  }

  /** In place of the program's word that it goes on: that it stands still in the middle. */
  private static final String STILL_AT_WORK =
      "window.EventSource = class { constructor() { setTimeout(() => this.onmessage({data:"
          + " JSON.stringify({kind: 'running', words: 'cutting out', done: 4, steps: 9})})); }"
          + " close() {} }";

  private static final int MOST_BYTES = 9_000_000;

  @TempDir Path home;
  private Browser browser;

  /** What is wrong, each with the views where it is. */
  private final Map<String, TreeSet<String>> wrong = new LinkedHashMap<>();

  private int views;
  private int looks;

  @Test
  void everyViewIsForEverybody() throws Exception {
    Path photos = SmallMonth.paint(home.resolve("Pictures/June"));
    Files.writeString(photos.resolve("note.txt"), SmallMonth.NOTE + "\n4 boats came in\n2O skip\n");
    if (Files.isExecutable(Path.of("/usr/bin/ffmpeg"))) {
      ClipInBrowserTest.clip(home.resolve("scene.png"), photos.resolve("VID_20260608_101500.mp4"));
    }
    Files.createSymbolicLink(home.resolve("Pictures/of June"), photos);
    Path out = home.resolve("Daymount/2026-06");
    Path other = Files.createDirectories(home.resolve("other"));
    Files.writeString(other.resolve("month.json"), "{\"schema\": 1, \"month\": \"2026-05\"}");
    try (Browser chromium = Browser.start(1280, 900);
        RunningReview start = RunningReview.startPage(home)) {
      browser = chromium;
      browser.open(start.address());
      theStartPage();
      theMonth();
      theSheets(out);
      anEarlierMonthAndAFolderOfAnother(other);
      browser.click("#quit");
      browser.waitForText("h1", "has ended");
      look("the end");
      assertTrue(start.hasEnded());
    }
    StringBuilder told = new StringBuilder();
    wrong.forEach((what, where) -> told.append("\n").append(what).append("\n    ").append(where));
    assertEquals("", told.toString());
    System.out.printf("%d views, looked at %d times%n", views, looks);
  }

  private void theStartPage() throws Exception {
    browser.waitForText("h1", "Which month");
    look("start, empty");
    browser.click(".folders button"); // Pictures
    browser.waitForText(".walk .here", "Pictures");
    look("start, folders");
    browser.click(".folders button"); // June
    browser.waitForText(".walk .here", "June");
    browser.click("#take");
    browser.waitForText("#note-words", "note.txt");
    browser.click(".seldom summary");
    look("start, a month and all that can be asked");
    browser.find("#album-days").sendKeys("often");
    browser.click("#go");
    browser.waitForText("#notice", "“Only these days”");
    look("start, a message");
    browser.run("document.querySelector('#album-days').value = '1-8'");
    browser.click("#go");
    browser.find(".month li");
  }

  private void theMonth() throws Exception {
    look("month");
    browser.run( // with a real mouse in WaysInBrowserTest
        "const day = (n) => document.querySelector(`[data-at='2026-06-0${n}']`);"
            + "const dataTransfer = new DataTransfer();"
            + "const happens = (e, name) => e.dispatchEvent("
            + "new DragEvent(name, {dataTransfer, bubbles: true, cancelable: true}));"
            + "happens(day(2), 'dragstart'); happens(day(5), 'dragover'); happens(day(5), 'drop');");
    browser.find("dialog[open]");
    look("month, a page is moved");
    browser.run("document.querySelector('dialog').close()");
    day("1", "day");
    browser.click("[data-at='turn-left']");
    browser.saved();
    browser.go("#/undated");
    browser.click("#undo");
    browser.waitForText("h1", "Monday 1");
    look("day, after Undo");
    browser.find("#page-words").clear();
    browser.find("#page-words").sendKeys("nonsense");
    browser.click("[data-at='page-use']");
    browser.find("#notice button");
    look("day, a message");
    browser.click("#notice button");
    day("4", "day with a burst");
    browser.click(".side-by-side");
    browser.find("dialog[open]");
    look("those alike side by side");
    browser.run("document.querySelector('dialog').close()");
    day("7", "day without a picture");
    day("8", "day of a clip");
    if (!browser.all(".fold").isEmpty()) {
      browser.click(".fold");
      look("the frames of a clip");
    }
    day("12", "day that was not asked for");
    for (String view : List.of("undated", "pages", "note", "sheets")) {
      browser.go("#/" + view);
      browser.find("h1");
      browser.saved();
      look(view);
    }
    browser.go("#/note");
    browser.click("[data-at='day-9']");
    browser.waitForText(".read h2", "1 line to look at");
    browser.run(
        STILL_AT_WORK
            + "; (await import('./opening.js')).showOpening(document.getElementById('main'))");
    browser.waitForText(".progress", "4 of 9");
    look("opening");
  }

  private void theSheets(Path out) throws Exception {
    Path theirs = out.resolve("guide.pdf");
    Files.writeString(theirs, "a guide of the person's own");
    browser.run("location.hash = '#/'");
    browser.go("#/sheets");
    browser.click("#make");
    browser.waitForText(".progress", "4 of 9");
    look("sheets, being made");
    browser.run("location.reload()"); // and hears the program again
    browser.waitForText("#made", "Not made: ");
    look("sheets, not made");
    assertTrue(browser.text("#made").contains("guide.pdf is there already"));
    browser.click("#replace");
    browser.waitForText("#made", "Made: ");
    look("sheets, made");
    assertTrue(Files.size(theirs) > 1000, "the guide was made");
    try (Stream<Path> kept = Files.walk(out)) {
      assertTrue(
          kept.anyMatch(each -> each.toString().contains("guide") && !each.equals(theirs)),
          "and theirs is kept");
    }
  }

  private void anEarlierMonthAndAFolderOfAnother(Path other) throws Exception {
    browser.go("#/start");
    browser.find(".again img");
    look("start, earlier months");
    browser.click(".earlier .plain");
    browser.waitForText("#go", "Open June 2026");
    browser.waitForText("#note-words", "note-mended.txt");
    browser.choose("#out", other.toString());
    browser.click("#go");
    browser.waitForText("dialog", "holds May 2026");
    look("start, a folder of another month");
    browser.click("dialog [data-at='no']");
    browser.waitFor("no dialog", () -> Optional.of(1).filter(x -> browser.all("dialog").isEmpty()));
    assertEquals("out", browser.run("return document.activeElement.id"));
    assertFalse(Files.exists(other.resolve("choices.json")));
    browser.click("#go");
    browser.click("dialog [data-at='yes']");
    browser.find(".month li");
    browser.waitForText("#to-sheets", "Sheets");
    browser.go("#/sheets");
    browser.waitForText(".quiet", other.getFileName().toString());
  }

  private void day(String number, String name) throws Exception {
    browser.go("#/day/2026-06-" + (number.length() == 1 ? "0" : "") + number);
    browser.waitForText("h1", " " + number + " ");
    browser.saved();
    browser.pictures();
    look(name);
  }

  private void look(String view) throws IOException {
    views++;
    for (int width : WIDTHS) {
      browser.size(width, 900, 1);
      for (Map.Entry<String, Map<String, String>> mode : MODES.entrySet()) {
        if (width != MOST_USUAL && !mode.getKey().equals(USUAL) && !EACH_WITH_EACH) {
          continue;
        }
        browser.media(mode.getValue());
        String where = view + " (" + mode.getKey() + " " + width + ")";
        looks++;
        browser.inaccessible().forEach(each -> tell(each, where));
        ((List<?>) browser.run(SEEN, width)).forEach(each -> tell(each, where));
      }
    }
    browser.media(Map.of());
    browser.windowSize();
    shootIfAsked(view);
  }

  private void tell(Object what, String where) {
    wrong.computeIfAbsent(what.toString(), any -> new TreeSet<>()).add(where);
  }

  /** What a look finds besides axe, as sentences. */
  private static final String SEEN =
      "const wrong = [];"
          + "const wide = document.documentElement.scrollWidth;"
          + "if (wide > arguments[0]) wrong.push('it is wider than the screen');"
          + "if (matchMedia('(prefers-reduced-motion: reduce)').matches)"
          + " for (const a of document.getAnimations())"
          + " if (a.animationName !== 'pointed') wrong.push('something moves: ' +"
          + " (a.transitionProperty ?? a.animationName));"
          + "for (const line of document.body.innerText.split('\\n')) {"
          + " if (/--[a-z]/.test(line)) wrong.push('an option of the terminal: ' + line);"
          + " if (/\\bppi\\b/.test(line) && !/sharp|soft|too small/i.test(line))"
          + " wrong.push('a word without its meaning: ' + line);"
          + " if (/border fit|daymount (sheets|review)/.test(line))"
          + " wrong.push('not a word of the page: ' + line); }"
          + "return wrong";

  /** Only where somebody wants to look: {@code -Dreview.shots=FOLDER}. */
  private void shootIfAsked(String view) throws IOException {
    String folder = System.getProperty("review.shots", "");
    if (folder.isEmpty()) {
      return;
    }
    String name = view.replaceAll("\\W+", "-") + "-";
    for (int width : WIDTHS) {
      browser.size(width, 900, 1);
      browser.shootPng(Path.of(folder, name + width + ".png"), MOST_BYTES);
    }
    browser.windowSize();
    for (Map.Entry<String, Map<String, String>> mode : MODES.entrySet()) {
      browser.media(mode.getValue());
      String how = mode.getKey().replaceAll("\\W+", "-");
      browser.shootPng(Path.of(folder, name + how + ".png"), MOST_BYTES);
    }
    browser.media(Map.of());
  }
}
