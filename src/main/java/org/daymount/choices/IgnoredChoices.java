package org.daymount.choices;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.problem.Warning;

/**
 * What choices.json holds that comes to nothing, whatever the photos and the note are: it is kept,
 * and the person is told. What depends on photos is told by {@link ChoicesMerge}, on pages by
 * {@link AlbumPlanner}.
 */
public final class IgnoredChoices {
  private final YearMonth month;
  private final List<Warning> remarks = new ArrayList<>();

  private IgnoredChoices(YearMonth month) {
    this.month = month;
  }

  /** In the order of the file. */
  public static List<Warning> of(Choices choices, YearMonth month) {
    IgnoredChoices ignored = new IgnoredChoices(month);
    ignored.unknown(Optional.empty(), "choices.json", choices.other());
    choices.days().forEach(ignored::day);
    choices.photos().values().forEach(ignored::photo);
    return ignored.remarks;
  }

  private void day(LocalDate date, DayChoice day) {
    if (!YearMonth.from(date).equals(month)) {
      remarks.add(
          Warning.general(
              Warning.Kind.CHOICES_MONTH,
              "choices.json speaks of " + date + ", which is not in " + month + "; it is kept"));
      return;
    }
    Optional<LocalDate> on = Optional.of(date);
    unknown(on, "what choices.json says of this day", day.other());
    day.story().ifPresent(story -> unknown(on, "its story in choices.json", story.other()));
    for (Map.Entry<Integer, SpaceChoice> each : day.spaces().entrySet()) {
      String where = "space " + (each.getKey() + 1) + " in choices.json";
      SpaceChoice space = each.getValue();
      unknown(on, where, space.other());
      space.crop().ifPresent(crop -> unknown(on, "the crop of " + where, crop.other()));
      if (space.photo().isEmpty() && (space.crop().isPresent() || space.quarterTurns() != 0)) {
        remarks.add(
            Warning.on(
                date,
                Warning.Kind.CROP_ALONE,
                where
                    + " has a crop or a turn without a picture, so that is not used; choose the"
                    + " picture in the review"));
      }
    }
  }

  private void photo(PhotoChoice photo) {
    unknown(Optional.empty(), "what choices.json says of " + photo.photo().file(), photo.other());
    photo
        .day()
        .filter(day -> !YearMonth.from(day).equals(month))
        .ifPresent(
            day ->
                remarks.add(
                    Warning.general(
                        Warning.Kind.CHOICES_MONTH,
                        photo.photo().file()
                            + " was given "
                            + day
                            + ", which is not in "
                            + month
                            + "; it is kept, and the picture takes no part here")));
  }

  private void unknown(Optional<LocalDate> day, String where, UnknownFields other) {
    for (String field : other.fields().keySet()) {
      remarks.add(
          new Warning(
              Warning.Kind.UNKNOWN_CHOICE,
              Optional.empty(),
              day,
              where
                  + " has a field '"
                  + field
                  + "' that is not known here; it is kept and changes nothing. Look at its"
                  + " spelling"));
    }
  }
}
