package org.daymount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jars of {@code mvn -Pjars package}, opened and started; skipped where they were not made. */
@Tag("slow")
class ProgramJarsTest {
  private static final Path JARS = Path.of("target/jars");

  /** Which native folders belong to which system. */
  private static final Map<String, Set<String>> NATIVES =
      Map.of(
          "windows-x64", Set.of("windows-x86_64", "win-x64"),
          "macos-arm64", Set.of("macosx-arm64", "osx-aarch64"),
          "macos-x64", Set.of("macosx-x86_64"),
          "linux-x64", Set.of("linux-x86_64", "linux-x64"));

  private static final Pattern NATIVE =
      Pattern.compile(
          "(?:org/bytedeco/(?:ffmpeg|javacpp)|ai/onnxruntime/native)/([a-z]+-[a-z0-9_]+)/.+");

  private static final long MOST_BYTES = 75_000_000;

  @TempDir Path home;

  @BeforeAll
  static void made() {
    assumeTrue(
        Files.isDirectory(JARS), "no target/jars: mvn -Pjars -DskipTests package was not run");
  }

  @Test
  void eachJarHoldsTheLibrariesOfItsSystemAndNoOthers() throws IOException {
    Map<String, Set<String>> found = new TreeMap<>();
    for (Path file : jars()) {
      try (JarFile jar = new JarFile(file.toFile())) {
        Attributes manifest = jar.getManifest().getMainAttributes();
        assertEquals("org.daymount.Main", manifest.getValue("Main-Class"));
        assertEquals("true", manifest.getValue("Multi-Release"));
        assertEquals("ALL-UNNAMED", manifest.getValue("Enable-Native-Access"));
        String system = manifest.getValue("Daymount-System");
        assertTrue(file.toString().endsWith("-" + system + ".jar"), file + " is for " + system);
        Set<String> natives = new TreeSet<>();
        for (JarEntry entry : (Iterable<JarEntry>) jar.stream()::iterator) {
          Matcher name = NATIVE.matcher(entry.getName());
          if (name.matches() && !entry.isDirectory()) {
            natives.add(name.group(1));
          }
          assertFalse(entry.getName().contains(".dSYM"), "debug symbols: " + entry.getName());
          assertFalse(entry.getName().endsWith(".exe"), "a program: " + entry.getName());
        }
        found.put(system, natives);
      }
      assertTrue(Files.size(file) < MOST_BYTES, file + " has " + Files.size(file) + " bytes");
    }
    assertEquals(new TreeMap<>(NATIVES), found);
  }

  @Test
  void allJarsHoldTheSameClasses() throws IOException {
    Map<String, Map<String, Long>> classes = new TreeMap<>();
    for (Path file : jars()) {
      try (JarFile jar = new JarFile(file.toFile())) {
        Map<String, Long> sums = new TreeMap<>();
        jar.stream()
            .filter(entry -> !entry.isDirectory() && !NATIVE.matcher(entry.getName()).matches())
            .filter(entry -> !entry.getName().equals("META-INF/MANIFEST.MF"))
            .forEach(entry -> sums.put(entry.getName(), entry.getCrc()));
        classes.put(file.getFileName().toString(), sums);
      }
    }
    assertTrue(classes.values().iterator().next().size() > 5000, "a program");
    assertEquals(1, Set.copyOf(classes.values()).size(), "something differs between the jars");
  }

  @Test
  void withoutItsLibrariesAProgramStartsAndSaysWhatItCannotDo() throws Exception {
    for (Path file : jars()) {
      String system = file.getFileName().toString().replaceAll("daymount-[0-9.]+-(.*)\\.jar", "$1");
      boolean ours = system.equals("linux-x64");
      Path mine = Files.createDirectories(home.resolve(system));
      Path said = mine.resolve("said");
      Process program = start(file, said, "open", "--no-browser", "--home", mine.toString());
      try {
        Matcher address = awaitAddress(said);
        String missing =
            HttpClient.newHttpClient()
                .send(
                    HttpRequest.newBuilder(URI.create(address.group(1) + "/api/start/missing"))
                        .header("X-Review-Token", address.group(2))
                        .POST(BodyPublishers.ofString("{}"))
                        .build(),
                    BodyHandlers.ofString())
                .body();
        if (ours) {
          assertEquals("{\"missing\":[]}", missing);
        } else {
          assertTrue(missing.contains("Faces and subjects are not looked for"), missing);
          assertTrue(missing.contains("HEIC and AVIF pictures"), missing);
          assertTrue(missing.contains("linux-x64"), "which program to take: " + missing);
        }
      } finally {
        program.destroy();
        program.waitFor();
      }
      assertFalse(Files.readString(said).contains("Exception"), Files.readString(said));
    }
  }

  @Test
  void aMonthIsMadeAllTheSameWithoutTheLibraries() throws Exception {
    Path photos = Files.createDirectories(home.resolve("photos"));
    for (String name : List.of("20260601_171240.jpg", "20260602_094410.jpg")) {
      Files.copy(Path.of("sample-photos", name), photos.resolve(name));
    }
    for (Path file : jars()) {
      if (file.toString().contains("windows")) {
        Path said = home.resolve("said");
        Path out = home.resolve("out");
        Process program = start(file, said, "sheets", photos.toString(), "--out", out.toString());
        assertEquals(0, program.waitFor(), Files.readString(said));
        assertTrue(Files.size(out.resolve("sheets.pdf")) > 0);
        String words = Files.readString(said);
        assertTrue(words.contains("ONNX Runtime does not run on this computer"), words);
        assertFalse(words.contains("\tat "), "a stack trace: " + words);
      }
    }
  }

  private static List<Path> jars() throws IOException {
    try (Stream<Path> all = Files.list(JARS)) {
      List<Path> jars = all.filter(each -> each.toString().endsWith(".jar")).sorted().toList();
      assertEquals(NATIVES.size(), jars.size(), "a jar for each system: " + jars);
      return jars;
    }
  }

  private static Process start(Path jar, Path said, String... arguments) throws IOException {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-jar", jar.toString()));
    words.addAll(List.of(arguments));
    return new ProcessBuilder(words)
        .redirectErrorStream(true)
        .redirectOutput(said.toFile())
        .start();
  }

  private static Matcher awaitAddress(Path said) throws Exception {
    Pattern address = Pattern.compile("(http://127\\.0\\.0\\.1:\\d+)/#([0-9a-f]{32})");
    for (int waited = 0; waited < 120_000; waited += 50) {
      Matcher found = address.matcher(Files.readString(said));
      if (found.find()) {
        return found;
      }
      Thread.sleep(50);
    }
    throw new AssertionError("no address: " + Files.readString(said));
  }
}
