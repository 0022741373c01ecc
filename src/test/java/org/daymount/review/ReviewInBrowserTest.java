package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.daymount.cli.CommandLines;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.interactions.Actions;

/** The whole story of a review, by a person's mouse and keyboard. */
@Tag("slow")
@Isolated
class ReviewInBrowserTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String DAY = "2026-06-0";
  private static final String WITH_A_BURST = "#/day/" + DAY + "4";

  /** Writes into the story as typing does, in whichever tab it runs. */
  private static final String TYPED =
      "const story = document.querySelector('#story'); story.focus(); story.value = '%s';"
          + "story.dispatchEvent(new Event('input', {bubbles: true}))";

  /** A day with one space, with two, without a picture, left out, and each other view. */
  private static final List<String> VIEWS =
      List.of(
          "#/",
          "#/pages",
          "#/day/" + DAY + "1",
          "#/day/" + DAY + "2",
          WITH_A_BURST,
          "#/day/" + DAY + "6",
          "#/day/2026-06-20",
          "#/undated",
          "#/sheets");

  @TempDir static Path home;
  private static Browser browser;

  @BeforeAll
  static void open() throws IOException {
    browser = Browser.start(1280, 900);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private Path out;
  private Path photos;

  private String[] arguments(String name) throws IOException {
    photos = SmallMonth.paint(home.resolve(name));
    out = home.resolve(name + "-out");
    return new String[] {
      photos.toString(), "--out", out.toString(), "--days", "1-6", "--cards", "3x4", "--jobs", "2"
    };
  }

  @Test
  void whatAPersonChangesIsExactlyWhatIsPrinted() throws Exception {
    String[] arguments = arguments("story");
    JsonNode drawn;
    BufferedImage madeInThePage;
    try (RunningReview review = RunningReview.start(arguments)) {
      browser.requests();
      browser.errors();
      browser.open(review.address());
      browser.find(".month li");
      assertEquals(30, browser.all(".month li").size(), "all days of June");
      assertFalse(
          browser.run("return location.href").toString().contains(review.token()),
          "the word is taken out of sight");
      browser.checkAccessible("month");

      changeTheHero();
      dragAPhotoOntoASpace();
      changeThePage();
      cropByMouseAndKeyboard();
      drawn = choices().get("days").get(0).get("spaces").get(0).get("crop");
      turnAPicture();
      layASpaceTheOtherWay();
      writeAStory();
      swapPages();
      leaveOutAndTakeBack();
      giveADay();
      makeTheSheets();
      madeInThePage = sheetWith("01a");
      for (String request : browser.requests()) {
        assertTrue(
            request.startsWith(review.origin() + "/") || request.startsWith("data:"),
            "asked elsewhere: " + request);
      }
      assertEquals(List.of(), browser.errors());
    }

    assertEquals(0, sheets(arguments));
    JsonNode month = JSON.readTree(out.resolve("month.json").toFile());
    JsonNode first = space(month, 1, 0);
    assertEquals("one-b.jpg", first.get("photo").asText());
    assertEquals("person", first.get("chosenBy").asText());
    for (String side : List.of("x", "y", "width", "height")) {
      assertEquals(drawn.get(side).asInt(), first.get("crop").get(side).asInt(), 2, side);
    }
    assertEquals(1, space(month, 4, 0).get("quarterTurns").asInt());
    assertEquals("landscape", space(month, 3, 0).get("direction").asText());
    assertEquals("3x4", space(month, 5, 0).get("space").asText(), "the page came from day 2");
    assertEquals(2, day(month, 5).get("spaces").size());
    assertEquals("4x6", space(month, 2, 0).get("space").asText());
    assertEquals(2, day(month, 3).get("spaces").size(), "a space was added");
    assertEquals("5x7", space(month, 3, 0).get("space").asText());
    assertEquals("3x4", space(month, 3, 1).get("space").asText());
    assertEquals(true, space(month, 3, 1).get("onMat").asBoolean());
    assertEquals("A boat came in.\nIt left again.", day(month, 1).get("story").asText());
    assertEquals("tool", space(month, 2, 0).get("chosenBy").asText(), "leaving out was undone");
    assertEquals("nodate.jpg", space(month, 6, 0).get("photo").asText());
    JsonNode photo = photo(month, "nodate.jpg");
    assertEquals(DAY + "6", photo.get("day").asText());
    assertEquals("person", photo.get("takenFrom").asText());

    // the sheet's pixels against the picture as it was painted, cut where the crop was drawn
    BufferedImage sheet = sheetWith("01a");
    assertEquals(0, difference(madeInThePage, sheet), 0.0, "the page made the same sheet");
    BufferedImage painted = SmallMonth.scene(1800, 1200, 2);
    double off =
        SheetPixels.off(SheetPixels.placed(month, "01a")[1], sheet, painted, first.get("crop"));
    assertTrue(off < 6, "the crop on the sheet is off by " + off + " of 255");
    JsonNode elsewhere = JSON.readTree("{\"x\":0,\"y\":0,\"width\":1800,\"height\":1200}");
    assertTrue(
        SheetPixels.off(SheetPixels.placed(month, "01a")[1], sheet, painted, elsewhere) > 20,
        "another crop looks otherwise");
  }

  private void changeTheHero() throws IOException {
    browser.click("a[href='#/day/" + DAY + "1']");
    browser.find(".photos li");
    browser.checkAccessible("day");
    String shown = browser.text(".why .file");
    // make it the other one, whichever is proposed
    String other = shown.equals("one-b.jpg") ? "one-a.jpg" : "one-b.jpg";
    browser.click("button.put[aria-label*='" + other + "']");
    browser.waitForText(".why .file", other);
    browser.click("button.put[aria-label*='one-b.jpg']");
    browser.waitForText(".why .file", "one-b.jpg");
    browser.waitForText(".right h2", "your choice");
    browser.saved();
    assertEquals(
        "one-b.jpg", choices().get("days").get(0).get("spaces").get(0).get("file").asText());
  }

  private void dragAPhotoOntoASpace() throws IOException {
    browser.go("#/day/" + DAY + "2");
    browser.waitForText("h1", "Tuesday 2");
    browser.waitFor(
        "both spaces and photos",
        () ->
            Optional.of(browser.all(".tray .pick"))
                .filter(spaces -> spaces.size() == 2 && browser.all(".tile").size() == 2));
    // whatever lies in the second space now is dragged to the first
    String dragged = browser.find(".page.large [data-at='space1']").getAttribute("aria-label");
    String file = dragged.substring(dragged.indexOf(": ") + 2);
    browser.run("document.querySelector('.choose').scrollIntoView()");
    browser.drag("button.put[aria-label*='" + file + "']", ".tray [data-at='tray0']");
    browser.waitForText(".right h2", "your choice");
    browser.saved();
    assertEquals(
        file, choices().get("days").get(1).get("spaces").get(0).get("file").asText(), "dragged");
    browser.click("#undo");
    browser.waitFor(
        "the drag undone",
        () ->
            Optional.of(browser.text(".right h2")).filter(words -> !words.contains("your choice")));
    browser.saved();
    browser.go("#/day/" + DAY + "1");
    browser.waitForText("h1", "Monday 1");
  }

  private void changeThePage() throws IOException {
    browser.go("#/day/" + DAY + "3");
    browser.waitForText("h1", "Wednesday 3");
    browser.click("[data-at='space-add']");
    browser.waitForText(".left .quiet", "2 spaces on this page, changed by you");
    browser.click(".page.large [data-at='space1']");
    browser.click("[data-at='space-away']");
    browser.waitForText(".left .quiet", "1 space on this page");
    browser.click("[data-at='day-out']");
    browser.waitForText(".left .quiet", "left out of the album");
    browser.saved();
    assertEquals("leave out", choices().get("days").get(1).get("page").asText());
    WebElement words = browser.find("#page-words");
    words.sendKeys(Keys.chord(Keys.CONTROL, "a"), "4x6, 3x4 on mat", Keys.ENTER);
    browser.waitForText(".left .quiet", "2 spaces on this page, changed by you");
    browser.choose("#space-size", "5x7");
    browser.waitForText(".right h2", "5 × 7 in");
    words = browser.find("#page-words");
    words.sendKeys(Keys.chord(Keys.CONTROL, "a"), "4x6, 3x4 on a zebra", Keys.ENTER);
    browser.waitForText("#notice", "zebra");
    words = browser.find("#page-words");
    words.sendKeys(Keys.chord(Keys.CONTROL, "a"), "5x7, 3x4 on mat", Keys.ENTER);
    browser.waitFor(
        "the message gone once it is mended",
        () -> Optional.of(browser.all("#notice p")).filter(List::isEmpty));
    browser.saved();
    List<String> refused = browser.errors();
    assertEquals(1, refused.size(), "only the refused words: " + refused);
    browser.go("#/day/" + DAY + "1");
    browser.waitForText("h1", "Monday 1");
  }

  private void cropByMouseAndKeyboard() throws IOException {
    WebElement hold = browser.find(".hold");
    browser.run("arguments[0].scrollIntoView({block: 'center'})", hold);
    double wide = number("return document.querySelector('.hold').getBoundingClientRect().width");
    new Actions(browser.driver())
        .moveToElement(browser.find(".corner.se"))
        .clickAndHold()
        .moveByOffset((int) (-wide * 0.4), (int) (-wide * 0.26))
        .release()
        .perform();
    browser.saved();
    JsonNode smaller = crop();
    assertTrue(smaller.get("width").asInt() < 1300, "made smaller: " + smaller);
    assertEquals(1.5, smaller.get("width").asDouble() / smaller.get("height").asInt(), 0.01);
    assertEquals(0, smaller.get("x").asInt(), 2, "the other corner stays");

    new Actions(browser.driver())
        .moveToElement(browser.find(".hold"))
        .clickAndHold()
        .moveByOffset(60, 30)
        .release()
        .perform();
    browser.saved();
    JsonNode moved = crop();
    assertTrue(moved.get("x").asInt() > 40 && moved.get("y").asInt() > 20, "moved: " + moved);
    assertEquals(smaller.get("width").asInt(), moved.get("width").asInt(), 2);

    browser.find(".hold").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_UP, "-");
    browser.saved();
    JsonNode nudged = crop();
    assertTrue(nudged.get("width").asInt() < moved.get("width").asInt(), "minus makes it smaller");
    assertNotEquals(moved.get("x").asInt(), nudged.get("x").asInt());
    double ppi = nudged.get("width").asDouble() / 6;
    assertTrue(
        browser.text("#ppi").contains("(" + (int) Math.floor(ppi) + " ppi"),
        "live: " + browser.text("#ppi") + " for " + ppi);
    assertTrue(browser.text("#ppi").contains("below 200") == ppi < 200);
  }

  private void turnAPicture() throws IOException {
    browser.go("#/day/" + DAY + "4");
    browser.waitForText("h1", "Thursday 4");
    browser.click("[data-at='turn-right']");
    browser.waitForText(".right h2", "your choice");
    browser.saved();
    browser.waitFor(
        "the burst folded",
        () ->
            browser.all(".fold").stream()
                .findFirst()
                .filter(fold -> fold.getText().equals("2 more alike")));
    browser.click(".fold");
    browser.waitFor(
        "three frames", () -> Optional.of(browser.all(".tile")).filter(all -> all.size() == 3));
  }

  private void layASpaceTheOtherWay() {
    browser.go("#/day/" + DAY + "3");
    browser.waitForText("h1", "Wednesday 3");
    browser.choose("#space-direction", "landscape");
    browser.waitForText(".right h2", "landscape");
    browser.saved();
  }

  private void writeAStory() throws IOException {
    browser.go("#/day/" + DAY + "1");
    browser.waitForText("h1", "Monday 1");
    WebElement story = browser.find("#story");
    assertEquals("The note's own words.", story.getDomProperty("value"));
    story.sendKeys(Keys.chord(Keys.CONTROL, "a"), "A boat came in.", Keys.ENTER, "It left again.");
    browser.saved();
    browser.find(".cards img[alt='Card 1 of 1 as it will be printed']");
    assertTrue(number("return document.querySelector('.cards img').naturalWidth") > 300);
    JsonNode saved = choices().get("days").get(0).get("story");
    assertEquals("A boat came in.\nIt left again.", saved.get("text").asText());
    assertEquals("The note's own words.", saved.get("replaced").asText());
  }

  private void swapPages() {
    browser.go("#/day/" + DAY + "2");
    browser.waitForText("h1", "Tuesday 2");
    assertEquals(2, browser.all(".page.large .pick").size());
    browser.choose("#swap-with", DAY + "5");
    browser.choose("#swap-what", "swap");
    browser.click("[data-at='swap']");
    browser.waitForText(".left .quiet", "uses the page of Friday 5");
    browser.saved();
    assertEquals(1, browser.all(".page.large .pick").size());
  }

  private void leaveOutAndTakeBack() throws IOException {
    String shown = browser.text(".why .file");
    browser.click("[data-at='leave']");
    browser.waitFor(
        "another picture",
        () -> Optional.of(browser.text(".why .file")).filter(now -> !now.equals(shown)));
    browser.saved();
    browser.waitForText(".photos", "you left it out");
    assertEquals(1, choices().get("photos").size());
    browser.find("main").sendKeys(Keys.chord(Keys.CONTROL, "z"));
    browser.waitForText(".why .file", shown);
    browser.saved();
    assertEquals(0, choices().get("photos").size());
    browser.click("#redo");
    browser.waitForText(".photos", "you left it out");
    browser.click("#undo");
    browser.waitForText(".why .file", shown);
    browser.saved();
  }

  private void giveADay() throws IOException {
    browser.click("#to-undated");
    browser.find(".photos li select");
    browser.checkAccessible("undated");
    browser.choose(".photos li select", DAY + "6");
    browser.waitFor(
        "nothing without a day",
        () -> Optional.of(browser.all(".photos li")).filter(List::isEmpty));
    browser.saved();
  }

  private void makeTheSheets() throws IOException {
    browser.go("#/sheets");
    browser.click("button.main");
    browser.waitForText("#made", "Made:");
    browser.find(".sheets li img");
    browser.waitFor(
        "the sheets' pictures",
        () ->
            Optional.of(
                    browser.run(
                        "const all = [...document.querySelectorAll('.sheets img')];all.forEach(i =>"
                            + " i.loading = 'eager');return all.length > 0 && all.every(i =>"
                            + " i.complete && i.naturalWidth > 0)"))
                .filter(Boolean.TRUE::equals));
    Object proportion =
        browser.run(
            "const i = document.querySelector('.sheets img');"
                + "return Math.abs(i.width / i.height - i.naturalWidth / i.naturalHeight) < 0.02");
    assertEquals(true, proportion, "sheets are shown in their true proportion");
    browser.checkAccessible("sheets");
  }

  @Test
  void everythingIsDoneByKeyboardAlone() throws Exception {
    try (RunningReview review = RunningReview.start(arguments("keys"))) {
      browser.open(review.address());
      browser.find(".month li");
      browser.tabTo("a[href='#/day/" + DAY + "4']");
      browser.keys(Keys.ENTER);
      browser.waitForText("h1", "Thursday 4");
      browser.find(".fold");
      browser.tabTo(".side-by-side");
      browser.keys(Keys.ENTER);
      browser.find("dialog[open] .frames img");
      browser.waitFor("a place", () -> Optional.of(detail()).filter(at -> !at.isEmpty()));
      String before = detail();
      browser.keys(Keys.ARROW_RIGHT, Keys.ARROW_DOWN);
      assertNotEquals(before, detail(), "the arrow keys move what is looked at");
      browser.tabTo("dialog .frames li:nth-child(2) button");
      browser.keys(Keys.ENTER);
      browser.waitForText(".right h2", "your choice");
      browser.saved();
      String file = choices().get("days").get(0).get("spaces").get(0).get("file").asText();
      assertEquals("four-1.jpg", file, "chosen among those alike");

      browser.tabTo(".hold");
      browser.keys("-", "-", Keys.ARROW_RIGHT);
      browser.saved();
      assertTrue(crop().get("width").asInt() < 1800, "cropped: " + crop());
      browser.tabTo("#space-size");
      browser.keys("5");
      browser.waitForText(".right h2", "5 × 7 in");
      browser.tabTo("[data-at='space-add']");
      browser.keys(Keys.SPACE);
      browser.waitForText(".left .quiet", "2 spaces on this page");
      browser.keys(Keys.chord(Keys.CONTROL, "z"));
      browser.waitForText(".left .quiet", "1 space on this page");
      browser.keys(Keys.chord(Keys.CONTROL, Keys.SHIFT, "z"));
      browser.waitForText(".left .quiet", "2 spaces on this page");
      browser.tabTo("#story");
      browser.keys("Typed.");
      browser.saved();
      assertEquals("Typed.", choices().get("days").get(0).get("story").get("text").asText());
      browser.tabTo("a[href='#/sheets']");
      browser.keys(Keys.ENTER);
      browser.tabTo("button.main");
      browser.keys(Keys.ENTER);
      browser.waitForText("#made", "Made:");
    }
  }

  private static String detail() {
    return browser.find("dialog[open] .frames img").getAttribute("src");
  }

  @Test
  void aSecondTabThatShowsAnOlderMonthIsToldAndOverwritesNothing() throws Exception {
    String first = browser.driver().getWindowHandle();
    try (RunningReview review = RunningReview.start(arguments("tabs"))) {
      browser.open(review.address());
      browser.find(".month li");
      browser.driver().switchTo().newWindow(WindowType.TAB);
      String second = browser.driver().getWindowHandle();
      try {
        browser.open(review.address());
        browser.go("#/day/" + DAY + "3");
        browser.find("#story");
        // A tab that comes to the front reads the newest by itself; so the first one writes while
        // the second is in front already.
        browser.driver().switchTo().window(first);
        browser.go("#/day/" + DAY + "3");
        browser.find("#story");
        browser.run("setTimeout(() => {" + TYPED.formatted("First.") + "}, 3000)");
        browser.driver().switchTo().window(second);
        browser.waitFor("the first tab's words", () -> storyOfDay3().filter("First."::equals));
        browser.run(TYPED.formatted("Second."));
        browser.waitForText("#notice", "changed in another tab meanwhile");
        assertEquals("First.", storyOfDay3().orElseThrow(), "nothing was overwritten");
        browser.waitForText("#notice", "You had written: “Second.”");
        assertEquals("First.", browser.find("#story").getDomProperty("value"), "shows the newest");
        browser.keys(Keys.ENTER); // Understood
        browser.waitFor(
            "no message", () -> Optional.of(browser.all("#notice button")).filter(List::isEmpty));
      } finally {
        browser.driver().switchTo().window(second).close();
        browser.driver().switchTo().window(first);
      }
    }
  }

  private Optional<String> storyOfDay3() {
    try {
      return Files.exists(out.resolve("choices.json"))
          ? Optional.of(choices().at("/days/0/story/text").asText())
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theMonthPrintsOnOnePageWithoutButtons() throws Exception {
    try (RunningReview review = RunningReview.start(arguments("paper"))) {
      browser.open(review.address());
      browser.find(".month li");
      browser.pictures();
      String month = browser.printed(1);
      assertTrue(month.contains("June 2026"), month);
      assertFalse(month.contains("Undo") || month.contains("saved"), month);
      browser.go("#/day/" + DAY + "1");
      browser.waitForText("h1", "Monday 1");
      browser.find(".cards img");
      String day = browser.printed(0);
      assertTrue(day.contains("The note’s own words") || day.contains("own words"), day);
      for (String button : List.of("Turn left", "Leave out", "Swap pages", "Add a space")) {
        assertFalse(day.contains(button), button + " is printed");
      }
    }
  }

  @Test
  void everyViewReadsWellInLightAndDarkOnSmallAndLargeScreens() throws Exception {
    try (RunningReview review = RunningReview.start(arguments("looks"))) {
      Files.delete(photos.resolve("five.jpg"));
      lookAtEveryView(review, false, 360, 740);
      lookAtEveryView(review, true, 1280, 900);
      browser.size(3840, 2160, 1);
      browser.open(review.address());
      browser.find(".month li");
      noWiderThanTheScreen("the month", 3840);
      browser.dark(false);
      browser.size(1280, 900, 1);
      browser.media("prefers-reduced-motion", "reduce");
      browser.open(review.address());
      browser.find(".month li a");
      assertEquals(
          "0s",
          browser.run(
              "return getComputedStyle(document.querySelector('.day a')).transitionDuration"),
          "nothing moves for those who asked for that");
      browser.media("forced-colors", "active");
      browser.go("#/day/" + DAY + "3");
      browser.find(".photos li");
      browser.checkAccessible("a day in the person's own few colours");
    } finally {
      browser.dark(false);
      browser.size(1280, 900, 1);
    }
  }

  private static void lookAtEveryView(RunningReview review, boolean dark, int width, int height)
      throws IOException {
    browser.dark(dark);
    browser.size(width, height, 1);
    browser.open(review.address());
    browser.find(".month li");
    for (String view : VIEWS) {
      String name = view + (dark ? " dark " : " light ") + width;
      browser.go(view);
      browser.find("h1");
      browser.saved();
      if (view.equals(WITH_A_BURST)) {
        browser.checkAccessible(name);
        browser.click(".side-by-side");
        browser.find("dialog[open]");
        name += " with those alike side by side";
      }
      noWiderThanTheScreen(name, width);
      browser.checkAccessible(name);
    }
  }

  private static void noWiderThanTheScreen(String view, int width) {
    double beyond =
        number(
            "return document.documentElement.scrollWidth - document.documentElement.clientWidth");
    assertTrue(beyond <= 0, view + " is wider than " + width);
  }

  private static double number(String script) {
    return ((Number) browser.run(script)).doubleValue();
  }

  private JsonNode choices() throws IOException {
    return JSON.readTree(out.resolve("choices.json").toFile());
  }

  private JsonNode crop() throws IOException {
    return choices().get("days").get(0).get("spaces").get(0).get("crop");
  }

  private static int sheets(String[] arguments) {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(told, true, StandardCharsets.UTF_8);
    String[] all = new String[arguments.length + 1];
    all[0] = "sheets";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    int code = CommandLines.runHere(print, print, all);
    if (code != 0) {
      throw new AssertionError(told.toString(StandardCharsets.UTF_8));
    }
    return code;
  }

  private static JsonNode day(JsonNode month, int number) {
    for (JsonNode day : month.get("days")) {
      if (day.get("day").asText().equals(DAY + number)) {
        return day;
      }
    }
    throw new AssertionError("no day " + number);
  }

  private static JsonNode space(JsonNode month, int day, int space) {
    return day(month, day).get("spaces").get(space);
  }

  private static JsonNode photo(JsonNode month, String file) {
    for (JsonNode photo : month.get("photos")) {
      if (photo.get("file").asText().equals(file)) {
        return photo;
      }
    }
    throw new AssertionError("no photo " + file);
  }

  private BufferedImage sheetWith(String piece) throws IOException {
    JsonNode month = JSON.readTree(out.resolve("month.json").toFile());
    return ImageIO.read(out.resolve(SheetPixels.placed(month, piece)[0].asText()).toFile());
  }

  private static double difference(BufferedImage one, BufferedImage other) {
    double sum = 0;
    for (int y = 0; y < one.getHeight(); y += 7) {
      for (int x = 0; x < one.getWidth(); x += 7) {
        sum += SheetPixels.apart(one.getRGB(x, y), other.getRGB(x, y));
      }
    }
    return sum;
  }
}
