package org.daymount.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.daymount.unit.PaperSize;

/**
 * The fewest sheets by trying everything: every set of pieces on a sheet, every cut at every whole
 * inch. Shares nothing with the packer; only for a handful of pieces with whole-inch sides.
 */
final class EveryWay {
  private final List<PaperSize> pieces;
  private final Map<List<Integer>, Boolean> known = new HashMap<>();

  private EveryWay(List<PaperSize> pieces) {
    this.pieces = pieces;
  }

  static int fewestSheets(List<PaperSize> pieces, int width, int height) {
    EveryWay search = new EveryWay(pieces);
    int all = (1 << pieces.size()) - 1;
    int[] fewest = new int[all + 1];
    for (int set = 1; set <= all; set++) {
      fewest[set] = Integer.MAX_VALUE;
      for (int sheet = set; sheet > 0; sheet = (sheet - 1) & set) {
        if (fewest[set ^ sheet] < fewest[set] - 1 && search.canBeCut(sheet, width, height)) {
          fewest[set] = fewest[set ^ sheet] + 1;
        }
      }
    }
    return fewest[all];
  }

  private boolean canBeCut(int set, int width, int height) {
    if (set == 0) {
      return true;
    }
    if (Integer.bitCount(set) == 1) {
      PaperSize piece = pieces.get(Integer.numberOfTrailingZeros(set));
      PaperSize room = PaperSize.inches(width, height);
      return piece.fitsInto(room) || piece.turned().fitsInto(room);
    }
    List<Integer> key = List.of(set, width, height);
    Boolean answer = known.get(key);
    if (answer == null) {
      answer = canBeSplit(set, width, height);
      known.put(key, answer);
    }
    return answer;
  }

  private boolean canBeSplit(int set, int width, int height) {
    for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
      for (int x = 1; x < width; x++) {
        if (canBeCut(part, x, height) && canBeCut(set ^ part, width - x, height)) {
          return true;
        }
      }
      for (int y = 1; y < height; y++) {
        if (canBeCut(part, width, y) && canBeCut(set ^ part, width, height - y)) {
          return true;
        }
      }
    }
    return false;
  }
}
