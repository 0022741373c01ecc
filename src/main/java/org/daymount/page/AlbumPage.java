package org.daymount.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.PaperBox;

/**
 * One day's page: a side of a leaf with everything that lies on it.
 *
 * @param kind a {@link PageKind#name}
 * @param base the ready-made page it is, by its name
 * @param leaf the leaf's number, from 1
 * @param pockets of the page; none on a whole page that things are glued on
 * @param places in the order of drawing
 */
public record AlbumPage(
    LocalDate day,
    String kind,
    Optional<String> base,
    int leaf,
    Leaf.Side side,
    List<PaperBox> pockets,
    List<Place> places) {
  public AlbumPage {
    pockets = List.copyOf(pockets);
    places = List.copyOf(places);
  }
}
