package org.daymount.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;

/**
 * The cuts of many sheets in an order that sets the trimmer seldom: first one cut through every
 * whole sheet, each setting once, then the cuts of the parts. A cut never comes before the one that
 * frees its part, so the order can always be followed.
 *
 * <p>The next setting is the one that makes most cuts, of those that need not be set again later if
 * there are any: a greedy order, not proven to be the shortest.
 */
public final class CuttingBatches {
  /** A narrower strip cannot be held under a trimmer's clamp (common practice, no source). */
  private static final Length NARROWEST = Length.inchFraction(1, 2);

  /** The edge of the part in hand that lies at the trimmer's stop. */
  public enum Edge {
    LEFT,
    TOP,
    RIGHT,
    BOTTOM
  }

  /**
   * A cut as it is made.
   *
   * @param sheet index in the list of sheets
   * @param part what is in hand, on its sheet
   */
  public record Step(int sheet, Cut cut, PaperBox part, Edge from) {}

  /**
   * Cuts that are made without setting the trimmer anew.
   *
   * @param whole whether whole sheets are cut; else parts of them
   * @param setting distance from the edge at the stop to the blade
   * @param steps in an order that can be followed
   */
  public record Batch(boolean whole, Length setting, List<Step> steps) {
    public Batch {
      steps = List.copyOf(steps);
    }
  }

  private final List<Sheet> sheets;
  private final List<Waiting> waiting = new ArrayList<>();
  private final List<Batch> batches = new ArrayList<>();

  private CuttingBatches(List<Sheet> sheets) {
    this.sheets = sheets;
    for (int sheet = 0; sheet < sheets.size(); sheet++) {
      addCuts(sheet);
    }
  }

  /** Every cut of the sheets, once. */
  public static List<Batch> of(List<Sheet> sheets) {
    CuttingBatches order = new CuttingBatches(List.copyOf(sheets));
    order.makeAll(true);
    order.makeAll(false);
    return List.copyOf(order.batches);
  }

  /**
   * A cut still to be made.
   *
   * @param frees the cut that has to come before; empty for a whole sheet
   */
  private record Waiting(int sheet, Cut cut, PaperBox part, Optional<Waiting> frees) {
    Length near() {
      return cut.axis() == Cut.Axis.X ? cut.at().minus(part.x()) : cut.at().minus(part.y());
    }

    Length far() {
      return cut.axis() == Cut.Axis.X
          ? part.right().minus(cut.at())
          : part.bottom().minus(cut.at());
    }

    List<Length> settings() {
      List<Length> wide =
          List.of(near(), far()).stream().filter(s -> !NARROWEST.isLongerThan(s)).toList();
      return wide.isEmpty() ? List.of(near().max(far())) : wide;
    }

    Step at(Length setting) {
      boolean upDown = cut.axis() == Cut.Axis.X;
      Edge edge =
          near().equals(setting)
              ? (upDown ? Edge.LEFT : Edge.TOP)
              : (upDown ? Edge.RIGHT : Edge.BOTTOM);
      return new Step(sheet, cut, part, edge);
    }
  }

  private void addCuts(int sheet) {
    record Freed(PaperBox box, Optional<Waiting> by) {}
    List<Freed> parts = new ArrayList<>();
    parts.add(
        new Freed(
            PaperBox.at(Length.ZERO, Length.ZERO, sheets.get(sheet).size()), Optional.empty()));
    for (Cut cut : sheets.get(sheet).cuts()) {
      Freed part =
          parts.stream()
              .filter(p -> cut.runsThrough(p.box()))
              .findFirst()
              .orElseThrow(
                  () -> new IllegalArgumentException("no part is cut edge to edge by " + cut));
      Waiting made = new Waiting(sheet, cut, part.box(), part.by());
      waiting.add(made);
      parts.remove(part);
      cut.halves(part.box()).forEach(half -> parts.add(new Freed(half, Optional.of(made))));
    }
  }

  private void makeAll(boolean whole) {
    Predicate<Waiting> belongs = cut -> !whole || cut.frees().isEmpty();
    while (waiting.stream().anyMatch(belongs)) {
      Length setting = best(belongs);
      List<Waiting> made = possible(setting, belongs);
      waiting.removeAll(made);
      batches.add(new Batch(whole, setting, made.stream().map(cut -> cut.at(setting)).toList()));
    }
  }

  private Length best(Predicate<Waiting> belongs) {
    TreeSet<Length> settings = new TreeSet<>(Comparator.reverseOrder());
    waiting.stream().filter(belongs).forEach(cut -> settings.addAll(cut.settings()));
    Length best = Length.ZERO;
    int most = 0;
    boolean bestIsLast = false;
    for (Length setting : settings) {
      int cuts = possible(setting, belongs).size();
      boolean isLast = cuts == waiting.stream().filter(c -> c.settings().contains(setting)).count();
      if (cuts > 0 && (isLast && !bestIsLast || isLast == bestIsLast && cuts > most)) {
        best = setting;
        most = cuts;
        bestIsLast = isLast;
      }
    }
    return best;
  }

  /** All that this setting can cut now, and what it can cut of the parts freed by that. */
  private List<Waiting> possible(Length setting, Predicate<Waiting> belongs) {
    List<Waiting> made = new ArrayList<>();
    for (Waiting cut : waiting) { // a part's cuts stand after the one that frees it
      boolean isFree = cut.frees().isEmpty() || isMade(cut.frees().get(), made);
      if (isFree && belongs.test(cut) && cut.settings().contains(setting)) {
        made.add(cut);
      }
    }
    return made;
  }

  private boolean isMade(Waiting cut, List<Waiting> now) {
    return now.contains(cut) || !waiting.contains(cut);
  }
}
