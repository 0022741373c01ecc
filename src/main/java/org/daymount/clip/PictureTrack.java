package org.daymount.clip;

import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * The track of a clip that has its pictures: how they are coded, turned and coloured.
 *
 * @param configuration the decoder configuration record
 * @param shown once the pixels are square
 */
record PictureTrack(
    Codec codec,
    byte[] configuration,
    PixelSize coded,
    PixelSize shown,
    ExifOrientation orientation,
    Optional<ClipColour> colour,
    SampleTable samples) {
  private static final int SAMPLE_ENTRY = 78; // bytes before the boxes, ISO/IEC 14496-12, 12.1.3
  private static final int MOST_CONFIGURATION = 1 << 20;

  /** A frame of 8K video is 33 million. */
  private static final long MOST_PIXELS = 40_000_000;

  private static final double MOST_STRETCH = 4;

  static boolean isOne(Box track) throws UnusablePicture {
    Optional<Box> media = track.child("mdia");
    Optional<Box> handler = media.isEmpty() ? Optional.empty() : media.get().child("hdlr");
    return handler.isPresent() && Box.name(handler.get().body(), 8).equals("vide");
  }

  static PictureTrack read(Box track, boolean fragmented) throws UnusablePicture {
    Box media = track.needed("mdia");
    Box header = media.needed("mdhd");
    long timescale = header.u32(header.version() == 1 ? 20 : 12);
    if (timescale == 0) {
      throw ClipFile.broken("has no clock for its pictures");
    }
    Box table = media.needed("minf").needed("stbl");
    Box descriptions = table.needed("stsd");
    Box entry =
        descriptions.children(8).stream()
            .findFirst()
            .orElseThrow(() -> ClipFile.broken("does not say how it is coded"));
    Codec codec = Codec.of(entry.name()).orElseThrow(() -> otherwiseCoded(entry.name()));
    SampleTable samples = new SampleTable(table, timescale, start(track));
    if (samples.isEmpty() && fragmented) {
      throw new UnusablePicture(
          Problem.Kind.VIDEO,
          "is a clip in fragments, as streams are saved, which are not read here; save one frame as"
              + " a picture to print it");
    }
    Box configuration = nextTo(entry, codec.configuration());
    if (configuration.body().limit() > MOST_CONFIGURATION) {
      throw ClipFile.broken("has a part of impossible length");
    }
    PixelSize coded = size(entry.u16(24), entry.u16(26));
    return new PictureTrack(
        codec,
        configuration.bytes(),
        coded,
        square(coded, Box.first(entry.children(SAMPLE_ENTRY), "pasp")),
        orientation(track.needed("tkhd")),
        colour(entry),
        samples);
  }

  private static Box nextTo(Box entry, String name) throws UnusablePicture {
    return Box.first(entry.children(SAMPLE_ENTRY), name)
        .orElseThrow(() -> ClipFile.broken("does not say how it is coded"));
  }

  private static UnusablePicture otherwiseCoded(String name) {
    String how =
        switch (name) {
          case "mp4v" -> "MPEG-4 part 2";
          case "s263", "h263" -> "H.263";
          case "jpeg", "mjpa", "mjpb" -> "Motion JPEG";
          case "apch", "apcn", "apcs", "apco", "ap4h", "ap4x" -> "ProRes";
          case "vp08", "vp09" -> "VP8 or VP9";
          case "encv" -> "encrypted form";
          default -> "a form called " + name.replaceAll("[^ -~]", "?");
        };
    return new UnusablePicture(
        Problem.Kind.VIDEO,
        "is a clip in "
            + how
            + "; stills are taken of H.264, HEVC and AV1. Save one frame as a picture to print it");
  }

  private static PixelSize size(int width, int height) throws UnusablePicture {
    if (width <= 0 || height <= 0) {
      throw ClipFile.broken("has a header without a width and height");
    }
    if ((long) width * height > MOST_PIXELS) {
      throw new UnusablePicture(
          Problem.Kind.TOO_LARGE,
          "claims frames of " + width + " x " + height + " pixels, more than clips have");
    }
    return new PixelSize(width, height);
  }

  /** pasp: how wide a pixel is for its height (12.1.4); the side that gains keeps every pixel. */
  private static PixelSize square(PixelSize coded, Optional<Box> aspect) throws UnusablePicture {
    if (aspect.isEmpty() || aspect.get().u32(0) == 0 || aspect.get().u32(4) == 0) {
      return coded;
    }
    double wide = aspect.get().u32(0) / (double) aspect.get().u32(4);
    if (wide > MOST_STRETCH || wide < 1 / MOST_STRETCH) {
      return coded; // no camera does that
    }
    return wide >= 1
        ? size((int) Math.round(coded.width() * wide), coded.height())
        : size(coded.width(), (int) Math.round(coded.height() / wide));
  }

  /**
   * The matrix of the track header (8.3.2), x' = ax + cy and y' = bx + dy, where it is one of the
   * eight that keep a rectangle upright or lying; any other is taken for upright.
   */
  private static ExifOrientation orientation(Box header) {
    int at = header.version() == 1 ? 52 : 40;
    int[] signs = new int[4];
    int[] places = {0, 4, 12, 16};
    for (int i = 0; i < 4; i++) {
      signs[i] = Integer.signum(header.body().getInt(at + places[i]));
    }
    String matrix = signs[0] + " " + signs[1] + " " + signs[2] + " " + signs[3];
    return switch (matrix) {
      case "-1 0 0 1" -> ExifOrientation.TOP_RIGHT;
      case "-1 0 0 -1" -> ExifOrientation.BOTTOM_RIGHT;
      case "1 0 0 -1" -> ExifOrientation.BOTTOM_LEFT;
      case "0 1 1 0" -> ExifOrientation.LEFT_TOP;
      case "0 1 -1 0" -> ExifOrientation.RIGHT_TOP;
      case "0 -1 -1 0" -> ExifOrientation.RIGHT_BOTTOM;
      case "0 -1 1 0" -> ExifOrientation.LEFT_BOTTOM;
      default -> ExifOrientation.TOP_LEFT;
    };
  }

  private static Optional<ClipColour> colour(Box entry) throws UnusablePicture {
    for (Box box : entry.children(SAMPLE_ENTRY)) {
      if (!box.name().equals("colr") || box.body().limit() < 10) {
        continue;
      }
      String kind = Box.name(box.body(), 0);
      boolean ranged = kind.equals("nclx") && box.body().limit() > 10;
      if (ranged || kind.equals("nclc")) {
        Optional<Boolean> full = ranged ? Optional.of(box.body().get(10) < 0) : Optional.empty();
        return Optional.of(new ClipColour(box.u16(4), box.u16(6), box.u16(8), full));
      }
    }
    return Optional.empty();
  }

  /** Where the first edit that shows something begins in the track (8.6.6), in its own units. */
  private static long start(Box track) throws UnusablePicture {
    Optional<Box> edits = track.child("edts");
    Optional<Box> list = edits.isEmpty() ? Optional.empty() : edits.get().child("elst");
    if (list.isEmpty()) {
      return 0;
    }
    Box box = list.get();
    boolean wide = box.version() == 1;
    int each = wide ? 20 : 12;
    long count = Math.min(box.u32(4), (box.body().limit() - 8) / each);
    for (int i = 0; i < count; i++) {
      int at = 8 + i * each;
      long time = wide ? box.body().getLong(at + 8) : box.body().getInt(at + 4);
      if (time >= 0) {
        return Math.min(time, Integer.MAX_VALUE);
      }
    }
    return 0;
  }
}
