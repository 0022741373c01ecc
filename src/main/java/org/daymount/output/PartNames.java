package org.daymount.output;

import java.util.List;

/** The pieces a part is known by; of many the first will do, for no other part has them. */
final class PartNames {
  private static final int MOST = 5;
  private static final int SHOWN = 3;

  private PartNames() {}

  /**
   * @param between two names
   */
  static String of(List<String> names, String between) {
    return names.size() <= MOST
        ? String.join(between, names)
        : String.join(between, names.subList(0, SHOWN))
            + " and "
            + (names.size() - SHOWN)
            + " more";
  }
}
