package org.daymount.benchmark;

/**
 * One program, or part of ours, and what it is let loose on.
 *
 * @param script shell words; $1 is the folder of the JPEG files, $2 our class path, $3 a folder for
 *     what is made, $4 the folder of the HEIC files
 */
record Contender(String name, Input input, String script) {
  /** Only costs on the same files are compared, with those of a decoder that everybody knows. */
  enum Input {
    JPEG("djpeg -scale 1/8 -grayscale"),
    HEIC("HEIC vipsthumbnail --size 1000"),
    ALL("vipsthumbnail --size 1000"),
    NOTHING("");

    private final String reference;

    Input(String reference) {
      this.reference = reference;
    }

    /** The name of the contender that is 1. */
    String reference() {
      return reference;
    }

    int files(int jpegs, int heics) {
      return switch (this) {
        case JPEG -> jpegs;
        case HEIC -> heics;
        case ALL -> jpegs + heics;
        case NOTHING -> 0;
      };
    }
  }
}
