package org.daymount.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.daymount.file.WholeFile;

/** The invented June that comes inside the program, unpacked for somebody to try. */
public final class SampleMonth {
  private static final String NAME = "Invented June";

  private SampleMonth() {}

  /** Whether this build carries it. */
  public static boolean isThere() {
    return SampleMonth.class.getResource("sample/list.txt") != null;
  }

  /** Whether that month is the invented one. */
  public static boolean is(MonthChoice month, Path months) {
    return month.out().equals(out(months));
  }

  private static Path out(Path months) {
    return months.resolve(NAME).resolve("prints");
  }

  /**
   * Unpacks the pictures that are not there yet.
   *
   * @param months the folder of the months
   */
  public static MonthChoice unpack(Path months) throws IOException {
    Path photos = months.resolve(NAME).resolve("pictures");
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
        List.of(photos), "2026-06", Map.of(), Map.of("cards", "3x4"), out(months));
  }
}
