package org.daymount.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.MutableCapabilities;
import org.openqa.selenium.remote.RemoteWebDriver;

/**
 * The third engine: Debian's firefox-esr without a window. Debian has no driver for it, so it is
 * spoken to directly ({@link Marionette}).
 */
final class Firefox {
  private static final Path PROGRAM = Path.of("/usr/bin/firefox-esr");
  private static final Duration PATIENCE = Duration.ofSeconds(60); // a busy machine

  private final Process process;
  private final Marionette marionette;
  private final RemoteWebDriver driver;

  private Firefox(Process process, Marionette marionette, RemoteWebDriver driver) {
    this.process = process;
    this.marionette = marionette;
    this.driver = driver;
  }

  static boolean isHere() {
    return Files.isExecutable(PROGRAM);
  }

  static Firefox start(int width, int height) throws Exception {
    Path profile = Files.createTempDirectory("daymount-firefox");
    Files.writeString(
        profile.resolve("user.js"),
        """
        user_pref("marionette.port", 0);
        user_pref("app.update.auto", false);
        user_pref("app.normandy.enabled", false);
        user_pref("browser.shell.checkDefaultBrowser", false);
        user_pref("datareporting.policy.dataSubmissionEnabled", false);
        user_pref("network.captive-portal-service.enabled", false);
        user_pref("network.connectivity-service.enabled", false);
        user_pref("toolkit.telemetry.enabled", false);
        """);
    ProcessBuilder builder =
        new ProcessBuilder(
                PROGRAM.toString(),
                "--headless",
                "--marionette",
                "--no-remote",
                "--profile",
                profile.toString())
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.environment().put("HOME", profile.toString()); // nothing of it stays in the person's
    Process process = builder.start();
    try {
      Marionette marionette = new Marionette(port(profile, process));
      RemoteWebDriver driver = new RemoteWebDriver(marionette, new MutableCapabilities());
      driver.manage().timeouts().scriptTimeout(PATIENCE);
      driver.manage().window().setSize(new Dimension(width, height));
      return new Firefox(process, marionette, driver);
    } catch (Exception | Error e) {
      process.destroy();
      throw e;
    }
  }

  /** Firefox writes down which port it was given. */
  private static int port(Path profile, Process process) throws Exception {
    Path written = profile.resolve("MarionetteActivePort");
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (process.isAlive() && System.nanoTime() < end) {
      if (Files.exists(written) && Files.size(written) > 0) {
        return Integer.parseInt(Files.readString(written).strip());
      }
      Thread.sleep(50);
    }
    throw new IOException("Firefox did not say where it listens");
  }

  RemoteWebDriver driver() {
    return driver;
  }

  void close() {
    try (marionette) {
      driver.quit();
    } catch (IOException e) {
      throw new AssertionError(e);
    } finally {
      process.destroy();
      try {
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
          process.destroyForcibly();
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
