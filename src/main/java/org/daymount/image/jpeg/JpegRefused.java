package org.daymount.image.jpeg;

import java.io.IOException;

/**
 * The reduced decoder does not read this file: it is of a kind it leaves to others, or damaged. A
 * full decoder has the last word.
 */
public sealed class JpegRefused extends IOException permits JpegDamaged {
  private static final long serialVersionUID = 1L;

  JpegRefused(String why) {
    super(why);
  }
}
