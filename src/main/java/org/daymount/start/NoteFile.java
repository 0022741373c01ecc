package org.daymount.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.file.WholeFile;

/** The note pasted on the start page, kept beside the month's other files. */
public final class NoteFile {
  private static final String NAME = "note.txt";

  private NoteFile() {}

  /**
   * Writes it; an earlier one with other words is kept as note-1.txt, note-2.txt, and so on.
   *
   * @param out made if need be
   */
  public static Path write(Path out, String text) throws IOException {
    Files.createDirectories(out);
    Path file = out.resolve(NAME);
    if (Files.exists(file)) {
      if (Files.readString(file).equals(text)) {
        return file;
      }
      int number = 1;
      while (Files.exists(out.resolve("note-" + number + ".txt"))) {
        number++;
      }
      Files.move(file, out.resolve("note-" + number + ".txt"));
    }
    WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    return file;
  }
}
