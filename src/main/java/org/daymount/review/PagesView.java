package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daymount.output.PageDrawing;
import org.daymount.page.AlbumLayout;
import org.daymount.page.AlbumPage;
import org.daymount.page.Leaf;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;
import org.daymount.unit.Length;

/** The album's pages as they will look: the same drawings as in pages.pdf, leaf by leaf. */
final class PagesView {
  private final ThumbnailCache thumbnails;
  private final CardView cards;

  PagesView(ThumbnailCache thumbnails, CardView cards) {
    this.thumbnails = thumbnails;
    this.cards = cards;
  }

  /** The album. */
  record Pages(
      Length width, Length height, int firstWeekday, List<Page> pages, List<Leaf> leaves) {}

  /**
   * A page.
   *
   * @param kind of page, or the ready-made one that it is
   */
  record Page(LocalDate day, String kind, ArrayNode drawing) {}

  Pages of(Editing.Now now) {
    AlbumLayout layout = now.pages().layout();
    Map<LocalDate, DayPick> picks = new HashMap<>();
    now.picked().picks().forEach(pick -> picks.put(pick.page().day(), pick));
    List<Page> pages = new ArrayList<>();
    for (AlbumPage page : layout.pages()) {
      ArrayNode drawing = JsonNodeFactory.instance.arrayNode();
      draw(page, picks.get(page.day()), now, drawing);
      pages.add(new Page(page.day(), page.base().orElse(page.kind()), drawing));
    }
    return new Pages(
        layout.settings().page().width(),
        layout.settings().page().height(),
        layout.settings().firstWeekday().getValue(),
        pages,
        layout.leaves());
  }

  private void draw(AlbumPage page, DayPick pick, Editing.Now now, ArrayNode steps) {
    List<SpacePick> spaces = pick.spaces();
    PageDrawing drawing =
        new PageDrawing(
            now.pages().layout().settings().page(),
            page,
            spaces,
            pick.page().story(),
            now.pages().cards(page.day()),
            "missing");
    try {
      drawing.draw(new DrawnPage(steps, thumbnails, cards));
    } catch (IOException e) {
      throw new UncheckedIOException("nothing is read or written here", e);
    }
  }
}
