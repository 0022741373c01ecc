package org.daymount.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.daymount.album.Space;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSheet;
import org.daymount.month.MonthSpace;
import org.daymount.sheet.MatPlan;
import org.daymount.sheet.Sheet;
import org.daymount.unit.PaperSize;

/** The month's mats, named by their days, and the card they are cut from. */
final class MatCard {
  private MatCard() {}

  /** {@code mat 3}; of several on a day {@code mat 3b}, after the space. */
  static Map<String, PaperSize> mats(Month month) {
    Map<String, PaperSize> mats = new LinkedHashMap<>();
    for (MonthDay day : month.days()) {
      for (int i = 0; i < day.spaces().size(); i++) {
        MonthSpace space = day.spaces().get(i);
        Space made = space.pick().space();
        if (made.onMat()) {
          String letter = day.spaces().size() > 1 ? Character.toString('a' + i) : "";
          mats.put(
              "mat " + day.day().getDayOfMonth() + letter, made.size(space.pick().direction()));
        }
      }
    }
    return mats;
  }

  static MatPlan plan(Month month) {
    return MatPlan.of(mats(month), MatPlan.CARD);
  }

  /** Its sheets with nothing shown on them. */
  static List<MonthSheet> of(Month month) {
    return sheets(plan(month));
  }

  static List<MonthSheet> sheets(MatPlan plan) {
    List<MonthSheet> card = new ArrayList<>();
    for (Sheet sheet : plan.packing().sheets()) {
      card.add(new MonthSheet("card-" + (card.size() + 1), sheet, Map.of()));
    }
    return card;
  }
}
