package org.daymount.review;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/**
 * The pictures of the review in docs/, taken of the sample month: {@code mvn test
 * -Dtest=ReviewShotsTest -Dreview.shots=docs}. Skipped otherwise, so that a test run leaves docs/
 * alone.
 */
@Tag("slow")
@Isolated
class ReviewShotsTest {
  private static final int MOST_BYTES = 150_000;
  private static final Path SAMPLE = Path.of("sample-photos");

  @TempDir Path home;

  @Test
  void eachViewOfTheSampleMonthIsPhotographed() throws Exception {
    String folder = System.getProperty("review.shots", "");
    assumeTrue(!folder.isEmpty(), "no -Dreview.shots=docs: the pictures in docs/ stay as they are");
    Path docs = Path.of(folder);
    Path photos = sampleWithUndated(home.resolve("photos"));
    String out = home.resolve("daymount-2026-06").toString();
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review =
            RunningReview.startOpening(photos.toString(), "--out", out, "--cards", "auto")) {
      browser.size(1280, 400, 1);
      browser.open(review.address());
      browser.waitFor(
          "the look at the pictures well under way",
          () ->
              Optional.of(
                      browser.run("return (document.querySelector('progress') ?? {}).value > 0.4"))
                  .filter(Boolean.TRUE::equals));
      browser.shoot(docs.resolve("review-opening.jpg"), MOST_BYTES);
      review.awaitOpen();
      browser.find(".month li");
      browser.size(1280, 860, 1);
      hideThisMachine(browser);
      browser.shootPrint(docs.resolve("review-print.jpg"), MOST_BYTES); // waits for the pictures
      shoot(browser, docs.resolve("review-month.jpg"));
      browser.dark(true);
      shoot(browser, docs.resolve("review-month-dark.jpg"));
      browser.dark(false);
      days(browser, docs);
      browser.go("#/undated");
      browser.find(".photos li");
      browser.size(1280, 640, 1);
      shoot(browser, docs.resolve("review-undated.jpg"));
      browser.go("#/sheets");
      browser.click("button.main");
      browser.waitFor(
          "the sheets",
          Duration.ofMinutes(8),
          () -> browser.all(".sheets li img").stream().findFirst());
      browser.size(1280, 900, 1);
      shoot(browser, docs.resolve("review-sheets.jpg"));
    }
  }

  private void days(Browser browser, Path docs) throws IOException {
    browser.size(1280, 1150, 1);
    open(browser, "2026-06-30");
    shoot(browser, docs.resolve("review-day.jpg"));
    browser.size(390, 844, 2);
    shoot(browser, docs.resolve("review-day-phone.jpg"));
    browser.size(768, 1024, 1.5);
    open(browser, "2026-06-22");
    shoot(browser, docs.resolve("review-day-tablet.jpg"));
    browser.size(1280, 760, 1);
    open(browser, "2026-06-03");
    browser.find(".cards img");
    browser.run("document.querySelector('.story').scrollIntoView({block: 'end'})");
    shoot(browser, docs.resolve("review-story.jpg"));
    browser.click(".side-by-side");
    browser.find("dialog[open] img");
    shoot(browser, docs.resolve("review-side.jpg"));
    browser.run("document.querySelector('dialog').close()");
  }

  @Test
  void theStartPageIsPhotographed() throws Exception {
    String folder = System.getProperty("review.shots", "");
    assumeTrue(!folder.isEmpty(), "no -Dreview.shots=docs: the pictures in docs/ stay as they are");
    Path pictures = Files.createDirectories(home.resolve("Pictures/Island June"));
    for (String name : List.of("Boat", "Spring")) {
      Files.createDirectories(home.resolve("Pictures").resolve(name));
    }
    try (Stream<Path> all = Files.list(SAMPLE)) {
      for (Path file : all.filter(each -> each.toString().endsWith(".jpg")).toList()) {
        Files.copy(file, pictures.resolve(file.getFileName()));
      }
    }
    try (Browser browser = Browser.start(1280, 900);
        RunningReview start = RunningReview.startPage(home)) {
      browser.size(1280, 1000, 1);
      browser.open(start.address());
      browser.click(".folders button"); // Pictures
      browser.waitForText(".walk .here", "Pictures");
      browser.click(".folders li:nth-child(2) button");
      browser.waitForText(".walk .here", "Island June");
      browser.click("#take");
      browser.waitForText("#go", "Open June 2026");
      String note = Files.readString(SAMPLE.resolve("note.txt"));
      browser.run("document.getElementById('note-text').value = arguments[0]", note);
      browser.run("document.activeElement.blur(); scrollTo(0, 0)");
      hideThisMachine(browser);
      browser.shootPng(Path.of(folder).resolve("start.png"), MOST_BYTES);
    }
  }

  /** Folders of whoever takes the pictures stand in none of them: the Quills' stand there. */
  private void hideThisMachine(Browser browser) {
    browser.run(
        "const all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);while"
            + " (all.nextNode()) {  all.currentNode.data ="
            + " all.currentNode.data.replaceAll(arguments[0], '/home/quill');}",
        home.toString());
  }

  private static void open(Browser browser, String day) {
    browser.go("#/day/" + day);
    browser.find(".photos li");
    browser.run("scrollTo(0, 0)");
  }

  private void shoot(Browser browser, Path file) throws IOException {
    browser.saved();
    hideThisMachine(browser);
    browser.shoot(file, MOST_BYTES);
  }

  /** The sample month, and three of its pictures mirrored and cut smaller, without a date. */
  private static Path sampleWithUndated(Path folder) throws IOException {
    Files.createDirectories(folder);
    List<Path> files;
    try (Stream<Path> all = Files.list(SAMPLE)) {
      files = all.sorted().toList();
    }
    for (Path file : files) {
      Files.copy(file, folder.resolve(file.getFileName()));
    }
    List<String> mirrored =
        List.of("20260619_232018.jpg", "20260601_171240.jpg", "20260618_102245.jpg");
    for (int i = 0; i < mirrored.size(); i++) {
      BufferedImage picture = ImageIO.read(SAMPLE.resolve(mirrored.get(i)).toFile());
      int width = picture.getWidth() * 2 / 3;
      BufferedImage part =
          new BufferedImage(width, picture.getHeight(), BufferedImage.TYPE_INT_RGB);
      Graphics2D pen = part.createGraphics();
      pen.drawImage(picture, width, 0, -picture.getWidth(), picture.getHeight(), null);
      pen.dispose();
      ImageIO.write(part, "jpeg", folder.resolve("scan-" + (i + 1) + ".jpg").toFile());
    }
    return folder;
  }
}
