package org.daymount.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/** Sets a day's story on cards: as few as will do, then the largest type that fits them. */
public final class StoryTypesetter {
  private final TextShaper setting = new TextShaper(Typeface.SERIF, Typeface.SANS);

  /**
   * @param story as the person wrote it, lines joined by '\n'; without one the card has ruled lines
   * @param card lying as it will on the page
   * @throws IllegalArgumentException when the card is too small for any text
   */
  public TypesetStory set(LocalDate day, Optional<String> story, PaperSize card) {
    CardLayout layout = new CardLayout(card);
    ShownText shown = ShownText.of(story.orElse("").strip(), Typeface.SERIF, Typeface.SANS);
    if (shown.text().isBlank()) {
      return new TypesetStory(
          List.of(new StoryCard(day, card, Length.ZERO, List.of(), 1, 1)), List.of());
    }
    MeasuredText text = setting.measure(shown.text());
    int count = cardsAt(CardLayout.SMALLEST_TYPE, text, layout);
    double size = CardLayout.LARGEST_TYPE;
    while (size > CardLayout.SMALLEST_TYPE && cardsAt(size, text, layout) > count) {
      size -= CardLayout.TYPE_STEP;
    }
    List<String> lines = linesAt(size, text, layout);
    return new TypesetStory(
        cards(day, card, size, lines, layout.linesOf(size)), notes(shown, count));
  }

  private static List<String> linesAt(double size, MeasuredText text, CardLayout layout) {
    return text.lines(layout.textWidth() / size);
  }

  private static int cardsAt(double size, MeasuredText text, CardLayout layout) {
    int perCard = layout.linesOf(size);
    return pages(linesAt(size, text, layout), perCard).size();
  }

  private static List<StoryCard> cards(
      LocalDate day, PaperSize card, double size, List<String> lines, int perCard) {
    List<List<String>> pages = pages(lines, perCard);
    List<StoryCard> cards = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      cards.add(
          new StoryCard(
              day, card, CardLayout.lineDistance(size), pages.get(i), i + 1, pages.size()));
    }
    return cards;
  }

  /** Cards' worth of lines; a card neither starts nor ends with an empty line. */
  private static List<List<String>> pages(List<String> lines, int perCard) {
    List<List<String>> pages = new ArrayList<>();
    int start = 0;
    while (start < lines.size()) {
      int end = Math.min(start + perCard, lines.size());
      int last = end;
      while (last > start && lines.get(last - 1).isEmpty()) {
        last--;
      }
      pages.add(lines.subList(start, last));
      start = end;
      while (start < lines.size() && lines.get(start).isEmpty()) {
        start++;
      }
    }
    return pages;
  }

  private static List<String> notes(ShownText shown, int count) {
    List<String> notes = new ArrayList<>();
    if (count > 1) {
      notes.add("the story runs over " + count + " cards; shorten it, or take larger cards");
    }
    if (!shown.isWhole()) {
      notes.add(
          "the story has "
              + shown.missingInWords()
              + "; the card leaves gaps to write them in by hand");
    }
    return notes;
  }
}
