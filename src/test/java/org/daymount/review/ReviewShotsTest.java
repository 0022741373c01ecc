package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pictures of the review in docs/, taken of the sample month: {@code mvn test
 * -Dtest=ReviewShotsTest -Dreview.shots=docs}. Skipped otherwise, so that a test run leaves docs/
 * alone.
 */
class ReviewShotsTest {
  private static final int MOST_BYTES = 200_000;

  @TempDir Path home;

  @Test
  void eachViewOfTheSampleMonthIsPhotographed() throws Exception {
    String folder = System.getProperty("review.shots", "");
    assumeTrue(!folder.isEmpty(), "no -Dreview.shots=docs: the pictures in docs/ stay as they are");
    Path docs = Path.of(folder);
    String out = home.resolve("daymount-2026-06").toString();
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review =
            RunningReview.start("sample-photos", "--out", out, "--cards", "3x4")) {
      browser.open(review.address());
      browser.find(".month li");
      browser.size(1280, 860, 1);
      shoot(browser, docs.resolve("review-month.jpg"));
      browser.dark(true);
      shoot(browser, docs.resolve("review-month-dark.jpg"));
      browser.dark(false);
      browser.size(390, 844, 2);
      browser.go("#/day/2026-06-06");
      browser.find(".photos li");
      shoot(browser, docs.resolve("review-day-phone.jpg"));
      browser.size(1280, 1500, 1);
      shoot(browser, docs.resolve("review-day.jpg"));
      browser.go("#/day/2026-06-03");
      browser.find(".cards img");
      browser.size(1280, 1100, 1);
      browser.run("document.querySelector('.story').scrollIntoView({block: 'end'})");
      shoot(browser, docs.resolve("review-story.jpg"));
      browser.go("#/undated");
      browser.find("h1");
      browser.size(1280, 640, 1);
      shoot(browser, docs.resolve("review-undated.jpg"));
      browser.go("#/sheets");
      browser.click("button.main");
      browser.waitForText("#made", "made:");
      browser.find(".sheets li img");
      browser.size(1280, 900, 1);
      shoot(browser, docs.resolve("review-sheets.jpg"));
    }
  }

  private static void shoot(Browser browser, Path file) throws Exception {
    browser.saved();
    browser.shoot(file);
    assertTrue(Files.size(file) <= MOST_BYTES, file + " has " + Files.size(file) + " bytes");
  }
}
