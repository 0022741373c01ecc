package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Optional;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Decoded pictures: always upright, always sRGB (IEC 61966-2-1), always TYPE_INT_RGB; what is
 * transparent lies on white. Stateless and safe for several threads. A file is only ever read.
 *
 * <p>The orientation (EXIF, or HEIF's own) is applied here and nowhere else, once: the window is
 * turned to where it lies in the stored picture, that region is decoded and resampled as stored,
 * and the small result is turned upright. Memory follows the window and the target (see {@link
 * DecodeRegion}), not the file.
 *
 * <p>A file that ends early is noticed where the decoder says so. The WebP decoder does not: its
 * files have to be compared with the length in their header before they come here.
 */
public final class Pictures {
  /**
   * Whether HEIC and AVIF can be read with what this program brings: the part for this computer's
   * system is in it, and loads. Unpacks it when asked for the first time.
   */
  public static boolean bringsHeif() {
    return TileDecoder.isAvailable();
  }

  /** What turns a file into an upright picture, or stumbles over it. */
  @FunctionalInterface
  private interface Decoding<T> {
    T run() throws IOException;
  }

  /**
   * A picture, and whether its file is in order.
   *
   * @param damage the fact, as the end of "is damaged: "; empty when nothing is wrong
   */
  public record Examined(BufferedImage picture, Optional<String> damage) {}

  /**
   * The whole picture with a long edge of at most {@code longEdge} pixels; never enlarged. For
   * looking at, not for printing: a JPEG much larger than that is decoded at a half, a quarter or
   * an eighth, where each pixel is the mean of those it stands for, and filtered from there.
   *
   * @return of the size {@code photo.size().within(longEdge)}
   */
  public BufferedImage whole(Photo photo, int longEdge) throws UnusablePicture {
    PixelSize target = photo.size().within(longEdge);
    return decoded(
        photo,
        () -> {
          Optional<BufferedImage> reduced = JpegSource.whole(photo, target);
          if (reduced.isPresent()) {
            return reduced.get();
          }
          if (photo.format() == PhotoFormat.CLIP) {
            return ClipFrameReader.whole(photo, target);
          }
          return isHeif(photo)
              ? HeifSource.shown(photo, target)
              : anyFormat(photo, photo.size().whole(), target);
        });
  }

  /**
   * The whole picture as it is quickest to have, for measuring, and whether all of its coded data
   * are in order (JPEG, and the JPEG in a raw file; what is wrong with another format's data is
   * thrown by its decoder). The picture is at least {@code longEdge} pixels long, or as long as it
   * is. A JPEG comes as it was decoded at a half, a quarter or an eighth and may be nearly twice as
   * long (eight times, where it is not larger than that); anything else comes like {@link #whole}.
   */
  public Examined examined(Photo photo, int longEdge) throws UnusablePicture {
    PixelSize target = photo.size().within(longEdge);
    return decoded(
        photo,
        () -> {
          if (photo.format() == PhotoFormat.CLIP) {
            return new Examined(ClipFrameReader.examined(photo, longEdge), Optional.empty());
          }
          Optional<Examined> reduced = JpegSource.examined(photo, target);
          return reduced.isPresent()
              ? reduced.get()
              : new Examined(anyFormat(photo, photo.size().whole(), target), JpegDamage.in(photo));
        });
  }

  /**
   * What {@link #examined} and {@link #whole} give.
   *
   * @param closer as {@link #whole}
   */
  public record Both(Examined examined, BufferedImage closer) {}

  /**
   * As {@link #examined} and {@link #whole}, the file read only once where one reading gives both.
   *
   * @param closerEdge the larger of the two
   */
  public Both both(Photo photo, int longEdge, int closerEdge) throws UnusablePicture {
    Optional<Both> both =
        decoded(
            photo,
            () ->
                JpegSource.both(
                    photo, photo.size().within(longEdge), photo.size().within(closerEdge)));
    return both.isPresent()
        ? both.get()
        : new Both(examined(photo, longEdge), whole(photo, closerEdge));
  }

  /**
   * Part of the picture, resampled with Lanczos-3 to exactly {@code target} pixels. The window's
   * edges fall on the target's edges. Pixels beside the window take part in the filter, so that two
   * windows that meet give pictures that meet. Of a JPEG with more than four times the target's
   * pixels each way only the means of 2, 4 or 8 pixels are decoded, at least two for each of the
   * target's.
   *
   * @param window upright pixels of the whole photo, inside it
   * @throws IllegalArgumentException when the window reaches beyond the photo
   * @throws UnusablePicture with kind CUT_OFF, UNREADABLE or NOT_YET_READABLE
   */
  public BufferedImage part(Photo photo, PixelBox window, PixelSize target) throws UnusablePicture {
    return part(photo, window, target, ReducedReader.FOR_PRINTING);
  }

  /**
   * As {@link #part}, for looking at, not for printing: of a larger JPEG the means are decoded that
   * leave at least one for each of the target's pixels.
   */
  public BufferedImage glimpse(Photo photo, PixelBox window, PixelSize target)
      throws UnusablePicture {
    return part(photo, window, target, ReducedReader.FOR_LOOKING);
  }

  private static BufferedImage part(Photo photo, PixelBox window, PixelSize target, int over)
      throws UnusablePicture {
    if (!photo.size().whole().contains(window)) {
      throw new IllegalArgumentException(window + " is not inside a picture of " + photo.size());
    }
    return decoded(
        photo,
        () -> {
          Optional<BufferedImage> reduced = JpegSource.part(photo, window, target, over);
          return reduced.isPresent() ? reduced.get() : anyFormat(photo, window, target);
        });
  }

  private static <T> T decoded(Photo photo, Decoding<T> decoding) throws UnusablePicture {
    try {
      return decoding.run();
    } catch (UnusablePicture e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      if (endedEarly(e)) {
        throw because(Problem.Kind.CUT_OFF, RegionSource.cutOff(photo), e);
      }
      throw because(
          Problem.Kind.UNREADABLE,
          "cannot be decoded (" + reason(e) + "); open it in a viewer, or copy it again",
          e);
    } catch (OutOfMemoryError e) {
      throw because(
          Problem.Kind.UNREADABLE,
          "needs more memory than there is to decode "
              + photo.size()
              + " pixels; save a smaller copy, or give the program more memory (java -Xmx)",
          e);
    }
  }

  private static BufferedImage anyFormat(Photo photo, PixelBox window, PixelSize target)
      throws IOException {
    if (photo.format() == PhotoFormat.CLIP) {
      return ClipFrameReader.part(photo, window, target);
    }
    return isHeif(photo)
        ? HeifSource.upright(photo, window, target)
        : RegionSource.upright(photo, window, target);
  }

  private static boolean isHeif(Photo photo) {
    return photo.format() == PhotoFormat.HEIF || photo.format() == PhotoFormat.AVIF;
  }

  private static boolean endedEarly(Throwable e) {
    return e != null && (e instanceof EOFException || endedEarly(e.getCause()));
  }

  /** Without the way to the file, which would be shown and kept. */
  private static String reason(Throwable e) {
    if (e instanceof NoSuchFileException) {
      return "it is no longer there";
    }
    if (e instanceof FileSystemException refused) {
      return refused.getReason() == null ? "it may not be read" : refused.getReason();
    }
    String said = e.getMessage();
    return said == null || said.isBlank() ? e.getClass().getSimpleName() : said.strip();
  }

  private static UnusablePicture because(Problem.Kind kind, String message, Throwable cause) {
    UnusablePicture unusable = new UnusablePicture(kind, message);
    unusable.initCause(cause);
    return unusable;
  }
}
