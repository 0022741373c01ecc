package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** A page of another origin, open in the same browser, that even knows the review's word. */
@Tag("slow")
@Isolated
class HostilePageTest {
  @TempDir Path home;

  @Test
  void aPageOfAnotherOriginCanNeitherReadNorWriteEvenIfItKnowsTheWord() throws Exception {
    Path photos = SmallMonth.paint(home.resolve("photos"));
    Path out = home.resolve("out");
    try (Browser browser = Browser.start(900, 700);
        RunningReview review =
            RunningReview.start(photos.toString(), "--out", out.toString(), "--days", "1-6")) {
      String change =
          "{\"version\":1,\"what\":\"story\",\"day\":\"2026-06-01\",\"text\":\"not yours\"}";
      HttpServer hostile = serve(page(review, change));
      try {
        browser.open("http://127.0.0.1:" + hostile.getAddress().getPort() + "/");
        browser.waitFor(
            "all attempts",
            () ->
                java.util.Optional.ofNullable(browser.run("return window.outcome"))
                    .filter(Map.class::isInstance));
        @SuppressWarnings("unchecked")
        Map<String, Object> outcome = (Map<String, Object>) browser.run("return window.outcome");
        Map<String, Object> nothing =
            Map.of(
                "read", "blocked",
                "readWithWord", "blocked",
                "write", "blocked",
                "writeAsText", "blocked",
                "picture", "blocked",
                "detail", "blocked",
                "script", "blocked",
                "frame", "empty",
                "events", "blocked");
        assertEquals(nothing, outcome);
        assertFalse(Files.exists(out.resolve("choices.json")), "nothing was written");
        assertTrue(
            review.get("/api/month").body().contains("\"version\":1,"), "nothing was changed");
      } finally {
        hostile.stop(0);
      }
      pageRunsNothingButItsOwn(browser, review);
    }
  }

  /** The policy of the page itself: a script or picture that got into it could do nothing. */
  private static void pageRunsNothingButItsOwn(Browser browser, RunningReview review) {
    browser.open(review.address());
    browser.find(".month li");
    Object ran =
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[arguments.length - 1];"
                    + "const s = document.createElement('script');"
                    + "s.textContent = 'window.smuggled = 1'; document.body.append(s);"
                    + "const blocked = [];"
                    + "document.addEventListener('securitypolicyviolation',"
                    + " e => blocked.push(e.effectiveDirective));"
                    + "const i = new Image(); i.src = 'http://127.0.0.1:9/away.png';"
                    + "fetch('http://127.0.0.1:9/').catch(() => {});"
                    + "setTimeout(() => done([typeof window.smuggled,"
                    + " blocked.includes('img-src'), blocked.includes('connect-src')].join()), 500)");
    assertEquals("undefined,true,true", ran);
  }

  private static HttpServer serve(String page) throws Exception {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          byte[] bytes = page.getBytes(StandardCharsets.UTF_8);
          exchange.getResponseHeaders().set("Content-Type", "text/html; charset=utf-8");
          exchange.sendResponseHeaders(200, bytes.length);
          exchange.getResponseBody().write(bytes);
          exchange.close();
        });
    server.start();
    return server;
  }

  /** Everything a page can try; each attempt ends as what it got. */
  private static String page(RunningReview review, String change) {
    return """
        <!doctype html><title>elsewhere</title><body><script>
        const there = '%s', word = '%s', change = '%s';
        const blocked = () => 'blocked';
        const readable = r => r.ok && r.type !== 'opaque' ? r.text() : 'blocked';
        const headers = { 'X-Review-Token': word, 'Content-Type': 'application/json' };
        const loads = (tag, src) => new Promise(done => {
          const made = document.createElement(tag);
          made.onload = () => done('loaded');
          made.onerror = () => done('blocked');
          made.src = src;
          document.body.append(made);
        });
        const framed = new Promise(done => {
          const frame = document.createElement('iframe');
          frame.src = there + '/#' + word;
          const look = () => { try { done(frame.contentDocument.body.textContent || 'empty'); }
            catch { done('empty'); } };
          frame.onload = look;
          setTimeout(look, 3000);
          document.body.append(frame);
        });
        const events = new Promise(done => {
          const source = new EventSource(there + '/api/progress?key=' + word);
          source.onmessage = () => done('heard');
          source.onerror = () => { source.close(); done('blocked'); };
        });
        Promise.all([
          fetch(there + '/api/month').then(readable, blocked),
          fetch(there + '/api/month', { headers }).then(readable, blocked),
          fetch(there + '/api/change', { method: 'POST', headers, body: change }).then(readable, blocked),
          fetch(there + '/api/change', { method: 'POST', mode: 'no-cors', body: change }).then(readable, blocked),
          loads('img', there + '/picture/p0/0/240?key=' + word),
          loads('img', there + '/detail/p0/500/500?key=' + word),
          loads('script', there + '/ask.js'),
          framed, events
        ]).then(([read, readWithWord, write, writeAsText, picture, detail, script, frame, events]) => {
          window.outcome = { read, readWithWord, write, writeAsText, picture, detail, script, frame, events };
        });
        </script>
        """
        .formatted(review.origin(), review.token(), change);
  }
}
