package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.daymount.image.Previews;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.print.PrintOptions;
import org.openqa.selenium.remote.RemoteWebDriver;

/** Debian's chromium without a window; a test that needs it is skipped, with a word, without it. */
final class Browser implements AutoCloseable {
  private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
  private static final Path DRIVER = Path.of("/usr/bin/chromedriver");
  private static final int MOST_TABS = 150;
  private static final int PRINT_SHOWN = 90; // pixels per inch
  private static final Duration PATIENCE = Duration.ofSeconds(60); // a busy machine

  private final RemoteWebDriver driver;
  private final Runnable end;

  private Browser(RemoteWebDriver driver, Runnable end) {
    this.driver = driver;
    this.end = end;
  }

  /** WebKitGTK's, as far as both can do the same: no other sizes, no dark, no logs. */
  static Browser webKit(int width, int height) throws Exception {
    assumeTrue(
        WebKit.isHere(),
        "no WebKitWebDriver and Xvfb here: the review is not tested in a second engine");
    WebKit webKit = WebKit.start(width, height);
    return new Browser(webKit.driver(), webKit::close);
  }

  /** Firefox's, as far as all three can do the same. */
  static Browser firefox(int width, int height) throws Exception {
    assumeTrue(Firefox.isHere(), "no firefox-esr here: the review is not tested in a third engine");
    Firefox firefox = Firefox.start(width, height);
    return new Browser(firefox.driver(), firefox::close);
  }

