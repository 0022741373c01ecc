package org.daymount.jar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The one file a person is given, run the way a person runs it: from a folder of their own. */
class DaymountJarIT {
  private static final Path JAR = Path.of(System.getProperty("daymount.jar"));
  private static final Path NEWER_JDK = Path.of("/usr/lib/jvm/temurin-25-jdk-amd64");

  @TempDir static Path home;

  @BeforeAll
  static void aSmallMonth() throws IOException {
    Path photos = Files.createDirectories(home.resolve("June pictures"));
    for (int day = 3; day <= 5; day++) {
      boolean tall = day == 4;
      BufferedImage scene = Scenes.scene(day, tall ? 1350 : 1800, tall ? 1800 : 1350);
      ExifPhoto.painted()
          .picture(scene)
          .original("2026:06:0" + day + " 10:00:00")
          .write(photos.resolve("day" + day + ".jpg"));
    }
    Path cut = Files.createDirectories(home.resolve("cut off"));
    byte[] whole = Files.readAllBytes(photos.resolve("day3.jpg"));
    Files.write(cut.resolve("half.jpg"), Arrays.copyOf(whole, whole.length / 2));
    Files.copy(photos.resolve("day4.jpg"), cut.resolve("whole.jpg"));
    Path others = Files.createDirectories(home.resolve("other formats"));
    ImageIO.write(Scenes.scene(9, 900, 600), "tiff", others.resolve("a.tif").toFile());
    copy("/test-documents/testWEBP.webp", others.resolve("b.webp")); // Tika's test pictures
    copy("/test-documents/testHEIF.heic", others.resolve("d.heic"));
    copy("/jpeg/cmyk-sample.jpg", others.resolve("c.jpg")); // TwelveMonkeys' test pictures
  }

  static Stream<Path> javas() {
    return Stream.of(Path.of(System.getProperty("java.home")), NEWER_JDK);
  }

  @ParameterizedTest
  @MethodSource("javas")
  void theWholeJobRunsFromAnyFolderAndWarnsOfNothing(Path java) throws IOException {
    assumeThere(java);
    String out = "made with " + java.getFileName();
    Ran run = jar(java, "sheets", "June pictures", "--out", out, "--days", "3-5");
    assertEquals(0, run.code(), run.toString());
    assertEquals(List.of(), warnings(run));
    JsonNode month = new ObjectMapper().readTree(home.resolve(out + "/month.json").toFile());
    assertEquals(3, month.get("sheets").size());
    for (JsonNode sheet : month.get("sheets")) {
      BufferedImage picture =
          ImageIO.read(home.resolve(out).resolve(sheet.get("file").asText()).toFile());
      // 4 x 6 in at 300 ppi is 1200 x 1800 pixels: the usual arithmetic of print sizes
      assertEquals(1800, Math.max(picture.getWidth(), picture.getHeight()));
      assertEquals(1200, Math.min(picture.getWidth(), picture.getHeight()));
    }
    for (JsonNode photo : month.get("photos")) {
      assertTrue(photo.get("measures").get("lookedClosely").asBoolean(), "the detectors ran");
    }
    for (String name : List.of("index.html", "sheets.pdf", "guide.pdf")) {
      assertTrue(Files.size(home.resolve(out).resolve(name)) > 1000, name);
    }
    assertEquals(
        new TreeSet<>(List.of("day3.jpg", "day4.jpg", "day5.jpg")),
        names(home.resolve("June pictures")));
  }

  /** Maps and sets of the JDK may keep another order in each process; the output must not. */
  @Test
  void runsInOtherProcessesFindNothingToRewrite() {
    String[] run = {
      "sheets", "June pictures", "--out", "again", "--space", "3x4", "--cards", "3x4"
    };
    assertEquals(0, jar(run).code());
    for (int i = 0; i < 3; i++) {
      String[] anew = Arrays.copyOf(run, run.length + 1);
      anew[run.length] = i == 0 ? "--no-cache" : "--verbose";
      Ran again = jar(anew);
      assertTrue(again.out().contains("nothing was rewritten"), again.toString());
    }
  }

