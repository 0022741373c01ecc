package org.daymount.output;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryTypesetter;
import org.daymount.crop.Crop;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSpace;
import org.daymount.output.PageCanvas.Look;
import org.daymount.page.AlbumPage;
import org.daymount.page.Place;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * The one drawing of a page: for pages.pdf, the guide, index.html and the review. From what
 * month.json holds alone.
 */
public final class PageDrawing {
  private final PaperSize size;
  private final AlbumPage page;
  private final List<SpacePick> spaces;
  private final String story;
  private final List<StoryCard> cards;
  private final String waiting;

  /**
   * @param size of one side of the album
   * @param spaces of the day, with their pictures
   * @param cards of the day's story; a story without one is shown where it is written by hand
   * @param waiting the word where a picture is still to come
   */
  public PageDrawing(
      PaperSize size,
      AlbumPage page,
      List<SpacePick> spaces,
      Optional<String> story,
      List<StoryCard> cards,
      String waiting) {
    this.size = size;
    this.page = page;
    this.spaces = List.copyOf(spaces);
    this.story = story.orElse("");
    this.cards = List.copyOf(cards);
    this.waiting = waiting;
  }

  static PageDrawing of(Month month, AlbumPage page) {
    Optional<MonthDay> day =
        month.days().stream().filter(one -> one.day().equals(page.day())).findFirst();
    return new PageDrawing(
        month.album().settings().page(),
        page,
        day.map(MonthDay::spaces).orElse(List.of()).stream().map(MonthSpace::pick).toList(),
        day.flatMap(MonthDay::story),
        month.cards(page.day()),
        month.photos().isEmpty() ? "photo" : "missing"); // of an album made ahead
  }

  public void draw(PageCanvas canvas) throws IOException {
    canvas.rectangle(PaperBox.at(Length.ZERO, Length.ZERO, size), Look.PAGE);
    for (PaperBox pocket : page.pockets()) {
      canvas.rectangle(pocket, Look.POCKET);
    }
    for (Place place : page.places()) {
      draw(place, canvas);
    }
  }

  private void draw(Place place, PageCanvas canvas) throws IOException {
    switch (place.what()) {
      case FREE -> {
        canvas.rectangle(place.box(), Look.FREE);
        canvas.word("free", place.box());
      }
      case MAT -> canvas.rectangle(place.box(), Look.MAT);
      case PHOTO -> photo(spaces.get(place.index().orElseThrow()), place, canvas);
      case STORY -> {
        if (place.index().isEmpty()) {
          if (story.isBlank()) {
            canvas.word("story", place.box());
          } else {
            canvas.note(new StoryTypesetter().note(story, place.box().size()), place.box());
          }
          canvas.rectangle(place.box(), Look.BY_HAND);
        } else if (place.index().get() < cards.size()) {
          canvas.card(cards.get(place.index().get()), place.box(), place.turned());
        }
      }
    }
  }

  private void photo(SpacePick space, Place place, PageCanvas canvas) throws IOException {
    PaperBox box = place.box();
    if (space.hero().isEmpty()) {
      canvas.rectangle(box, Look.MISSING);
      canvas.word(waiting, box);
      return;
    }
    ScoredCandidate hero = space.hero().get();
    Crop crop = hero.crop();
    canvas.rectangle(box, Look.PRINT);
    PaperSize lying = place.turned() ? crop.picture().turned() : crop.picture();
    Length left = box.width().minus(lying.width()).half();
    Length top = box.height().minus(lying.height()).half();
    canvas.picture(
        hero.photo(),
        crop,
        PaperBox.at(box.x().plus(left), box.y().plus(top), lying),
        place.turned());
  }
}
