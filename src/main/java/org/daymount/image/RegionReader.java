package org.daymount.image;

import java.awt.Rectangle;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.IIOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.daymount.file.FileBytes;
import org.daymount.photo.PhotoFormat;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Decodes the planned region of the first picture in a file, in whatever colours it has.
 *
 * <p>The region bounds the decoded pixels, not what a decoder needs on the way: for a progressive
 * JPEG the coefficients of the whole picture are held outside the Java heap, 2 bytes a sample (3 to
 * 6 bytes a pixel; too large ones are refused here), and for WebP the whole picture. The number of
 * pixels in the header therefore has to be limited before a file comes here.
 */
final class RegionReader {
  private static final String CUT_OFF = "premature end"; // of the file: libjpeg's words, a warning
  private static final String DAMAGED = "data segment"; // ended early, but the file goes on
  private static final String PROFILE_SEGMENT = "ICC_PROFILE"; // in TwelveMonkeys' warnings

  private RegionReader() {}

  /** Decoded pixels, and whether the decoder missed some and made them up. */
  record Region(BufferedImage pixels, boolean isCutOff) {}

  /**
   * @param stored the size the file's header gave; another size from the decoder is an error
   */
  static Region read(Path file, PhotoFormat format, PixelSize stored, DecodeRegion plan)
      throws IOException {
    return MemoryBudget.with(
        need(file, format, stored, plan), () -> decode(file, format, stored, plan));
  }

  /** Decoded pixels at 4 bytes each, and what is held on the way to them. */
  private static long need(Path file, PhotoFormat format, PixelSize stored, DecodeRegion plan)
      throws IOException {
    long pixels = 4 * plan.region().area() / ((long) plan.period() * plan.period());
    if (format == PhotoFormat.WEBP) {
      return 4 * stored.area() + pixels;
    }
    if (format != PhotoFormat.JPEG) {
      return pixels;
    }
    try (FileBytes bytes = FileBytes.open(file)) {
      Optional<JpegFrame> frame = JpegFrame.read(bytes);
      if (frame.isEmpty()) {
        return pixels;
      }
      frame.get().refuseEndlessScans();
      frame.get().refuseIfTooLargeForAFullDecoder();
      return frame.get().coefficientBytes() + pixels;
    } catch (EOFException e) {
      return pixels;
    }
  }

  private static Region decode(Path file, PhotoFormat format, PixelSize stored, DecodeRegion plan)
      throws IOException {
    ImageReader reader = Readers.forFormat(format);
    try (ImageInputStream in = input(file, format)) {
      if (in == null) {
        throw new FileNotFoundException("no such file, or it may not be read");
      }
      boolean[] cutOff = {false};
      boolean[] profileIgnored = {false};
      reader.addIIOReadWarningListener(
          (source, warning) -> {
            String said = warning.toLowerCase(Locale.ROOT);
            cutOff[0] |= said.contains(CUT_OFF) && !said.contains(DAMAGED);
            profileIgnored[0] |= warning.contains(PROFILE_SEGMENT);
          });
      reader.setInput(in, false, format == PhotoFormat.PNG); // bad notes must not cost the pixels
      check(stored, new PixelSize(reader.getWidth(0), reader.getHeight(0)));
      ImageReadParam params = params(reader, plan);
      if (format == PhotoFormat.JPEG || format == PhotoFormat.RAW) {
        inks(reader).ifPresent(params::setDestinationType);
      }
      BufferedImage pixels = reader.read(0, params);
      if (profileIgnored[0] && format == PhotoFormat.JPEG) {
        pixels = withProfile(pixels, file);
      }
      if (format == PhotoFormat.PNG) {
        pixels = PngProfile.applied(pixels, file);
      }
      if (format == PhotoFormat.TIFF) {
        pixels = TiffAlpha.applied(pixels, reader.getImageMetadata(0));
      }
      return new Region(pixels, cutOff[0]);
    } finally {
      reader.dispose();
    }
  }

  /**
   * Four inks as they are, in the profile's own colours, where the reader would convert the whole
   * picture at once: it then lies in memory four times over, twice of that outside Java's heap.
   * {@link SrgbRows} converts a band at a time.
   */
  private static Optional<ImageTypeSpecifier> inks(ImageReader reader) throws IOException {
    for (Iterator<ImageTypeSpecifier> types = reader.getImageTypes(0); types.hasNext(); ) {
      ImageTypeSpecifier type = types.next();
      if (type.getColorModel().getColorSpace() instanceof ICC_ColorSpace space
          && space.getType() == ColorSpace.TYPE_CMYK) {
        return Optional.of(type);
      }
    }
    return Optional.empty();
  }

  /**
   * The reader ignores profiles that do not also convert back (a scanner's, ICC.1:2010, 8.2); those
   * that are broken change nothing.
   */
  private static BufferedImage withProfile(BufferedImage pixels, Path file) throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      return ProfileBytes.read(bytes, file, PhotoFormat.JPEG)
          .flatMap(Profiles::read)
          .filter(
              profile ->
                  profile.getColorSpaceType() == pixels.getColorModel().getColorSpace().getType())
          .map(profile -> Profiles.applied(pixels, profile))
          .orElse(pixels);
    }
  }

  /** Of a raw file, the JPEG in it. */
  private static ImageInputStream input(Path file, PhotoFormat format) throws IOException {
    if (format == PhotoFormat.BMP) {
      return new BmpInput(file);
    }
    if (format != PhotoFormat.RAW) {
      return ImageIO.createImageInputStream(file.toFile());
    }
    try (FileBytes bytes = FileBytes.open(file)) {
      RawPreview preview = RawPreview.find(bytes);
      return new MemoryCacheImageInputStream(
          new ByteArrayInputStream(bytes.copy(preview.from(), preview.length())));
    }
  }

  private static void check(PixelSize header, PixelSize decoder) throws IOException {
    if (!decoder.equals(header)) {
      throw new IIOException(
          "its header promises " + header + " pixels, but the picture in it has " + decoder);
    }
  }

  private static ImageReadParam params(ImageReader reader, DecodeRegion plan) {
    ImageReadParam params = reader.getDefaultReadParam();
    PixelBox region = plan.region();
    params.setSourceRegion(new Rectangle(region.x(), region.y(), region.width(), region.height()));
    params.setSourceSubsampling(plan.period(), plan.period(), plan.offset(), plan.offset());
    return params;
  }
}
