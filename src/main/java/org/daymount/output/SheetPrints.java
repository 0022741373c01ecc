package org.daymount.output;

import java.time.YearMonth;
import java.util.List;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.month.Settings;
import org.daymount.unit.Length;
import org.daymount.unit.Units;

/**
 * Sheets that are to be printed, as one document.
 *
 * @param foot stands beside the ruler
 * @param dated whose start is the date of the document
 * @param margin what a printer at home leaves unprinted at each edge of a sheet; zero for a lab
 * @param units which is read first
 */
public record SheetPrints(
    String title,
    String foot,
    YearMonth dated,
    List<MonthSheet> sheets,
    Settings.Paper paper,
    Length margin,
    Units units) {
  public SheetPrints {
    sheets = List.copyOf(sheets);
  }

  /** The sheets of a month. */
  public static SheetPrints of(Month month) {
    String name = DayWords.month(month.month());
    return new SheetPrints(
        name + ": sheets to print",
        name,
        month.month(),
        month.sheets(),
        month.settings().paper(),
        month.settings().margin(),
        month.units());
  }
}
