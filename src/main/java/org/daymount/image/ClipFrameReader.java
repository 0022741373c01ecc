package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import org.daymount.clip.Clip;
import org.daymount.clip.ClipColour;
import org.daymount.clip.ClipFile;
import org.daymount.clip.Codec;
import org.daymount.clip.KeyFrame;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Stills from clips: one coded key frame goes to the decoder, and nothing of the container. */
final class ClipFrameReader {
  private static final int BYTES_A_PIXEL = 8; // planes of up to 12 bits, and what is made of them

  /** Above the lines of standard definition colours are those of BT.709 (common practice). */
  private static final int MOST_LINES_OF_BT601 = 576;

  private static final int BT709 = 1;
  private static final int BT601 = 6;

  /**
   * One frame is decoded at a time: a second process takes longer to start than most clips take,
   * and while one frame is decoded another is measured.
   */
  private static final ReentrantLock DECODING = new ReentrantLock(true);

  private ClipFrameReader() {}

  /** Two pictures of nearly the same size tell the same. */
  private static final double AS_LONG = 0.95;

  /** What a decoded frame is made into while it is there. */
  @FunctionalInterface
  private interface Use {
    BufferedImage of(YuvFrame planes, Clip clip) throws IOException;
  }

  /** The part of it that falls on {@code target} pixels, for printing. */
  static BufferedImage part(Photo photo, PixelBox window, PixelSize target) throws IOException {
    ExifOrientation orientation = photo.orientation();
    PixelSize stored = orientation.stored(photo.size());
    PixelBox there = ExifRotator.toStored(window, photo.size(), orientation);
    PixelSize size = orientation.stored(target);
    return upright(
        photo,
        (planes, clip) -> {
          BufferedImage whole = resampled(srgb(planes, clip, 1), 1, clip.coded(), clip.shown());
          return there.equals(stored.whole()) && size.equals(stored)
              ? whole
              : Lanczos.resample(
                  new SrgbRows(whole),
                  new LanczosTaps(stored.width(), there.x(), there.width(), size.width()),
                  new LanczosTaps(stored.height(), there.y(), there.height(), size.height()));
        });
  }

  /** All of it in {@code target} pixels, for looking at: from the means of 2, 4 or 8 pixels. */
  static BufferedImage whole(Photo photo, PixelSize target) throws IOException {
    PixelSize size = photo.orientation().stored(target);
    return upright(
        photo,
        (planes, clip) -> {
          int times = ReducedPlanes.times(clip.coded().longEdge(), size.longEdge());
          return resampled(srgb(planes, clip, times), times, clip.coded(), size);
        });
  }

  /** All of it as it is quickest to have, about {@code longEdge} pixels long, for measuring. */
  static BufferedImage examined(Photo photo, int longEdge) throws IOException {
    return upright(
        photo,
        (planes, clip) -> {
          int least = (int) (AS_LONG * Math.min(longEdge, clip.shown().longEdge()));
          int times = ReducedPlanes.times(clip.coded().longEdge(), least);
          SrgbRows rows = srgb(planes, clip, times);
          return clip.shown().equals(clip.coded())
              ? rows.all()
              : resampled(rows, times, clip.coded(), clip.shown().within(longEdge));
        });
  }

  private static BufferedImage upright(Photo photo, Use use) throws IOException {
    PixelSize stored = photo.orientation().stored(photo.size());
    BufferedImage picture =
        MemoryBudget.with(BYTES_A_PIXEL * stored.area(), () -> decoded(photo.file(), stored, use));
    return photo.orientation() == ExifOrientation.TOP_LEFT
        ? picture
        : ExifRotator.upright(picture, photo.orientation());
  }

