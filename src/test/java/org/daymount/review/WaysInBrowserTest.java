package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.openqa.selenium.Keys;

/** How a page is moved, a change taken back, and a picture turned and cropped: as it is seen. */
@Tag("slow")
@Isolated
class WaysInBrowserTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path home;
  private static Browser browser;
  private static RunningReview review;

  @BeforeAll
  static void open() throws Exception {
    browser = Browser.start(1280, 900);
    review =
        RunningReview.start(
            SmallMonth.paint(home.resolve("photos")).toString(),
            "--out",
            home.resolve("out").toString(),
            "--days",
            "1-6");
    browser.open(review.address());
    browser.find(".month li");
  }

  @AfterAll
  static void close() throws Exception {
    if (review != null) {
      review.close();
    }
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void aDayDraggedOntoAnotherAsksWhatGoesAlongAndUndoShowsWhereItHappened() throws Exception {
    browser.go("#/");
    browser.find(".month [data-at='2026-06-02']");
    browser.saved();
    JsonNode before = days();
    browser.drag(".month [data-at='2026-06-02']", ".month [data-at='2026-06-05']");
    browser.waitForText("dialog h2", "Move the page of Tuesday 2 to Friday 5");
    for (boolean dark : new boolean[] {false, true}) {
      browser.dark(dark);
      browser.checkAccessible("what goes along" + (dark ? ", dark" : ""));
    }
    browser.dark(false);
    browser.click("dialog [data-at='move']");
    browser.waitFor("closed", () -> Optional.of(1).filter(any -> browser.all("dialog").isEmpty()));
    browser.saved();
    JsonNode after = days();
    assertEquals(before.get(1).get("story"), after.get(4).get("story"));
    assertEquals(before.get(1).get("spaces").size(), after.get(4).get("spaces").size());
    assertNotEquals(before.get(1).get("spaces").size(), before.get(4).get("spaces").size());

    browser.go("#/day/2026-06-03"); // elsewhere
    browser.waitForText("h1", "Wednesday 3");
    assertTrue(browser.text("#undo").startsWith("Undo: "), browser.text("#undo"));
    browser.click("#undo");
    browser.waitForText("h1", "Tuesday 2");
    browser.find(".pointed");
    browser.saved();
    assertEquals(before, days(), "everything is as it was");
  }

  @Test
  void aTurnAndACropStandThereBeforeTheProgramHasAnswered() throws Exception {
    browser.go("#/day/2026-06-04");
    browser.waitForText("h1", "Thursday 4");
    browser.find(".stage img");
    browser.saved();
    String cut = "document.querySelector('.page.large .cut img').style";
    @SuppressWarnings("unchecked")
    List<Object> cropped =
        (List<Object>)
            browser.run(
                "const hold = document.querySelector('.hold'); hold.focus();"
                    + "const press = (key, shiftKey) => hold.dispatchEvent("
                    + "new KeyboardEvent('keydown', {key, shiftKey, bubbles: true}));"
                    + "for (let i = 0; i < 6; i++) press('-');"
                    + "const width = parseFloat(hold.style.width);"
                    + "for (let i = 0; i < 9; i++) press('ArrowLeft');"
                    + "const at = [parseFloat(hold.style.left)]; const seen = ["
                    + cut
                    + ".left];"
                    + "press('ArrowRight'); at.push(parseFloat(hold.style.left)); seen.push("
                    + cut
                    + ".left);press('ArrowRight', true);"
                    + " at.push(parseFloat(hold.style.left));return [(at[1] - at[0]) / width,"
                    + " (at[2] - at[1]) / width, seen[0] !== seen[1]]");
    double step = ((Number) cropped.get(0)).doubleValue();
    double fine = ((Number) cropped.get(1)).doubleValue();
    assertEquals(0.05, step, 0.01, "a step that can be seen");
    assertEquals(0.005, fine, 0.003, "a fine one with Shift");
    assertEquals(true, cropped.get(2), "the page shows it at once");
    browser.saved();
    Object turning =
        browser.run(
            "document.querySelector('[data-at=turn-right]').click();"
                + "return document.querySelector('.stage img').style.transform");
    assertTrue(turning.toString().startsWith("rotate(90deg)"), "" + turning);
    browser.saved();
    browser.click("#undo");
    browser.saved();
  }

  @Test
  void theAlbumStopsHereAndGoesOnWithOneUndo() throws Exception {
    browser.go("#/day/2026-06-03");
    browser.waitForText("h1", "Wednesday 3");
    browser.saved();
    JsonNode before = days();
    browser.click("[data-at='stop']");
    browser.waitForText("#undo", "Undo: ");
    browser.saved();
    assertEquals("left_out", days().get(4).get("kind").asText());
    browser.click("#undo");
    browser.saved();
    browser.waitFor(
        "the album as it was", () -> Optional.of(1).filter(any -> daysNow().equals(before)));
  }

  /** The start page by keyboard alone: folder, month, note, the seldom asked, and the end. */
  @Test
  void theStartPageIsUsedByKeyboardAloneAndReadsWellEverywhere() throws Exception {
    Path person = home.resolve("person");
    SmallMonth.paint(person.resolve("Pictures/June"));
    try (RunningReview start = RunningReview.startPage(person)) {
      look(start, 390, true);
      look(start, 1280, true);
      look(start, 390, false);
      look(start, 1280, false);
      browser.tabTo(".folders button");
      browser.keys(Keys.ENTER); // Pictures
      browser.waitForText(".walk .here", "Pictures");
      browser.tabTo(".folders button");
      browser.keys(Keys.ENTER); // June
      browser.waitForText(".walk .here", "June");
      browser.tabTo("#take");
      browser.keys(Keys.ENTER);
      browser.waitForText("#go", "Open June 2026");
      browser.waitForText("#note-words", "note.txt");
      browser.checkAccessible("a month proposed");
      browser.tabTo(".seldom summary");
      browser.keys(Keys.ENTER);
      browser.tabTo("#album-days");
      browser.keys("1-6");
      browser.tabTo("#go");
      browser.keys(Keys.ENTER);
      browser.find(".month li");
      browser.tabTo("#to-sheets");
      browser.keys(Keys.ENTER);
      browser.waitForText("#made", "Nothing is made yet");
      browser.checkAccessible("nothing made yet");
      browser.tabTo("#make");
      browser.keys(Keys.ENTER);
      browser.tabTo("#quit");
      browser.keys(Keys.ENTER);
      String said =
          browser.waitFor(
              "the end, or the question before it",
              () ->
                  Optional.of(
                          (String)
                              browser.run(
                                  "return (document.querySelector('dialog[open]') ??"
                                      + " document.querySelector('h1')).textContent"))
                      .filter(text -> text.contains("Stop it") || text.contains("ended")));
      if (!said.contains("ended")) { // unless it was made already
        browser.checkAccessible("asked before the end");
        browser.tabTo("[data-at='yes']");
        browser.keys(Keys.ENTER);
      }
      browser.waitForText("h1", "has ended");
      assertTrue(start.hasEnded());
    } finally {
      browser.size(1280, 900, 1);
      browser.dark(false);
      browser.open(review.address());
      browser.find(".month li");
    }
  }

  private static void look(RunningReview start, int width, boolean dark) throws IOException {
    browser.size(width, 900, 1);
    browser.dark(dark);
    browser.open("about:blank");
    browser.open(start.address());
    browser.waitForText("h1", "Which month");
    browser.run("document.querySelector('.seldom').open = true");
    browser.checkAccessible("the start page, " + width + (dark ? ", dark" : ""));
    assertEquals(
        0L,
        browser.run("return document.documentElement.scrollWidth - innerWidth"),
        "no wider than " + width);
    browser.media("forced-colors", "active");
    browser.checkAccessible("the start page in a person's own few colours, " + width);
    browser.run("document.querySelector('.seldom').open = false");
  }

  /** What a finger touches is at least 44 CSS pixels high and wide (WCAG 2.2, 2.5.5). */
  @Test
  void whatAFingerTouchesIsLargeEnough() throws Exception {
    try (Browser phone = Browser.start(390, 844)) {
      phone.touch(390, 844);
      phone.open(review.address());
      phone.find(".month li");
      assertEquals(true, phone.run("return matchMedia('(pointer: coarse)').matches"));
      for (String view :
          List.of("#/", "#/pages", "#/day/2026-06-02", "#/undated", "#/sheets", "#/note")) {
        phone.go(view);
        phone.find("h1");
        phone.saved();
        assertEquals(
            List.of(),
            phone.run(
                "return [...document.querySelectorAll('button, a, select, summary, input')]"
                    + ".map(e => [e, (e.closest('label.switch') ?? e).getBoundingClientRect()])"
                    + ".filter(([e, b]) => b.width > 0 && b.right > 0 && e.type !== 'range'"
                    + " && !(b.width >= 43.5 && b.height >= 43.5))"
                    + ".map(([e, b]) => `${e.id || e.className || e.textContent}"
                    + " ${b.width}x${b.height}`)"),
            view);
      }
    }
  }

  private static JsonNode days() throws Exception {
    return JSON.readTree(review.get("/api/month").body()).get("days");
  }

  private static JsonNode daysNow() {
    try {
      return days();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }
}
