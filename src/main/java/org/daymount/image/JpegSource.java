package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Upright pictures out of JPEG files that were decoded at a half, a quarter or an eighth. Empty for
 * other formats, and where only a full decoder will do.
 */
final class JpegSource {
  private JpegSource() {}

  static Optional<BufferedImage> whole(Photo photo, PixelSize target) throws IOException {
    PixelSize stored = photo.orientation().stored(photo.size());
    return read(photo, target)
        .map(read -> upright(read, stored.whole(), target, photo.orientation()));
  }

  /**
   * @param over pixels of what is decoded for each of the target's, at least, each way
   */
  static Optional<BufferedImage> part(Photo photo, PixelBox window, PixelSize target, int over)
      throws IOException {
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

  /** As it was decoded, at least as long as the target. */
  static Optional<Pictures.Examined> examined(Photo photo, PixelSize target) throws IOException {
    Optional<ReducedReader.Reduced> read = read(photo, target);
    return read.isPresent() ? Optional.of(examined(photo, read.get())) : Optional.empty();
  }

  /** {@link #examined} of the smaller and {@link #whole} of the larger, from one reading. */
  static Optional<Pictures.Both> both(Photo photo, PixelSize smaller, PixelSize larger)
      throws IOException {
    if (photo.format() != PhotoFormat.JPEG) {
      return Optional.empty();
    }
    PixelSize stored = photo.orientation().stored(photo.size());
    Optional<List<ReducedReader.Reduced>> read =
        ReducedReader.readBoth(photo.file().path(), stored, smaller.longEdge(), larger.longEdge());
    if (read.isEmpty()) {
      return Optional.empty();
    }
    notCutOff(photo, Optional.of(read.get().get(0)));
    return Optional.of(
        new Pictures.Both(
            examined(photo, read.get().get(0)),
            upright(read.get().get(1), stored.whole(), larger, photo.orientation())));
  }

  private static Optional<ReducedReader.Reduced> read(Photo photo, PixelSize target)
      throws IOException {
    if (photo.format() != PhotoFormat.JPEG) {
      return Optional.empty();
    }
    PixelSize stored = photo.orientation().stored(photo.size());
    return notCutOff(photo, ReducedReader.read(photo.file().path(), stored, target.longEdge()));
  }

  private static Pictures.Examined examined(Photo photo, ReducedReader.Reduced read)
      throws IOException {
    return new Pictures.Examined(
        asDecoded(read, photo.orientation()),
        read.isKnownSound() ? Optional.empty() : JpegDamage.in(photo));
  }

  private static Optional<ReducedReader.Reduced> notCutOff(
      Photo photo, Optional<ReducedReader.Reduced> read) throws UnusablePicture {
    if (read.isPresent() && read.get().isCutOff()) {
      throw new UnusablePicture(Problem.Kind.CUT_OFF, RegionSource.cutOff(photo));
    }
    return read;
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

  private static BufferedImage asDecoded(
      ReducedReader.Reduced reduced, ExifOrientation orientation) {
    return ExifRotator.turned(new SrgbRows(reduced.pixels()).all(), orientation);
  }
}
