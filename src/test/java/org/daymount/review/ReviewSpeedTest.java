package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.OperatingSystemMXBean;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.daymount.look.Painted;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/**
 * How soon a large month is usable in the browser, and how smoothly it scrolls: {@code mvn test
 * -Dtest=ReviewSpeedTest -Dreview.speed=3000}. Skipped otherwise, since it takes minutes; a machine
 * that is doing something else at the time tells nothing. {@code -Dreview.speed.photos=DIR} keeps
 * the painted photos, {@code -Dreview.speed.out=DIR} what was measured in them.
 */
@Tag("slow")
@Isolated
class ReviewSpeedTest {
  private static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss");
  private static final int DAYS = 30;
  private static final int MOST_UNTIL_USABLE = 2_000; // ms

  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  @TempDir Path home;

  @Test
  void aLargeMonthIsUsableSoonAndScrollsSmoothly() throws Exception {
    int photos = Integer.getInteger("review.speed", 0);
    assumeTrue(photos > 0, "no -Dreview.speed=3000: the speed of the review is not measured");
    String kept = System.getProperty("review.speed.photos", "");
    Path folder = paint(kept.isEmpty() ? home.resolve("photos") : Path.of(kept), photos);
    String out = System.getProperty("review.speed.out", home.resolve("out").toString());
    String[] arguments = {folder.toString(), "--out", out, "--min-ppi", "80"};
    try (Browser browser = Browser.start(1280, 900)) {
      browser.size(1280, 900, 1);
      say("%d photos, %d a day", photos, photos / DAYS);
      say(
          "load of this machine: %.1f on %d processors; figures of a busy machine tell little",
          SYSTEM.getSystemLoadAverage(), SYSTEM.getAvailableProcessors());
      long start = System.nanoTime();
      try (RunningReview review = RunningReview.startOpening(arguments)) {
        say("first start: address after %.1f s", seconds(start));
        browser.open(review.address());
        browser.find("progress");
        say("first start: progress is seen after %.1f s", seconds(start));
        browser.waitFor(
            "the month",
            Duration.ofMinutes(30),
            () -> browser.all(".month li a").stream().findFirst());
        say("first start: month after %.1f s, %.1f s of processor", seconds(start), processor());
      }
      start = System.nanoTime();
      double before = processor();
      try (RunningReview review = RunningReview.startOpening(arguments)) {
        browser.open(review.address());
        browser.waitFor(
            "the month",
            Duration.ofMinutes(5),
            () -> browser.all(".month li a").stream().findFirst());
        say(
            "second start, all remembered: month after %.1f s, %.1f s of processor",
            seconds(start), processor() - before);
        measureOpening(browser, review);
        measureScrolling(browser, "month", "#/");
        measureDay(browser, photos / DAYS);
        measureScrolling(browser, "day", null);
        browser.size(390, 844, 2);
        measureScrolling(browser, "day on a phone's screen", null);
        browser.size(1280, 900, 1);
        measureChanges(review);
      }
    }
  }

  private static void measureOpening(Browser browser, RunningReview review) throws Exception {
    Thread.sleep(3_000); // the start has ended
    double[] usable = new double[5];
    double[] complete = new double[usable.length];
    for (int i = 0; i < usable.length; i++) {
      browser.open("about:blank");
      browser.open(review.address());
      browser.find(".month li a");
      browser.pictures();
      usable[i] =
          number(browser, "return performance.getEntriesByName('month usable')[0].startTime");
      complete[i] =
          number(
              browser,
              "return Math.max(...performance.getEntriesByType('resource').map(r => r.responseEnd))");
    }
    say("opening: days can be used after %s ms (median, of %s)", median(usable), list(usable));
    say("opening: the last picture in sight after %s ms (of %s)", median(complete), list(complete));
    assertTrue(median(usable) < MOST_UNTIL_USABLE, "the month is usable within two seconds");
  }

