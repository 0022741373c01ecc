package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading for dates alone reads less and says the same. */
class ForDatesTest {
  private static final IngestSettings SETTINGS =
      new IngestSettings(ClockCorrections.NONE, LocalDate.of(2026, 7, 4), ZoneOffset.UTC);

  @TempDir Path folder;

  @BeforeEach
  void someFiles() throws IOException {
    ExifPhoto.painted().original("2026:06:03 10:00:00").write(folder.resolve("a.jpg"));
    Files.copy(folder.resolve("a.jpg"), folder.resolve("a copy.jpg"));
    ExifPhoto.painted().original("2026:06:04 10:00:00").write(folder.resolve("same length.jpg"));
    ExifPhoto.painted()
        .size(96, 96)
        .original("2026:06:05 10:00:00")
        .write(folder.resolve("other.jpg"));
    byte[] whole = Files.readAllBytes(folder.resolve("other.jpg"));
    Files.write(folder.resolve("cut off.jpg"), Arrays.copyOf(whole, whole.length - 40));
  }

  @Test
  void theSameFilesAreCopiesOfEachOtherAndNoOthers() {
    List<Photo> quick = read(FolderReader.forDates()).photos();
    List<Photo> full = read(new FolderReader()).photos();
    assertEquals(4, full.size());
    assertEquals(full.size(), quick.size());
    for (int a = 0; a < full.size(); a++) {
      for (int b = 0; b < full.size(); b++) {
        assertEquals(
            full.get(a).sha256().equals(full.get(b).sha256()),
            quick.get(a).sha256().equals(quick.get(b).sha256()),
            full.get(a).file() + " and " + full.get(b).file());
      }
      assertEquals(full.get(a).taken(), quick.get(a).taken());
      assertEquals(full.get(a).size(), quick.get(a).size());
    }
    assertEquals(3, new HashSet<>(quick.stream().map(Photo::sha256).toList()).size());
  }

  @Test
  void whatIsCutOffIsStillNoticed() {
    List<Problem> problems = read(FolderReader.forDates()).problems();
    assertEquals(read(new FolderReader()).problems(), problems);
    assertEquals(List.of(Problem.Kind.CUT_OFF), problems.stream().map(Problem::kind).toList());
  }

  private Ingested read(FolderReader reader) {
    return reader.read(reader.list(List.of(folder)), SETTINGS, 2, () -> {});
  }
}
