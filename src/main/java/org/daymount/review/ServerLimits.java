package org.daymount.review;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * How much a stranger's connection may take. The JDK's server takes its limits from properties
 * (module jdk.httpserver, "System properties used by the HTTP server API") and reads them once,
 * when its first server is made.
 */
final class ServerLimits {
  /** Seconds to send a whole request; without it a connection that never ends one stays. */
  static final int LONGEST_REQUEST = 10;

  /**
   * Bytes of a refused body that are still taken in, so that whoever sends it is told why: a
   * connection closed under its sender loses the answer.
   */
  private static final int DRAINED = 1 << 20;

  /** A browser opens six connections a tab; a progress display holds one. */
  private static final int MOST_AT_ONCE = 100;

  private static final long IDLE = 60; // s until a thread ends

  private ServerLimits() {}

  /** Before the first server is made. */
  static void set() {
    System.setProperty("sun.net.httpserver.maxReqTime", Integer.toString(LONGEST_REQUEST));
    System.setProperty("sun.net.httpserver.drainAmount", Integer.toString(DRAINED));
    // Small answers at once: without it each waits for the browser's acknowledgement (40 ms).
    System.setProperty("sun.net.httpserver.nodelay", "true");
  }

  /** Beyond {@value #MOST_AT_ONCE} requests at once a connection is closed unanswered. */
  static ExecutorService workers() {
    return new ThreadPoolExecutor(
        0,
        MOST_AT_ONCE,
        IDLE,
        TimeUnit.SECONDS,
        new SynchronousQueue<>(),
        task -> {
          Thread thread = new Thread(task, "review");
          thread.setDaemon(true);
          return thread;
        });
  }
}
