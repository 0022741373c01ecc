package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.EOFException;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
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
          Optional<BufferedImage> reduced = reduced(photo, target);
          if (reduced.isPresent()) {
            return reduced.get();
          }
          if (photo.format() == PhotoFormat.CLIP) {
            return ClipFrameReader.whole(photo, target);
          }
          return isHeif(photo) && TileReaders.isAvailable()
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
          Optional<ReducedReader.Reduced> read = reducedStored(photo, target);
          return read.isPresent()
              ? examined(photo, read.get())
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
    PixelSize target = photo.size().within(closerEdge);
    Optional<Both> both =
        decoded(
            photo,
            () -> {
              Optional<List<ReducedReader.Reduced>> read =
                  bothStored(photo, photo.size().within(longEdge), target);
              if (read.isEmpty()) {
                return Optional.empty();
              }
              PixelBox stored = photo.orientation().stored(photo.size()).whole();
              return Optional.of(
                  new Both(
                      examined(photo, read.get().get(0)),
                      upright(read.get().get(1), stored, target, photo.orientation())));
            });
    return both.isPresent()
        ? both.get()
        : new Both(examined(photo, longEdge), whole(photo, closerEdge));
  }

  private static Optional<List<ReducedReader.Reduced>> bothStored(
      Photo photo, PixelSize smaller, PixelSize larger) throws IOException {
    if (photo.format() != PhotoFormat.JPEG) {
      return Optional.empty();
    }
    Optional<List<ReducedReader.Reduced>> read =
        ReducedReader.readBoth(
            photo.file().path(),
            photo.orientation().stored(photo.size()),
            smaller.longEdge(),
            larger.longEdge());
    notCutOff(photo, read.map(both -> both.get(0)));
    return read;
  }

  private static Examined examined(Photo photo, ReducedReader.Reduced read) throws IOException {
    return new Examined(
        asDecoded(read, photo.orientation()),
        read.isKnownSound() ? Optional.empty() : JpegDamage.in(photo));
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
          Optional<BufferedImage> reduced = reduced(photo, window, target, over);
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
        throw because(Problem.Kind.CUT_OFF, cutOff(photo), e);
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
    return isHeif(photo) ? heif(photo, window, target) : upright(photo, window, target);
  }

  private static boolean isHeif(Photo photo) {
    return photo.format() == PhotoFormat.HEIF || photo.format() == PhotoFormat.AVIF;
  }

  /** With the decoder that comes along; where it does not load, with a converter's picture. */
  private static BufferedImage heif(Photo photo, PixelBox window, PixelSize target)
      throws IOException {
    if (TileReaders.isAvailable()) {
      return HeifSource.upright(photo, window, target);
    }
    try (HeifConverter.Converted converted = HeifConverter.convert(photo)) {
      return upright(converted.photo(), window, target);
    }
  }

  private static Optional<ReducedReader.Reduced> reducedStored(Photo photo, PixelSize target)
      throws IOException {
    if (photo.format() != PhotoFormat.JPEG) {
      return Optional.empty();
    }
    PixelSize stored = photo.orientation().stored(photo.size());
    return notCutOff(photo, ReducedReader.read(photo.file().path(), stored, target.longEdge()));
  }

  private static Optional<BufferedImage> reduced(Photo photo, PixelSize target) throws IOException {
    PixelSize stored = photo.orientation().stored(photo.size());
    return reducedStored(photo, target)
        .map(read -> upright(read, stored.whole(), target, photo.orientation()));
  }

  private static Optional<BufferedImage> reduced(
      Photo photo, PixelBox window, PixelSize target, int over) throws IOException {
    if (photo.format() != PhotoFormat.JPEG) {
      return Optional.empty();
    }
    ExifOrientation orientation = photo.orientation();
    PixelSize stored = orientation.stored(photo.size());
    PixelBox storedWindow = ExifRotator.toStored(window, photo.size(), orientation);
    return notCutOff(
            photo,
            ReducedReader.read(
                photo.file().path(), stored, storedWindow, orientation.stored(target), over))
        .map(read -> upright(read, storedWindow, target, orientation));
  }

  private static Optional<ReducedReader.Reduced> notCutOff(
      Photo photo, Optional<ReducedReader.Reduced> read) throws UnusablePicture {
    if (read.isPresent() && read.get().isCutOff()) {
      throw new UnusablePicture(Problem.Kind.CUT_OFF, cutOff(photo));
    }
    return read;
  }

  private static BufferedImage asDecoded(
      ReducedReader.Reduced reduced, ExifOrientation orientation) {
    return ExifRotator.turned(new SrgbRows(reduced.pixels()).all(), orientation);
  }

  private static BufferedImage upright(
      ReducedReader.Reduced reduced,
      PixelBox storedWindow,
      PixelSize target,
      ExifOrientation orientation) {
    PixelSize storedTarget = orientation.stored(target);
    if (reduced.isAlready(storedWindow, storedTarget)) {
      return asDecoded(reduced, orientation);
    }
    BufferedImage resampled =
        Lanczos.resample(
            new SrgbRows(reduced.pixels()),
            reduced.across(storedWindow, storedTarget.width()),
            reduced.down(storedWindow, storedTarget.height()));
    return ExifRotator.turned(resampled, orientation);
  }

  private static BufferedImage upright(Photo photo, PixelBox window, PixelSize target)
      throws IOException {
    ExifOrientation orientation = photo.orientation();
    PixelSize stored = orientation.stored(photo.size());
    PixelBox storedWindow = ExifRotator.toStored(window, photo.size(), orientation);
    PixelSize storedTarget = orientation.stored(target);
    DecodeRegion plan = DecodeRegion.of(stored, storedWindow, storedTarget);
    RegionReader.Region region =
        RegionReader.read(photo.file().path(), photo.format(), stored, plan);
    if (region.isCutOff()) {
      throw new UnusablePicture(Problem.Kind.CUT_OFF, cutOff(photo));
    }
    return upright(region.pixels(), plan, orientation);
  }

  /** From the decoded region to the target's size, colours and direction. */
  static BufferedImage upright(
      BufferedImage region, DecodeRegion plan, ExifOrientation orientation) {
    BufferedImage resampled =
        Lanczos.resample(
            new SrgbRows(region), plan.across(region.getWidth()), plan.down(region.getHeight()));
    return ExifRotator.turned(resampled, orientation);
  }

  private static String cutOff(Photo photo) {
    return String.format(
        Locale.ROOT,
        "is cut off: its picture data end too early, after %.1f MB; copy it again from the phone",
        photo.bytes() / 1e6);
  }

  private static boolean endedEarly(Throwable e) {
    return e != null && (e instanceof EOFException || endedEarly(e.getCause()));
  }

  private static String reason(Throwable e) {
    String said = e.getMessage();
    return said == null || said.isBlank() ? e.getClass().getSimpleName() : said.strip();
  }

  private static UnusablePicture because(Problem.Kind kind, String message, Throwable cause) {
    UnusablePicture unusable = new UnusablePicture(kind, message);
    unusable.initCause(cause);
    return unusable;
  }
}
