package org.daymount.page;

import java.time.DayOfWeek;
import org.daymount.album.AlbumFile;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.Units;

/**
 * How the album is made up.
 *
 * @param page one side, as it is read
 * @param start where the first day's page lies when the album is open
 * @param firstWeekday of a calendar, as the person's country has it
 * @param album what the person wrote about it
 * @param units that the person reads first
 */
public record PageSettings(
    PaperSize page, Start start, DayOfWeek firstWeekday, AlbumFile album, Units units) {
  // First of all, since the standard settings are checked too.
  private static final Length SMALLEST = Length.inches(2);
  private static final Length LARGEST = Length.inches(24);

  /** 6 x 8 in (common practice, no source), from the right-hand side on, weeks from Monday. */
  public static final PageSettings STANDARD =
      new PageSettings(PaperSize.inches(6, 8), Start.RIGHT, DayOfWeek.MONDAY);

  /** The side of the open album that the first day lies on. */
  public enum Start {
    /** The front of the first leaf. */
    RIGHT,
    /** The back of the first leaf, whose front stays free: two days face each other from 1 on. */
    LEFT
  }

  /** Nothing was written about the album. */
  public PageSettings(PaperSize page, Start start, DayOfWeek firstWeekday) {
    this(page, start, firstWeekday, AlbumFile.NONE);
  }

  /** Inches first. */
  public PageSettings(PaperSize page, Start start, DayOfWeek firstWeekday, AlbumFile album) {
    this(page, start, firstWeekday, album, Units.INCHES);
  }

  public PageSettings {
    Length shortest = page.width().min(page.height());
    Length longest = page.width().max(page.height());
    if (SMALLEST.isLongerThan(shortest) || longest.isLongerThan(LARGEST)) {
      throw new IllegalArgumentException(
          "a page of "
              + units.sized(page)
              + " cannot be planned; give one from "
              + units.sized(PaperSize.inches(2, 2))
              + " to "
              + units.sized(PaperSize.inches(24, 24))
              + ", like 6x8");
    }
  }
}