  static Browser start(int width, int height) throws IOException {
    assumeTrue(
        Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER),
        "no chromium and chromedriver here: the review is not tested in a browser");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM.toFile());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--hide-scrollbars",
        "--window-size=" + width + "," + height,
        "--user-data-dir=" + Files.createTempDirectory("daymount-browser"));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new File(DRIVER.toString()))
            .build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().scriptTimeout(PATIENCE);
    return new Browser(driver, driver::quit);
  }

  RemoteWebDriver driver() {
    return driver;
  }

  /** Width in CSS pixels, also below what a window can be. */
  void size(int width, int height, double scale) {
    ((ChromeDriver) driver)
        .executeCdpCommand(
            "Emulation.setDeviceMetricsOverride",
            Map.of("width", width, "height", height, "deviceScaleFactor", scale, "mobile", false));
  }

  /** As large as the window again. */
  void windowSize() {
    ((ChromeDriver) driver).executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
  }

  /** A screen that is touched. */
  void touch(int width, int height) {
    ChromeDriver chrome = (ChromeDriver) driver;
    chrome.executeCdpCommand(
        "Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 5));
    chrome.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", true));
  }

  void dark(boolean dark) {
    media("prefers-color-scheme", dark ? "dark" : "light");
  }

  /** As if the person had set this on their computer. */
  void media(String feature, String value) {
    media(Map.of(feature, value));
  }

  /** Whatever is not named is as usual. */
  void media(Map<String, String> features) {
    List<Map<String, String>> all = new ArrayList<>();
    features.forEach((name, value) -> all.add(Map.of("name", name, "value", value)));
    ((ChromeDriver) driver)
        .executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", all));
  }

  void open(String address) {
    driver.get(address);
  }

  void go(String view) {
    driver.executeScript("location.hash = arguments[0]", view);
  }

  WebElement find(String css) {
    return waitFor(css, () -> driver.findElements(By.cssSelector(css)).stream().findFirst());
  }

  List<WebElement> all(String css) {
    return driver.findElements(By.cssSelector(css));
  }

  void click(String css) {
    retry(
        () -> {
          WebElement element = find(css);
          driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
          element.click();
          return true;
        });
  }

  void choose(String css, String value) {
    WebElement element = find(css);
    driver.executeScript(
        "arguments[0].focus(); arguments[0].value = arguments[1];"
            + "arguments[0].dispatchEvent(new Event('change', {bubbles: true}))",
        element,
        value);
  }

  /** With the mouse held down, in steps, as a hand would. */
  void drag(String from, String to) {
    WebElement taken = find(from);
    WebElement target = find(to);
    new Actions(driver)
        .moveToElement(taken)
        .clickAndHold()
        .moveByOffset(8, 8)
        .moveToElement(target)
        .moveByOffset(2, 2)
        .release()
        .perform();
  }

  /** Presses Tab until the focus is there. */
  void tabTo(String css) {
    for (int i = 0; i < MOST_TABS; i++) {
      Object there =
          run("return document.activeElement && document.activeElement.matches(arguments[0])", css);
      if (Boolean.TRUE.equals(there)) {
        return;
      }
      new Actions(driver).sendKeys(Keys.TAB).perform(); // wherever it is: a file's field too
    }
    throw new AssertionError(css + " is not reached with Tab");
  }

  /** To whatever has the focus. */
  void keys(CharSequence... keys) {
    driver.switchTo().activeElement().sendKeys(keys);
  }

  /**
   * The words on the paper.
   *
   * @param pages how many it must take; 0: any number
   */
  String printed(int pages) throws IOException {
    byte[] pdf = Base64.getDecoder().decode(driver.print(new PrintOptions()).getContent());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      if (pages > 0) {
        assertEquals(pages, document.getNumberOfPages(), "pages");
      }
      return new PDFTextStripper().getText(document);
    }
  }

  String text(String css) {
    return retry(() -> find(css).getText());
  }

  /** Until everything a person did is on the disk. */
  void saved() {
    waitFor(
        "saved",
        () ->
            Optional.of(driver.findElement(By.id("saved")))
                .filter(saved -> saved.getText().equals("saved")));
  }

  void waitForText(String css, String text) {
    waitFor(
        "'" + text + "' in " + css,
        () -> Optional.of(text(css)).filter(found -> found.contains(text)));
  }

  /** Until all pictures that are on the screen have come. */
  void pictures() {
    waitFor(
        "pictures",
        () ->
            Optional.of(
                    driver.executeScript(
                        "return [...document.images].filter(i => {"
                            + "const b = i.getBoundingClientRect();"
                            + "return b.bottom > 0 && b.top < innerHeight && !i.complete;"
                            + "}).length"))
                .filter(count -> count.equals(0L)));
    driver.executeAsyncScript( // those in drawn pages too
        "const done = arguments[arguments.length - 1];"
            + "Promise.allSettled([...document.querySelectorAll('svg image')].filter(i => {"
            + "const b = i.getBoundingClientRect();"
            + "return b.bottom > 0 && b.top < innerHeight && i.decode;"
            + "}).map(i => i.decode())).then(() => done())");
  }

  <T> T waitFor(String what, Supplier<Optional<T>> found) {
    return waitFor(what, PATIENCE, found);
  }

  <T> T waitFor(String what, Duration patience, Supplier<Optional<T>> found) {
    long end = System.nanoTime() + patience.toNanos();
    while (System.nanoTime() < end) {
      try {
        Optional<T> there = found.get();
        if (there.isPresent()) {
          return there.get();
        }
      } catch (WebDriverException notYet) {
        // the page was just drawn anew
      }
      pause();
    }
    throw new AssertionError(
        "waited in vain for " + what + "; the page says: " + driver.getPageSource());
  }

  private <T> T retry(Supplier<T> action) {
    return waitFor("a steady page", () -> Optional.of(action.get()));
  }

  private static void pause() {
    try {
      Thread.sleep(40);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  /**
   * No violation of any rule axe-core 4 knows (WCAG 2.0 to 2.2, A and AA, and its best practices).
   */
  void checkAccessible(String view) throws IOException {
    assertEquals(List.of(), inaccessible(), view);
  }

  /** What of it is violated, in words. */
  @SuppressWarnings("unchecked")
  List<Object> inaccessible() throws IOException {
    if (driver.executeScript("return typeof axe").equals("undefined")) {
      driver.executeScript(axe());
    }
    return (List<Object>)
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run(document, {resultTypes: ['violations']}).then(r =>"
                + " done(r.violations.map(v => v.id + ': ' + v.help + ' at ' + v.nodes.map(n =>"
                + " n.target.join(' ') + ' ' + n.failureSummary).join(' | '))), e => done(['axe"
                + " failed: ' + e]))");
  }

  private static String axe() throws IOException {
    try (InputStream in =
        Browser.class.getResourceAsStream(
            "/META-INF/resources/webjars/axe-core/4.6.3/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Addresses of all requests since it was last asked. */
  List<String> requests() {
    List<String> addresses = new ArrayList<>();
    for (LogEntry entry : driver.manage().logs().get(LogType.PERFORMANCE)) {
      String message = entry.getMessage();
      if (message.contains("\"Network.requestWillBeSent\"")) {
        int at = message.indexOf("\"url\":\"", message.indexOf("\"request\":{"));
        if (at > 0) {
          addresses.add(message.substring(at + 7, message.indexOf('"', at + 7)));
        }
      }
    }
    return addresses;
  }

  /** Errors on the page's console since it was last asked. */
  List<String> errors() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.SEVERE.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** A picture of what is on the screen, as good as it can be within so many bytes. */
  void shoot(Path jpeg, int mostBytes) throws IOException {
    pictures();
    byte[] png = driver.getScreenshotAs(OutputType.BYTES);
    write(ImageIO.read(new ByteArrayInputStream(png)), jpeg, mostBytes);
  }

  /** The same without loss. */
  void shootPng(Path png, int mostBytes) throws IOException {
    pictures();
    byte[] bytes = driver.getScreenshotAs(OutputType.BYTES);
    assertTrue(bytes.length <= mostBytes, png + " has " + bytes.length + " bytes");
    Files.createDirectories(png.toAbsolutePath().getParent());
    Files.write(png, bytes);
  }

  /** What is on the screen, only where somebody wants to look: {@code -DPROPERTY=FOLDER}. */
  void shootIfAsked(String property, String name) throws IOException {
    String folder = System.getProperty(property, "");
    if (!folder.isEmpty()) {
      shootPng(Path.of(folder, name), 3_000_000);
    }
  }

  /** The first page as it would be printed. */
  void shootPrint(Path jpeg, int mostBytes) throws IOException {
    pictures();
    byte[] pdf = Base64.getDecoder().decode(driver.print(new PrintOptions()).getContent());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      write(new PDFRenderer(document).renderImageWithDPI(0, PRINT_SHOWN), jpeg, mostBytes);
    }
  }

  private static void write(BufferedImage picture, Path jpeg, int mostBytes) throws IOException {
    Files.createDirectories(jpeg.getParent());
    int edge = Math.max(picture.getWidth(), picture.getHeight());
    byte[] bytes = Previews.jpeg(picture, edge, 0.85);
    for (double quality = 0.8; bytes.length > mostBytes && quality > 0.3; quality -= 0.05) {
      bytes = Previews.jpeg(picture, edge, quality);
    }
    assertTrue(bytes.length <= mostBytes, jpeg + " has " + bytes.length + " bytes");
    Files.write(jpeg, bytes);
  }

  @Override
  public void close() {
    end.run();
  }
}
