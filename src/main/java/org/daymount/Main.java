package org.daymount;

import org.daymount.cli.CommandLines;

/** The program's door: the only place that ends the process. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    int code = CommandLines.runHere(System.out, System.err, arguments);
    if (code != 0) {
      System.exit(code);
    }
  }
}
