package org.daymount.choices;

import java.util.List;
import org.daymount.day.DaySettings;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.photo.Photo;

/** Photos on the days that a person said, whatever date they have of their own. */
public final class UserDays {
  private UserDays() {}

  /** A photo as a person dated it; itself where nothing was said. */
  public static Photo dated(Photo photo, Choices choices) {
    return choices.takenOf(photo.sha256()).map(photo::at).orElse(photo);
  }

  /**
   * @param days as the photos' own dates tell; its month stays, whatever was said
   * @param photos all of them, those of other months too
   */
  public static Days of(Days days, List<Photo> photos, Choices choices, DaySettings settings) {
    if (photos.stream().noneMatch(photo -> choices.takenOf(photo.sha256()).isPresent())) {
      return days;
    }
    return new DaySorter()
        .sort(
            photos.stream().map(photo -> dated(photo, choices)).toList(),
            new DaySettings(settings.dayStarts(), days.month(), settings.days()));
  }
}
