package org.daymount.sheet;

/** How a sheet is cut up, before it is known which piece goes where. */
sealed interface GuillotineTree {
  /**
   * Room for one piece.
   *
   * @param kind index of its size
   * @param turned whether the kind's width runs down the sheet
   */
  record Slot(int kind, boolean turned) implements GuillotineTree {}

  /**
   * A straight cut with something on both sides.
   *
   * @param axis {@code X}: first lies left of second; {@code Y}: above it
   */
  record Split(Cut.Axis axis, GuillotineTree first, GuillotineTree second)
      implements GuillotineTree {}
}
