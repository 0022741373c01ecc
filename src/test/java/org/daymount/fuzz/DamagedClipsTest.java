package org.daymount.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.daymount.cli.CommandLines;
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

  private List<byte[]> sound() throws IOException {
    return List.of(
        clip("a.mp4", "-c:v", "libx264", "-pix_fmt", "yuv420p", "-movflags", "faststart"),
        clip("b.mov", "-c:v", "libx264", "-pix_fmt", "yuv420p"),
        clip("c.mp4", "-c:v", "libx265", "-x265-params", "log-level=error", "-tag:v", "hvc1"),
        clip("d.mp4", "-c:v", "libsvtav1", "-preset", "12"));
  }

  /** What became of clips that were damaged in one way. */
  private static final class Fates {
    private int used; // all its stills
    private int partly;
    private int named;
    private int notAsked; // it is no clip any more: counted with the files of no interest

    @Override
    public String toString() {
      return (used + partly + named + notAsked)
          + " clips: "
          + used
          + " used, "
          + partly
          + " used in part, "
          + named
          + " named, "
          + notAsked
          + " not pictures";
    }
  }

  private void meet(byte[] damaged, int number, Fates fates) throws IOException {
    Path file = folder.resolve("clip " + number + ".mp4");
    Files.write(file, damaged);
    FolderReader reader = new FolderReader();
    IngestSettings settings =
        new IngestSettings(ClockCorrections.NONE, LocalDate.of(2026, 7, 4), ZoneOffset.UTC);
    Ingested found = reader.read(reader.list(List.of(file)), settings, 1, () -> {});
    assertTrue(
        found.photos().size() + found.problems().size() + found.others().size() > 0,
        file + " is neither used nor named");
    int shown = 0;
    for (Photo photo : found.photos()) {
      try {
        assertEquals(photo.size().within(200).width(), new Pictures().whole(photo, 200).getWidth());
        shown++;
      } catch (UnusablePicture e) {
        assertTrue(e.getMessage().length() > 10, "no reason");
      }
    }
    if (shown > 0) {
      fates.used += shown == found.photos().size() ? 1 : 0;
      fates.partly += shown == found.photos().size() ? 0 : 1;
    } else if (found.photos().isEmpty() && found.problems().isEmpty()) {
      fates.notAsked++;
    } else {
      fates.named++;
    }
    Files.delete(file);
  }

  @Test
  void damagedClipsAreEachUsedOrNamed() throws IOException {
    List<byte[]> sound = sound();
    Mutator mutator = new Mutator(20260603);
    Fates fates = new Fates();
    for (int i = 0; i < FILES; i++) {
      byte[] whole = sound.get(i % sound.size());
      meet(mutator.damaged(whole, 0, whole.length, sound), i, fates);
    }
    System.out.println("bytes: " + fates);
    assertTrue(fates.used > 0 && fates.named > 0, fates.toString());
  }

  /** The same where lengths, counts and tables of single boxes are wrong. */
  @Test
  void clipsWithDamagedBoxesAreEachUsedOrNamed() throws IOException {
    List<byte[]> sound = sound();
    BoxMutator mutator = new BoxMutator(20260604);
    BoxMutator.Damage[] kinds = BoxMutator.Damage.values();
    Map<BoxMutator.Damage, Fates> fates = new EnumMap<>(BoxMutator.Damage.class);
    for (int i = 0; i < FILES; i++) {
      BoxMutator.Damage how = kinds[i % kinds.length];
      byte[] whole = sound.get(i / kinds.length % sound.size());
      byte[] other = sound.get((i / kinds.length + 1) % sound.size());
      meet(mutator.damaged(whole, how, other), i, fates.computeIfAbsent(how, any -> new Fates()));
    }
    fates.forEach((how, fate) -> System.out.println(how + ": " + fate));
    assertTrue(fates.values().stream().mapToInt(f -> f.used).sum() > 0, fates.toString());
    assertTrue(fates.values().stream().mapToInt(f -> f.named).sum() > 0, fates.toString());
  }

  /** Exit code 3, as for photos; the sound clip beside it is printed. */
  @Test
  void aDamagedClipAmongOthersIsNamedAndTheRunGoesOn() throws IOException {
    Path photos = Files.createDirectories(folder.resolve("pictures"));
    byte[] whole = clip("a.mp4", "-c:v", "libx264", "-pix_fmt", "yuv420p", "-s", "1280x720");
    Files.write(photos.resolve("VID_20260603_101500.mp4"), whole);
    Files.write(photos.resolve("VID_20260604_101500.mp4"), Arrays.copyOf(whole, 3000));
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(told, true, UTF_8);
    Path made = folder.resolve("made");
    int code =
        CommandLines.runHere(
            print,
            print,
            "sheets",
            photos.toString(),
            "--out",
            made.toString(),
            "--min-ppi",
            "100",
            "--no-cache");
    assertEquals(3, code, told.toString(UTF_8));
    assertTrue(told.toString(UTF_8).contains("VID_20260604_101500.mp4"), told.toString(UTF_8));
    assertTrue(Files.readString(made.resolve("month.json")).contains("VID_20260603_101500.mp4 at"));
  }
}
