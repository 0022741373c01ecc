package org.daymount.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.daymount.album.PageForm;
import org.daymount.unit.Units;

/** Says of a day's spaces and cards that no page holds them, in words a person would use. */
final class Misfit {
  private final PageFitter fitter;
  private final Units units;

  Misfit(PageFitter fitter, Units units) {
    this.fitter = fitter;
    this.units = units;
  }

  /** What does not fit, and the nearest that does, in words. */
  String whyNot(List<PageItem> items) {
    String asked = words(items) + (items.size() == 1 ? " does" : " do") + " not fit";
    List<PageItem> freed = items.stream().map(PageItem::eitherWay).toList();
    List<Integer> held =
        fitter.fits(freed).isEmpty() ? fitter.mostThatFits(freed) : PageFitter.all(freed);
    if (held.isEmpty()) {
      return asked
          + " on a "
          + units.sized(fitter.page())
          + " page, in no way; ask for a smaller size";
    }
    Arrangement found = fitter.fits(PageFitter.chosen(freed, held)).get(0);
    List<PageItem> lying = new ArrayList<>();
    for (int i = 0; i < held.size(); i++) {
      PageItem item = freed.get(held.get(i));
      lying.add(item.isCard() ? item : item.lying(found.boxes().get(i).size().direction()));
    }
    String nearest = words(lying) + on(found.kind());
    String turned =
        fitter.fits(items.stream().map(PageItem::onSideIfNeeded).toList()).isEmpty()
            ? ""
            : "; or write on its side, for a picture that lies turned";
    return asked
        + " on a "
        + units.sized(fitter.page())
        + " page; the nearest that does: "
        + nearest
        + turned;
  }

  /** What does not fit on a page of the form that was asked for, in words. */
  String notOn(PageForm form, List<PageItem> items) {
    return words(items) + (items.size() == 1 ? " does" : " do") + " not fit on a " + form.text();
  }

  private String on(PageKind kind) {
    return kind.isFull()
        ? " (glued on a full page)"
        : " (a page of " + units.kind(kind.name()) + ")";
  }

  private String words(List<PageItem> items) {
    Map<String, Long> counts =
        items.stream()
            .map(item -> item.words(units))
            .collect(
                Collectors.groupingBy(word -> word, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .map(
            entry ->
                entry.getValue() > 1 ? entry.getValue() + " × " + entry.getKey() : entry.getKey())
        .collect(Collectors.joining(" and "));
  }
}