  private static void measureDay(Browser browser, int tiles) {
    browser.go("#/");
    browser.find(".month li a");
    Object millis =
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[arguments.length - 1], start = performance.now();"
                    + "location.hash = '#/day/2026-06-15';"
                    + "const look = () => document.querySelectorAll('.photos .tile').length > "
                    + tiles / 3
                    + " ? done(performance.now() - start) : requestAnimationFrame(look);"
                    + "requestAnimationFrame(look);");
    say("a day's photos are listed %.0f ms after it is chosen", ((Number) millis).doubleValue());
  }

  /** From top to bottom and back at 1,500 CSS pixels a second, as a wheel would. */
  private static void measureScrolling(Browser browser, String view, String hash) {
    if (hash != null) {
      browser.go(hash);
      browser.find(".month li a");
    }
    browser.pictures();
    @SuppressWarnings("unchecked")
    List<Number> frames =
        (List<Number>)
            browser
                .driver()
                .executeAsyncScript(
                    "const done = arguments[arguments.length - 1], frames = [];"
                        + "const far = Math.min(9000, document.documentElement.scrollHeight - innerHeight);"
                        + "scrollTo(0, 0);"
                        + "let before = 0, start = 0;"
                        + "const each = (now) => {"
                        + " if (before) frames.push(now - before); else start = now;"
                        + " before = now;"
                        + " const way = (now - start) * 1.5;"
                        + " scrollTo(0, way < far ? way : 2 * far - way);"
                        + " way < 2 * far + 100 ? requestAnimationFrame(each) : done(frames); };"
                        + "requestAnimationFrame(each);");
    double[] sorted = frames.stream().mapToDouble(Number::doubleValue).sorted().toArray();
    if (sorted.length == 0) {
      say("scrolling the %s: nothing to scroll", view);
      return;
    }
    say(
        "scrolling the %s: %d frames, median %.1f ms, 95 of 100 within %.1f ms, worst %.1f ms",
        view,
        sorted.length,
        sorted[sorted.length / 2],
        sorted[(int) (sorted.length * 0.95)],
        sorted[sorted.length - 1]);
  }

  /** What a letter of a story and a new picture cost until they are saved. */
  private static void measureChanges(RunningReview review) throws Exception {
    double[] story = new double[15];
    long version = version(review);
    double before = processor();
    for (int i = 0; i < story.length; i++) {
      long start = System.nanoTime();
      String change =
          "{\"version\":%d,\"what\":\"story\",\"day\":\"2026-06-15\",\"session\":\"s\",\"text\":\"%s\"}"
              .formatted(version++, "a".repeat(i + 1));
      assertTrue(review.post("/api/change", change).statusCode() == 200);
      story[i] = 1000 * seconds(start);
    }
    say(
        "a letter of a story is saved within %s ms (median of %s), %.0f ms of processor",
        median(story), list(story), 1000 * (processor() - before) / story.length);
  }

  private static long version(RunningReview review) throws Exception {
    String month = review.get("/api/month").body();
    return Long.parseLong(month.replaceAll("(?s).*?\"version\":(\\d+).*", "$1"));
  }

  private static Path paint(Path folder, int photos) throws Exception {
    Files.createDirectories(folder);
    IntStream.range(0, photos)
        .parallel()
        .filter(i -> !Files.exists(folder.resolve(name(i))))
        .forEach(
            i -> {
              try {
                BufferedImage picture = Painted.scene(640, 480, i);
                LocalDateTime taken =
                    LocalDateTime.of(2026, 6, 1, 6, 0)
                        .plusDays(i % DAYS)
                        .plusMinutes(9L * (i / DAYS));
                ExifPhoto.painted()
                    .picture(picture)
                    .original(EXIF.format(taken))
                    .write(folder.resolve(name(i)));
              } catch (Exception e) {
                throw new IllegalStateException(e);
              }
            });
    return folder;
  }

  private static String name(int i) {
    return String.format(Locale.ROOT, "photo-%05d.jpg", i);
  }

  private static double number(Browser browser, String script) {
    return ((Number) browser.waitFor("a figure", () -> Optional.ofNullable(browser.run(script))))
        .doubleValue();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return Math.round(sorted[sorted.length / 2]);
  }

  private static String list(double[] values) {
    return Arrays.toString(Arrays.stream(values).mapToLong(Math::round).toArray());
  }

  /** Of this process, and so of the review, but not of the browser. */
  private static double processor() {
    return SYSTEM.getProcessCpuTime() / 1e9;
  }

  private static double seconds(long since) {
    return (System.nanoTime() - since) / 1e9;
  }

  private static void say(String words, Object... values) {
    System.out.printf(Locale.ROOT, words + "%n", values);
  }
}
