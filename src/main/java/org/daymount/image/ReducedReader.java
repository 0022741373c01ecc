package org.daymount.image;

import com.twelvemonkeys.imageio.color.ColorProfiles;
import com.twelvemonkeys.imageio.color.ColorSpaces;
import java.awt.Transparency;
import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.JpegRefused;
import org.daymount.image.jpeg.ReducedJpeg;
import org.daymount.image.jpeg.Reduction;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * JPEG pictures, or parts of them, decoded at a half, a quarter or an eighth, which costs a
 * fraction of decoding them in full. Very large progressive ones are decoded here at their size
 * too, because full decoders hold 3 to 6 bytes for each of their pixels. Whatever it does not read,
 * or finds odd, is left to {@link RegionReader}.
 */
final class ReducedReader {
  /** Of a print: what is left of the picture has at least twice its pixels, each way. */
  static final int FOR_PRINTING = 2;

  /** Of a picture to be looked at: what is left has its pixels. */
  static final int FOR_LOOKING = 1;

  private static final long MOST_COEFFICIENT_BYTES = 60_000_000; // of one strip

  private ReducedReader() {}

  /**
   * @param pixels in the picture's own colour space, as stored
   * @param area what they show, in stored pixels
   * @param reduction stored pixels for each of these, along both sides
   * @param isKnownSound whether all of the file was read, and is in order
   */
  record Reduced(
      BufferedImage pixels, PixelBox area, int reduction, boolean isCutOff, boolean isKnownSound) {

    /** Whether these pixels are what a filter would only copy. */
    boolean isAlready(PixelBox window, PixelSize target) {
      return area.equals(window)
          && target.equals(new PixelSize(pixels.getWidth(), pixels.getHeight()))
          && window.width() == target.width() * reduction
          && window.height() == target.height() * reduction;
    }

    /** The last pixel may stand for fewer stored ones, so a window may end inside of it. */
    LanczosTaps across(PixelBox window, int target) {
      return new LanczosTaps(
          pixels.getWidth(),
          (window.x() - area.x()) / (double) reduction,
          window.width() / (double) reduction,
          target);
    }

    LanczosTaps down(PixelBox window, int target) {
      return new LanczosTaps(
          pixels.getHeight(),
          (window.y() - area.y()) / (double) reduction,
          window.height() / (double) reduction,
          target);
    }
  }

  /**
   * The whole picture.
   *
   * @param stored the size the file's header gave
   * @return the smallest version that has {@code longEdge} pixels or more; empty when there is none
   *     or it cannot be made here
   */
  static Optional<Reduced> read(Path file, PixelSize stored, int longEdge) throws IOException {
    Optional<Reduction> reduction = Reduction.leaving(longEdge, stored);
    return reduction.isEmpty()
        ? Optional.empty()
        : read(file, stored, stored.whole(), reduction.get());
  }

  /**
   * The whole picture in two sizes from one reading.
   *
   * @param smaller pixels of its long edge at least, as of {@link #read(Path, PixelSize, int)}
   * @param larger the same of the other
   * @return the smaller first; empty when the smaller is not an eighth or the larger is one too,
   *     and when they cannot be made here
   */
  static Optional<List<Reduced>> readBoth(Path file, PixelSize stored, int smaller, int larger)
      throws IOException {
    Optional<Reduction> reduction = Reduction.leaving(larger, stored);
    if (reduction.isEmpty()
        || reduction.get() == Reduction.EIGHTH
        || !Reduction.leaving(smaller, stored).equals(Optional.of(Reduction.EIGHTH))) {
      return Optional.empty();
    }
    return MemoryBudget.with(
        need(file, stored.whole(), reduction.get()),
        () -> decodeBoth(file, stored, reduction.get()));
  }

  private static Optional<List<Reduced>> decodeBoth(
      Path file, PixelSize stored, Reduction reduction) throws IOException {
    try {
      List<ReducedJpeg> both = ReducedJpeg.decodeWithEighth(file, reduction);
      Optional<Reduced> larger = reduced(both.get(0), stored, reduction);
      Optional<Reduced> smaller = reduced(both.get(1), stored, Reduction.EIGHTH);
      return larger.flatMap(one -> smaller.map(other -> List.of(other, one)));
    } catch (JpegRefused | CMMException | IllegalArgumentException e) {
      return Optional.empty(); // the last two: a profile that is none
    }
  }