  private static BufferedImage decoded(PhotoFile file, PixelSize stored, Use use)
      throws IOException {
    Duration at = file.frame().orElseThrow().at();
    Path path = file.path();
    try (ClipFile opened = ClipFile.open(path)) {
      Clip clip = opened.clip();
      KeyFrame frame =
          clip.keyFrames().stream()
              .filter(each -> each.at().equals(at))
              .findFirst()
              .orElseThrow(ClipFrameReader::changed);
      if (!clip.shown().equals(stored)) {
        throw changed();
      }
      TileCoding coding = new TileCoding(type(clip.codec()), opened.configuration(), clip.coded());
      DECODING.lock();
      try (TileReader reader = TileReaders.open()) {
        return use.of(reader.decode(coding, opened.coded(frame)), clip);
      } finally {
        DECODING.unlock();
      }
    }
  }

  private static UnusablePicture changed() {
    return new UnusablePicture(
        Problem.Kind.UNREADABLE, "is of a clip that changed meanwhile; run this again");
  }

  private static String type(Codec codec) {
    return switch (codec) {
      case H264 -> "avc1";
      case HEVC -> "hvc1";
      case AV1 -> "av01";
    };
  }

  /** The frame's pixels, of which {@code times} each way are one. */
  private static SrgbRows srgb(YuvFrame planes, Clip clip, int times) throws IOException {
    PixelSize coded = clip.coded();
    if (planes.width() < coded.width() || planes.height() < coded.height()) {
      throw new IOException(
          "its frame has "
              + new PixelSize(planes.width(), planes.height())
              + " pixels instead of "
              + coded);
    }
    Cicp colour = colour(clip.colour(), planes);
    TileRows rows = TileRows.ofClip(ReducedPlanes.of(planes, times), colour);
    BufferedImage picture =
        new BufferedImage(
            coded.width() / times, coded.height() / times, BufferedImage.TYPE_INT_RGB);
    int[] rgb = new int[picture.getWidth()];
    for (int y = 0; y < picture.getHeight(); y++) {
      rows.read(y, 0, 1, rgb.length, rgb, 0);
      picture.getRaster().setDataElements(0, y, rgb.length, 1, rgb);
    }
    return inSrgb(picture, colour);
  }

  private static SrgbRows inSrgb(BufferedImage picture, Cicp colour) {
    if (Profiles.of(colour).isEmpty()) {
      return new SrgbRows(picture);
    }
    BufferedImage bytes =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
    int[] rgb = new int[picture.getWidth()];
    for (int y = 0; y < picture.getHeight(); y++) {
      picture.getRaster().getDataElements(0, y, rgb.length, 1, rgb);
      bytes.setRGB(0, y, rgb.length, 1, rgb, 0, rgb.length);
    }
    return new SrgbRows(Profiles.applied(bytes, Profiles.of(colour).orElseThrow()));
  }

  /** Rows that stand for the whole of {@code coded} pixels, in {@code size} pixels. */
  private static BufferedImage resampled(
      SrgbRows rows, int times, PixelSize coded, PixelSize size) {
    if (rows.width() == size.width() && rows.height() == size.height()) {
      return rows.all();
    }
    return Lanczos.resample(
        rows,
        new LanczosTaps(rows.width(), 0, coded.width() / (double) times, size.width()),
        new LanczosTaps(rows.height(), 0, coded.height() / (double) times, size.height()));
  }

  /** By the container, else by the coded picture, else as is usual for its size. */
  private static Cicp colour(Optional<ClipColour> container, YuvFrame planes) {
    Cicp own = planes.colour();
    int primaries = known(container.map(ClipColour::primaries), own.primaries());
    int transfer = known(container.map(ClipColour::transfer), own.transfer());
    int matrix = known(container.map(ClipColour::matrix), own.matrix());
    if (matrix == Cicp.UNSPECIFIED) {
      matrix = planes.height() > MOST_LINES_OF_BT601 ? BT709 : BT601;
    }
    boolean full = container.flatMap(ClipColour::fullRange).orElse(own.fullRange());
    return new Cicp(primaries, transfer, matrix, full);
  }

  private static int known(Optional<Integer> first, int other) {
    return first.filter(code -> code != Cicp.UNSPECIFIED).orElse(other);
  }
}
