package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.openqa.selenium.Keys;

/** A person puts dates right that a name, an XMP file or a camera has wrong. */
@Tag("slow")
@Isolated
class DateInBrowserTest {
  private static final String BY_NAME = "IMG_20260503_101500.jpg";
  private static final String BY_SIDECAR = "scan.jpg";
  private static final String BY_CAMERA = "five.jpg";

  @TempDir static Path home;
  private Browser browser;

  private static Path paint() throws IOException {
    Path photos = SmallMonth.paint(home.resolve("pictures"));
    Files.delete(photos.resolve("nodate.jpg"));
    ExifPhoto.painted()
        .picture(SmallMonth.scene(1800, 1200, 21))
        .write(photos.resolve(BY_NAME)); // a phone whose month was wrong
    ExifPhoto.painted().picture(SmallMonth.scene(1800, 1200, 22)).write(photos.resolve(BY_SIDECAR));
    Files.writeString(
        photos.resolve("scan.xmp"),
        "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF"
            + " xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'><rdf:Description"
            + " xmlns:exif='http://ns.adobe.com/exif/1.0/'"
            + " exif:DateTimeOriginal='2026-06-03T11:00:00'/></rdf:RDF></x:xmpmeta>");
    return photos;
  }

  @Test
  void aWrongDateIsPutRightByMouseAndKeyboard() throws Exception {
    Path photos = paint();
    Path out = home.resolve("out");
    String[] arguments = {
      photos.toString(), "--out", out.toString(), "--month", "2026-06", "--jobs", "2"
    };
    try (Browser chromium = Browser.start(1280, 900);
        RunningReview review = RunningReview.start(arguments)) {
      browser = chromium;
      browser.open(review.address());
      browser.find(".month li");
      theNamesDateByMouse();
      theSidecarsDateByKeyboard();
      theCamerasDateAndUndo();
      assertEquals(List.of(), browser.errors());
      aDateThatCannotBe();
    }
    SheetsMadeHere.of(arguments);
    assertPhoto(out, BY_NAME, "2026-06-07", "2026-06-07T18:30:00", "person");
    assertPhoto(out, BY_SIDECAR, "2026-06-08", "2026-06-09T01:20:00", "person");
    assertPhoto(out, BY_CAMERA, "2026-06-05", "2026-06-05T12:00:00", "original");
    JsonNode printed = month(out).get("days").get(6).get("spaces").get(0);
    assertEquals(BY_NAME, printed.get("photo").asText(), "alone on its day");
  }

  /** It lies in another month, and is reached from any day. */
  private void theNamesDateByMouse() throws IOException {
    browser.go("#/day/2026-06-07");
    browser.waitForText("h1", "Sunday 7");
    browser.choose("#photos-from", "elsewhere");
    browser.waitForText(".photos .file", "3 May 2026, 10:15");
    browser.waitForText(".photos .became", "its name says 3 May 2026, 10:15");
    browser.click(".photos [aria-label='Change the date of " + BY_NAME + "']");
    browser.waitForText("dialog", "Its name says 3 May 2026, 10:15");
    browser.checkAccessible("the date of a picture");
    browser.shootIfAsked("date.shots", "date-dialog.png");
    fill("2026-06-07", "18:30");
    browser.click("[data-at='date-use']");
    browser.saved();
    browser.waitForText(".why .file", BY_NAME);
    browser.choose("#photos-from", "2026-06-07");
    browser.waitForText(
        ".photos .became", "you said 7 June 2026, 18:30; its name says 3 May 2026, 10:15");
    browser.shootIfAsked("date.shots", "date-said.png");
  }

  private void theSidecarsDateByKeyboard() throws IOException {
    browser.go("#/day/2026-06-03");
    browser.waitForText("h1", "Wednesday 3");
    String button = "[aria-label='Change the date of " + BY_SIDECAR + "']";
    browser.find(".photos " + button).sendKeys(Keys.ENTER);
    browser.waitForText("dialog", "The XMP file beside it says 3 June 2026, 11:00");
    browser.find("#date-day").sendKeys("06092026"); // as an American types it
    browser.find("#date-time").sendKeys("0120AM", Keys.ENTER);
    browser.saved();
    browser.waitFor(
        "the picture to go", () -> Optional.of(browser.all(button)).filter(List::isEmpty));
    assertEquals(
        "photos-from", browser.run("return document.activeElement.id"), "the focus is not lost");
    browser.go("#/day/2026-06-08");
    browser.waitForText(".photos .became", "you said 9 June 2026, 01:20");
  }

  private void theCamerasDateAndUndo() throws IOException {
    browser.go("#/day/2026-06-05");
    browser.waitForText("h1", "Friday 5");
    String button = ".photos [aria-label='Change the date of " + BY_CAMERA + "']";
    assertFalse(browser.text(".tile").contains("says"), "a camera's date is not spoken of");
    browser.click(button);
    browser.waitForText("dialog", "Its camera says 5 June 2026, 12:00");
    fill("2026-06-10", "");
    browser.click("[data-at='date-use']");
    browser.saved();
    browser.go("#/day/2026-06-10");
    browser.waitForText(".photos .became", "you said 10 June 2026; its camera says 5 June");
    browser.click(button);
    browser.click("[data-at='date-back']");
    browser.saved();
    browser.go("#/day/2026-06-05");
    browser.find(button);
    browser.click("#undo"); // and the page goes to where that is seen
    browser.waitForText("h1", "Wednesday 10");
    browser.waitForText(".photos .became", "you said 10 June 2026");
    browser.click("#redo");
    browser.waitFor("it is gone", () -> Optional.of(browser.all(button)).filter(List::isEmpty));
    browser.saved();
  }

  /** As the table of dates has it. */
  private void aDateThatCannotBe() throws IOException {
    browser.go("#/day/2026-06-05");
    browser.click(".photos [aria-label='Change the date of " + BY_CAMERA + "']");
    fill("1950-06-05", "");
    browser.click("[data-at='date-use']");
    browser.waitForText("#notice", "1950-06-05 cannot be");
    browser.find(".photos [aria-label='Change the date of " + BY_CAMERA + "']");
  }

  private void fill(String day, String time) throws IOException {
    browser.run(
        "document.querySelector('#date-day').value = arguments[0];"
            + "document.querySelector('#date-time').value = arguments[1]",
        day,
        time);
  }

  private static JsonNode month(Path out) throws IOException {
    return new ObjectMapper().readTree(out.resolve("month.json").toFile());
  }

  private static void assertPhoto(Path out, String name, String day, String at, String from)
      throws IOException {
    for (JsonNode photo : month(out).get("photos")) {
      if (photo.get("file").asText().equals(name)) {
        assertEquals(day, photo.get("day").asText(), name);
        assertEquals(at, photo.get("takenAt").asText(), name);
        assertEquals(from, photo.get("takenFrom").asText(), name);
        return;
      }
    }
    throw new AssertionError(name + " is not in month.json");
  }
}
