package org.daymount.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntPredicate;

/** Turns any text into one that a typeface can show. Ranges and roles: Unicode UTS #51. */
final class ShowableText {
  private static final int ZERO_WIDTH_JOINER = 0x200D;
  private static final int FIRST_REGIONAL_INDICATOR = 0x1F1E6;
  private static final int LAST_REGIONAL_INDICATOR = 0x1F1FF;

  private final IntPredicate canShow;
  private final StringBuilder shown = new StringBuilder();
  private final Set<String> missing = new LinkedHashSet<>();

  ShowableText(IntPredicate canShow) {
    this.canShow = canShow;
  }

  ShownText of(String text) {
    int[] points = text.replace("\r\n", "\n").codePoints().toArray();
    for (int i = 0; i < points.length; i++) {
      int next = i + 1 < points.length ? points[i + 1] : -1;
      if (isRegional(points[i]) && isRegional(next)) {
        addName("flag of " + country(points[i], next));
        i++;
      } else {
        add(points[i], i > 0 ? points[i - 1] : -1);
      }
    }
    return new ShownText(shown.toString(), new ArrayList<>(missing));
  }

  private void add(int point, int before) {
    if (point == '\n' || point == '\r') {
      shown.append('\n');
    } else if (point == '\t') {
      shown.append(' ');
    } else if (onlyChangesAnEmoji(point) || (point == ZERO_WIDTH_JOINER && isSymbol(before))) {
      return;
    } else if (Character.isISOControl(point) || !Character.isDefined(point)) {
      return;
    } else if (canShow.test(point)) {
      shown.appendCodePoint(point);
    } else if (Character.getType(point) == Character.FORMAT) {
      return; // invisible by nature
    } else if (isSymbol(point) && Character.getName(point) != null) {
      addName(Character.getName(point).toLowerCase(Locale.ROOT));
    } else if (isMark(point)) {
      missing.add("\u25CC" + Character.toString(point)); // shown on a dotted circle
    } else {
      missing.add(Character.toString(point));
      shown.append('_');
    }
  }

  private void addName(String name) {
    if (shown.length() > 0 && !Character.isWhitespace(shown.charAt(shown.length() - 1))) {
      shown.append(' ');
    }
    shown.append('[').append(name).append(']');
  }

  /** Variation selectors, skin tones and tags: they alter the emoji before them. */
  private static boolean onlyChangesAnEmoji(int point) {
    return (point >= 0xFE00 && point <= 0xFE0F)
        || (point >= 0x1F3FB && point <= 0x1F3FF)
        || (point >= 0xE0020 && point <= 0xE007F)
        || point == 0x20E3;
  }

  private static boolean isSymbol(int point) {
    int type = point < 0 ? Character.UNASSIGNED : Character.getType(point);
    return type == Character.OTHER_SYMBOL
        || type == Character.MATH_SYMBOL
        || type == Character.MODIFIER_SYMBOL
        || onlyChangesAnEmoji(point);
  }

  private static boolean isMark(int point) {
    int type = Character.getType(point);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }

  private static boolean isRegional(int point) {
    return point >= FIRST_REGIONAL_INDICATOR && point <= LAST_REGIONAL_INDICATOR;
  }

  private static String country(int first, int second) {
    String code =
        ""
            + (char) ('A' + first - FIRST_REGIONAL_INDICATOR)
            + (char) ('A' + second - FIRST_REGIONAL_INDICATOR);
    return new Locale.Builder().setRegion(code).build().getDisplayCountry(Locale.ENGLISH);
  }
}