  /**
   * A window of it, and what a filter needs around it.
   *
   * @param window in stored pixels
   * @param over {@link #FOR_PRINTING} or {@link #FOR_LOOKING}
   * @return the smallest version that has so many times the target's pixels each way; empty when
   *     there is none or it cannot be made here
   */
  static Optional<Reduced> read(
      Path file, PixelSize stored, PixelBox window, PixelSize target, int over) throws IOException {
    Reduction reduction = Reduction.NONE;
    for (Reduction next : Reduction.values()) {
      int least = over * next.factor();
      if (window.width() >= (long) least * target.width()
          && window.height() >= (long) least * target.height()) {
        reduction = next;
      }
    }
    if (reduction == Reduction.NONE && !isBetterReadHere(file)) {
      return Optional.empty();
    }
    int across = Lanczos.reach(window.width() / (double) target.width());
    int down = Lanczos.reach(window.height() / (double) target.height());
    return read(file, stored, window.grown(across, down, across, down).within(stored), reduction);
  }

  /** At its full size: progressive ones take the full decoder twice as long. */
  private static boolean isBetterReadHere(Path file) throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      return JpegFrame.read(bytes)
          .map(frame -> frame.progressive() || frame.isTooLargeForAFullDecoder())
          .orElse(false);
    }
  }

  private static Optional<Reduced> read(
      Path file, PixelSize stored, PixelBox region, Reduction reduction) throws IOException {
    return MemoryBudget.with(
        need(file, region, reduction), () -> decode(file, stored, region, reduction));
  }

  /** What scans told, samples and colours. */
  private static long need(Path file, PixelBox region, Reduction reduction) throws IOException {
    long factor = reduction.factor();
    long pixels = region.area() / (factor * factor);
    try (FileBytes bytes = FileBytes.open(file)) {
      Optional<JpegFrame> frame = JpegFrame.read(bytes);
      if (frame.isPresent()) {
        frame.get().refuseEndlessScans();
      }
      long told =
          frame.isPresent() && frame.get().progressive()
              ? Math.min(MOST_COEFFICIENT_BYTES, 3 * region.area()) + 8 * frame.get().blocks()
              : 0;
      return 6 * pixels + told;
    }
  }

  private static Optional<Reduced> decode(
      Path file, PixelSize stored, PixelBox region, Reduction reduction) throws IOException {
    try {
      return reduced(ReducedJpeg.decode(file, reduction, region), stored, reduction);
    } catch (JpegRefused | CMMException | IllegalArgumentException e) {
      return Optional.empty(); // the last two: a profile that is none
    }
  }

  private static Optional<Reduced> reduced(
      ReducedJpeg jpeg, PixelSize stored, Reduction reduction) {
    if (!jpeg.stored().equals(stored) || jpeg.isGrey() && jpeg.profile().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new Reduced(
            picture(jpeg), jpeg.area(), reduction.factor(), jpeg.isCutOff(), jpeg.isKnownSound()));
  }

  private static BufferedImage picture(ReducedJpeg jpeg) {
    ColorSpace space =
        jpeg.profile()
            .map(profile -> (ColorSpace) ColorSpaces.createColorSpace(checked(profile)))
            .orElseGet(() -> ColorSpace.getInstance(ColorSpace.CS_sRGB));
    ComponentColorModel model =
        new ComponentColorModel(space, false, false, Transparency.OPAQUE, DataBuffer.TYPE_BYTE);
    byte[] rgb = jpeg.rgb();
    int width = jpeg.size().width();
    return new BufferedImage(
        model,
        Raster.createInterleavedRaster(
            new DataBufferByte(rgb, rgb.length),
            width,
            jpeg.size().height(),
            3 * width,
            3,
            new int[] {0, 1, 2},
            null),
        false,
        null);
  }

  private static ICC_Profile checked(byte[] bytes) {
    ICC_Profile profile = ColorProfiles.createProfile(bytes);
    if (profile.getNumComponents() != 3 || profile.getColorSpaceType() != ColorSpace.TYPE_RGB) {
      throw new IllegalArgumentException("a profile for other colours than the picture has");
    }
    return profile;
  }
}
