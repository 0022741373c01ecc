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
import org.daymount.pick.Candidate;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/** The one drawing of a page: for pages.pdf, the guide, index.html. From the month alone. */
final class PageDrawing {
  private final PaperSize size;
  private final AlbumPage page;
  private final List<MonthSpace> spaces;
  private final List<StoryCard> cards;
  private final String story;
  private final String waiting;

  PageDrawing(Month month, AlbumPage page) {
    this.size = month.album().settings().page();
    this.page = page;
    Optional<MonthDay> day =
        month.days().stream().filter(one -> one.day().equals(page.day())).findFirst();
    this.spaces = day.map(MonthDay::spaces).orElse(List.of());
    this.story = day.flatMap(MonthDay::story).orElse("");
    this.cards = month.cards(page.day());
    this.waiting = month.photos().isEmpty() ? "photo" : "missing"; // of an album made ahead
  }

  void draw(PageCanvas canvas) throws IOException {
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
      case PHOTO -> photo(spaces.get(place.index().orElseThrow()), place.box(), canvas);
      case STORY -> {
        if (place.index().isEmpty()) {
          if (story.isBlank()) {
            canvas.word("story", place.box());
          } else {
            canvas.note(new StoryTypesetter().note(story, place.box().size()), place.box());
          }
          canvas.rectangle(place.box(), Look.BY_HAND);
        } else if (place.index().get() < cards.size()) {
          canvas.card(cards.get(place.index().get()), place.box());
        }
      }
    }
  }

  private void photo(MonthSpace space, PaperBox box, PageCanvas canvas) throws IOException {
    if (space.pick().hero().isEmpty()) {
      canvas.rectangle(box, Look.MISSING);
      canvas.word(waiting, box);
      return;
    }
    Candidate hero = space.pick().hero().get();
    Crop crop = hero.crop();
    canvas.rectangle(box, Look.PRINT);
    Length left = box.width().minus(crop.picture().width()).half();
    Length top = box.height().minus(crop.picture().height()).half();
    canvas.picture(
        hero.looked().photo(),
        crop,
        PaperBox.at(box.x().plus(left), box.y().plus(top), crop.picture()));
  }
}
