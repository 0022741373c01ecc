package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryNote;
import org.daymount.crop.Crop;
import org.daymount.output.PageCanvas;
import org.daymount.photo.Photo;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PixelBox;

/**
 * A page as data for the browser, which draws it step by step: rectangles, pictures, cards, words,
 * each in its box. Lengths are inches on the page; a crop is pixels of the photo as it is shown.
 */
final class DrawnPage implements PageCanvas {
  private final ArrayNode steps;
  private final ThumbnailCache thumbnails;
  private final CardView cards;

  DrawnPage(ArrayNode steps, ThumbnailCache thumbnails, CardView cards) {
    this.steps = steps;
    this.thumbnails = thumbnails;
    this.cards = cards;
  }

  private ObjectNode step(String what, PaperBox box) {
    ObjectNode node = steps.addObject();
    node.put("draw", what);
    node.put("x", box.x().inInches());
    node.put("y", box.y().inInches());
    node.put("width", box.width().inInches());
    node.put("height", box.height().inInches());
    return node;
  }

  @Override
  public void rectangle(PaperBox box, Look look) {
    step("box", box).put("look", look.name().toLowerCase(Locale.ROOT));
  }

  @Override
  public void picture(Photo photo, Crop crop, PaperBox box, boolean turned) {
    ObjectNode node = step("picture", box);
    node.put("turned", turned);
    node.put("photo", thumbnails.id(photo.file()));
    node.put("turns", thumbnails.turns(photo));
    node.put("photoWidth", photo.size().width());
    node.put("photoHeight", photo.size().height());
    PixelBox window = crop.window();
    node.put(
        "crop", "%d %d %d %d".formatted(window.x(), window.y(), window.width(), window.height()));
  }

  @Override
  public void card(StoryCard card, PaperBox box, boolean turned) {
    step("card", box).put("turned", turned).put("card", cards.number(card));
  }

  @Override
  public void note(StoryNote note, PaperBox box) {
    ObjectNode node = step("note", box);
    node.put("line", note.lineDistance().inInches());
    ArrayNode lines = node.putArray("lines");
    note.lines().forEach(lines::add);
  }

  @Override
  public void word(String word, PaperBox box) {
    step("word", box).put("word", word);
  }
}
