package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.daymount.cli.CommandLines;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.openqa.selenium.Keys;

/** An evening with the sample month: what was settled in the page is what is printed. */
@Tag("slow")
@Isolated
class SampleMonthReviewTest {
  private static final String DAY = "2026-06-";
  private static final String HERO = "20260603_180411.jpg";
  private static final int DONE_BUT_ONE_IS_CUT_OFF = 3;

  @TempDir Path home;

  @Test
  void whatIsSettledForTheSampleMonthIsWhatIsPrinted() throws Exception {
    Path out = home.resolve("june");
    JsonNode choices;
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review =
            RunningReview.start("sample-photos", "--out", out.toString(), "--jobs", "2")) {
      browser.open(review.address());
      browser.find(".month li");
      assertEquals(30, browser.all(".month li").size());

      changeTheHeroAndItsCrop(browser);
      layASpaceTheOtherWay(browser);
      swapPagesUndoAndRedo(browser);
      browser.go("#/sheets");
      browser.click("button.main");
      browser.waitForText("#made", "Made:");
      assertEquals(List.of(), browser.errors());
      choices = json(out.resolve("choices.json"));
    }

    assertEquals(DONE_BUT_ONE_IS_CUT_OFF, sheets(out));
    JsonNode month = json(out.resolve("month.json"));
    try (PDDocument guide = Loader.loadPDF(out.resolve("guide.pdf").toFile())) {
      assertTrue(guide.getNumberOfPages() <= 6, "pages of the guide: " + guide.getNumberOfPages());
    }
    JsonNode space = space(month, "03");
    assertEquals(HERO, space.get("photo").asText());
    assertEquals("person", space.get("chosenBy").asText());
    JsonNode drawn = day(choices, "03").get("spaces").get(0).get("crop");
    for (String side : List.of("x", "y", "width", "height")) {
      assertEquals(drawn.get(side).asInt(), space.get("crop").get(side).asInt(), 2, side);
    }
    assertEquals("He sat!", day(month, "03").get("story").asText());
    assertEquals("portrait", space(month, "04").get("direction").asText());
    assertEquals(true, space(month, "12").get("onMat").asBoolean(), "the page of the 11th");
    assertEquals(false, space(month, "11").get("onMat").asBoolean(), "the page of the 12th");
    BufferedImage sheet = ImageIO.read(out.resolve(sheetOf(month, "03a")).toFile());
    BufferedImage photo = ImageIO.read(Path.of("sample-photos", HERO).toFile());
    JsonNode piece = piece(month, "03a");
    assertTrue(SheetPixels.off(piece, sheet, photo, space.get("crop")) < 6, "the crop chosen");
    JsonNode whole =
        new ObjectMapper().readTree("{\"x\":0,\"y\":0,\"width\":1600,\"height\":1067}");
    assertTrue(SheetPixels.off(piece, sheet, photo, whole) > 8, "another crop looks otherwise");
  }

  private static void changeTheHeroAndItsCrop(Browser browser) {
    browser.go("#/day/" + DAY + "03");
    browser.waitForText("h1", "Wednesday 3");
    browser.click(".fold");
    browser.click("button.put[aria-label*='" + HERO + "']");
    browser.waitForText(".why .file", HERO);
    browser.waitForText(".right h2", "your choice");
    browser.saved();
    browser.find(".hold").sendKeys("-", "-", "-", "-", "-", "-", Keys.ARROW_DOWN, Keys.ARROW_LEFT);
    browser.saved();
    browser.find("#story").sendKeys(Keys.chord(Keys.CONTROL, "a"), "He sat!");
    browser.saved();
  }

  private static void layASpaceTheOtherWay(Browser browser) {
    browser.go("#/day/" + DAY + "04");
    browser.waitForText("h1", "Thursday 4");
    browser.choose("#space-direction", "portrait");
    browser.waitForText(".right h2", "portrait");
    browser.saved();
  }

  private static void swapPagesUndoAndRedo(Browser browser) {
    browser.go("#/day/" + DAY + "11");
    browser.waitForText("h1", "Thursday 11");
    browser.choose("#swap-with", DAY + "12");
    browser.choose("#swap-what", "swap");
    browser.click("[data-at='swap']");
    browser.waitForText(".left .quiet", "uses the page of Friday 12");
    browser.saved();
    browser.click("#undo");
    browser.waitFor(
        "the swap undone",
        () ->
            Optional.of(browser.text(".left .quiet"))
                .filter(words -> !words.contains("uses the page")));
    browser.saved();
    browser.click("#redo");
    browser.waitForText(".left .quiet", "uses the page of Friday 12");
    browser.saved();
  }

  private static int sheets(Path out) {
    PrintStream nowhere =
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    return CommandLines.runHere(
        nowhere, nowhere, "sheets", "sample-photos", "--out", out.toString(), "--jobs", "2");
  }

  private static JsonNode json(Path file) throws IOException {
    return new ObjectMapper().readTree(file.toFile());
  }

  /** The entry of a day in days[], which month.json and choices.json both have. */
  private static JsonNode day(JsonNode root, String day) {
    for (JsonNode each : root.get("days")) {
      if (each.get("day").asText().equals(DAY + day)) {
        return each;
      }
    }
    throw new AssertionError("no day " + day);
  }

  private static JsonNode space(JsonNode month, String day) {
    return day(month, day).get("spaces").get(0);
  }

  private static String sheetOf(JsonNode month, String piece) {
    return SheetPixels.placed(month, piece)[0].asText();
  }

  private static JsonNode piece(JsonNode month, String piece) {
    return SheetPixels.placed(month, piece)[1];
  }
}
