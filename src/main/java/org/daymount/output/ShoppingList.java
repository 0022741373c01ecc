package org.daymount.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.month.Settings;
import org.daymount.page.Leaf;
import org.daymount.page.PageKind;
import org.daymount.page.Place;
import org.daymount.sheet.MatPlan;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/** What the month needs from the shop and from the drawer: things that exist. */
final class ShoppingList {
  private final Month month;

  ShoppingList(Month month) {
    this.month = month;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(prints());
    if (month.settings().paper() != Settings.Paper.SHEET) {
      lines.add("Or photo paper for sheets.pdf, printed at 100%.");
    }
    lines.addAll(leaves());
    lines.addAll(mats());
    lines.addAll(stories());
    lines.addAll(fillers());
    lines.add("Metal ruler, cutting mat, knife or trimmer; photo-safe glue or corners.");
    return lines;
  }

  private List<String> prints() {
    if (month.settings().margin().isPositive()) {
      return month.sheets().isEmpty()
          ? List.of()
          : List.of(
              DayWords.counted(month.sheets().size(), "sheet")
                  + " of photo paper, "
                  + sized(month.settings().sheet())
                  + ", for sheets.pdf, printed at 100%.");
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (MonthSheet sheet : month.sheets()) {
      counts.merge(sized(sheet.sheet().size()), 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .map(
            e ->
                DayWords.counted(e.getValue(), "print")
                    + " of "
                    + e.getKey()
                    + ", without enlarging or cropping.")
        .toList();
  }

  /** {@code 3 page protectors of two 4x6 for the days 1, 4+5, 12 (4+5 share one).} */
  List<String> leaves() {
    Map<String, List<Leaf>> kinds =
        month.album().leaves().stream()
            .collect(Collectors.groupingBy(Leaf::kind, LinkedHashMap::new, Collectors.toList()));
    List<String> lines = new ArrayList<>();
    kinds.forEach(
        (kind, leaves) ->
            lines.add(
                leaf(kind, leaves.size())
                    + (leaves.size() == 1 && !days(leaves.get(0)).contains("+")
                        ? ": day "
                        : ": days ")
                    + leaves.stream().map(ShoppingList::days).collect(Collectors.joining(", "))
                    + "."));
    long bare =
        month.album().leaves().stream()
            .filter(leaf -> leaf.front().isEmpty() || leaf.back().isEmpty())
            .count();
    if (bare > 0) {
      lines.add(
          "(Days joined by + are the two sides of one; "
              + DayWords.counted((int) bare, "side")
              + " of these "
              + (bare == 1 ? "stays" : "stay")
              + " empty.)");
    }
    return lines;
  }

  private String leaf(String kind, int count) {
    return kind.equals(PageKind.FULL)
        ? DayWords.counted(count, "whole page")
            + " of "
            + month.units().sized(month.album().settings().page())
            + " to glue on, in a plain protector"
        : DayWords.counted(count, "page protector") + " with pockets " + month.units().kind(kind);
  }

  private static String days(Leaf leaf) {
    return Stream.of(leaf.front(), leaf.back())
        .flatMap(Optional::stream)
        .map(day -> Integer.toString(day.getDayOfMonth()))
        .collect(Collectors.joining("+"));
  }

  private List<String> mats() {
    Map<String, PaperSize> mats = MatCard.mats(month);
    if (mats.isEmpty()) {
      return List.of();
    }
    MatPlan plan = MatCard.plan(month);
    List<String> lines = new ArrayList<>();
    Map<String, Integer> counts = new TreeMap<>();
    mats.values().forEach(mat -> counts.merge(sized(mat), 1, Integer::sum));
    counts.forEach(
        (size, count) -> lines.add(DayWords.counted(count, "mat") + " of " + size + "."));
    if (plan.cardSheets() > 0) {
      lines.add(
          "For the mats: "
              + DayWords.counted(plan.cardSheets(), "sheet")
              + " of card, "
              + month.units().sized(MatPlan.CARD)
              + "; how to cut it stands after the sheets.");
    }
    plan.tooLarge().forEach(mat -> lines.add("A mat of " + sized(mat) + " is larger than that."));
    return lines;
  }

  private List<String> stories() {
    List<String> lines = new ArrayList<>();
    String printed = counts(place -> place.what() == Place.What.STORY && place.index().isPresent());
    String byHand = counts(place -> place.what() == Place.What.STORY && place.index().isEmpty());
    if (!printed.isEmpty()) {
      lines.add("Story cards, printed with the pictures: " + printed + ".");
    }
    if (!byHand.isEmpty()) {
      lines.add(
          "Cards or paper for the stories that you write by hand: "
              + byHand
              + " (--cards 3x4 prints them instead).");
    }
    return lines;
  }

  private List<String> fillers() {
    String empty = counts(place -> place.what() == Place.What.FREE);
    return empty.isEmpty()
        ? List.of()
        : List.of("To fill the pockets left empty, if you like: " + empty + ".");
  }

  /** {@code 12 of 4x6, 3 of 3x4}, the largest first. */
  private String counts(Predicate<Place> wanted) {
    Map<PaperSize, Integer> counts = new LinkedHashMap<>();
    month.album().pages().stream()
        .flatMap(page -> page.places().stream())
        .filter(wanted)
        .map(place -> place.box().size().towards(Orientation.PORTRAIT))
        .sorted(
            (a, b) ->
                a.squareInches() == b.squareInches()
                    ? a.toString().compareTo(b.toString())
                    : Double.compare(b.squareInches(), a.squareInches()))
        .forEach(size -> counts.merge(size, 1, Integer::sum));
    return counts.entrySet().stream()
        .map(e -> e.getValue() + " of " + sized(e.getKey()))
        .collect(Collectors.joining(", "));
  }

  private String sized(PaperSize size) {
    return month.units().sized(size.towards(Orientation.PORTRAIT));
  }
}
