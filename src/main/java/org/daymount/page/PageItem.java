package org.daymount.page;

import java.util.List;
import org.daymount.album.Space;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * Something that is to lie on a page: the card or picture of a space, or a story card.
 *
 * @param size either way up
 * @param ways it may lie and be read; one or two
 * @param isCard whether it is a story card
 * @param mayLieOnSide whether it may lie a quarter turn from the way it is read
 */
public record PageItem(
    PaperSize size, List<Orientation> ways, boolean isCard, boolean mayLieOnSide) {
  public PageItem {
    ways = List.copyOf(ways);
  }

  public static PageItem of(Space space) {
    return new PageItem(space.size(), space.ways(), false, false);
  }

  /** A space whose picture is chosen, so that it is known which way it lies. */
  public static PageItem of(Space space, Orientation way) {
    return of(space).lying(way);
  }

  public static PageItem card(PaperSize size) {
    return new PageItem(size, List.of(size.direction()), true, false);
  }

  PageItem lying(Orientation way) {
    return new PageItem(size, List.of(way), isCard, mayLieOnSide);
  }

  PageItem eitherWay() {
    return size.isSquare() || isCard
        ? this
        : new PageItem(
            size, List.of(Orientation.LANDSCAPE, Orientation.PORTRAIT), false, mayLieOnSide);
  }

  public PageItem onItsSide() {
    return new PageItem(size, ways, isCard, true);
  }

  /** The shapes it may take on the page. */
  List<Shape> shapes() {
    List<Shape> shapes = new java.util.ArrayList<>();
    ways.forEach(way -> shapes.add(new Shape(size.towards(way), false)));
    if (mayLieOnSide && ways.size() == 1 && !size.isSquare()) {
      shapes.add(new Shape(size.towards(ways.get(0)).turned(), true));
    }
    return shapes;
  }

  /** In words: {@code 4x6 portrait}, {@code a 3x4 story card}. */
  String words() {
    String name = org.daymount.unit.SizeText.text(size.towards(Orientation.PORTRAIT));
    if (isCard) {
      return name + " story card";
    }
    return ways.size() == 1 && ways.get(0) != Orientation.SQUARE
        ? name + " " + ways.get(0).word()
        : name;
  }

  /** Width and height on the page, and whether it lies on its side then. */
  record Shape(PaperSize size, boolean turned) {}
}
