package org.daymount.card;

import java.util.List;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/**
 * A story as it is shown where it will be written or glued by hand: wrapped to the place, without a
 * heading. Nothing is printed from it.
 *
 * @param lineDistance from one baseline to the next
 * @param lines the last ends with an ellipsis where the story is longer than the place
 */
public record StoryNote(PaperSize size, Length lineDistance, List<String> lines) {
  public StoryNote {
    lines = List.copyOf(lines);
  }
}
