package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class TicketsTest {
  private final AtomicLong now = new AtomicLong(Long.MAX_VALUE - 5); // nanoTime may overflow
  private final Tickets tickets = new Tickets(now::get);

  @Test
  void aTicketLetsInOnce() {
    String one = tickets.issue();
    String two = tickets.issue();
    assertNotEquals(one, two);
    assertTrue(tickets.take(one));
    assertFalse(tickets.take(one), "a second time");
    assertTrue(tickets.take(two), "the other is still good");
  }

  @Test
  void whatWasNotIssuedLetsNobodyIn() {
    String one = tickets.issue();
    for (String other : new String[] {"", one.substring(1), one + "0", one.toUpperCase() + " "}) {
      assertFalse(tickets.take(other), other);
    }
  }

  @Test
  void aTicketThatLayAboutForTenMinutesIsWorthNothing() {
    String one = tickets.issue();
    now.addAndGet(600_000_000_000L);
    assertFalse(tickets.take(one));
  }
}
