package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.output.PageDrawing;
import org.daymount.page.AlbumLayout;
import org.daymount.page.AlbumPage;
import org.daymount.page.Leaf;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;

/** The album's pages as they will look: the same drawings as in pages.pdf, leaf by leaf. */
final class PagesView {
  private final ThumbnailCache shelf;
  private final CardView cards;

  PagesView(ThumbnailCache shelf, CardView cards) {
    this.shelf = shelf;
    this.cards = cards;
  }

  ObjectNode of(Editing.Now now) {
    AlbumLayout layout = now.pages().layout();
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("width", layout.settings().page().width().inInches());
    root.put("height", layout.settings().page().height().inInches());
    root.put("firstWeekday", layout.settings().firstWeekday().getValue());
    Map<LocalDate, DayPick> picks = new HashMap<>();
    now.picked().picks().forEach(pick -> picks.put(pick.page().day(), pick));
    ArrayNode pages = root.putArray("pages");
    for (AlbumPage page : layout.pages()) {
      ObjectNode node = pages.addObject();
      node.put("day", page.day().toString());
      node.put("kind", page.base().orElse(page.kind()));
      draw(page, picks.get(page.day()), now, node.putArray("drawing"));
    }
    ArrayNode leaves = root.putArray("leaves");
    for (Leaf leaf : layout.leaves()) {
      ObjectNode node = leaves.addObject();
      node.put("number", leaf.number());
      node.put("kind", leaf.kind());
      node.put("front", text(leaf.front()));
      node.put("back", text(leaf.back()));
    }
    return root;
  }

  private static String text(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse(null);
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
      drawing.draw(new DrawnPage(steps, shelf, cards));
    } catch (IOException e) {
      throw new UncheckedIOException("nothing is read or written here", e);
    }
  }
}
