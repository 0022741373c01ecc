package org.daymount.note;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import org.daymount.album.AlbumFile;
import org.daymount.album.BasePage;

/** Writes month notes: one that was read, byte for byte, or an empty one to fill in. */
public final class NoteWriter {
  private NoteWriter() {}

  /** The text the note was read from. */
  public static String write(MonthNote note) {
    StringBuilder text = new StringBuilder(note.preamble());
    note.days().forEach(day -> text.append(day.heading()).append(day.storyText()));
    return text.append(note.ending()).toString();
  }

  /** A note with every day of the month and nothing said, in English. */
  public static String blank(YearMonth month) {
    return blank(month, Locale.ENGLISH);
  }

  /** A note that gives each day a ready-made page: as the album says, or in turn. */
  public static String blank(YearMonth month, AlbumFile album) {
    return blank(month, Locale.ENGLISH, day -> page(day, album));
  }

  private static String page(int day, AlbumFile album) {
    List<BasePage> all = List.copyOf(album.bases().values());
    List<BasePage> anyDay = all.stream().filter(base -> base.days().isEmpty()).toList();
    return all.stream()
        .filter(base -> base.days().contains(day))
        .findFirst()
        .or(() -> anyDay.isEmpty() ? Optional.empty() : Optional.of(inTurn(day, anyDay)))
        .map(base -> " " + base.name())
        .orElse("");
  }

  private static BasePage inTurn(int day, List<BasePage> bases) {
    return bases.get((day - 1) % bases.size());
  }

  /**
   * A note with every day of the month and nothing said. The how-to stays English.
   *
   * @param names language of the month's and the weekdays' names
   */
  public static String blank(YearMonth month, Locale names) {
    return blank(month, names, day -> "");
  }

  private static String blank(YearMonth month, Locale names, IntFunction<String> pages) {
    StringBuilder text =
        new StringBuilder()
            .append(month.getMonth().getDisplayName(TextStyle.FULL_STANDALONE, names))
            .append(' ')
            .append(month.getYear())
            .append(
                """


                # Write below each day what it was like; that is its story.
                # After the day you may say what its page holds:
                #   4x6 tall      one space, upright (or: wide; without either the picture decides)
                #   two 3x4       two small spaces
                #   6x8           a full page
                #   on mat        card showing around the picture
                #   no photo      a page with words only
                #   leave out     no page for this day
                # A short story fits behind a colon. Lines with # up here are not printed.

                """);
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      LocalDate date = month.atDay(day);
      text.append(date.getDayOfWeek().getDisplayName(TextStyle.SHORT, names))
          .append(' ')
          .append(day)
          .append(pages.apply(day))
          .append("\n\n");
    }
    return text.toString();
  }
}
