package org.daymount.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Pages onto leaves, days in order: the fewest leaves, then the fewest empty pockets. Exact: the
 * best plan from each day on is made from the best plans from later days on.
 */
final class LeafPlanner {
  /**
   * @param emptyPockets per kind that will do for the page, how many of its pockets stay empty
   */
  record Candidate(Map<String, Integer> emptyPockets) {}

  /**
   * @param first index of its first page
   * @param pages one or two
   */
  record Choice(int first, int pages, String kind) {}

  private record Cost(int leaves, int empty) implements Comparable<Cost> {
    @Override
    public int compareTo(Cost other) {
      return leaves != other.leaves
          ? Integer.compare(leaves, other.leaves)
          : Integer.compare(empty, other.empty);
    }
  }

  private final Map<String, Integer> pockets;
  private final boolean firstAlone;

  /**
   * @param pockets of one side, per kind; of equally good kinds the one named first is taken
   * @param firstAlone whether the first page has a leaf's back to itself
   */
  LeafPlanner(Map<String, Integer> pockets, boolean firstAlone) {
    this.pockets = pockets;
    this.firstAlone = firstAlone;
  }

  List<Choice> plan(List<Candidate> pages) {
    int n = pages.size();
    Cost[] costs = new Cost[n + 1];
    Choice[] choices = new Choice[n];
    costs[n] = new Cost(0, 0);
    for (int i = n - 1; i >= 0; i--) {
      for (String kind : pockets.keySet()) {
        Integer front = pages.get(i).emptyPockets().get(kind);
        if (front == null) {
          continue;
        }
        offer(costs, choices, new Choice(i, 1, kind), front + pockets.get(kind));
        boolean mayShare = i + 1 < n && !(i == 0 && firstAlone);
        Integer back = mayShare ? pages.get(i + 1).emptyPockets().get(kind) : null;
        if (back != null) {
          offer(costs, choices, new Choice(i, 2, kind), front + back);
        }
      }
      if (choices[i] == null) {
        throw new IllegalArgumentException("no kind of page will do for page " + i);
      }
    }
    List<Choice> plan = new ArrayList<>();
    for (int i = 0; i < n; i += choices[i].pages()) {
      plan.add(choices[i]);
    }
    return Collections.unmodifiableList(plan);
  }

  private static void offer(Cost[] costs, Choice[] choices, Choice choice, int empty) {
    int i = choice.first();
    Cost rest = costs[i + choice.pages()];
    Cost cost = new Cost(rest.leaves() + 1, rest.empty() + empty);
    if (costs[i] == null || cost.compareTo(costs[i]) < 0) {
      costs[i] = cost;
      choices[i] = choice;
    }
  }
}
