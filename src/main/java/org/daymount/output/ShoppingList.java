package org.daymount.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.album.Space;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSheet;
import org.daymount.month.MonthSpace;
import org.daymount.month.Settings;
import org.daymount.sheet.MatPlan;
import org.daymount.sheet.PieceContent;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/** What the month needs from the shop and from the drawer. */
final class ShoppingList {
  private static final List<String> WORDS =
      List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  private final Month month;

  ShoppingList(Month month) {
    this.month = month;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>(prints());
    if (month.settings().paper() != Settings.Paper.SHEET) {
      lines.add("Or photo paper for sheets.pdf, printed at 100%.");
    }
    lines.addAll(mats());
    lines.addAll(protectors());
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
                  + name(month.settings().sheet())
                  + " in, for sheets.pdf, printed at 100%.");
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (MonthSheet sheet : month.sheets()) {
      counts.merge(name(sheet.sheet().size()), 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .map(
            e ->
                DayWords.counted(e.getValue(), "print")
                    + " of "
                    + e.getKey()
                    + " in, without enlarging or cropping.")
        .toList();
  }

  private List<String> mats() {
    List<PaperSize> mats = new ArrayList<>();
    Map<String, Integer> counts = new TreeMap<>();
    for (MonthDay day : month.days()) {
      for (MonthSpace space : day.spaces()) {
        Space made = space.pick().space();
        if (made.onMat()) {
          mats.add(made.size(space.pick().direction()));
          counts.merge(made.name(), 1, Integer::sum);
        }
      }
    }
    if (mats.isEmpty()) {
      return List.of();
    }
    MatPlan plan = MatPlan.of(mats);
    List<String> lines = new ArrayList<>();
    counts.forEach(
        (size, count) -> lines.add(DayWords.counted(count, "mat") + " of " + size + " in."));
    if (plan.cardSheets() > 0) {
      lines.add(
          "For the mats: "
              + DayWords.counted(plan.cardSheets(), "sheet")
              + " of card, "
              + MatPlan.CARD
              + " in.");
    }
    plan.tooLarge().forEach(mat -> lines.add("A mat of " + name(mat) + " in is larger than that."));
    return lines;
  }

  /**
   * A protector has two sides, and a day takes one side (common practice, no source); two days
   * share one when they follow each other and need the same pockets.
   */
  private List<String> protectors() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    String front = "";
    for (MonthDay day : month.days()) {
      String kind = pockets(day);
      if (kind.isEmpty()) {
        continue;
      }
      if (kind.equals(front)) {
        front = "";
      } else {
        counts.merge(kind, 1, Integer::sum);
        front = kind;
      }
    }
    return counts.entrySet().stream()
        .map(e -> DayWords.counted(e.getValue(), "page protector") + " with " + e.getKey() + ".")
        .toList();
  }

  /** {@code one 4x6 pocket and two 3x4 pockets}; empty for a day without a page. */
  private String pockets(MonthDay day) {
    Map<String, Integer> pockets = new TreeMap<>(java.util.Comparator.reverseOrder());
    day.spaces().forEach(s -> pockets.merge(s.pick().space().name(), 1, Integer::sum));
    cards(day.day()).forEach(size -> pockets.merge(name(size), 1, Integer::sum));
    return day.state() == MonthDay.State.LEFT_OUT
        ? ""
        : String.join(
            " and ",
            pockets.entrySet().stream()
                .map(
                    e -> inWords(e.getValue()) + " " + e.getKey() + plural(e.getValue(), " pocket"))
                .toList());
  }

  private List<PaperSize> cards(LocalDate day) {
    return month.sheets().stream()
        .flatMap(sheet -> sheet.content().values().stream())
        .filter(content -> content.day().equals(day))
        .map(PieceContent::card)
        .flatMap(java.util.Optional::stream)
        .map(card -> card.size())
        .toList();
  }

  /** Small numbers in words, because a size follows. */
  private static String inWords(int count) {
    return count < WORDS.size() ? WORDS.get(count) : Integer.toString(count);
  }

  private static String plural(int count, String one) {
    return count == 1 ? one : one + "s";
  }

  private static String name(PaperSize size) {
    return size.towards(Orientation.PORTRAIT).toString();
  }
}
