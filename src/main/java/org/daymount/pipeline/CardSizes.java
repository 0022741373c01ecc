package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.album.AlbumFile;
import org.daymount.album.BasePage;
import org.daymount.album.CommonPractice;
import org.daymount.album.DayPage;
import org.daymount.page.AlbumLayout;
import org.daymount.page.AlbumPage;
import org.daymount.page.PageKinds;
import org.daymount.page.Place;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * How large each day's story card is.
 *
 * @param asked for every day, by --cards; empty: only where the note asks for a card
 * @param left the place that is left for the story on a day's page, where cards take it
 * @param sheet that cards are cut from
 */
record CardSizes(
    Optional<PaperSize> asked, AlbumFile album, Map<LocalDate, PaperSize> left, PaperSize sheet) {
  static CardSizes of(Request request) {
    return new CardSizes(request, Map.of());
  }

  private CardSizes(Request request, Map<LocalDate, PaperSize> left) {
    this(
        request.cards().map(size -> lying(size, request.pages().page())),
        request.pages().album(),
        left,
        request.settings().sheets().usable());
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
    return new CardSizes(request, left);
  }

  /** A size is named short side first; where its pockets lie, so does the card. */
  private static PaperSize lying(PaperSize size, PaperSize page) {
    List<Orientation> ways =
        PageKinds.of(page).stream()
            .flatMap(kind -> kind.directionOf(size).stream())
            .distinct()
            .toList();
    return size.direction() == Orientation.PORTRAIT && ways.size() == 1
        ? size.towards(ways.get(0))
        : size;
  }

  /** A card is never joined from two sheets: in a larger place it is as large as one. */
  private PaperSize onOneSheet(PaperSize place) {
    PaperSize lying = sheet.towards(place.direction());
    return new PaperSize(place.width().min(lying.width()), place.height().min(lying.height()));
  }

  /** Empty for a day without a card. A ready-made page has its own place for the story. */
  Optional<PaperSize> of(DayPage page) {
    return placed(page).map(this::onOneSheet);
  }

  private Optional<PaperSize> placed(DayPage page) {
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
