package org.daymount.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.daymount.file.StopAt;

/** Pastes a note and opens a month, and stops dead on its way: FOLDER STEP. */
final class StoppedStart {
  private StoppedStart() {}

  static MonthChoice month(Path folder, String name) {
    return new MonthChoice(
        List.of(folder), name, Map.of(), Map.of("space", "4x6"), folder.resolve(name));
  }

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    StopAt.step(Integer.parseInt(arguments[1]));
    MonthText.NOTE.write(folder.resolve("out"), "3 second");
    new StartSettings(folder.resolve("settings")).remember(month(folder, "2026-07"), true);
  }
}
