package org.daymount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Whoever gets the jar gets the licences of all it carries. The libraries are those of Maven's
 * runtime class path, which the jar is made of.
 */
class LicencesTest {
  private static final Path RUNTIME = Path.of("target/licences/classpath.txt");
  private static final Pattern ENTRY =
      Pattern.compile(
          "^(\\S.*)\n  licence: (.+)\n  copyright: (.+)\n  source: (.+)$", Pattern.MULTILINE);

  private final Map<String, List<String>> licences = licences();

  @Test
  void everyLibraryOfTheJarIsNamedWithItsLicence() throws IOException {
    List<String> jars =
        Files.readAllLines(RUNTIME).stream().filter(line -> line.endsWith(".jar")).toList();
    assertTrue(jars.size() > 20, "libraries are missing in " + RUNTIME + ": " + jars);
    List<String> unnamed =
        jars.stream()
            .map(jar -> Path.of(jar).toString().replace('\\', '/'))
            .filter(jar -> licences.keySet().stream().noneMatch(library -> isOf(jar, library)))
            .toList();
    assertEquals(List.of(), unnamed);
  }

  @Test
  void everyLicenceThatIsNamedHasItsText() throws IOException {
    for (List<String> ids : licences.values()) {
      for (String id : ids) {
        assertTrue(text(id + ".txt").length() > 900, id + " is too short for a licence");
      }
    }
  }

  /** FFmpeg says of itself how it was built: LGPL version 3 or later (its configure's version3). */
  @Test
  void libavcodecIsSaidToBeUnderTheLicenceThatItNamesItself() {
    assertEquals(
        "LGPL version 3 or later",
        org.bytedeco.ffmpeg.global.avcodec.avcodec_license().getString());
    assertTrue(
        licences
            .get("libavcodec, libavutil and libswresample in org.bytedeco:ffmpeg")
            .containsAll(List.of("LGPL-3.0-or-later", "GPL-3.0-or-later")));
  }

  private static boolean isOf(String jar, String library) {
    int colon = library.indexOf(':');
    if (colon < 0 || library.contains(" ")) {
      return false; // a part of a library
    }
    String group = library.substring(0, colon).replace('.', '/');
    return jar.contains("/" + group + "/" + library.substring(colon + 1) + "/");
  }

  private static Map<String, List<String>> licences() {
    Map<String, List<String>> found = new TreeMap<>();
    Matcher entry = ENTRY.matcher(text("README.txt"));
    while (entry.find()) {
      found.put(entry.group(1), List.of(entry.group(2).split(" and ")));
    }
    assertFalse(found.isEmpty(), "the notice names no library");
    return found;
  }

  private static String text(String name) {
    try (InputStream in = LicencesTest.class.getResourceAsStream("/META-INF/licences/" + name)) {
      assertNotNull(in, name + " is missing");
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
