package org.daymount.pipeline;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import org.daymount.crop.CropSettings;
import org.daymount.file.StopAt;
import org.daymount.unit.Ppi;

/** Mends a note twice, takes it back and mends it again, and stops dead on its way: FOLDER STEP. */
final class StoppedNote {
  static final YearMonth JUNE = YearMonth.of(2026, 6);

  private StoppedNote() {}

  static Request request(Path folder) {
    return TestRequests.of(
        folder.resolve("pictures"),
        Optional.of(folder.resolve("note.txt")),
        new OutputLocation(folder, Optional.of(folder.resolve("out"))),
        CropSettings.of(new Ppi(300), new Ppi(200)));
  }

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    StopAt.step(Integer.parseInt(arguments[1]));
    NoteInUse.keep(request(folder), JUNE, "3 mended");
    NoteInUse.keep(request(folder), JUNE, "3 mended again");
    NoteInUse.takeBack(request(folder), JUNE);
    NoteInUse.keep(request(folder), JUNE, "3 mended once more");
    NoteInUse.writeOver(request(folder), JUNE, "3 written over");
    Files.writeString(folder.resolve("ended"), "");
  }
}
