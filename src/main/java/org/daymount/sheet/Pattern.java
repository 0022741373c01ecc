package org.daymount.sheet;

/**
 * One way to cut up a sheet.
 *
 * @param counts pieces of each kind that the sheet is counted on for; never more than the tree has
 * @param tree the cuts that give them
 */
record Pattern(int[] counts, GuillotineTree tree) {
  /** Whether it gives at least as many of every kind. */
  boolean covers(int[] wanted) {
    for (int kind = 0; kind < counts.length; kind++) {
      if (counts[kind] < wanted[kind]) {
        return false;
      }
    }
    return true;
  }
}
