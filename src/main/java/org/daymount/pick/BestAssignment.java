package org.daymount.pick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jgrapht.alg.interfaces.MatchingAlgorithm.Matching;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * The best way to give each row (a space) a different column (a picture), or none: the assignment
 * problem (Kuhn 1955, Munkres 1957), solved by JGraphT; and the next best ways after it, by
 * splitting the solutions that are left (Murty 1968).
 */
final class BestAssignment {
  /** A row's column when it gets none. */
  static final int NONE = -1;

  private static final double FORBIDDEN = 1e6;
  private static final double NO_COLUMN = 1e3; // worths stay far below; a forbidden pair costs more

  /**
   * @param columns per row, or {@link #NONE}
   * @param worth sum over the rows that got a column
   */
  record Assignment(List<Integer> columns, double worth) {
    Assignment {
      columns = List.copyOf(columns);
    }
  }

  private BestAssignment() {}

  /**
   * @param worth rows by columns; NaN where the pair is impossible
   * @param howMany at most so many assignments, best first
   */
  static List<Assignment> ranked(double[][] worth, int howMany) {
    List<Assignment> found = new ArrayList<>();
    List<Node> open = new ArrayList<>();
    open.add(Node.solve(worth, worth));
    while (found.size() < howMany && !open.isEmpty()) {
      Node best = open.get(0);
      for (Node node : open) {
        if (node.value > best.value) {
          best = node;
        }
      }
      open.remove(best);
      found.add(best.assignment);
      open.addAll(best.split(worth));
    }
    return found;
  }

  /** One part of the space of solutions, with its best member. */
  private record Node(double[][] allowed, Assignment assignment, double value) {

    static Node solve(double[][] allowed, double[][] worth) {
      int[] promising = promisingColumns(allowed);
      Node best = solveAll(only(allowed, promising), only(worth, promising));
      List<Integer> columns = new ArrayList<>();
      for (int column : best.assignment.columns) {
        columns.add(column == NONE ? NONE : promising[column]);
      }
      return new Node(allowed, new Assignment(columns, best.assignment.worth), best.value);
    }

    /**
     * Each row's best columns, as many as there are rows: the others take at most all but one of
     * them, so a best assignment needs no more. A day of a hundred pictures is as quick as one of a
     * few.
     */
    private static int[] promisingColumns(double[][] allowed) {
      SortedSet<Integer> promising = new TreeSet<>();
      for (double[] row : allowed) {
        IntStream.range(0, row.length)
            .filter(column -> !Double.isNaN(row[column]))
            .boxed()
            .sorted(Comparator.comparingDouble((Integer column) -> -row[column]))
            .limit(allowed.length)
            .forEach(promising::add);
      }
      return promising.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double[][] only(double[][] matrix, int[] columns) {
      return Arrays.stream(matrix)
          .map(row -> Arrays.stream(columns).mapToDouble(column -> row[column]).toArray())
          .toArray(double[][]::new);
    }

    private static Node solveAll(double[][] allowed, double[][] worth) {
      int rows = allowed.length;
      int columns = rows == 0 ? 0 : allowed[0].length;
      int size = rows + columns; // each row may also take a "none" of its own
      SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
          new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
      Set<Integer> left = new LinkedHashSet<>();
      Set<Integer> right = new LinkedHashSet<>();
      for (int i = 0; i < size; i++) {
        left.add(i);
        right.add(size + i);
        graph.addVertex(i);
        graph.addVertex(size + i);
      }
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          graph.setEdgeWeight(graph.addEdge(i, size + j), cost(allowed, i, j));
        }
      }
      Matching<Integer, DefaultWeightedEdge> matching =
          new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, left, right).getMatching();
      Integer[] chosen = new Integer[rows];
      for (DefaultWeightedEdge edge : matching.getEdges()) {
        int i = graph.getEdgeSource(edge);
        int j = graph.getEdgeTarget(edge) - size;
        if (i < rows) {
          chosen[i] = j < columns && !Double.isNaN(allowed[i][j]) ? j : NONE;
        }
      }
      double value = 0;
      double sum = 0;
      for (int i = 0; i < rows; i++) {
        if (chosen[i] == NONE) {
          value -= NO_COLUMN;
        } else {
          value += allowed[i][chosen[i]];
          sum += worth[i][chosen[i]];
        }
      }
      return new Node(allowed, new Assignment(List.of(chosen), sum), value);
    }

    private static double cost(double[][] allowed, int i, int j) {
      int rows = allowed.length;
      int columns = rows == 0 ? 0 : allowed[0].length;
      if (i < rows && j < columns) {
        return Double.isNaN(allowed[i][j]) ? FORBIDDEN : -allowed[i][j];
      }
      if (i < rows) {
        return j - columns == i ? NO_COLUMN : FORBIDDEN;
      }
      return 0;
    }

    /** The rest of this part, in pieces that do not overlap and do not hold its best member. */
    List<Node> split(double[][] worth) {
      List<Node> parts = new ArrayList<>();
      double[][] fixed = copy(allowed);
      for (int row = 0; row < fixed.length; row++) {
        int column = assignment.columns.get(row);
        if (column == NONE) {
          continue; // a row without a column has no better twin to be told from
        }
        double[][] without = copy(fixed);
        without[row][column] = Double.NaN;
        parts.add(solve(without, worth));
        for (int j = 0; j < fixed[row].length; j++) {
          if (j != column) {
            fixed[row][j] = Double.NaN;
          }
        }
        for (int i = row + 1; i < fixed.length; i++) {
          fixed[i][column] = Double.NaN;
        }
      }
      return parts;
    }

    private static double[][] copy(double[][] matrix) {
      double[][] copy = new double[matrix.length][];
      for (int i = 0; i < matrix.length; i++) {
        copy[i] = matrix[i].clone();
      }
      return copy;
    }
  }
}
