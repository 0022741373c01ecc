package org.daymount.benchmark;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.daymount.image.Pictures;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.IngestSettings;
import org.daymount.ingest.Ingested;
import org.daymount.look.Analysis;
import org.daymount.look.PhotoAnalyser;

/** The analysis alone: tags, hash and completeness of every file, and the first look at it. */
final class FirstLook {
  private FirstLook() {}

  public static void main(String[] arguments) {
    int jobs = Integer.parseInt(arguments[1]);
    Ingested found = found(Path.of(arguments[0]), jobs);
    Analysis looked = new PhotoAnalyser(new Pictures()).first(found.photos(), jobs, () -> {});
    System.out.println(looked.looked().size() + " looked at");
    if (!looked.problems().isEmpty()) {
      throw new IllegalStateException(looked.problems().toString());
    }
  }

  /** Tags, hash and completeness; nothing is decoded. */
  static Ingested found(Path place, int jobs) {
    FolderReader reader = new FolderReader();
    IngestSettings settings =
        new IngestSettings(
            ClockCorrections.parse(List.of()), LocalDate.of(2026, 7, 1), ZoneOffset.UTC);
    return reader.read(reader.list(List.of(place)), settings, jobs, () -> {});
  }
}
