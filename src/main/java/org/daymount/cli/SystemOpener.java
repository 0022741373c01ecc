package org.daymount.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * Opens an address or a file as a double-click would, by the system's own command: Java's Desktop
 * does the same on Windows and macOS, but not in a headless Java and not on every Linux.
 */
final class SystemOpener {
  private final String system;

  SystemOpener(String system) {
    this.system = system.toLowerCase(Locale.ROOT);
  }

  /** Without a shell, so that nothing in the address is taken for a command. */
  List<String> command(String addressOrFile) {
    if (system.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler", addressOrFile);
    }
    return List.of(system.startsWith("mac") ? "open" : "xdg-open", addressOrFile);
  }

  /** Whether this computer has a way to; it may still fail later. */
  boolean open(String addressOrFile) {
    try {
      new ProcessBuilder(command(addressOrFile))
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
