package org.daymount.image;

/** Coded samples of one pixel to red, green and blue. */
interface SampleConversion {
  int BT2020 = 9; // primaries, and matrix with constant coefficients: ITU-T H.273, tables 2 and 4

  int PARTS = 16; // of a step of a colour difference, where it was blended of several

  /** 0xRRGGBB in 8 bits. */
  int rgb(int y, int cb, int cr);

  /** The same of colour differences in sixteenths of their steps. */
  default int blended(int y, int cb, int cr) {
    return rgb(y, cb + PARTS / 2 >> 4, cr + PARTS / 2 >> 4);
  }

  /**
   * @param bits of each sample, 8 to 12
   */
  static SampleConversion of(Cicp colour, int bits) {
    return WideToSrgb.isNeeded(colour)
        ? new WideToSrgb(colour, bits)
        : new YccToRgb(colour.matrix(), colour.fullRange(), bits);
  }
}
