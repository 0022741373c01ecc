package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
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

  private ClipFrameReader() {}

  static BufferedImage upright(Photo photo, PixelBox window, PixelSize target) throws IOException {
    ExifOrientation orientation = photo.orientation();
    PixelSize stored = orientation.stored(photo.size());
    ReadPlan plan =
        ReadPlan.of(
            stored,
            Orienter.toStored(window, photo.size(), orientation),
            orientation.stored(target));
    BufferedImage region =
        MemoryShare.with(
            BYTES_A_PIXEL * stored.area(), () -> region(photo.file(), stored, plan.region()));
    return Pictures.upright(region, thinned(plan), orientation);
  }

  /** Frames are small enough to be kept whole. */
  private static ReadPlan thinned(ReadPlan plan) {
    return plan.period() == 1 ? plan : new ReadPlan(plan.window(), plan.target(), plan.region(), 1);
  }

  private static BufferedImage region(PhotoFile file, PixelSize stored, PixelBox region)
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
      try (TileReader reader = TileReaders.open()) {
        return cut(pixels(reader.decode(coding, opened.coded(frame)), clip), region);
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

  /** The whole frame with square pixels. */
  private static BufferedImage pixels(CodedPlanes planes, Clip clip) throws IOException {
    PixelSize coded = clip.coded();
    if (planes.width() < coded.width() || planes.height() < coded.height()) {
      throw new IOException(
          "its frame has "
              + new PixelSize(planes.width(), planes.height())
              + " pixels instead of "
              + coded);
    }
    CodedColour colour = colour(clip.colour(), planes);
    TileRows rows = TileRows.ofClip(planes, colour);
    BufferedImage picture =
        new BufferedImage(coded.width(), coded.height(), BufferedImage.TYPE_INT_RGB);
    int[] rgb = new int[coded.width()];
    for (int y = 0; y < coded.height(); y++) {
      rows.read(y, 0, 1, rgb.length, rgb, 0);
      picture.getRaster().setDataElements(0, y, rgb.length, 1, rgb);
    }
    if (clip.shown().equals(coded) && Profiles.of(colour).isEmpty()) {
      return picture;
    }
    return square(inSrgb(picture, colour), clip.shown());
  }

  private static SrgbRows inSrgb(BufferedImage picture, CodedColour colour) {
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

  private static BufferedImage square(SrgbRows rows, PixelSize shown) {
    if (rows.width() == shown.width() && rows.height() == shown.height()) {
      return rows.all();
    }
    return Lanczos.resample(
        rows,
        new LanczosTaps(rows.width(), 0, rows.width(), shown.width()),
        new LanczosTaps(rows.height(), 0, rows.height(), shown.height()));
  }

  private static BufferedImage cut(BufferedImage whole, PixelBox region) {
    return region.width() == whole.getWidth() && region.height() == whole.getHeight()
        ? whole
        : whole.getSubimage(region.x(), region.y(), region.width(), region.height());
  }

  /** By the container, else by the coded picture, else as is usual for its size. */
  private static CodedColour colour(Optional<ClipColour> container, CodedPlanes planes) {
    CodedColour own = planes.colour();
    int primaries = known(container.map(ClipColour::primaries), own.primaries());
    int transfer = known(container.map(ClipColour::transfer), own.transfer());
    int matrix = known(container.map(ClipColour::matrix), own.matrix());
    if (matrix == CodedColour.UNSPECIFIED) {
      matrix = planes.height() > MOST_LINES_OF_BT601 ? BT709 : BT601;
    }
    boolean full = container.flatMap(ClipColour::fullRange).orElse(own.fullRange());
    return new CodedColour(primaries, transfer, matrix, full);
  }

  private static int known(Optional<Integer> first, int other) {
    return first.filter(code -> code != CodedColour.UNSPECIFIED).orElse(other);
  }
}
