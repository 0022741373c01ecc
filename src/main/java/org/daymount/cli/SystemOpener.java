package org.daymount.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Opens an address or a file as a double-click would, by the system's own command: Java's Desktop
 * does the same on Windows and macOS, but not in a headless Java and not on every Linux.
 */
final class SystemOpener {
  private static final int PATIENCE = 4; // s

  private final String system;

  SystemOpener(String system) {
    this.system = system.toLowerCase(Locale.ROOT);
  }

  /** Whether somebody may have double-clicked here: a script on a server has no screen. */
  static boolean hasDesktop() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    return system.startsWith("windows")
        || system.startsWith("mac")
        || System.getenv("DISPLAY") != null
        || System.getenv("WAYLAND_DISPLAY") != null;
  }

  /** Without a shell, so that nothing in the address is taken for a command. */
  List<String> command(String addressOrFile) {
    if (system.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler", addressOrFile);
    }
    return List.of(system.startsWith("mac") ? "open" : "xdg-open", addressOrFile);
  }

  /**
   * Whether this computer has a way to. The command is given a moment to say that it has none (as
   * xdg-open does where no browser is installed); some run on for as long as what they opened.
   */
  boolean open(String addressOrFile) {
    try {
      Process started =
          new ProcessBuilder(command(addressOrFile))
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      started.getOutputStream().close();
      return !started.waitFor(PATIENCE, TimeUnit.SECONDS) || started.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    }
  }
}
