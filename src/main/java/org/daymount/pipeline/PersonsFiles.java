package org.daymount.pipeline;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesFile;
import org.daymount.choices.UnreadableChoices;

/** The person's own files: choices.json, which only the review writes, and the month note. */
public final class PersonsFiles {
  private PersonsFiles() {}

  /** None when the file is not there. */
  public static Choices choices(Path file) {
    if (!Files.exists(file)) {
      return Choices.NONE;
    }
    try {
      return ChoicesFile.read(Files.readAllBytes(file));
    } catch (UnreadableChoices e) {
      throw new RunFailed(file + ": " + e.getMessage());
    } catch (IOException e) {
      throw new RunFailed(file + " cannot be read; check that it may be opened");
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
