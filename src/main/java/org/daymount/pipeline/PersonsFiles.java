package org.daymount.pipeline;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.daymount.album.Choices;
import org.daymount.album.ChoicesFile;
import org.daymount.album.UnreadableChoices;

/** choices.json, which only the review writes and every run reads. */
final class PersonsFiles {
  private PersonsFiles() {}

  static Choices choices(Request request) {
    Path file = request.choices().orElse(null);
    if (file == null || !Files.exists(file)) {
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
}
