package org.daymount.pipeline;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesFile;
import org.daymount.choices.UnreadableChoices;
import org.daymount.note.NoteParser;

/** The person's own files: choices.json, which only the review writes, and the month note. */
public final class PersonsFiles {
  private PersonsFiles() {}

  /** As {@link #choices(Path, byte[], YearMonth)}, of the file as it is now. */
  public static Choices choices(Path file, YearMonth month) {
    try {
      return choices(file, Files.exists(file) ? Files.readAllBytes(file) : new byte[0], month);
    } catch (IOException e) {
      throw new RunFailed(file + " cannot be read; check that it may be opened");
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

  /** UTF-8; a note from an old editor that is not is taken for Windows-1252, which never fails. */
  public static String note(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      try {
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      } catch (CharacterCodingException e) {
        return new String(bytes, Charset.forName("windows-1252"));
      }
    } catch (IOException e) {
      throw new RunFailed("the note " + file + " cannot be read; check that it may be opened");
    }
  }
}
