package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.daymount.pipeline.RunFailed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** The review before its month is open. */
@Tag("slow")
@Isolated
class OpeningTest {
  private static final String WORD = "0123456789abcdef0123456789abcdef";

  @Test
  void thePageIsThereAtOnceAndTellsHowFarTheLookIs() throws Exception {
    try (Browser browser = Browser.start(900, 700);
        ReviewServer server = ReviewServer.start(0, WORD)) {
      browser.open("http://127.0.0.1:" + server.port() + "/#" + WORD);
      browser.waitForText("h1", "Opening the month");
      server.opening().stage("looking at pictures", 10);
      for (int i = 0; i < 3; i++) {
        server.opening().step();
      }
      browser.waitForText("main", "3 of 10");
      assertEquals("Looking at pictures (10)", browser.text("#opening"));
      for (boolean dark : new boolean[] {false, true}) {
        browser.dark(dark);
        browser.checkAccessible("opening");
      }
      server.fail("there is no picture with a date among the files");
      browser.waitForText("#notice", "there is no picture with a date among the files");
    }
  }

  @Test
  void nothingIsAnsweredFromTheMonthBeforeItIsOpen() throws Exception {
    try (ReviewServer server = ReviewServer.start(0, WORD)) {
      String origin = "http://127.0.0.1:" + server.port();
      for (String path : new String[] {"/api/month", "/api/day/2026-06-01", "/picture/p0/0/240"}) {
        HttpRequest request =
            HttpRequest.newBuilder(URI.create(origin + path + "?key=" + WORD))
                .header("X-Review-Token", WORD)
                .build();
        assertEquals(503, RunningReview.send(request).statusCode(), path);
      }
    }
  }

  @Test
  void eachStartHasAPortOfItsOwnUnlessOneIsNamed() {
    try (ReviewServer one = ReviewServer.start(0, WORD);
        ReviewServer other = ReviewServer.start(0, WORD)) {
      assertNotEquals(one.port(), other.port());
      RunFailed taken =
          assertThrows(RunFailed.class, () -> ReviewServer.start(one.port(), WORD).close());
      assertTrue(taken.getMessage().startsWith("port " + one.port() + " is taken"));
    }
  }

  @Test
  void thePageMayRunAndLoadNothingButItsOwn() throws Exception {
    try (ReviewServer server = ReviewServer.start(0, WORD)) {
      HttpRequest request =
          HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/")).build();
      HttpResponse<String> page = RunningReview.send(request);
      String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none';"), policy);
      assertTrue(!policy.contains("unsafe") && !policy.contains("*"), policy);
      for (String way : new String[] {"frame-ancestors", "form-action", "base-uri"}) {
        assertTrue(policy.contains(way + " 'none'"), way);
      }
      assertEquals("DENY", page.headers().firstValue("X-Frame-Options").orElse(""));
      assertEquals("no-referrer", page.headers().firstValue("Referrer-Policy").orElse(""));
      assertTrue(!page.body().contains("://"), "no address in the page");
    }
  }
}
