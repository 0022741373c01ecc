package org.daymount.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.daymount.cache.Cache;
import org.daymount.crop.CropSettings;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.month.MonthPhoto;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job on other people's pictures, good and broken: everything in the test jars of
 * TwelveMonkeys imageio-jpeg 3.12.0, Apache Commons Imaging 1.0.0-alpha6 and Apache Tika's image
 * parsers 3.3.1.
 */
@Tag("slow")
class RegistryMonthTest {
  @TempDir static Path folder;

  @BeforeAll
  static void unpackTheTestJars() throws IOException {
    List<Path> jars = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
      if (entry.endsWith("-tests.jar")) {
        jars.add(Path.of(entry));
      }
    }
    assertEquals(3, jars.size());
    for (Path jar : jars) {
      unpack(jar, folder.resolve("pictures").resolve(jar.getFileName().toString()));
    }
  }

  @Test
  void everyPictureIsEitherUsableOrNamedWithAReason() throws IOException {
    Month month = new MonthMaker(new Pictures(), Progress.SILENT).make(request(), note -> {});
    assertTrue(month.photos().size() > 200, "pictures found: " + month.photos().size());
    for (MonthPhoto photo : month.photos()) {
      boolean pickable = photo.problem().isEmpty();
      assertTrue(!photo.used() || pickable, photo.file() + " is used despite " + photo.problem());
      assertTrue(
          !pickable || photo.measures().isPresent(), photo.file() + " is usable but not looked at");
      photo.problem().ifPresent(text -> assertTrue(text.length() > 10, text));
    }
    long spaces = month.days().stream().flatMap(day -> day.spaces().stream()).count();
    assertEquals(31, spaces, "the month with most pictures has 31 days");
  }

  @Test
  void theMonthIsDrawnTwiceWithTheSameBytes() throws IOException {
    List<byte[]> runs = new ArrayList<>();
    for (String name : List.of("one", "two")) {
      Path out = folder.resolve(name);
      Month month = new MonthMaker(new Pictures(), Progress.SILENT).make(request(), note -> {});
      new MonthWriter(new Pictures(), new MonthJson("daymount test"), Progress.SILENT, Cache.NONE)
          .write(month, out, false, 2);
      runs.add(everything(out));
    }
    assertTrue(runs.get(0).length > 100_000);
    org.junit.jupiter.api.Assertions.assertArrayEquals(runs.get(0), runs.get(1));
  }

  private static Request request() {
    return TestRequests.of(
        folder.resolve("pictures"),
        Optional.empty(),
        new OutputLocation(folder, Optional.empty()),
        CropSettings.of(new Ppi(300), new Ppi(40))); // the pictures in the jars are small
  }

  private static byte[] everything(Path out) throws IOException {
    var all = new java.io.ByteArrayOutputStream();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        all.write(
            out.relativize(file).toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        all.write(Files.readAllBytes(file));
      }
    }
    return all.toByteArray();
  }

  private static void unpack(Path jar, Path target) throws IOException {
    try (JarFile file = new JarFile(jar.toFile())) {
      for (Enumeration<JarEntry> entries = file.entries(); entries.hasMoreElements(); ) {
        JarEntry entry = entries.nextElement();
        Path to = target.resolve(entry.getName()).normalize();
        if (entry.isDirectory() || entry.getName().endsWith(".class") || !to.startsWith(target)) {
          continue;
        }
        Files.createDirectories(to.getParent());
        try (InputStream in = file.getInputStream(entry)) {
          Files.copy(in, to);
        }
      }
    }
  }
}
