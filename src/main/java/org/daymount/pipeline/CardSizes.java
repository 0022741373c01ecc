package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.album.AlbumFile;
import org.daymount.album.BasePage;
import org.daymount.album.CommonPractice;
import org.daymount.album.DayPage;
import org.daymount.page.AlbumLayout;
import org.daymount.page.AlbumPage;
import org.daymount.page.Place;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * How large each day's story card is.
 *
 * @param asked for every day, by --cards; empty: only where the note asks for a card
 * @param left the place that is left for the story on a day's page, where cards take it
 */
record CardSizes(Optional<PaperSize> asked, AlbumFile album, Map<LocalDate, PaperSize> left) {
  static CardSizes of(Request request) {
    return new CardSizes(request.cards(), request.pages().album(), Map.of());
  }

  /**
   * @param bare the pages as they would be without a card
   */
  static CardSizes fitted(Request request, AlbumLayout bare) {
    Map<LocalDate, PaperSize> left = new TreeMap<>();
    for (AlbumPage page : bare.pages()) {
      page.places().stream()
          .filter(place -> place.what() == Place.What.STORY)
          .findFirst()
          .ifPresent(place -> left.put(page.day(), place.box().size()));
    }
    return new CardSizes(request.cards(), request.pages().album(), left);
  }

  /** Empty for a day without a card. A ready-made page has its own place for the story. */
  Optional<PaperSize> of(DayPage page) {
    if (page.kind() == DayPage.Kind.LEFT_OUT) {
      return Optional.empty();
    }
    if (left.containsKey(page.day())) {
      return Optional.of(left.get(page.day()));
    }
    if (asked.isEmpty() && !page.storyCard()) {
      return Optional.empty();
    }
    Optional<BasePage> base = page.base().flatMap(album::base);
    return base.isPresent()
        ? base.get().story().map(PaperBox::size)
        : asked.or(() -> Optional.of(CommonPractice.SMALL_POCKET));
  }
}
