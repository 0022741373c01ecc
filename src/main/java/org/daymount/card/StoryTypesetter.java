package org.daymount.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/** Sets a day's story on cards: as few as will do, then the largest type that fits them. */
public final class StoryTypesetter {
  private static final int FEW_LINES = 6;

  /** Of the card's text, that a story in larger type may take. */
  private static final double AIRY = 0.5;

  private static final int HALVINGS = 12;

  private final TextShaper setting = new TextShaper(Typeface.SERIF, Typeface.SANS);

  /**
   * @param story as the person wrote it, lines joined by '\n'; without one the card has ruled lines
   * @param card lying as it will on the page
   * @throws IllegalArgumentException when the card is too small for any text
   */
  public TypesetStory set(LocalDate day, Optional<String> story, PaperSize card) {
    return set(day, story, card, CardStyle.USUAL);
  }

  /** The same in other looks. */
  public TypesetStory set(LocalDate day, Optional<String> story, PaperSize card, CardStyle style) {
    CardLayout layout = new CardLayout(card, style.heading());
    ShownText shown = ShownText.of(story.orElse("").strip(), Typeface.SERIF, Typeface.SANS);
    if (shown.text().isBlank()) {
      return new TypesetStory(
          List.of(new StoryCard(day, card, Length.ZERO, List.of(), 1, 1, style)), List.of());
    }
    MeasuredText text = setting.measure(shown.text());
    int count = cardsAt(CardLayout.SMALLEST_TYPE, text, layout);
    double size = layout.largestShortType();
    while (size > CardLayout.LARGEST_TYPE && !isAiry(size, text, layout)) {
      size -= CardLayout.TYPE_STEP;
    }
    while (size > CardLayout.SMALLEST_TYPE && cardsAt(size, text, layout) > count) {
      size -= CardLayout.TYPE_STEP;
    }
    List<String> lines =
        shown.text().contains("\n") ? linesAt(size, text, layout) : balanced(size, text, layout);
    return new TypesetStory(
        cards(day, card, size, lines, layout.linesOf(size), style), notes(shown, count));
  }

  /** The story for a place of any size: the largest type that holds it, the rest left off. */
  public StoryNote note(String story, PaperSize place) {
    double margin = Math.min(CardLayout.MARGIN, place.width().inPoints() / 10);
    double width = place.width().inPoints() - 2 * margin;
    double height = place.height().inPoints() - 2 * margin;
    MeasuredText text =
        setting.measure(ShownText.of(story.strip(), Typeface.SERIF, Typeface.SANS).text());
    double size = CardLayout.LARGEST_TYPE;
    List<String> lines = text.lines(width / size);
    while (size > CardLayout.SMALLEST_TYPE && lines.size() * size * CardLayout.LEADING > height) {
      size -= CardLayout.TYPE_STEP;
      lines = text.lines(width / size);
    }
    int room = Math.max(1, (int) (height / (size * CardLayout.LEADING)));
    if (lines.size() > room) {
      lines = new ArrayList<>(lines.subList(0, room));
      lines.set(room - 1, lines.get(room - 1) + " …");
    }
    return new StoryNote(place, CardLayout.lineDistance(size), lines);
  }

  private static boolean isAiry(double size, MeasuredText text, CardLayout layout) {
    int lines = linesAt(size, text, layout).size();
    return lines <= FEW_LINES && lines <= AIRY * layout.linesOf(size);
  }

  private static List<String> linesAt(double size, MeasuredText text, CardLayout layout) {
    return text.lines(layout.textWidth() / size);
  }

  /** A few lines of one paragraph are made equally long. */
  private static List<String> balanced(double size, MeasuredText text, CardLayout layout) {
    List<String> lines = linesAt(size, text, layout);
    if (lines.size() < 2 || lines.size() > FEW_LINES) {
      return lines;
    }
    double narrow = layout.textWidth() / 2;
    double wide = layout.textWidth();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (narrow + wide) / 2;
      if (text.lines(middle / size).size() <= lines.size()) {
        wide = middle;
      } else {
        narrow = middle;
      }
    }
    return text.lines(wide / size);
  }

  private static int cardsAt(double size, MeasuredText text, CardLayout layout) {
    int perCard = layout.linesOf(size);
    return pages(linesAt(size, text, layout), perCard).size();
  }

  private static List<StoryCard> cards(
      LocalDate day,
      PaperSize card,
      double size,
      List<String> lines,
      int perCard,
      CardStyle style) {
    List<List<String>> pages = pages(lines, perCard);
    List<StoryCard> cards = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      cards.add(
          new StoryCard(
              day, card, CardLayout.lineDistance(size), pages.get(i), i + 1, pages.size(), style));
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
