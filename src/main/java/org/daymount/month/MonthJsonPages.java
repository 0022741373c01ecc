package org.daymount.month;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import org.daymount.page.AlbumLayout;
import org.daymount.page.AlbumPage;
import org.daymount.page.Leaf;
import org.daymount.page.Place;
import org.daymount.unit.PaperBox;

/** pages[] and leaves[]; lengths are inches on the page. */
final class MonthJsonPages {
  private MonthJsonPages() {}

  static ArrayNode pages(AlbumLayout album) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (AlbumPage page : album.pages()) {
      ObjectNode node = list.addObject();
      node.put("day", page.day().toString());
      node.put("kind", page.kind());
      page.base().ifPresent(base -> node.put("base", base));
      node.put("leaf", page.leaf());
      node.put("side", page.side().word());
      ArrayNode pockets = node.putArray("pockets");
      page.pockets().forEach(box -> box(pockets.addObject(), box));
      ArrayNode places = node.putArray("places");
      page.places().forEach(place -> place(places.addObject(), place));
    }
    return list;
  }

  static ArrayNode leaves(AlbumLayout album) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (Leaf leaf : album.leaves()) {
      ObjectNode node = list.addObject();
      node.put("number", leaf.number());
      node.put("kind", leaf.kind());
      node.put("front", leaf.front().map(LocalDate::toString).orElse(null));
      node.put("back", leaf.back().map(LocalDate::toString).orElse(null));
    }
    return list;
  }

  private static void place(ObjectNode node, Place place) {
    node.put("what", place.what().word());
    box(node, place.box());
    place
        .index()
        .ifPresent(index -> node.put(place.what() == Place.What.STORY ? "card" : "space", index));
    node.put("turned", place.turned());
  }

  private static void box(ObjectNode node, PaperBox box) {
    node.put("x", MonthJson.inches(box.x()));
    node.put("y", MonthJson.inches(box.y()));
    node.put("width", MonthJson.inches(box.width()));
    node.put("height", MonthJson.inches(box.height()));
  }
}
