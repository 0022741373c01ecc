package org.daymount.page;

import java.util.List;
import org.daymount.album.Space;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Units;

/**
 * Something that is to lie on a page: the card or picture of a space, or a story card.
 *
 * @param size either way up
 * @param ways it may lie and be read; one or two
 * @param isCard whether it is a story card
 * @param side whether it lies a quarter turn from the way it is read
 */
public record PageItem(PaperSize size, List<Orientation> ways, boolean isCard, Side side) {
  /** How a thing may lie. */
  public enum Side {
    UPRIGHT,
    /** On its side where it fits only so. */
    EITHER,
    ON_SIDE
  }

  public PageItem {
    ways = List.copyOf(ways);
  }

  public static PageItem of(Space space) {
    Side side =
        !space.onSide() ? Side.UPRIGHT : space.direction().isPresent() ? Side.ON_SIDE : Side.EITHER;
    return new PageItem(space.size(), space.ways(), false, side);
  }

  /** A space whose picture is chosen, so that it is known which way it lies. */
  public static PageItem of(Space space, Orientation way) {
    return of(space).lying(way);
  }

  public static PageItem card(PaperSize size) {
    return new PageItem(size, List.of(size.direction()), true, Side.UPRIGHT);
  }

  PageItem lying(Orientation way) {
    return new PageItem(size, List.of(way), isCard, side);
  }

  PageItem eitherWay() {
    return size.isSquare() || isCard
        ? this
        : new PageItem(size, List.of(Orientation.LANDSCAPE, Orientation.PORTRAIT), false, side);
  }

  /** A picture turned where it fits only so. */
  PageItem onSideIfNeeded() {
    return isCard || side == Side.ON_SIDE ? this : new PageItem(size, ways, false, Side.EITHER);
  }

  /** The shapes it may take on the page. */
  List<Shape> shapes() {
    List<Shape> shapes = new java.util.ArrayList<>();
    boolean square = size.isSquare();
    for (Orientation way : ways) {
      if (side != Side.ON_SIDE || square) {
        shapes.add(new Shape(size.towards(way), false));
      }
    }
    for (Orientation way : ways) {
      if (side != Side.UPRIGHT && !square) {
        shapes.add(new Shape(size.towards(way).turned(), true));
      }
    }
    return shapes;
  }

  /** In words: {@code 4x6 portrait}, {@code a 3x4 story card}. */
  String words(Units units) {
    String name = units.name(size.towards(Orientation.PORTRAIT));
    if (isCard) {
      return name + " story card";
    }
    String way =
        ways.size() == 1 && ways.get(0) != Orientation.SQUARE ? " " + ways.get(0).word() : "";
    return name + way + (side == Side.ON_SIDE ? " on its side" : "");
  }

  /** Width and height on the page, and whether it lies on its side then. */
  record Shape(PaperSize size, boolean turned) {}
}
