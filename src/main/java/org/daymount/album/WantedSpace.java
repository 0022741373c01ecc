package org.daymount.album;

import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * A space as a person asked for it; what was not said is left to the defaults.
 *
 * @param size empty: alone on its page, the default spaces changed in the other respects; with
 *     others, or saying nothing at all, one photo of a page that is yet to be divided
 * @param direction {@link Orientation#LANDSCAPE} or {@link Orientation#PORTRAIT} when it was said
 * @param reveal empty: the default reveal, if there is a mat at all
 * @param onSide whether the picture may lie on its side on the page
 */
public record WantedSpace(
    Optional<PaperSize> size,
    Optional<Orientation> direction,
    boolean onMat,
    Optional<Length> reveal,
    boolean onSide) {
  /** One photo, of which nothing else was said. */
  public static final WantedSpace PHOTO =
      new WantedSpace(Optional.empty(), Optional.empty(), false, Optional.empty());

  /** Read as the page is. */
  public WantedSpace(
      Optional<PaperSize> size,
      Optional<Orientation> direction,
      boolean onMat,
      Optional<Length> reveal) {
    this(size, direction, onMat, reveal, false);
  }

  public WantedSpace {
    if (direction.filter(Orientation.SQUARE::equals).isPresent()) {
      throw new IllegalArgumentException("a space is asked for as landscape or portrait");
    }
    if (reveal.isPresent() && !onMat) {
      throw new IllegalArgumentException("a reveal needs a mat");
    }
    // The order of the two sides says nothing about the way a space lies: people write both.
    size = size.map(given -> given.towards(Orientation.PORTRAIT));
  }

  public static WantedSpace of(PaperSize size) {
    return new WantedSpace(Optional.of(size), Optional.empty(), false, Optional.empty());
  }

  /**
   * The space made definite.
   *
   * @return one space, or as many as there are defaults when no size was said
   * @throws IllegalArgumentException when the reveal leaves nothing of the space
   */
  public List<Space> with(AlbumDefaults defaults) {
    if (size.isPresent()) {
      return List.of(new Space(size.get(), direction, mat(defaults), onSide));
    }
    return defaults.spaces().stream()
        .map(
            space ->
                new Space(
                    space.size(),
                    direction.or(space::direction),
                    onMat ? mat(defaults) : space.reveal(),
                    onSide || space.onSide()))
        .toList();
  }

  private Optional<Length> mat(AlbumDefaults defaults) {
    return onMat ? reveal.or(() -> Optional.of(defaults.reveal())) : Optional.empty();
  }

  public WantedSpace withoutMat() {
    return new WantedSpace(size, direction, false, Optional.empty(), onSide);
  }

  public WantedSpace onMat(Optional<Length> said) {
    return new WantedSpace(size, direction, true, said, onSide);
  }

  public WantedSpace lyingOnSide(boolean so) {
    return new WantedSpace(size, direction, onMat, reveal, so);
  }
}