  @ParameterizedTest
  @MethodSource("javas")
  void theReadersOfOtherFormatsAreInside(Path java) throws IOException {
    assumeThere(java);
    Ran run = jar(java, "look", "other formats", "--json");
    assertEquals(0, run.code(), run.toString());
    assertEquals(List.of(), warnings(run));
    JsonNode photos = new ObjectMapper().readTree(run.out()).get("photos");
    assertEquals(4, photos.size());
    for (JsonNode photo : photos) {
      assertTrue(photo.get("problem").isNull(), photo.toString());
      assertFalse(photo.get("measures").isNull(), photo.toString());
    }
  }

  @Test
  void theExitCodesAreThoseOfTheHelp() throws IOException {
    assertEquals(0, jar("--help").code());
    assertEquals(2, jar().code());
    assertEquals(2, jar("sheets", "June pictures", "--sheet", "round").code());
    assertEquals(2, jar("sheets", "no such folder").code());
    Ran some = jar("days", "cut off");
    Ran used = jar("sheets", "cut off", "--dry-run");
    assertEquals(3, used.code(), used.toString());
    assertTrue(used.err().stream().anyMatch(line -> line.contains("half.jpg")), used.toString());
    assertTrue(some.code() == 0 || some.code() == 3, "days reads no pixels: " + some);
    Files.writeString(home.resolve("in the way"), "a file where a folder is wanted");
    Ran failed = jar("sheets", "June pictures", "--out", "in the way");
    assertEquals(1, failed.code(), failed.toString());
    assertTrue(failed.err().stream().anyMatch(line -> line.startsWith("error: ")));
  }

  @Test
  void theVersionIsTheBuilds() {
    assertTrue(jar("--version").out().matches("daymount \\d+\\.\\d+\\.\\d+\\R"));
  }

  @Test
  void itHoldsTheNativesOfThisSystemOnlyAndWhatTheLicencesAskFor() throws IOException {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      List<String> names = jar.stream().map(entry -> entry.getName()).toList();
      assertEquals(
          1,
          names.stream()
              .filter(name -> name.matches("ai/onnxruntime/native/[^/]+/.+"))
              .map(name -> name.split("/")[3])
              .distinct()
              .count(),
          "onnx natives of one system");
      assertEquals(
          List.of("DejaVuSans-Bold.ttf", "DejaVuSans.ttf", "DejaVuSerif.ttf", "LICENSE"),
          names.stream()
              .filter(name -> name.startsWith("net/sf/jasperreports/") && !name.endsWith("/"))
              .map(name -> name.substring(name.lastIndexOf('/') + 1))
              .sorted()
              .toList());
      assertEquals(
          List.of(),
          names.stream()
              .filter(
                  name ->
                      name.endsWith("module-info.class")
                          || name.matches("META-INF/.*\\.(SF|RSA|DSA)"))
              .toList());
      assertEquals(names.size(), names.stream().distinct().count(), "nothing is in the jar twice");
      assertEquals("true", jar.getManifest().getMainAttributes().getValue("Multi-Release"));
      assertNotNull(jar.getEntry("META-INF/LICENSE"));
      String readers =
          new String(
              jar.getInputStream(jar.getEntry("META-INF/services/javax.imageio.spi.ImageReaderSpi"))
                  .readAllBytes());
      for (String format : List.of("jpeg", "webp", "tiff")) {
        assertTrue(readers.contains(".imageio.plugins." + format + "."), readers);
      }
    }
  }

  private static Ran jar(String... arguments) {
    return jar(Path.of(System.getProperty("java.home")), arguments);
  }

  private static Ran jar(Path java, String... arguments) {
    return Ran.jar(java, JAR, home, arguments);
  }

  private static void assumeThere(Path java) {
    assumeTrue(Files.isExecutable(java.resolve("bin/java")), "no JDK at " + java);
  }

  /** What a virtual machine says unasked: its own words, and those of libraries' loggers. */
  private static List<String> warnings(Ran run) {
    return run.err().stream()
        .filter(line -> line.matches("(?i).*(warning|slf4j|deprecat|exception|log4j).*"))
        .toList();
  }

  private static TreeSet<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static void copy(String resource, Path to) throws IOException {
    try (InputStream in = DaymountJarIT.class.getResourceAsStream(resource)) {
      Files.copy(in, to);
    }
  }
}
