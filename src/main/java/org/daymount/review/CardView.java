package org.daymount.review;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.card.CardPainter;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryTypesetter;
import org.daymount.card.TypesetStory;
import org.daymount.image.Previews;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * A story as its cards will be printed, drawn by the same hand. It is set at every keystroke; a
 * card is drawn when the browser asks for its picture, which it does for those that are seen.
 */
final class CardView {
  private static final Ppi SHOWN = new Ppi(144);
  private static final double POINTS_PER_INCH = 72; // ISO 32000-1:2008, 8.3.2.3
  private static final double QUALITY = 0.9;
  private static final int MOST_CARDS = 500; // a story of 20,000 letters takes some twenty
  private static final int MOST_PICTURES = 60; // of about 60 kB

  private final PaperSize size;
  private final StoryTypesetter typesetter = new StoryTypesetter();
  private final CardPainter painter = new CardPainter();
  private final Map<Integer, StoryCard> cards = latest(MOST_CARDS);
  private final Map<StoryCard, Integer> numbers = latest(MOST_CARDS);
  private final Map<StoryCard, byte[]> pictures = latest(MOST_PICTURES);
  private int next;

  CardView(PaperSize size) {
    this.size = size;
  }

  private static <K, V> Map<K, V> latest(int most) {
    return new LinkedHashMap<>(16, .75f, true) {
      private static final long serialVersionUID = 1;

      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }

  /** A story's cards, and what to know of them. */
  record Cards(List<String> notes, List<Card> cards) {}

  /**
   * A card.
   *
   * @param picture what its picture is asked for by
   */
  record Card(Length width, Length height, int picture) {}

  synchronized Cards of(LocalDate day, String text) {
    TypesetStory set = typesetter.set(day, Optional.of(text).filter(t -> !t.isBlank()), size);
    return new Cards(
        set.notes(),
        set.cards().stream()
            .map(card -> new Card(size.width(), size.height(), number(card)))
            .toList());
  }

  /** What the card's picture is asked for by. */
  synchronized int number(StoryCard card) {
    int number = numbers.computeIfAbsent(card, c -> next++);
    cards.put(number, card);
    return number;
  }

  /** A card that was told of not long ago, as JPEG. */
  synchronized byte[] picture(int number) throws HttpException {
    StoryCard card = cards.get(number);
    if (card == null) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such card");
    }
    return pictures.computeIfAbsent(card, this::jpeg);
  }

  private byte[] jpeg(StoryCard card) {
    PixelSize pixels = card.size().toPixels(SHOWN);
    BufferedImage picture =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.scale(SHOWN.value() / POINTS_PER_INCH, SHOWN.value() / POINTS_PER_INCH);
    painter.paint(card, pen);
    pen.dispose();
    return Previews.jpeg(picture, pixels.longEdge(), QUALITY);
  }
}
