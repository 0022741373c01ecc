package org.daymount.album;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.unit.PaperSize;

/**
 * What a person wrote about the album itself: its page, the kinds of page at hand, ready-made
 * pages.
 *
 * @param page one side as it is read; empty: not said
 * @param have the pockets of each kind at hand; none for the whole page that things are glued on.
 *     An empty list: whatever is sold
 * @param bases by their names as {@link NormalizedText} has them
 * @param remarks what was not understood, in words, with the line
 */
public record AlbumFile(
    Optional<PaperSize> page,
    List<List<PaperSize>> have,
    Map<String, BasePage> bases,
    List<String> remarks) {
  /** Nothing was said. */
  public static final AlbumFile NONE =
      new AlbumFile(Optional.empty(), List.of(), Map.of(), List.of());

  public AlbumFile {
    have = have.stream().map(List::copyOf).toList();
    bases = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(bases));
    remarks = List.copyOf(remarks);
  }

  /** For whoever reads the month note. */
  public Set<String> names() {
    return bases.keySet();
  }

  public Optional<BasePage> base(String name) {
    return Optional.ofNullable(bases.get(NormalizedText.fold(name).strip()));
  }
}
