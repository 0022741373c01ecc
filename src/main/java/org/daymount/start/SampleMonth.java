package org.daymount.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.file.WholeFile;

/** The invented June that comes inside the program, unpacked for somebody to try. */
public final class SampleMonth {
  private SampleMonth() {}

  /** Whether this build carries it. */
  public static boolean isThere() {
    return SampleMonth.class.getResource("sample/list.txt") != null;
  }

  /**
   * Unpacks the pictures that are not there yet.
   *
   * @param months the folder of the months
   */
  public static MonthChoice unpack(Path months) throws IOException {
    Path photos = months.resolve("Invented June").resolve("pictures");
    Files.createDirectories(photos);
    List<String> names;
    try (InputStream list = SampleMonth.class.getResourceAsStream("sample/list.txt")) {
      names = new String(list.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
    for (String name : names) {
      Path file = photos.resolve(name);
      if (name.isBlank() || Files.exists(file)) {
        continue;
      }
      try (InputStream picture = SampleMonth.class.getResourceAsStream("sample/" + name)) {
        WholeFile.write(file, picture.readAllBytes());
      }
    }
    return new MonthChoice(
        List.of(photos),
        "2026-06",
        Optional.empty(),
        Map.of("cards", "3x4"),
        months.resolve("Invented June").resolve("prints"));
  }
}
