package org.daymount.image;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.HeifItems.Item;
import org.daymount.image.IsoBoxes.Box;
import org.daymount.photo.ExifOrientation;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * One picture in a HEIF or AVIF file: coded as one, or as a grid of tiles to be laid side by side
 * (ISO/IEC 23008-12, 6.6.2.3), then cut to its clean aperture and turned or mirrored.
 *
 * @param composed the tiles laid out, before the cut
 * @param shown the part that is the picture, in composed pixels: its size is the stored size
 * @param orientation what its own turns and mirrorings come to
 * @param turnTold whether it has any of those properties
 * @param tile size of each tile
 * @param tiles row by row; a picture coded as one is a single tile
 * @param profile ICC profile, where it lies in the file
 */
record HeifPicture(
    PixelSize composed,
    PixelBox shown,
    ExifOrientation orientation,
    boolean turnTold,
    PixelSize tile,
    int columns,
    List<Item> tiles,
    Optional<Box> profile,
    Optional<Cicp> colour) {
  private static final int MOST_GRID_BYTES = 16;

  /** Of one coded picture or tile: what the decoder holds at once, outside the Java heap. */
  private static final long MOST_CODED_PIXELS = 64_000_000;

  /** The picture the file is about. */
  static HeifPicture primary(FileBytes bytes, HeifItems items) throws IOException {
    return of(bytes, items, items.primary());
  }

  /**
   * The smallest stored thumbnail of at least that size, seen the same way up as the picture
   * itself; empty when there is none, or it is not like the picture.
   */
  static Optional<HeifPicture> thumbnail(
      FileBytes bytes, HeifItems items, HeifPicture picture, PixelSize least) throws IOException {
    HeifPicture best = null;
    for (Item item : items.about("thmb", items.primary())) {
      HeifPicture small;
      try {
        small = of(bytes, items, item);
      } catch (IOException e) {
        continue; // a broken thumbnail is no fault of the picture
      }
      PixelSize size = small.stored();
      boolean enough = size.width() >= least.width() && size.height() >= least.height();
      boolean alike = Math.abs(size.aspect() / picture.stored().aspect() - 1) < 0.01;
      boolean smaller = best == null || size.area() < best.stored().area();
      if (enough && alike && smaller && small.orientation() == picture.orientation()) {
        best = small;
      }
    }
    return Optional.ofNullable(best);
  }

  /** As the header of any other format gives it: before turning. */
  PixelSize stored() {
    return shown.size();
  }

  private static HeifPicture of(FileBytes bytes, HeifItems items, Item item) throws IOException {
    PixelSize composed;
    int columns = 1;
    List<Item> tiles = List.of(item);
    if (item.type().equals("grid")) {
      byte[] grid = items.data(item, MOST_GRID_BYTES);
      composed = gridSize(grid);
      columns = (grid[3] & 0xff) + 1;
      tiles = items.referredTo("dimg", item);
      if (tiles.size() != ((grid[2] & 0xff) + 1) * columns) {
        throw HeifItems.broken("lacks some of its tiles");
      }
    } else {
      composed = extent(bytes, item);
    }
    for (Item tile : tiles) {
      if (!tile.type().equals("hvc1") && !tile.type().equals("av01")) {
        throw HeifItems.broken("holds a picture coded as \"" + printable(tile.type()) + "\"");
      }
    }
    PixelSize tile = tiles.get(0) == item ? composed : extent(bytes, tiles.get(0));
    refuseIfMisfit(composed, tile, columns, tiles.size() / columns);
    Turns turns = Turns.of(bytes, item, composed);
    return new HeifPicture(
        composed,
        turns.shown,
        turns.orientation,
        turns.told,
        tile,
        columns,
        tiles,
        colourBox(bytes, item, tiles.get(0), "prof", "rICC"),
        Cicp.read(bytes, colourBox(bytes, item, tiles.get(0), "nclx")));
  }

  /** Version, flags, rows - 1, columns - 1, width, height; flag 1 makes the sides 4 bytes. */
  private static PixelSize gridSize(byte[] grid) throws IOException {
    boolean wide = grid.length > 1 && (grid[1] & 1) == 1;
    if (grid.length < (wide ? 12 : 8)) {
      throw HeifItems.broken("has a broken grid of tiles");
    }
    return wide
        ? new StoredSize(number(grid, 4, 4), number(grid, 8, 4)).checked()
        : new StoredSize(number(grid, 4, 2), number(grid, 6, 2)).checked();
  }

  private static long number(byte[] from, int at, int width) {
    long value = 0;
    for (int i = 0; i < width; i++) {
      value = value << 8 | from[at + i] & 0xff;
    }
    return value;
  }

  private static PixelSize extent(FileBytes bytes, Item item) throws IOException {
    Box extent =
        item.property("ispe").orElseThrow(() -> HeifItems.broken("does not tell its size"));
    BoxCursor cursor = new BoxCursor(bytes, extent).versioned();
    return new StoredSize(cursor.unsigned(4), cursor.unsigned(4)).checked();
  }

  /** Tiles have to cover the picture and not more, or a small file could ask for endless work. */
  private static void refuseIfMisfit(PixelSize composed, PixelSize tile, int columns, int rows)
      throws IOException {
    if (tile.area() > MOST_CODED_PIXELS) {
      throw HeifItems.broken("is coded in one piece of " + tile + " pixels");
    }
    boolean fits =
        (composed.width() + tile.width() - 1L) / tile.width() == columns
            && (composed.height() + tile.height() - 1L) / tile.height() == rows;
    if (!fits) {
      throw HeifItems.broken("has tiles that do not fit its size");
    }
  }

  private static String printable(String type) {
    return type.replaceAll("[^A-Za-z0-9 ]", "?");
  }

  /** A colr property of one of these kinds, of the picture or else of its tiles. */
  private static Optional<Box> colourBox(
      FileBytes bytes, Item item, Item firstTile, String... kinds) throws IOException {
    for (Item holder : List.of(item, firstTile)) {
      for (Box property : holder.properties()) {
        if (property.name().equals("colr")
            && property.length() >= 4
            && List.of(kinds).contains(bytes.name(property.body()))) {
          return Optional.of(new Box("colr", property.body() + 4, property.end()));
        }
      }
    }
    return Optional.empty();
  }

  /** The properties that change how a picture is seen, in the order the file gives them. */
  private static final class Turns {
    private PixelBox shown;
    private ExifOrientation orientation = ExifOrientation.TOP_LEFT;
    private boolean told;

    static Turns of(FileBytes bytes, Item item, PixelSize composed) throws IOException {
      Turns turns = new Turns();
      turns.shown = composed.whole();
      for (Box property : item.properties()) {
        switch (property.name()) {
          case "clap" -> turns.shown = cleanAperture(new BoxCursor(bytes, property), composed);
          case "irot" ->
              turns.turn(antiClockwise((int) new BoxCursor(bytes, property).unsigned(1) & 3));
          case "imir" -> turns.turn(mirrored((int) new BoxCursor(bytes, property).unsigned(1) & 1));
          default -> {}
        }
      }
      return turns;
    }

    private void turn(ExifOrientation next) {
      orientation = orientation.then(next);
      told = true;
    }

    /** Quarter turns (ISO/IEC 23008-12:2022, 6.5.10). */
    private static ExifOrientation antiClockwise(int quarters) {
      return switch (quarters) {
        case 1 -> ExifOrientation.LEFT_BOTTOM;
        case 2 -> ExifOrientation.BOTTOM_RIGHT;
        case 3 -> ExifOrientation.RIGHT_TOP;
        default -> ExifOrientation.TOP_LEFT;
      };
    }

    /** 0 changes top and bottom, 1 left and right (ISO/IEC 23008-12:2022, 6.5.12, from memory). */
    private static ExifOrientation mirrored(int mode) {
      return mode == 0 ? ExifOrientation.BOTTOM_LEFT : ExifOrientation.TOP_RIGHT;
    }

    /**
     * Width, height, and how far its centre lies from the picture's, as fractions (ISO/IEC
     * 14496-12, 12.1.4). MIAF puts it before any turn. One that makes no sense is not used.
     */
    private static PixelBox cleanAperture(BoxCursor cursor, PixelSize composed) throws IOException {
      double width = cursor.unsigned(4) / (double) cursor.unsigned(4);
      double height = cursor.unsigned(4) / (double) cursor.unsigned(4);
      double right = (int) cursor.unsigned(4) / (double) cursor.unsigned(4);
      double down = (int) cursor.unsigned(4) / (double) cursor.unsigned(4);
      double left = (composed.width() - width) / 2 + right;
      double top = (composed.height() - height) / 2 + down;
      if (!(width >= 1 && height >= 1 && left > -1 && top > -1)
          || left + width >= composed.width() + 1.0
          || top + height >= composed.height() + 1.0) {
        return composed.whole();
      }
      return new PixelBox((int) Math.floor(left), (int) Math.floor(top), (int) width, (int) height)
          .within(composed);
    }
  }
}
