package org.daymount.pipeline;

import java.util.List;
import org.daymount.album.AlbumFile;
import org.daymount.album.DayPage;
import org.daymount.card.StoryCard;
import org.daymount.page.DayContents;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;

/** The picks and stories of a month as things that lie on pages. */
final class PageContents {
  private PageContents() {}

  /**
   * @param album its ready-made pages
   */
  static List<DayContents> of(List<DayPick> picks, Stories stories, AlbumFile album) {
    return picks.stream()
        .filter(pick -> pick.page().kind() != DayPage.Kind.LEFT_OUT)
        .map(
            pick ->
                new DayContents(
                    pick.page().day(),
                    pick.spaces().stream().map(SpacePick::space).toList(),
                    pick.spaces().stream().map(SpacePick::direction).toList(),
                    stories.cards(pick.page().day()).stream().map(StoryCard::size).toList(),
                    pick.page().form(),
                    pick.page().base().flatMap(album::base),
                    hasStoryByHand(pick.page(), stories)))
        .toList();
  }

  private static boolean hasStoryByHand(DayPage page, Stories stories) {
    return stories.cards(page.day()).isEmpty()
        && page.story().filter(story -> !story.isBlank()).isPresent();
  }
}
