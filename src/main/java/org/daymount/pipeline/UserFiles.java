package org.daymount.pipeline;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesFile;
import org.daymount.choices.UnreadableChoices;
import org.daymount.file.SmallFile;
import org.daymount.note.NoteParser;

/** The person's own files: choices.json, which only the review writes, and the month note. */
public final class UserFiles {
  private static final int MOST_TEXT = 250_000; // bytes: some 1,300 words a day
  private static final int MOST_CHOICES = 20_000_000; // bytes: some 100,000 photos

  private UserFiles() {}

  /** As {@link #choices(Path, byte[], YearMonth)}, of the run's file as it is now. */
  public static Choices choices(Request request, YearMonth month) {
    Path file = request.out().choices(month);
    return choices(file, bytes(file), month);
  }

  /**
   * Of choices.json; none when it is not there.
   *
   * @throws RunFailed when something else is in its place, or it is too large to be choices
   */
  public static byte[] bytes(Path file) {
    try {
      return Files.exists(file) ? SmallFile.bytes(file, MOST_CHOICES) : new byte[0];
    } catch (SmallFile.Odd e) {
      throw new RunFailed(file + " " + e.getMessage());
    }
  }

  /**
   * @param bytes of the file; of one that is not there none
   * @return none when the file is not there
   * @throws RunFailed when they are no choices, or those of a newer version or another month
   */
  public static Choices choices(Path file, byte[] bytes, YearMonth month) {
    if (!Files.exists(file)) {
      if (Files.isSymbolicLink(file)) {
        throw new RunFailed(
            file + " is a link to something that is not there; put it back, or remove the link");
      }
      return Choices.NONE;
    }
    try {
      Choices choices = ChoicesFile.read(bytes);
      choices
          .onlyOtherThan(month)
          .ifPresent(
              other -> {
                throw new RunFailed(
                    file
                        + " holds the choices of "
                        + NoteParser.name(other)
                        + ", and the album is for "
                        + NoteParser.name(month)
                        + "; choose another --out for it, or --month "
                        + other);
              });
      return choices;
    } catch (UnreadableChoices e) {
      Path before = file.resolveSibling(file.getFileName() + ".bak");
      throw new RunFailed(
          file
              + ": "
              + e.getMessage()
              + (Files.exists(before)
                  ? " (" + before.getFileName() + " is as it was before the last change)"
                  : ""));
    }
  }

  /** UTF-8 or UTF-16; a note from an old editor that is neither is taken for Windows-1252. */
  public static String note(Path file) {
    return text("the note ", file);
  }

  /** As {@link #note(Path)}, of what a person wrote about the album. */
  public static String album(Path file) {
    return text("the album file ", file);
  }

  private static String text(String what, Path file) {
    try {
      return SmallFile.text(file, MOST_TEXT);
    } catch (SmallFile.Odd e) {
      throw new RunFailed(what + file + " " + e.getMessage());
    }
  }
}
