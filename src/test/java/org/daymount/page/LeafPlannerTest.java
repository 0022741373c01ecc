package org.daymount.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LeafPlannerTest {
  private static final Map<String, Integer> POCKETS = new LinkedHashMap<>();

  static {
    POCKETS.put("one 6x8", 1);
    POCKETS.put("two 4x6", 2);
    POCKETS.put("four 3x4", 4);
    POCKETS.put("full", 0);
  }

  @Test
  void neighboursShareALeafWhereOneKindServesBoth() {
    var plan =
        new LeafPlanner(POCKETS, false)
            .plan(List.of(page("two 4x6", 0), page("two 4x6", 1), page("full", 0)));
    assertEquals(
        List.of(new LeafPlanner.Choice(0, 2, "two 4x6"), new LeafPlanner.Choice(2, 1, "full")),
        plan);
  }

  @Test
  void aMonthThatStartsOnTheLeftHasItsFirstDayAloneOnALeaf() {
    var pages = List.of(page("full", 0), page("full", 0), page("full", 0));
    assertEquals(
        List.of(new LeafPlanner.Choice(0, 1, "full"), new LeafPlanner.Choice(1, 2, "full")),
        new LeafPlanner(POCKETS, true).plan(pages));
  }

  /** Against every way to divide the days, on months drawn with a fixed seed. */
  @Test
  void noPlanHasFewerLeavesOrAsManyAndFewerEmptyPockets() {
    Random random = new Random(16);
    for (int month = 0; month < 300; month++) {
      List<LeafPlanner.Candidate> pages = new ArrayList<>();
      int days = 1 + random.nextInt(8);
      for (int day = 0; day < days; day++) {
        Map<String, Integer> fits = new LinkedHashMap<>();
        for (String kind : POCKETS.keySet()) {
          if (random.nextInt(3) == 0) {
            fits.put(kind, random.nextInt(POCKETS.get(kind) + 1));
          }
        }
        if (fits.isEmpty()) {
          fits.put("full", 0);
        }
        pages.add(new LeafPlanner.Candidate(fits));
      }
      boolean alone = random.nextBoolean();
      List<LeafPlanner.Choice> plan = new LeafPlanner(POCKETS, alone).plan(pages);
      int[] found = cost(plan, pages);
      int[] best = best(pages, 0, alone);
      assertEquals(List.of(best[0], best[1]), List.of(found[0], found[1]), pages + " " + plan);
    }
  }

  private static int[] cost(List<LeafPlanner.Choice> plan, List<LeafPlanner.Candidate> pages) {
    int empty = 0;
    int next = 0;
    for (LeafPlanner.Choice choice : plan) {
      assertEquals(next, choice.first());
      next += choice.pages();
      empty += pages.get(choice.first()).emptyPockets().get(choice.kind());
      empty +=
          choice.pages() == 2
              ? pages.get(choice.first() + 1).emptyPockets().get(choice.kind())
              : POCKETS.get(choice.kind());
    }
    assertEquals(pages.size(), next);
    return new int[] {plan.size(), empty};
  }

  private static int[] best(List<LeafPlanner.Candidate> pages, int from, boolean alone) {
    if (from == pages.size()) {
      return new int[] {0, 0};
    }
    int[] best = {Integer.MAX_VALUE, 0};
    for (var kind : pages.get(from).emptyPockets().entrySet()) {
      int[] rest = best(pages, from + 1, alone);
      best = less(best, rest[0] + 1, rest[1] + kind.getValue() + POCKETS.get(kind.getKey()));
      if (from + 1 < pages.size() && !(alone && from == 0)) {
        Integer back = pages.get(from + 1).emptyPockets().get(kind.getKey());
        if (back != null) {
          int[] after = best(pages, from + 2, alone);
          best = less(best, after[0] + 1, after[1] + kind.getValue() + back);
        }
      }
    }
    return best;
  }

  private static int[] less(int[] best, int leaves, int empty) {
    return leaves < best[0] || leaves == best[0] && empty < best[1]
        ? new int[] {leaves, empty}
        : best;
  }

  private static LeafPlanner.Candidate page(String kind, int empty) {
    return new LeafPlanner.Candidate(Map.of(kind, empty));
  }
}
