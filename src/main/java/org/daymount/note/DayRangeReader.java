package org.daymount.note;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads several days of one line: {@code 12-13}, {@code 5, 6 and 7}, {@code 6/6 & 6/7}. */
final class DayRangeReader {
  private static final String AND = "and|und|et|y|e|en|i|och|oraz";
  private static final Pattern SEPARATOR =
      Pattern.compile(
          "(?: *(?:nd|rd|th|st)?(\\.)?) *(-|/|,|&|\\+|(?:to|thru|until|till?|through|bis"
              + "|jusqu'au|au|hasta(?: el)?|al|fino al|a|ate|tot(?: en met)?|t/m|do|till|"
              + AND
              + ")(?!\\p{L})) *(?:and +)?(?=[\\d(]"
              + "|\\p{L}{2,10}[.,]? (?:\\p{L}{2,10}\\.? )?\\d|(?:the )?[a-z -]{2,16}(?:st|nd"
              + "|rd|th)(?!\\p{L}))");
  private static final Set<String> LISTING = listing();
  private static final Pattern SIZE_GOES_ON = Pattern.compile(" *[x*] *\\d| *by \\d");
  private static final int MOST_DAYS = 31;

  private final DayNameReader names;

  DayRangeReader(DayNameReader names) {
    this.names = names;
  }

  private static Set<String> listing() {
    List<String> marks = new ArrayList<>(List.of(AND.split("\\|")));
    marks.addAll(List.of(",", "&", "+"));
    return Set.copyOf(marks);
  }

  /** All the days from the first on; empty when only one is named. */
  Optional<List<DayName>> from(String line, DayName first) {
    boolean numeric = isNumeric(first);
    List<DayName> days = new ArrayList<>(List.of(first));
    int at = first.end();
    while (days.size() < MOST_DAYS) {
      Matcher mark = SEPARATOR.matcher(line).region(at, line.length());
      if (!mark.lookingAt()) {
        break;
      }
      DayName last = days.get(days.size() - 1);
      Optional<DayName> next =
          next(line, mark, numeric)
              .or(() -> spelled(line, mark.end(), first))
              .filter(day -> follows(last, day));
      if (next.isEmpty() || !goesTogether(line, mark, last, next.get())) {
        break;
      }
      DayName to = next.get();
      for (int day = LISTING.contains(mark.group(2)) ? to.day() : last.day() + 1;
          day <= to.day();
          day++) {
        days.add(
            new DayName(
                day,
                to.month(),
                to.year(),
                day == to.day() ? to.weekday() : Optional.empty(),
                to.end(),
                first.style() + "several",
                first.slip()));
      }
      at = to.end();
    }
    if (days.size() == 1) {
      return Optional.empty();
    }
    DayName last = days.get(days.size() - 1);
    days.set(days.size() - 1, last.reaching(names.weekdaysEnd(line, last.end())));
    return Optional.of(days);
  }

  private Optional<DayName> next(String line, Matcher mark, boolean numeric) {
    boolean dotted = mark.group(1) != null; // "8.-9.6."
    return names.at(line, mark.end()).stream()
        .filter(name -> dotted || numeric == isNumeric(name) || isDateBehind(mark, name))
        .sorted(Comparator.comparing(DayRangeReader::isNumeric))
        .reduce((before, last) -> last);
  }

  private static boolean isNumeric(DayName name) {
    return name.style().contains("numeric");
  }

  /** {@code 22-23/8}: the month stands behind the last day. */
  private static boolean isDateBehind(Matcher mark, DayName name) {
    return mark.group(2).equals("-") && name.style().endsWith("numeric/");
  }

  /** {@code the seventh and eighth}. */
  private static Optional<DayName> spelled(String line, int at, DayName first) {
    int from = line.startsWith("the ", at) ? at + 4 : at;
    return SpelledNumbers.ordinalAt(line, from)
        .map(
            found ->
                new DayName(
                    found.value(),
                    first.month(),
                    first.year(),
                    Optional.empty(),
                    found.end(),
                    first.style(),
                    false));
  }

  private static boolean follows(DayName last, DayName next) {
    return next.isPossible() && next.day() > last.day();
  }

  private static boolean goesTogether(String line, Matcher mark, DayName last, DayName to) {
    boolean dotted = mark.group(1) != null; // "8.-9. June", but "8. - 9 crabs"
    boolean dottedToo =
        to.month().isPresent() || to.end() < line.length() && line.charAt(to.end()) == '.';
    boolean slash = mark.group(2).equals("/");
    return (!dotted || dottedToo)
        && (!slash || to.day() == last.day() + 1)
        && DayNameReader.end(SIZE_GOES_ON, line, to.end()) == to.end(); // "3, 4x6"
  }
}
