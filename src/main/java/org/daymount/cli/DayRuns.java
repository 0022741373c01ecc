package org.daymount.cli;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** Days of a month in few words: {@code 3, 7-9 June}. */
final class DayRuns {
  private DayRuns() {}

  static String of(List<LocalDate> days) {
    List<String> runs = new ArrayList<>();
    List<LocalDate> inOrder = List.copyOf(new TreeSet<>(days));
    int start = 0;
    for (int i = 1; i <= inOrder.size(); i++) {
      if (i == inOrder.size() || !inOrder.get(i).equals(inOrder.get(i - 1).plusDays(1))) {
        int first = inOrder.get(start).getDayOfMonth();
        int last = inOrder.get(i - 1).getDayOfMonth();
        runs.add(first == last ? "" + first : first + "-" + last);
        start = i;
      }
    }
    String month = inOrder.get(0).format(DateTimeFormatter.ofPattern("MMMM", Locale.ENGLISH));
    return String.join(", ", runs) + " " + month;
  }
}
