package org.daymount.image.jpeg;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * A picture, or part of one, decoded at its size, a half, a quarter or an eighth, as stored (not
 * turned upright), in the colours of its profile.
 */
public final class ReducedJpeg {
  private static final PixelBox EVERYTHING = new PixelBox(0, 0, 65_535, 65_535); // B.2.2

  private final PixelSize stored;
  private final PixelBox area;
  private final PixelSize size;
  private final Frame frame;
  private final Optional<byte[]> profile;
  private final boolean cutOff;
  private final boolean inOrder;

  ReducedJpeg(
      Frame frame,
      Reduction reduction,
      PixelBox area,
      Optional<byte[]> profile,
      boolean cutOff,
      boolean inOrder) {
    this.stored = new PixelSize(frame.width(), frame.height());
    this.area = area;
    this.size = reduction.of(area.size());
    this.frame = frame;
    this.profile = profile;
    this.cutOff = cutOff;
    this.inOrder = inOrder;
  }

  /**
   * @param file a whole JPEG file
   * @throws JpegRefused when it is damaged, or of a kind that is not read here: more than 8 bits,
   *     four colours, red-green-blue, arithmetic coding, lossless
   */
  public static ReducedJpeg decode(byte[] file, Reduction reduction) throws IOException {
    return decode(file, reduction, EVERYTHING);
  }

  /**
   * As {@link #decode(byte[], Reduction)}, but only what is around a region ({@link #area}). Memory
   * follows the region: of the rest of the picture a progressive one takes 8 bytes for each 8 by 8
   * block, others nothing.
   *
   * @param region stored pixels; what lies beyond the picture is ignored
   */
  public static ReducedJpeg decode(byte[] file, Reduction reduction, PixelBox region)
      throws IOException {
    return new ReducedDecoder(FileBytes.of(file), reduction, region).decode();
  }

  /**
   * As {@link #decode(byte[], Reduction, PixelBox)}, without holding the file.
   *
   * @throws IOException also when it cannot be read
   */
  public static ReducedJpeg decode(Path file, Reduction reduction, PixelBox region)
      throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      return new ReducedDecoder(bytes, reduction, region).decode();
    }
  }

  /**
   * The whole picture twice from one reading of the file, which is most of the work: the same
   * samples as by two.
   *
   * @param reduction a half or a quarter
   * @return so reduced, and at an eighth
   */
  public static List<ReducedJpeg> decodeWithEighth(Path file, Reduction reduction)
      throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      return ReducedDecoder.decodeWithEighth(bytes, reduction, EVERYTHING);
    }
  }

  /** Of the whole picture as the header states it. */
  public PixelSize stored() {
    return stored;
  }

  /**
   * The stored pixels that were decoded: the region and a little around it; its left and top are
   * multiples of 8.
   */
  public PixelBox area() {
    return area;
  }

  /** Of what was decoded: the area's, reduced. */
  public PixelSize size() {
    return size;
  }

  public boolean isGrey() {
    return frame.components().size() == 1;
  }

  /** Whether the file ends, or a part of it ends, before the picture does; the rest is grey. */
  public boolean isCutOff() {
    return cutOff;
  }

  /**
   * Whether all coded data of the file were read on the way and nothing was wrong with them. Where
   * it is not known, {@link JpegCheck} tells.
   */
  public boolean isKnownSound() {
    return inOrder && !cutOff;
  }

  /** The ICC profile as stored; empty: sRGB. */
  public Optional<byte[]> profile() {
    return profile.map(byte[]::clone);
  }

  /** Brightness (Y') of each pixel, row by row, 0 to 255. */
  public byte[] brightness() {
    Component component = frame.components().get(0);
    byte[] pixels = new byte[size.width() * size.height()];
    for (int y = 0; y < size.height(); y++) {
      System.arraycopy(
          component.samples(), y * component.stride(), pixels, y * size.width(), size.width());
    }
    return pixels;
  }

  /** Red, green and blue of each pixel, row by row. */
  public byte[] rgb() {
    byte[] rgb = new byte[size.width() * size.height() * 3];
    List<Component> components = frame.components();
    if (isGrey()) {
      byte[] grey = brightness();
      for (int i = 0; i < grey.length; i++) {
        rgb[3 * i] = grey[i];
        rgb[3 * i + 1] = grey[i];
        rgb[3 * i + 2] = grey[i];
      }
      return rgb;
    }
    ColourRows blue = new ColourRows(components.get(1), frame, size);
    ColourRows red = new ColourRows(components.get(2), frame, size);
    Component brightness = components.get(0);
    int[] blues = new int[size.width()];
    int[] reds = new int[size.width()];
    for (int y = 0; y < size.height(); y++) {
      blue.read(y, blues);
      red.read(y, reds);
      YccToRgb.convert(
          brightness.samples(), y * brightness.stride(), blues, reds, rgb, y * size.width() * 3);
    }
    return rgb;
  }
}
