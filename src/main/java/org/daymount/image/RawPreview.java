package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.JpegRefused;
import org.daymount.image.jpeg.MarkerReader;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * The finished JPEG that cameras put into a raw file beside the sensor's own data, which is not
 * developed here. The largest one is the picture, if it is large enough for a print.
 *
 * @param from where it begins in the file
 * @param size as stored
 */
record RawPreview(long from, int length, PixelSize size) {
  /** 6 inches at 200 ppi: the least that is printed at the album's usual size by default. */
  static final int LEAST_LONG_EDGE = 1200;

  private static final int MOST_BYTES = 1 << 27;
  private static final String NEXT_STEP = "; save a JPEG copy of it beside it";

  /**
   * @throws UnusablePicture NOT_YET_READABLE when there is none of that size
   */
  static RawPreview find(FileBytes bytes) throws IOException {
    RawPreview best = null;
    if (TiffDirectory.begins(bytes)) {
      for (TiffDirectory directory : TiffDirectory.all(bytes)) {
        best =
            larger(best, at(bytes, directory, TiffDirectory.JPEG_OFFSET, TiffDirectory.JPEG_BYTES));
        if (directory.count(TiffDirectory.STRIP_OFFSETS) == 1) {
          best =
              larger(
                  best,
                  at(bytes, directory, TiffDirectory.STRIP_OFFSETS, TiffDirectory.STRIP_BYTES));
        }
      }
    }
    if (best == null) {
      throw notReadable("is a raw file without a preview that can be read");
    }
    if (best.size.longEdge() < LEAST_LONG_EDGE) {
      throw notReadable("is a raw file whose preview has only " + best.size + " pixels");
    }
    return best;
  }

  private static UnusablePicture notReadable(String fact) {
    return new UnusablePicture(Problem.Kind.NOT_YET_READABLE, fact + NEXT_STEP);
  }

  private static RawPreview larger(RawPreview one, RawPreview other) {
    return one == null || (other != null && other.size.area() > one.size.area()) ? other : one;
  }

  /** Null where no JPEG stands that every decoder reads. */
  private static RawPreview at(
      FileBytes bytes, TiffDirectory directory, int offsetTag, int lengthTag) throws IOException {
    long from = directory.first(offsetTag, 0);
    long length = directory.first(lengthTag, 0);
    if (from <= 0 || length <= 0 || length > MOST_BYTES || from > bytes.size() - length) {
      return null;
    }
    FileBytes part = bytes.part(from, length);
    if (!part.has(0, 0xff, 0xd8, 0xff) || !isPlain(part)) {
      return null;
    }
    StoredSize size = HeaderSizes.jpeg(part);
    return size.width() == 0 || size.height() == 0
        ? null
        : new RawPreview(from, (int) length, size.checked());
  }

  /** The sensor's own data may be JPEG too, but lossless (SOF3). */
  private static boolean isPlain(FileBytes jpeg) throws IOException {
    try {
      MarkerReader markers = new MarkerReader(jpeg);
      while (markers.advance() && !markers.isScan()) {
        if (markers.isFrame()) {
          return markers.marker() <= MarkerReader.PROGRESSIVE;
        }
      }
    } catch (EOFException | JpegRefused e) {
      return false;
    }
    return false;
  }
}
