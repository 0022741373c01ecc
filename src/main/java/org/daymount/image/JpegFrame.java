package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.MarkerReader;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/**
 * What a JPEG's frame header (ITU-T T.81, B.2.2) says about the work of decoding it.
 *
 * @param blocks of 8 by 8 samples, of all components
 * @param scans in which the picture is told; counted for progressive ones, else 1
 */
record JpegFrame(boolean progressive, long pixels, long blocks, int scans) {
  /** What a full decoder may hold of a progressive picture, outside the Java heap. */
  private static final long MOST_COEFFICIENT_BYTES = 200_000_000;

  /** Cameras and converters make about ten; visits of blocks take some 20 ns each (measured). */
  private static final int SCANS_OF_ANY_PICTURE = 30;

  private static final long MOST_VISITS = 300_000_000;
  private static final int SAMPLES_PER_BLOCK = 64;

  /** Empty when there is no frame header. */
  static Optional<JpegFrame> read(FileBytes bytes) throws IOException {
    MarkerReader markers = new MarkerReader(bytes);
    while (markers.advance() && !markers.isScan()) {
      if (markers.isFrame()) {
        return Optional.of(read(markers));
      }
    }
    return Optional.empty();
  }

  private static JpegFrame read(MarkerReader markers) throws IOException {
    markers.u8(); // bits of a sample
    long height = markers.u16();
    long width = markers.u16();
    int components = markers.u8();
    int mostAcross = 1;
    int mostDown = 1;
    int inUnit = 0;
    for (int i = 0; i < components; i++) {
      markers.u8(); // its name
      int sampling = markers.u8();
      markers.u8(); // its table
      mostAcross = Math.max(mostAcross, sampling >> 4);
      mostDown = Math.max(mostDown, sampling & 15);
      inUnit += (sampling >> 4) * (sampling & 15);
    }
    long units = ceil(width, 8L * mostAcross) * ceil(height, 8L * mostDown);
    boolean progressive = markers.marker() == MarkerReader.PROGRESSIVE;
    int scans = progressive ? scans(markers) : 1;
    return new JpegFrame(progressive, width * height, units * inUnit, scans);
  }

  private static int scans(MarkerReader markers) throws IOException {
    int scans = 0;
    try {
      while (markers.advance()) {
        scans += markers.isScan() ? 1 : 0;
      }
    } catch (EOFException e) {
      return scans; // the decoder will say that it is cut off
    }
    return scans;
  }

  private static long ceil(long value, long unit) {
    return (value + unit - 1) / unit;
  }

  /** 2 bytes a sample, of the whole picture, which a full decoder holds until the last scan. */
  long coefficientBytes() {
    return progressive ? blocks * SAMPLES_PER_BLOCK * 2 : 0;
  }

  boolean isTooLargeForAFullDecoder() {
    return coefficientBytes() > MOST_COEFFICIENT_BYTES;
  }

  /**
   * Each scan goes over the whole picture, even if it says nothing in a few bytes.
   *
   * @throws UnusablePicture UNREADABLE
   */
  void refuseEndlessScans() throws UnusablePicture {
    if (scans > SCANS_OF_ANY_PICTURE && scans * blocks > MOST_VISITS) {
      throw new UnusablePicture(
          Problem.Kind.UNREADABLE,
          "is told in "
              + scans
              + " scans, far more than a picture needs; open it in a viewer and save it as JPEG");
    }
  }

  /**
   * @throws UnusablePicture TOO_LARGE
   */
  void refuseIfTooLargeForAFullDecoder() throws UnusablePicture {
    if (isTooLargeForAFullDecoder()) {
      throw new UnusablePicture(
          Problem.Kind.TOO_LARGE,
          String.format(
              Locale.ROOT,
              "is a progressive JPEG of %d million pixels, of a kind that takes %d MB to decode;"
                  + " save it as a plain (not progressive) JPEG, or smaller",
              pixels / 1_000_000,
              coefficientBytes() / 1_000_000));
    }
  }
}
