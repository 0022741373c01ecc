package org.daymount.card;

import java.time.LocalDate;
import java.util.List;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/**
 * A card that carries (part of) a day's story, set and ready to be painted.
 *
 * @param textSize height of the type, from one baseline to the next; zero when there are no lines
 * @param lines already wrapped to the card's width; empty for a card with ruled lines to write on
 * @param number of {@code count}: a long story runs over several cards
 */
public record StoryCard(
    LocalDate day,
    PaperSize size,
    Length textSize,
    List<String> lines,
    int number,
    int count,
    CardStyle style) {
  public StoryCard {
    lines = List.copyOf(lines);
  }

  public boolean isRuled() {
    return lines.isEmpty();
  }
}
