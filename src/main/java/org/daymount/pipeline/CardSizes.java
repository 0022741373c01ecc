package org.daymount.pipeline;

import java.util.Optional;
import org.daymount.album.AlbumFile;
import org.daymount.album.BasePage;
import org.daymount.album.CommonPractice;
import org.daymount.album.DayPage;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * How large each day's story card is.
 *
 * @param asked for every day, by --cards; empty: only where the note asks for a card
 */
record CardSizes(Optional<PaperSize> asked, AlbumFile album) {
  static CardSizes of(Request request) {
    return new CardSizes(request.cards(), request.pages().album());
  }

  /** Empty for a day without a card. A ready-made page has its own place for the story. */
  Optional<PaperSize> of(DayPage page) {
    if (page.kind() == DayPage.Kind.LEFT_OUT || asked.isEmpty() && !page.storyCard()) {
      return Optional.empty();
    }
    Optional<BasePage> base = page.base().flatMap(album::base);
    return base.isPresent()
        ? base.get().story().map(PaperBox::size)
        : asked.or(() -> Optional.of(CommonPractice.SMALL_POCKET));
  }
}
