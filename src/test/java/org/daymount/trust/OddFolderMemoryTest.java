package org.daymount.trust;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a month of odd pictures takes, with the options of the app image: the pictures of the test
 * jars that need most (four inks with a printer's profile, 12 and 10 megapixels; HEIC), and some of
 * the sample month. Most resident memory of the program as Linux tells it (proc(5), VmHWM); before
 * inks were converted a band at a time it took 704 MB here. The processes that decode HEIC take
 * some 60 each beside it, and come and go.
 */
@Tag("slow")
class OddFolderMemoryTest {
  private static final Path STATUS = Path.of("/proc/self/status");

  /**
   * docs/evaluation.md, "Memory": 607 measured on JDK 17 and 676 on 25 for the whole folder that
   * these are part of.
   */
  private static final long MOST_MB = Runtime.version().feature() > 17 ? 700 : 650;

  private static final int COPIES = 2;

  @TempDir Path home;
  private final StringBuilder dates = new StringBuilder("file,date\n");
  private int pictures;

  @Test
  void aFolderOfOddPicturesTakesLessThanWhatIsPromised(TestReporter reporter) throws Exception {
    assumeTrue(Files.isReadable(STATUS), "only Linux tells how much a process took at most");
    Path photos = Files.createDirectory(home.resolve("photos"));
    for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
      if (part.endsWith("-tests.jar")) {
        unpack(Path.of(part), photos);
      }
    }
    try (Stream<Path> sample = Files.list(Path.of("sample-photos"))) {
      for (Path file :
          sample.filter(each -> each.toString().endsWith(".jpg")).sorted().limit(16).toList()) {
        add(photos, file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    assertTrue(pictures > 20, pictures + " pictures");
    Files.writeString(photos.resolve("dates.csv"), dates);
    Path out = home.resolve("out");
    Process process =
        Runs.elsewhere(
            options(),
            Map.of("MALLOC_ARENA_MAX", "2"),
            List.of("sheets", photos.toString(), "--out", out.toString(), "--jobs", "2"));
    long most = 0;
    do {
      most = Math.max(most, kilobytes(process.pid()) / 1000);
    } while (!process.waitFor(20, TimeUnit.MILLISECONDS));
    assertTrue(process.exitValue() == 0 || process.exitValue() == 3, "exit code");
    assertTrue(Files.exists(out.resolve("sheets/sheet-15.jpg")), "many are printed");
    reporter.publishEntry("most resident memory", most + " MB");
    assertTrue(most > 100 && most < MOST_MB, most + " MB");
  }

  /** As the app image is built with them. */
  private static List<String> options() throws IOException {
    return Files.readString(Path.of("src/main/dist/build.xml"))
        .lines()
        .filter(line -> line.matches("-X(X:|ms|mn|mx).*"))
        .toList();
  }

  private void unpack(Path jar, Path photos) throws IOException {
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry :
          zip.stream().sorted((a, b) -> a.getName().compareTo(b.getName())).toList()) {
        String name = entry.getName().replaceFirst(".*/", "");
        boolean inks = name.startsWith("cmyk-sample-");
        if (inks || name.matches("(?i).*\\.(heic|heif|avif)")) {
          try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readAllBytes();
            for (int copy = 0; copy < (inks ? COPIES : 1); copy++) {
              byte[] other =
                  Arrays.copyOf(bytes, bytes.length + copy); // another file, same picture
              add(photos, copy + "-" + name, other);
            }
          }
        }
      }
    }
  }

  /** In turns on the days of a month, so that each is looked at and many are printed. */
  private void add(Path photos, String name, byte[] bytes) throws IOException {
    Files.write(photos.resolve(name), bytes);
    dates.append(name).append(",2026-06-%02d%n".formatted(1 + pictures++ % 30));
  }

  private static long kilobytes(long pid) {
    try {
      return Files.readString(Path.of("/proc/" + pid + "/status"))
          .lines()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException e) {
      return 0; // it has just ended
    }
  }
}
