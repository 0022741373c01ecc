package org.daymount.pipeline;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.daymount.image.Pictures;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.IngestSettings;
import org.daymount.ingest.Ingested;
import org.daymount.output.Finished;
import org.daymount.output.OutputFolder;
import org.daymount.output.Strip;
import org.daymount.output.StripPaper;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;

/** From one photo to the test print of it. */
public final class StripMaker {
  private StripMaker() {}

  /**
   * @param file of the photo
   * @param out a folder of its own: what else an earlier run left there is removed
   * @throws RunFailed when the photo cannot be used; the message names it and says why
   */
  public static Finished make(
      Path file, IngestSettings ingest, StripPaper paper, Path out, boolean force)
      throws IOException {
    FolderReader reader = new FolderReader();
    Ingested found = reader.read(reader.list(List.of(file)), ingest, 1, () -> {});
    Photo photo =
        found.photos().stream()
            .findFirst()
            .orElseThrow(() -> new RunFailed(why(file, found) + "; nothing was written"));
    try (OutputFolder folder = OutputFolder.open(out, force)) {
      Strip.stage(photo, new Pictures()::part, paper, folder);
      return folder.finish();
    } catch (UnusablePicture e) {
      throw new RunFailed(file + " " + e.getMessage() + "; nothing was written");
    }
  }

  private static String why(Path file, Ingested found) {
    return found.problems().stream()
        .findFirst()
        .map(problem -> file + ": " + problem.text())
        .orElse(file + " is not a picture that can be read");
  }
}
