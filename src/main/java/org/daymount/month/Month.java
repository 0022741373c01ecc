package org.daymount.month;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import org.daymount.card.StoryCard;
import org.daymount.page.AlbumLayout;
import org.daymount.problem.Warning;
import org.daymount.unit.Units;

/**
 * The finished decision: everything a run found out and settled. Outputs are drawn from this alone.
 */
public record Month(
    YearMonth month,
    Settings settings,
    List<MonthPhoto> photos,
    List<MonthDay> days,
    List<MonthSheet> sheets,
    AlbumLayout album,
    List<Warning> warnings) {
  public Month {
    photos = List.copyOf(photos);
    days = List.copyOf(days);
    sheets = List.copyOf(sheets);
    warnings = List.copyOf(warnings);
  }

  /** That the person reads first. */
  public Units units() {
    return album.settings().units();
  }

  /** The day's story cards, in their order. */
  public List<StoryCard> cards(LocalDate day) {
    return sheets.stream()
        .flatMap(sheet -> sheet.content().values().stream())
        .filter(content -> content.day().equals(day))
        .flatMap(content -> content.card().stream())
        .sorted(Comparator.comparingInt(StoryCard::number))
        .toList();
  }
}
