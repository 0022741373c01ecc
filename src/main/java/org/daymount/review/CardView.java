package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Optional;
import org.daymount.card.CardPainter;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryTypesetter;
import org.daymount.card.TypesetStory;
import org.daymount.image.Previews;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/** A story as its cards will be printed, drawn by the same hand. */
final class CardView {
  private static final Ppi SHOWN = new Ppi(144);
  private static final double POINTS_PER_INCH = 72; // ISO 32000-1:2008, 8.3.2.3
  private static final double QUALITY = 0.9;

  private final PaperSize size;
  private final CardPainter painter = new CardPainter();

  CardView(PaperSize size) {
    this.size = size;
  }

  ObjectNode of(LocalDate day, String text) {
    TypesetStory set =
        new StoryTypesetter().set(day, Optional.of(text).filter(t -> !t.isBlank()), size);
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode notes = root.putArray("notes");
    set.notes().forEach(notes::add);
    ArrayNode cards = root.putArray("cards");
    for (StoryCard card : set.cards()) {
      ObjectNode node = cards.addObject();
      node.put("width", size.width().inInches());
      node.put("height", size.height().inInches());
      node.put(
          "picture", "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg(card)));
    }
    return root;
  }

  private byte[] jpeg(StoryCard card) {
    PixelSize pixels = size.toPixels(SHOWN);
    BufferedImage picture =
        new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.scale(SHOWN.value() / POINTS_PER_INCH, SHOWN.value() / POINTS_PER_INCH);
    painter.paint(card, pen);
    pen.dispose();
    return Previews.jpeg(picture, pixels.longEdge(), QUALITY);
  }
}
