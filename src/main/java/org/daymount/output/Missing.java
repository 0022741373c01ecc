package org.daymount.output;

import java.util.ArrayList;
import java.util.List;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.pick.SpacePick;
import org.daymount.unit.Units;

/** The pictures that pages still wait for, with the direction they must have. */
final class Missing {
  private Missing() {}

  static List<String> in(Month month) {
    List<String> missing = new ArrayList<>();
    for (MonthDay day : month.days()) {
      for (int i = 0; i < day.spaces().size(); i++) {
        SpacePick pick = day.spaces().get(i).pick();
        if (pick.hero().isEmpty()) {
          missing.add(
              DayWords.shortDay(day.day())
                  + ", space "
                  + (i + 1)
                  + ": "
                  + wanted(pick, month.units())
                  + because(pick));
        }
      }
    }
    return missing;
  }

  /** A free space takes a picture of either direction, and that is what to look for. */
  static String wanted(SpacePick pick, Units units) {
    boolean isFree = pick.space().ways().size() > 1;
    return isFree
        ? units.name(pick.space().upright())
            + ", either direction"
            + (pick.space().onMat() ? ", on mat" : "")
        : DayWords.space(pick.space(), pick.direction(), units);
  }

  private static String because(SpacePick pick) {
    return pick.reasons().isEmpty() ? "" : " (" + String.join("; ", pick.reasons()) + ")";
  }
}
