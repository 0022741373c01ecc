package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Locale;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Upright pictures out of files of any format that {@link RegionReader} decodes in full. */
final class RegionSource {
  private RegionSource() {}

  /**
   * @param window upright pixels
   * @throws UnusablePicture CUT_OFF when the file ends before the picture does
   */
  static BufferedImage upright(Photo photo, PixelBox window, PixelSize target) throws IOException {
    ExifOrientation orientation = photo.orientation();
    PixelSize stored = orientation.stored(photo.size());
    PixelBox storedWindow = ExifRotator.toStored(window, photo.size(), orientation);
    DecodeRegion plan = DecodeRegion.of(stored, storedWindow, orientation.stored(target));
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

  /** The fact and the next step. */
  static String cutOff(Photo photo) {
    return String.format(
        Locale.ROOT,
        "is cut off: its picture data end too early, after %.1f MB; copy it again from the phone",
        photo.bytes() / 1e6);
  }
}
