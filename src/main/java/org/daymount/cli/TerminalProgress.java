package org.daymount.cli;

import java.io.PrintWriter;
import org.daymount.pipeline.Progress;

/**
 * Progress for a person: one line that counts up at a terminal, a plain line per stage elsewhere.
 */
final class TerminalProgress implements Progress {
  private static final long REDRAW_NANOS = 80_000_000L; // about twelve times a second

  private final PrintWriter err;
  private final boolean terminal;
  private String what = "";
  private int steps;
  private int done;
  private int shown;
  private long drawnAt;

  TerminalProgress(PrintWriter err, boolean terminal) {
    this.err = err;
    this.terminal = terminal;
  }

  @Override
  public synchronized void stage(String newWhat, int newSteps) {
    what = newWhat;
    steps = newSteps;
    done = 0;
    if (terminal) {
      draw(System.nanoTime());
    } else {
      err.println(what + (steps > 0 ? " (" + steps + ")" : ""));
      err.flush();
    }
  }

  @Override
  public synchronized void step() {
    done++;
    long now = System.nanoTime();
    if (terminal && (done == steps || now - drawnAt > REDRAW_NANOS)) {
      draw(now);
    }
  }

  @Override
  public synchronized void end() {
    if (terminal && shown > 0) {
      err.print("\r" + " ".repeat(shown) + "\r");
      err.flush();
      shown = 0;
    }
  }

  private void draw(long now) {
    String line = what + (steps > 0 ? " " + done + " of " + steps : " …");
    err.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
    err.flush();
    shown = line.length();
    drawnAt = now;
  }
}
