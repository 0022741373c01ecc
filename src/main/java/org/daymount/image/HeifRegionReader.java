package org.daymount.image;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.HeifItems.Item;
import org.daymount.image.IsoBoxes.Box;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Decodes the planned region of a HEIF or AVIF picture: only the tiles that reach into it, one at a
 * time, and of these only the pixels that are kept.
 */
final class HeifRegionReader {
  private static final int MOST_CODED_BYTES = 1 << 28; // of one tile
  private static final int MOST_CONFIGURATION = 1 << 20;
  private static final int MOST_PROFILE = 1 << 24;

  private final FileBytes bytes;
  private final HeifItems items;
  private final HeifPicture picture;
  private final DecodeRegion plan;
  private final BufferedImage kept;
  private Cicp colour;

  private HeifRegionReader(
      FileBytes bytes, HeifItems items, HeifPicture picture, DecodeRegion plan) {
    this.bytes = bytes;
    this.items = items;
    this.picture = picture;
    this.plan = plan;
    this.kept =
        new BufferedImage(
            kept(plan.region().width()),
            kept(plan.region().height()),
            BufferedImage.TYPE_3BYTE_BGR);
  }

  /** The size of the smallest stored thumbnail that is enough for the whole picture at a size. */
  static Optional<PixelSize> thumbnail(Path file, PixelSize storedTarget) throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      HeifItems items = HeifItems.read(bytes);
      HeifPicture picture = HeifPicture.primary(bytes, items);
      return HeifPicture.thumbnail(bytes, items, picture, storedTarget).map(HeifPicture::stored);
    }
  }

  /**
   * @param stored the size of the picture, or of its thumbnail when that is asked for
   */
  static BufferedImage read(Path file, PixelSize stored, boolean thumbnail, DecodeRegion plan)
      throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      HeifItems items = HeifItems.read(bytes);
      HeifPicture picture = HeifPicture.primary(bytes, items);
      if (thumbnail) {
        picture = HeifPicture.thumbnail(bytes, items, picture, stored).orElse(picture);
      }
      if (!picture.stored().equals(stored)) {
        throw new IOException(
            "its header promises " + stored + " pixels, but it has " + picture.stored());
      }
      HeifPicture wanted = picture;
      return MemoryBudget.with(
          need(wanted, plan), () -> new HeifRegionReader(bytes, items, wanted, plan).read());
    }
  }

  /** Samples of a tile, of up to two bytes each, and three bytes for each pixel that is kept. */
  private static long need(HeifPicture picture, DecodeRegion plan) {
    return 3 * picture.tile().area()
        + 3 * plan.region().area() / ((long) plan.period() * plan.period());
  }

  private int kept(int pixels) {
    return (pixels - plan.offset() + plan.period() - 1) / plan.period();
  }

  private BufferedImage read() throws IOException {
    TileCoding coding = null;
    Box configuration = null;
    try (TileReader reader = TileReaders.open()) {
      for (int i = 0; i < picture.tiles().size(); i++) {
        PixelBox place = place(i);
        if (!place.overlaps(regionInComposed())) {
          continue;
        }
        Item tile = picture.tiles().get(i);
        Box needed = configuration(tile);
        if (coding == null || !needed.equals(configuration)) {
          coding = new TileCoding(tile.type(), data(needed, MOST_CONFIGURATION), picture.tile());
          configuration = needed;
        }
        keep(reader.decode(coding, items.data(tile, MOST_CODED_BYTES)), place);
      }
    }
    return inItsColours();
  }

  private PixelBox place(int index) {
    return new PixelBox(
        index % picture.columns() * picture.tile().width(),
        index / picture.columns() * picture.tile().height(),
        picture.tile().width(),
        picture.tile().height());
  }

  private PixelBox regionInComposed() {
    PixelBox region = plan.region();
    return new PixelBox(
        region.x() + picture.shown().x(),
        region.y() + picture.shown().y(),
        region.width(),
        region.height());
  }

  private static Box configuration(Item tile) throws IOException {
    String name = tile.type().equals("hvc1") ? "hvcC" : "av1C";
    return tile.property(name)
        .orElseThrow(() -> HeifItems.broken("does not say how its tiles are coded"));
  }

  private byte[] data(Box box, int most) throws IOException {
    if (box.length() > most) {
      throw HeifItems.broken("has a part of impossible length");
    }
    return bytes.copy(box.body(), (int) box.length());
  }

  private void keep(YuvFrame planes, PixelBox place) throws IOException {
    if (planes.width() < place.width() || planes.height() < place.height()) {
      throw new IOException(
          "a tile of it has "
              + new PixelSize(planes.width(), planes.height())
              + " pixels instead of "
              + place.size());
    }
    if (colour == null) {
      colour = picture.colour().orElse(planes.colour());
    }
    TileRows rows = TileRows.ofPicture(planes, colour);
    PixelBox region = regionInComposed();
    int firstColumn = firstKept(place.x(), region.x(), kept.getWidth());
    int lastColumn = firstKept(place.right(), region.x(), kept.getWidth());
    int firstRow = firstKept(place.y(), region.y(), kept.getHeight());
    int lastRow = firstKept(place.bottom(), region.y(), kept.getHeight());
    int count = lastColumn - firstColumn;
    if (count <= 0) {
      return;
    }
    int[] rgb = new int[count];
    int from = region.x() + plan.offset() + firstColumn * plan.period() - place.x();
    for (int row = firstRow; row < lastRow; row++) {
      int y = region.y() + plan.offset() + row * plan.period() - place.y();
      rows.read(y, from, plan.period(), count, rgb, 0);
      put(rgb, (row * kept.getWidth() + firstColumn) * 3);
    }
  }

  private void put(int[] rgb, int start) {
    byte[] all = ((DataBufferByte) kept.getRaster().getDataBuffer()).getData();
    int at = start;
    for (int pixel : rgb) {
      all[at++] = (byte) pixel;
      all[at++] = (byte) (pixel >> 8);
      all[at++] = (byte) (pixel >> 16);
    }
  }

  /** The first kept column (or row) at or beyond a position. */
  private int firstKept(int position, int regionStart, int most) {
    int beyond = position - regionStart - plan.offset();
    int index = beyond <= 0 ? 0 : (beyond + plan.period() - 1) / plan.period();
    return Math.min(index, most);
  }

  private BufferedImage inItsColours() throws IOException {
    if (picture.profile().isPresent()) {
      return Profiles.read(data(picture.profile().get(), MOST_PROFILE))
          .map(profile -> Profiles.applied(kept, profile))
          .orElse(kept);
    }
    return Profiles.of(colour).map(profile -> Profiles.applied(kept, profile)).orElse(kept);
  }
}
