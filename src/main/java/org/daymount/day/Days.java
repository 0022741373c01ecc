package org.daymount.day;

import java.time.YearMonth;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;

/**
 * The days of one month.
 *
 * @param month empty when no photo has a day and none was asked for
 * @param days every wanted day of the month in order, empty ones too
 * @param otherMonths how many photos each other month has
 * @param otherDays photos of this month on days not wanted
 * @param undated photos whose day is unknown or only guessed from the file's own time
 * @param problems one for each photo that is on none of the days: OTHER_MONTH, OTHER_DAYS, NO_DATE
 */
public record Days(
    Optional<YearMonth> month,
    List<PhotoDay> days,
    SortedMap<YearMonth, Integer> otherMonths,
    List<Photo> otherDays,
    List<Photo> undated,
    List<Problem> problems) {
  public Days {
    days = List.copyOf(days);
    otherMonths = Collections.unmodifiableSortedMap(new TreeMap<>(otherMonths));
    otherDays = List.copyOf(otherDays);
    undated = List.copyOf(undated);
    problems = List.copyOf(problems);
  }
}
