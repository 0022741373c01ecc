package org.daymount.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.daymount.file.SmallFile;
import org.daymount.file.WholeFile;

/** The texts a month is made with, each in a file of a known name. */
public enum MonthText {
  NOTE("note.txt"),
  ALBUM("album.txt"),
  DATES("dates.csv");

  private final String file;

  MonthText(String file) {
    this.file = file;
  }

  /** The option of {@code daymount sheets} that names its file, without dashes. */
  public String option() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The file that a month uses when nothing is typed anew: the one kept from the last time, else
   * the one beside the pictures.
   *
   * @param out where the month is made
   */
  public Optional<Path> find(List<Path> folders, Path out) {
    Path kept = out.resolve(file);
    if (Files.isRegularFile(kept)) {
      return Optional.of(kept);
    }
    return folders.stream()
        .map(each -> each.resolve(file))
        .filter(Files::isRegularFile)
        .findFirst();
  }

  /**
   * Keeps it beside the month's other files; an earlier one with other words is kept as note-1.txt,
   * note-2.txt, and so on.
   *
   * @param out made if need be
   */
  public Path write(Path out, String text) throws IOException {
    Files.createDirectories(out);
    Path kept = out.resolve(file);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    WholeFile.clearParts(kept); // though nothing may be new
    if (Files.exists(kept)) {
      if (SmallFile.holds(kept, bytes)) {
        return kept;
      }
      WholeFile.setAside(kept, kept);
    }
    WholeFile.write(kept, bytes);
    return kept;
  }
}
