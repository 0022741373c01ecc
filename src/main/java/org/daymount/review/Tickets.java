package org.daymount.review;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.function.LongSupplier;

/**
 * Tickets that let one browser in, once. A browser is started with an address on its command line,
 * which everybody on the computer can read as long as it runs; what stands there is a ticket, worth
 * nothing once the page has handed it in for the token, and nothing after some minutes.
 */
final class Tickets {
  private static final int BYTES = 16;
  private static final int MOST = 16; // given out and not yet handed in
  private static final long VALID = 5L * 60 * 1_000_000_000; // ns; an old computer's first browser

  private final Deque<Ticket> open = new ArrayDeque<>();
  private final LongSupplier nanos;

  private record Ticket(byte[] word, long until) {}

  /**
   * @param nanos a clock as of System.nanoTime
   */
  Tickets(LongSupplier nanos) {
    this.nanos = nanos;
  }

  /** A new one, of 32 hexadecimal digits. */
  synchronized String issue() {
    byte[] random = new byte[BYTES];
    new SecureRandom().nextBytes(random);
    String word = HexFormat.of().formatHex(random);
    while (open.size() >= MOST) {
      open.remove();
    }
    open.add(new Ticket(word.getBytes(StandardCharsets.US_ASCII), nanos.getAsLong() + VALID));
    return word;
  }

  /** Whether it was issued and is handed in for the first time, and in time. */
  synchronized boolean take(String given) {
    byte[] word = given.getBytes(StandardCharsets.UTF_8);
    for (Iterator<Ticket> all = open.iterator(); all.hasNext(); ) {
      Ticket ticket = all.next();
      if (MessageDigest.isEqual(ticket.word(), word)) {
        all.remove();
        return nanos.getAsLong() - ticket.until() < 0;
      }
    }
    return false;
  }
}
