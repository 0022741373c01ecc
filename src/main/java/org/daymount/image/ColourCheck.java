package org.daymount.image;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.file.FileBytes;
import org.daymount.photo.PhotoFormat;

/**
 * Whether the colours a file claims can be followed. Where they cannot, its samples are taken for
 * sRGB, and a person should know. Safe to share between threads.
 */
public final class ColourCheck {
  private static final int MOST_REMEMBERED = 64;
  private static final int PQ = 16; // ITU-T H.273, table 3
  private static final int HLG = 18;

  private final Map<ByteBuffer, Boolean> sound = new ConcurrentHashMap<>();

  /** The fact and the next step; empty when all is well, or the file says nothing of colours. */
  public Optional<String> whyIgnored(Path file, PhotoFormat format) {
    try (FileBytes bytes = FileBytes.open(file)) {
      Optional<byte[]> profile = ProfileBytes.read(bytes, file, format);
      if (profile.isPresent()) {
        return isSound(profile.get(), ProfileBytes.colours(bytes, format))
            ? Optional.empty()
            : Optional.of(
                "has a broken colour profile, which was not used; its colours are taken for sRGB:"
                    + " compare the print with the screen");
      }
      return format == PhotoFormat.HEIF || format == PhotoFormat.AVIF
          ? highRange(bytes)
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty(); // what is wrong with the file itself is said elsewhere
    }
  }

  private static Optional<String> highRange(FileBytes bytes) throws IOException {
    return HeifPicture.primary(bytes, HeifItems.read(bytes))
        .colour()
        .filter(colour -> colour.transfer() == PQ || colour.transfer() == HLG)
        .map(
            colour ->
                "is coded for HDR screens, which is not converted here, and will print pale;"
                    + " save a JPEG copy of it");
  }

  /**
   * @param colours samples of a pixel that are colours; 0 when not known
   */
  private boolean isSound(byte[] profile, int colours) {
    if (sound.size() > MOST_REMEMBERED) {
      sound.clear();
    }
    ByteBuffer key = ByteBuffer.allocate(profile.length + 4).put(profile).putInt(colours).flip();
    return sound.computeIfAbsent(key, k -> converts(profile, colours));
  }

  private static boolean converts(byte[] profile, int colours) {
    try {
      ICC_Profile read = ICC_Profile.getInstance(profile);
      int own = read.getNumComponents();
      if (colours != 0 && own != colours) {
        return false;
      }
      WritableRaster from = pixel(own);
      ColorSpace srgb = ColorSpace.getInstance(ColorSpace.CS_sRGB);
      new ColorConvertOp(new ICC_ColorSpace(read), srgb, null).filter(from, pixel(3));
      return true;
    } catch (IllegalArgumentException | CMMException e) {
      return false;
    }
  }

  private static WritableRaster pixel(int samples) {
    return Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 1, 1, samples, null);
  }
}
