package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.card.StoryCard;
import org.daymount.page.AlbumLayout;
import org.daymount.page.PagePlanner;

/** Where everything will lie in the album, cards and all; no sheet is packed yet. */
public final class PlannedPages {
  static final String NO_PLACE_FOR_CARD = "the pictures leave no place for the story card";

  private final PagePlanner.Plan plan;
  private final Stories stories;

  PlannedPages(PagePlanner.Plan plan, Stories stories) {
    this.plan = plan;
    this.stories = stories;
  }

  public AlbumLayout layout() {
    return plan.layout();
  }

  /** Per day, what does not fit on its page, with the nearest that does. */
  public Map<LocalDate, String> misfits() {
    Map<LocalDate, String> misfits = new TreeMap<>(plan.misfits());
    plan.withoutCards().forEach(day -> misfits.put(day, NO_PLACE_FOR_CARD));
    return misfits;
  }

  /** The day's story cards, in their order. */
  public List<StoryCard> cards(LocalDate day) {
    return stories.cards(day);
  }

  PagePlanner.Plan plan() {
    return plan;
  }

  Stories stories() {
    return stories;
  }
}
