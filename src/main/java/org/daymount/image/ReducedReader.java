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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.daymount.image.jpeg.JpegRefused;
import org.daymount.image.jpeg.ReducedJpeg;
import org.daymount.image.jpeg.Reduction;
import org.daymount.unit.PixelSize;

/**
 * Whole JPEG pictures decoded at a half, a quarter or an eighth, which costs a fraction of decoding
 * them in full. Whatever it does not read, or finds odd, is left to {@link RegionReader}.
 */
final class ReducedReader {
  /** The file is held in memory while it is decoded. */
  private static final long MOST_BYTES = 1 << 27;

  private ReducedReader() {}

  /**
   * @param pixels in the picture's own colour space, as stored
   * @param reduction stored pixels for each of these, along both sides
   */
  record Reduced(BufferedImage pixels, int reduction, boolean isCutOff) {}

  /**
   * @param stored the size the file's header gave
   * @return the smallest version that has {@code longEdge} pixels or more; empty when there is none
   *     or it cannot be made here
   */
  static Optional<Reduced> read(Path file, PixelSize stored, int longEdge) throws IOException {
    Optional<Reduction> reduction = Reduction.leaving(longEdge, stored);
    if (reduction.isEmpty() || Files.size(file) > MOST_BYTES) {
      return Optional.empty();
    }
    try {
      ReducedJpeg jpeg = ReducedJpeg.decode(Files.readAllBytes(file), reduction.get());
      if (!jpeg.stored().equals(stored) || jpeg.isGrey() && jpeg.profile().isPresent()) {
        return Optional.empty();
      }
      int factor = reduction.get().factor();
      return Optional.of(new Reduced(picture(jpeg), factor, jpeg.isCutOff()));
    } catch (JpegRefused | CMMException | IllegalArgumentException e) {
      return Optional.empty(); // the last two: a profile that is none
    }
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
