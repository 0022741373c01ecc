package org.daymount.month;

import java.time.YearMonth;
import java.util.List;

/**
 * The finished decision: everything a run found out and settled. Outputs are drawn from this alone.
 */
public record Month(
    YearMonth month,
    Settings settings,
    List<MonthPhoto> photos,
    List<MonthDay> days,
    List<MonthSheet> sheets,
    List<Warning> warnings) {
  public Month {
    photos = List.copyOf(photos);
    days = List.copyOf(days);
    sheets = List.copyOf(sheets);
    warnings = List.copyOf(warnings);
  }
}
