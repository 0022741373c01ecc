package org.daymount.review;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.MutableCapabilities;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.remote.RemoteWebDriver;

/**
 * The second engine: WebKitGTK's MiniBrowser, by Debian's webkit2gtk-driver, on a screen of its own
 * that nobody sees (Xvfb). What Safari shows is not the same, but of the same engine.
 */
final class WebKit {
  private static final Path DRIVER = Path.of("/usr/bin/WebKitWebDriver");
  private static final Path SCREEN = Path.of("/usr/bin/Xvfb");
  private static final Path LIBRARIES = Path.of("/usr/lib/x86_64-linux-gnu");
  private static final Duration PATIENCE = Duration.ofSeconds(60); // a busy machine

  private final Process screen;
  private final Process service;
  private final RemoteWebDriver driver;

  private WebKit(Process screen, Process service, RemoteWebDriver driver) {
    this.screen = screen;
    this.service = service;
    this.driver = driver;
  }

  static boolean isHere() {
    return Files.isExecutable(DRIVER) && Files.isExecutable(SCREEN) && browser().isPresent();
  }

  private static Optional<Path> browser() {
    return List.of("webkit2gtk-4.1", "webkit2gtk-4.0").stream()
        .map(each -> LIBRARIES.resolve(each).resolve("MiniBrowser"))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static WebKit start(int width, int height) throws Exception {
    Process screen =
        new ProcessBuilder(
                SCREEN.toString(),
                "-displayfd",
                "1",
                "-screen",
                "0",
                (width + 200) + "x" + (height + 200) + "x24",
                "-nolisten",
                "tcp")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    Process service = null;
    try {
      String display =
          new BufferedReader(
                  new InputStreamReader(screen.getInputStream(), StandardCharsets.US_ASCII))
              .readLine();
      int port = freePort();
      ProcessBuilder builder =
          new ProcessBuilder(DRIVER.toString(), "--port=" + port)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD);
      builder.environment().put("DISPLAY", ":" + display);
      builder.environment().put("GDK_BACKEND", "x11");
      service = builder.start();
      RemoteWebDriver driver = session(URI.create("http://127.0.0.1:" + port));
      driver.manage().timeouts().scriptTimeout(PATIENCE);
      driver.manage().window().setSize(new Dimension(width, height));
      return new WebKit(screen, service, driver);
    } catch (Exception | Error e) {
      screen.destroy();
      if (service != null) {
        service.destroy();
      }
      throw e;
    }
  }

  private static RemoteWebDriver session(URI address) throws Exception {
    MutableCapabilities wanted = new MutableCapabilities();
    wanted.setCapability("browserName", "MiniBrowser");
    wanted.setCapability(
        "webkitgtk:browserOptions",
        Map.of("binary", browser().orElseThrow().toString(), "args", List.of("--automation")));
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (true) {
      try {
        return new RemoteWebDriver(address.toURL(), wanted);
      } catch (WebDriverException notYet) {
        if (System.nanoTime() > end) {
          throw notYet;
        }
        Thread.sleep(200);
      }
    }
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  RemoteWebDriver driver() {
    return driver;
  }

  void close() {
    driver.quit();
    service.destroy();
    screen.destroy();
  }
}
