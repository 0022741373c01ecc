package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** The month as a calendar and the pages as they will look, in a real browser. */
@Tag("slow")
@Isolated
class PagesInBrowserTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Of a CSS pixel: what a browser may round. */
  private static final double ROUNDED = 1;

  @TempDir Path home;

  @Test
  void theMonthIsACalendarAndEveryPageIsDrawnAsMonthJsonHasIt() throws Exception {
    Path photos = SmallMonth.paint(home.resolve("photos"));
    Files.writeString(
        photos.resolve("note.txt"),
        "June 2026\n\n"
            + "1 4x6\n"
            + "A story.\n\n"
            + "2 two 3x4\n\n"
            + "3 4x6 portrait on its side\n\n"
            + "4 4x6 on mat\n");
    Path out = home.resolve("out");
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review =
            RunningReview.start(photos.toString(), "--out", out.toString(), "--cards", "3x4")) {
      browser.open(review.address());
      browser.find(".month li");
      String week =
          String.valueOf(browser.run("return document.querySelector('.weekdays').innerText"));
      List<String> names = List.of(week.strip().split("\\s+"));
      assertEquals(7, names.size(), week);
      for (int day = 1; day <= 30; day++) {
        LocalDate date = LocalDate.of(2026, 6, day); // java.time knows the weekday
        int column =
            names.indexOf(date.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH));
        double off =
            number(
                browser,
                "const box = (e) => e.getBoundingClientRect();"
                    + "return box(document.querySelectorAll('.month li')[arguments[0]]).left"
                    + " - box(document.querySelectorAll('.weekdays li')[arguments[1]]).left",
                day - 1,
                column);
        assertEquals(0, off, ROUNDED, date + " stands under " + names.get(column));
      }
      browser.go("#/pages");
      browser.find(".open .pg");
      browser.checkAccessible("the pages");
      browser.go("#/sheets");
      browser.click("button.main");
      browser.waitFor("the sheets", () -> browser.all(".sheets li img").stream().findFirst());
      JsonNode month = JSON.readTree(out.resolve("month.json").toFile());
      browser.go("#/pages");
      browser.find(".open .pg");
      for (JsonNode page : month.get("pages")) {
        drawnAs(page, browser);
      }
      assertEquals(
          true, place(month, "2026-06-03", "photo").get("turned").asBoolean(), "on its side");
      facingPages(month.get("leaves"), browser);
    }
  }

  /** Each place of month.json is a box of the drawing, at the same inches. */
  @SuppressWarnings("unchecked")
  private static void drawnAs(JsonNode page, Browser browser) {
    String day = page.get("day").asText();
    List<Map<String, Object>> steps =
        (List<Map<String, Object>>)
            browser.run(
                "const day = arguments[0]; return import('/ask.js').then((ask) =>"
                    + " ask.state.month.album.pages.find((page) => page.day === day).drawing)",
                day);
    for (JsonNode place : page.get("places")) {
      boolean found =
          steps.stream()
              .anyMatch(
                  step ->
                      at(step, "x") == place.get("x").asDouble()
                          && at(step, "y") == place.get("y").asDouble()
                          && at(step, "width") == place.get("width").asDouble()
                          && at(step, "height") == place.get("height").asDouble());
      assertTrue(found, day + ": " + place + " is not drawn in " + steps);
    }
    double drawnWidth =
        number(
            browser,
            "const page = document.querySelector(`[data-at=\"page-${arguments[0]}\"] .pg-page`);"
                + "const whole = page.getBoundingClientRect(); return whole.height / whole.width",
            day);
    assertEquals(8.0 / 6, drawnWidth, 0.01, day + ": a page of 6x8");
  }

  private static double at(Map<String, Object> step, String what) {
    return Math.round(((Number) step.get(what)).doubleValue() * 10_000) / 10_000.0;
  }

  /** On the left the back of a leaf, on the right the front of the next; at one height. */
  private static void facingPages(JsonNode leaves, Browser browser) {
    String told =
        String.valueOf(
            browser.run(
                "return [...document.querySelectorAll('.open')].map((open) =>"
                    + " [...open.children].map((side) => side.querySelector('a')?.dataset.at ??"
                    + " '-').join(' ')).join('\\n"
                    + "')"));
    StringBuilder wanted = new StringBuilder();
    for (int i = 0; i <= leaves.size(); i++) {
      String left = i == 0 ? "-" : side(leaves.get(i - 1), "back");
      boolean last = i == leaves.size();
      if (last && left.equals("-")) {
        break;
      }
      String right = last ? "-" : side(leaves.get(i), "front");
      wanted.append(i == 0 ? "" : "\n").append(left).append(' ').append(right);
    }
    assertEquals(wanted.toString(), told);
  }

  private static String side(JsonNode leaf, String side) {
    return leaf.get(side).isNull() ? "-" : "page-" + leaf.get(side).asText();
  }

  private static JsonNode place(JsonNode month, String day, String what) {
    for (JsonNode page : month.get("pages")) {
      for (JsonNode place : page.get("places")) {
        if (page.get("day").asText().equals(day) && place.get("what").asText().equals(what)) {
          return place;
        }
      }
    }
    throw new AssertionError("no " + what + " on " + day);
  }

  private static double number(Browser browser, String script, Object... arguments) {
    return ((Number) browser.run(script, arguments)).doubleValue();
  }
}
