package org.daymount.review;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import org.daymount.choices.Choices;
import org.daymount.choices.DayChoice;
import org.daymount.choices.StoryChoice;
import org.daymount.file.StopAt;

/** A review that saves a second and a third story, and stops dead on its way: FILE STEP. */
final class StoppedChoices {
  private StoppedChoices() {}

  static Choices story(String text) {
    return Choices.NONE.withDay(
        LocalDate.of(2026, 6, 3),
        DayChoice.NONE.withStory(Optional.of(new StoryChoice(text, Optional.empty()))));
  }

  public static void main(String[] arguments) throws Exception {
    StopAt.step(Integer.parseInt(arguments[1]));
    try (ChoicesStore store = ChoicesStore.open(Path.of(arguments[0]), YearMonth.of(2026, 6), "")) {
      store.read();
      store.write(story("second"));
      store.write(story("third"));
    }
  }
}
