package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.MarkerReader;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/**
 * Whether a picture file is all there. Decoders paint what is missing grey and call it a success,
 * so this looks for the end that each format promises. Safe to share between threads.
 */
public final class Completeness {

  /**
   * JPEG must reach its end marker behind at least one scan (what follows it, such as the film of a
   * motion photo, does not matter), PNG its IEND or the last of its pixels, GIF the end of its
   * first frame; a WebP file must be as long as its RIFF header says, the strips or tiles of a
   * TIFF's first picture and the pixels of a BMP must lie within the file, and so must all parts of
   * HEIF and AVIF. A raw file must have a preview to print.
   *
   * @throws UnusablePicture CUT_OFF with the bytes that are there; UNREADABLE when it cannot be
   *     read; NOT_YET_READABLE for a raw file without a preview and for CIE Lab in floats
   */
  public void check(Path file, PhotoFormat format) throws UnusablePicture {
    try (FileBytes bytes = FileBytes.open(file)) {
      try {
        if (!isWhole(bytes, format)) {
          throw cutOff(bytes.size());
        }
      } catch (EOFException e) {
        throw cutOff(bytes.size());
      }
    } catch (UnusablePicture e) {
      throw e;
    } catch (IOException e) {
      throw new UnusablePicture(
          Problem.Kind.UNREADABLE, "cannot be read from the disk; check that it may be opened");
    }
  }

  static UnusablePicture cutOff(long bytes) {
    return new UnusablePicture(
        Problem.Kind.CUT_OFF,
        "is cut off after " + ByteCount.of(bytes) + "; copy it again from the phone");
  }

  private static boolean isWhole(FileBytes bytes, PhotoFormat format) throws IOException {
    return switch (format) {
      case JPEG -> jpeg(bytes);
      case PNG -> PngPixels.areAllThere(bytes);
      case WEBP -> 8 + bytes.u32(4, false) <= bytes.size();
      case TIFF -> tiff(bytes);
      case GIF -> GifBlocks.isWhole(bytes);
      case BMP -> BmpPixels.read(bytes).areAllThere();
      case HEIF, AVIF -> HeifPicture.primary(bytes, HeifItems.read(bytes)).tiles().size() > 0;
      case CLIP -> true; // its key frames lie inside the file, or it has none
      case RAW -> RawPreview.find(bytes).length() > 0;
    };
  }

  private static boolean jpeg(FileBytes bytes) throws IOException {
    MarkerReader markers = new MarkerReader(bytes);
    boolean scanned = false;
    while (markers.advance()) {
      if (markers.isScan() && !scanned && endsBehind(markers, bytes)) {
        return true;
      }
      scanned |= markers.isScan();
    }
    return scanned;
  }

  /**
   * Whether the file's last two bytes are an end marker. In coded data 0xFF is always followed by
   * zero or a restart, so a file that was cut off there does not end like this, and the megabytes
   * between need not be searched.
   */
  private static boolean endsBehind(MarkerReader scan, FileBytes bytes) throws IOException {
    long end = bytes.size() - 2;
    return scan.position() + scan.left() <= end && bytes.has(end, 0xff, MarkerReader.END_OF_IMAGE);
  }

  private static boolean tiff(FileBytes bytes) throws IOException {
    TiffDirectory first = TiffDirectory.all(bytes).get(0);
    if (first.isLabInFloats()) {
      throw new UnusablePicture(
          Problem.Kind.NOT_YET_READABLE,
          "keeps its colours as CIE Lab in floats, which no standard defines; save it as JPEG");
    }
    return within(bytes, first, TiffDirectory.STRIP_OFFSETS, TiffDirectory.STRIP_BYTES)
        && within(bytes, first, TiffDirectory.TILE_OFFSETS, TiffDirectory.TILE_BYTES);
  }

  private static boolean within(FileBytes bytes, TiffDirectory directory, int offsets, int lengths)
      throws IOException {
    long count = Math.min(directory.count(offsets), directory.count(lengths));
    for (long i = 0; i < count; i++) {
      if (directory.value(offsets, i) + directory.value(lengths, i) > bytes.size()) {
        return false;
      }
    }
    return true;
  }
}
