package org.daymount.page;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The month's pages on their leaves.
 *
 * @param pages of the days that have one, in order
 * @param leaves in order
 */
public record AlbumLayout(PageSettings settings, List<AlbumPage> pages, List<Leaf> leaves) {
  public static final AlbumLayout NONE =
      new AlbumLayout(PageSettings.STANDARD, List.of(), List.of());

  public AlbumLayout {
    pages = List.copyOf(pages);
    leaves = List.copyOf(leaves);
  }

  public Optional<AlbumPage> page(LocalDate day) {
    return pages.stream().filter(page -> page.day().equals(day)).findFirst();
  }
}
