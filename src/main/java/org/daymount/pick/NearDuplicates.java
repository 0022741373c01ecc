package org.daymount.pick;

import org.daymount.look.Fingerprint;

/**
 * When two fingerprints are taken for the same picture. Thresholds found on simulated bursts and on
 * all pairs of 128 unrelated photographs; {@code mvn -Pevaluate} prints the rates.
 */
final class NearDuplicates {
  private static final int BITS_AT_ONCE = 40; // of 128
  private static final double COLOURS_AT_ONCE = 0.10;
  private static final int BITS_ANY_TIME = 24;
  private static final double COLOURS_ANY_TIME = 0.06;

  private NearDuplicates() {}

  /** For pictures taken within seconds of each other. */
  static boolean atOnce(Fingerprint a, Fingerprint b) {
    return a.bitsApart(b) <= BITS_AT_ONCE && a.coloursApart(b) <= COLOURS_AT_ONCE;
  }

  /** For pictures taken whenever. */
  static boolean anyTime(Fingerprint a, Fingerprint b) {
    return a.bitsApart(b) <= BITS_ANY_TIME && a.coloursApart(b) <= COLOURS_ANY_TIME;
  }
}
