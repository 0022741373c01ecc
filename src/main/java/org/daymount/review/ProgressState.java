package org.daymount.review;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.daymount.pipeline.Progress;

/**
 * Where a run writes how far it has come, and where pages read it. Once it has ended, later steps
 * are not shown.
 */
final class ProgressState implements Progress {
  static final String IDLE = "idle";
  static final String RUNNING = "running";
  static final String DONE = "done";
  static final String FAILED = "failed";

  private static final long HEARTBEAT = 15_000; // ms
  private static final long BETWEEN_NEWS = 100; // ms; steps may come much faster

  private State state = new State(IDLE, "", 0, 0);

  /**
   * How far it is.
   *
   * @param kind idle, running, done or failed
   * @param steps 0 when it cannot be known
   */
  record State(String kind, String words, int done, int steps) {
    boolean isRunning() {
      return kind.equals(RUNNING);
    }
  }

  /** Begins, unless it is under way already. */
  synchronized boolean begin(String words) {
    if (state.isRunning()) {
      return false;
    }
    set(new State(RUNNING, words, 0, 0));
    return true;
  }

  @Override
  public synchronized void stage(String what, int steps) {
    if (state.isRunning()) {
      set(new State(RUNNING, what, 0, steps));
    }
  }

  @Override
  public synchronized void step() {
    if (state.isRunning()) {
      set(new State(RUNNING, state.words, state.done + 1, state.steps));
    }
  }

  void done(String words) {
    set(new State(DONE, words, 0, 0));
  }

  void failed(String words) {
    set(new State(FAILED, words, 0, 0));
  }

  synchronized State now() {
    return state;
  }

  private synchronized void set(State now) {
    state = now;
    notifyAll();
  }

  /** The state, once it is another than the one seen before or some time has passed. */
  synchronized State next(State seen, long millis) throws InterruptedException {
    if (state.equals(seen)) {
      wait(millis);
    }
    return state;
  }

  /** Writes every new state as a server-sent event, the last one too. */
  void tellUntilEnd(OutputStream out) throws IOException {
    State seen = null;
    try {
      do {
        seen = next(seen, HEARTBEAT);
        out.write(("data: " + ReviewJson.text(seen) + "\n\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
        Thread.sleep(seen.isRunning() ? BETWEEN_NEWS : 0);
      } while (seen.isRunning());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
