package org.daymount.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.daymount.sheet.Cut.Axis;
import org.daymount.sheet.FilledTree.Join;
import org.daymount.unit.Length;

/**
 * Puts parts that lie in a row in falling order of their depth, so that neighbours of one depth are
 * trimmed by one cut: of 3, 2 and 2 in deep, the last two lose their common waste together.
 */
final class SharedTrims {
  private SharedTrims() {}

  static FilledTree in(FilledTree tree) {
    if (!(tree instanceof Join join)) {
      return tree;
    }
    List<FilledTree> row = new ArrayList<>();
    collect(join, join.axis(), row);
    row.replaceAll(SharedTrims::in);
    row.sort(Comparator.comparing((FilledTree part) -> depth(part, join.axis())).reversed());
    FilledTree joined = row.get(row.size() - 1);
    for (int i = row.size() - 2; i >= 0; i--) {
      joined = new Join(join.axis(), row.get(i), joined);
    }
    return joined;
  }

  private static void collect(FilledTree tree, Axis axis, List<FilledTree> row) {
    if (tree instanceof Join join && join.axis() == axis) {
      collect(join.first(), axis, row);
      collect(join.second(), axis, row);
    } else {
      row.add(tree);
    }
  }

  private static Length depth(FilledTree part, Axis rowAlong) {
    return rowAlong == Axis.X ? part.extent().height() : part.extent().width();
  }
}
