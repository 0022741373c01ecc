package org.daymount.image;

import java.io.IOException;
import java.util.concurrent.Semaphore;

/**
 * Lets pictures be decoded at the same time only as far as half of the memory goes; one that needs
 * more is decoded alone. What else is held (the small results, the program) has the other half.
 */
final class MemoryBudget {
  private static final int MEGABYTE = 1 << 20;

  /**
   * Half of what the ready program is given; Java alone allows itself a quarter of the machine's.
   */
  private static final int MOST = 256;

  private static final int ALL =
      (int) Math.max(1, Math.min(MOST, Runtime.getRuntime().maxMemory() / 2 / MEGABYTE));

  /** In order of arrival, so that a large one gets its turn. */
  private static final Semaphore MEGABYTES = new Semaphore(ALL, true);

  private MemoryBudget() {}

  /** Something that takes memory while it runs. */
  @FunctionalInterface
  interface Work<T> {
    T run() throws IOException;
  }

  /**
   * @param bytes an estimate of what the work takes; its result may outlive it
   */
  static <T> T with(long bytes, Work<T> work) throws IOException {
    int share = (int) Math.max(1, Math.min(ALL, bytes / MEGABYTE));
    MEGABYTES.acquireUninterruptibly(share);
    try {
      Leftovers.makeRoomFor(bytes);
      return work.run();
    } finally {
      MEGABYTES.release(share);
      Leftovers.add(bytes);
    }
  }
}
