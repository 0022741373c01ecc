package org.daymount.image;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * What the first bytes of a picture file say: its format, by those bytes and never by its name, and
 * its width and height as stored. Nothing is decoded, and no memory is taken by what a header
 * claims. Safe to share between threads.
 */
public final class PictureHeaders {
  /** Larger pictures are refused before decoding: 250 million pixels are 1 GB once decoded. */
  public static final long MOST_PIXELS = 250_000_000L;

  private static final String NEXT_STEP = "; copy it again, or open it and save it as JPEG";

  /**
   * Format and stored size.
   *
   * @throws UnusablePicture UNREADABLE when this is no picture or its header is broken, CUT_OFF
   *     when the file ends inside its header, TOO_LARGE as {@link #refuseIfTooLarge}
   */
  public PictureHeader read(Path file) throws UnusablePicture {
    try (FileBytes bytes = FileBytes.open(file)) {
      PictureHeader header = stated(bytes);
      refuseIfTooLarge(header, bytes.size());
      return header;
    } catch (UnusablePicture e) {
      throw e;
    } catch (IOException e) {
      throw cannotBeRead();
    }
  }

  /** As {@link #read}, but a size that will be refused is told too. */
  public PictureHeader stated(Path file) throws UnusablePicture {
    try (FileBytes bytes = FileBytes.open(file)) {
      return stated(bytes);
    } catch (UnusablePicture e) {
      throw e;
    } catch (IOException e) {
      throw cannotBeRead();
    }
  }

  /** The format alone; empty when the first bytes are those of no picture known here. */
  public Optional<PhotoFormat> format(Path file) throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      return Signature.format(bytes);
    }
  }

  /** Whether the first bytes are those of a film: an ISO media file that is no still picture. */
  public boolean isFilm(Path file) throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      return Signature.isFilm(bytes);
    }
  }

  /**
   * @param bytes length of the whole file
   * @throws UnusablePicture TOO_LARGE for more than {@link #MOST_PIXELS}, or for more pixels than
   *     so many bytes can hold
   */
  public void refuseIfTooLarge(PictureHeader header, long bytes) throws UnusablePicture {
    PixelSize stored = header.stored();
    if (stored.area() / (double) bytes > mostPixelsPerByte(header.format())) {
      throw new UnusablePicture(
          Problem.Kind.TOO_LARGE,
          String.format(
              Locale.ROOT,
              "claims %s pixels, far more than %s can hold; its header is damaged%s",
              stored,
              ByteCount.of(bytes),
              NEXT_STEP));
    }
    if (stored.area() > MOST_PIXELS) {
      throw new UnusablePicture(
          Problem.Kind.TOO_LARGE,
          String.format(
              Locale.ROOT,
              "is %s pixels, more than the %d million this program decodes; save a smaller copy",
              stored,
              MOST_PIXELS / 1_000_000));
    }
  }

  /**
   * The densest a plain picture packs, rounded up. JPEG: plain white and grey measured up to 255
   * (optimized and progressive); one bit a block of 64 pixels would be 512. PNG and TIFF: deflate
   * ends at 1032 bytes out of one (zlib's own technical notes, from memory), eight one-bit pixels
   * in each; GIF's longest code stands for less. Lossless WebP packs a plain picture (measured:
   * 25,500) as far as its length allows and ends at 16383 pixels a side, so that only {@link
   * #MOST_PIXELS} bounds it; so with fax-coded TIFF, which is read as TIFF here, and with the tiles
   * of HEIF.
   */
  private static long mostPixelsPerByte(PhotoFormat format) {
    return switch (format) {
      case JPEG -> 1_000;
      case PNG, GIF -> 1_032 * 8;
      case TIFF, RAW, BMP -> 100_000;
      case WEBP, HEIF, AVIF, CLIP -> MOST_PIXELS;
    };
  }

  private static PictureHeader stated(FileBytes bytes) throws IOException {
    if (bytes.size() == 0) {
      throw new UnusablePicture(Problem.Kind.UNREADABLE, "is empty; copy it again from the phone");
    }
    PhotoFormat format = Signature.format(bytes).orElseThrow(PictureHeaders::noPicture);
    try {
      if (format == PhotoFormat.HEIF || format == PhotoFormat.AVIF) {
        HeifPicture picture = HeifPicture.primary(bytes, HeifItems.read(bytes));
        return new PictureHeader(
            format,
            picture.stored(),
            picture.turnTold() ? Optional.of(picture.orientation()) : Optional.empty());
      }
      StoredSize size =
          switch (format) {
            case JPEG -> HeaderSizes.jpeg(bytes);
            case PNG -> HeaderSizes.png(bytes);
            case WEBP -> HeaderSizes.webp(bytes);
            case GIF -> GifBlocks.size(bytes);
            case BMP -> HeaderSizes.bmp(bytes);
            case TIFF -> TiffDirectory.largest(bytes);
            case RAW -> raw(bytes);
            case HEIF, AVIF -> throw new IllegalStateException("told above");
            case CLIP -> throw noPicture(); // by ClipFile
          };
      return new PictureHeader(format, size.checked());
    } catch (EOFException e) {
      throw Completeness.cutOff(bytes.size());
    }
  }

  /** Of its preview; of the sensor's own picture where there is none that can be printed. */
  private static StoredSize raw(FileBytes bytes) throws IOException {
    try {
      PixelSize preview = RawPreview.find(bytes).size();
      return new StoredSize(preview.width(), preview.height());
    } catch (UnusablePicture e) {
      return TiffDirectory.largest(bytes);
    }
  }

  private static UnusablePicture noPicture() {
    return new UnusablePicture(
        Problem.Kind.UNREADABLE, "does not begin like any picture known here" + NEXT_STEP);
  }

  private static UnusablePicture cannotBeRead() {
    return new UnusablePicture(
        Problem.Kind.UNREADABLE, "cannot be read from the disk; check that it may be opened");
  }
}
