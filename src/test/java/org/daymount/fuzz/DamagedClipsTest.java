package org.daymount.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.daymount.image.Pictures;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.IngestSettings;
import org.daymount.ingest.Ingested;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Clips that ffmpeg makes, damaged anywhere: each is used or named, and none ends the run. */
@Tag("slow")
class DamagedClipsTest {
  private static final int FILES = Integer.getInteger("clips", 200);

  @TempDir Path folder;

  private byte[] clip(String name, String... coding) throws IOException {
    Path file = folder.resolve(name);
    List<String> command =
        new ArrayList<>(
            List.of(
                "ffmpeg",
                "-y",
                "-v",
                "error",
                "-f",
                "lavfi",
                "-i",
                "testsrc2=size=160x90:rate=5:duration=3",
                "-g",
                "5"));
    command.addAll(List.of(coding));
    command.add(file.toString());
    try {
      int code = new ProcessBuilder(command).inheritIO().start().waitFor();
      assertEquals(0, code, "ffmpeg's exit code");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException e) {
      assumeTrue(false, "ffmpeg is not installed");
    }
    byte[] bytes = Files.readAllBytes(file);
    Files.delete(file);
    return bytes;
  }

  @Test
  void damagedClipsAreEachUsedOrNamed() throws IOException {
    List<byte[]> sound =
        List.of(
            clip("a.mp4", "-c:v", "libx264", "-pix_fmt", "yuv420p", "-movflags", "faststart"),
            clip("b.mov", "-c:v", "libx264", "-pix_fmt", "yuv420p"),
            clip("c.mp4", "-c:v", "libx265", "-x265-params", "log-level=error", "-tag:v", "hvc1"),
            clip("d.mp4", "-c:v", "libsvtav1", "-preset", "12"));
    Mutator mutator = new Mutator(20260603);
    IngestSettings settings =
        new IngestSettings(ClockCorrections.NONE, LocalDate.of(2026, 7, 4), ZoneOffset.UTC);
    int used = 0;
    int named = 0;
    for (int i = 0; i < FILES; i++) {
      byte[] whole = sound.get(i % sound.size());
      Path file = folder.resolve("clip " + i + ".mp4");
      Files.write(file, mutator.damaged(whole, 0, whole.length, sound));
      FolderReader reader = new FolderReader();
      Ingested found = reader.read(reader.list(List.of(file)), settings, 1, () -> {});
      assertTrue(
          found.photos().size() + found.problems().size() + found.others().size() > 0,
          file + " is neither used nor named");
      named += found.photos().isEmpty() ? 1 : 0;
      for (Photo photo : found.photos()) {
        try {
          assertEquals(
              photo.size().within(200).width(), new Pictures().whole(photo, 200).getWidth());
          used++;
        } catch (UnusablePicture e) {
          assertTrue(e.getMessage().length() > 10, "no reason");
        }
      }
      Files.delete(file);
    }
    assertTrue(used > 0 && named > 0, used + " stills used, " + named + " clips named");
  }
}
