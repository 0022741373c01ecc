package org.daymount.fuzz;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.daymount.image.Pictures;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.IngestSettings;
import org.daymount.ingest.Ingested;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;

/**
 * Reads damaged files as a run would, one after the other, and says on standard output what became
 * of each: {@code begin NAME}, then {@code used|damaged|named|left NAME CPU-MILLISECONDS REASON}.
 * Anything else on the way out is a fault.
 */
final class FuzzWorker {
  private static final IngestSettings SETTINGS =
      new IngestSettings(ClockCorrections.NONE, LocalDate.of(2026, 7, 1), ZoneId.of("UTC"));

  private FuzzWorker() {}

  /** What starts one for these files, in a Java of 512 MB. */
  static List<String> command(List<Path> files) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                FuzzWorker.class.getName()));
    files.forEach(file -> command.add(file.toString()));
    return command;
  }

  /** Arguments: files. */
  public static void main(String[] files) throws IOException {
    for (String file : files) {
      Path path = Path.of(file);
      System.out.println("begin " + path.getFileName());
      System.out.flush();
      long start = cpu();
      String outcome = outcome(path);
      String name = path.getFileName().toString();
      int gap = outcome.indexOf(' ');
      System.out.println(
          outcome.substring(0, gap)
              + " "
              + name
              + " "
              + (cpu() - start) / 1_000_000
              + outcome.substring(gap));
    }
    System.out.println("memory " + mostMemory());
    System.out.flush();
  }

  private static long cpu() {
    return ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
        .getProcessCpuTime();
  }

  private static String outcome(Path path) {
    FolderReader reader = new FolderReader();
    Ingested read = reader.read(reader.list(List.of(path)), SETTINGS, 1, () -> {});
    if (!read.problems().isEmpty()) {
      return "named " + oneLine(read.problems().get(0).text());
    }
    if (read.photos().isEmpty()) {
      return "left " + read.others(); // counted as another kind of file, by its first bytes
    }
    Photo photo = read.photos().get(0);
    Pictures pictures = new Pictures();
    try {
      boolean damaged = pictures.examined(photo, 640).damage().isPresent();
      pictures.whole(photo, 512);
      PixelSize middle =
          new PixelSize(
              Math.max(1, photo.size().width() / 2), Math.max(1, photo.size().height() / 2));
      pictures.part(photo, middle.whole(), new PixelSize(60, 40));
      pictures.part(photo, middle.whole(), middle.within(1000)); // a full decoder's turn
      return (damaged ? "damaged " : "used ") + photo.format();
    } catch (UnusablePicture e) {
      return "named " + oneLine(e.getMessage());
    }
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /** The most the process ever held, in kB; 0 where the system does not tell. */
  private static long mostMemory() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (Files.notExists(status)) {
      return 0;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("VmHWM:"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
        .findFirst()
        .orElse(0);
  }
}
