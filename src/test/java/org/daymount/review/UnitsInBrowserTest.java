package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Whoever measures in centimetres reads them first in the review, too. */
@Tag("slow")
@Isolated
class UnitsInBrowserTest {
  @TempDir Path home;

  @Test
  void sizesAreToldInTheUnitThatWasAskedFor() throws Exception {
    assertEquals("10 × 15 cm (4 × 6 in)", sizeOfASpace("cm"));
    assertEquals("4 × 6 in (10 × 15 cm)", sizeOfASpace("inches"));
  }

  private String sizeOfASpace(String units) throws Exception {
    Path photos = SmallMonth.paint(home.resolve("pictures-" + units));
    String[] arguments = {
      photos.toString(), "--out", home.resolve(units).toString(), "--units", units, "--jobs", "2"
    };
    try (Browser browser = Browser.start(1280, 900);
        RunningReview review = RunningReview.start(arguments)) {
      browser.open(review.address());
      browser.find(".month li");
      browser.go("#/sheets");
      String prints = units.equals("cm") ? "Prints of 10 × 15 cm" : "Prints of 4 × 6 in";
      browser.waitForText("main", prints);
      browser.go("#/day/2026-06-03");
      browser.waitForText("h1", "Wednesday 3");
      browser.find("#space-size");
      Object said =
          browser.run("return document.querySelector('#space-size option:checked').textContent");
      assertEquals(List.of(), browser.errors());
      assertTrue(browser.text(".right h2").contains((String) said), browser.text(".right h2"));
      return (String) said;
    }
  }
}
