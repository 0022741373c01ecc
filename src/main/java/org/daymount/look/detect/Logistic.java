package org.daymount.look.detect;

/** The logistic function: a network's score to a confidence. */
final class Logistic {
  private Logistic() {}

  static double of(double score) {
    return 1 / (1 + Math.exp(-score));
  }

  /** The score that comes to a confidence. */
  static double inverse(double confidence) {
    return Math.log(confidence / (1 - confidence));
  }
}
