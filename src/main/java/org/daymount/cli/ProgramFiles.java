package org.daymount.cli;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.daymount.file.Sha256;

/**
 * Tells the program that is running from every other build of it, so that nothing another one drew
 * is taken for this one's.
 */
final class ProgramFiles {
  private ProgramFiles() {}

  /** Found once: a program does not change while it runs. */
  private static final class Once {
    static final Optional<String> FINGERPRINT = find();
  }

  /**
   * Of the jar this class is in the checksums of all that is in it; of a folder of classes, as
   * developers have, what is in its files. With the Java that runs it, whose own drawing may differ
   * from another's, and the names and lengths of libraries beside it. The same however the class
   * path is written. Empty when nobody can say.
   */
  static Optional<String> fingerprint() {
    return Once.FINGERPRINT;
  }

  private static Optional<String> find() {
    try {
      Path own =
          Path.of(ProgramFiles.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Optional.of(fingerprint(own, System.getProperty("java.class.path")));
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return Optional.empty();
    }
  }

  /**
   * @param own the jar or the folder of this program's classes
   */
  static String fingerprint(Path own, String classPath) throws IOException {
    Set<Path> places = new HashSet<>(Set.of(own.toRealPath()));
    for (String entry : classPath.split(File.pathSeparator)) {
      if (Files.exists(Path.of(entry))) {
        places.add(Path.of(entry).toRealPath());
      }
    }
    TreeSet<String> facts = new TreeSet<>(Set.of(Version.withJava()));
    for (Path place : places) {
      if (Files.isDirectory(place)) {
        addFolder(place, facts);
      } else if (place.equals(own.toRealPath())) {
        addJar(place, facts);
      } else {
        facts.add(place.getFileName() + " " + Files.size(place));
      }
    }
    String all = String.join("\n", facts);
    return Sha256.hex(all.getBytes(StandardCharsets.UTF_8)).substring(0, 32);
  }

  private static void addJar(Path jar, Set<String> facts) throws IOException {
    try (ZipFile file = new ZipFile(jar.toFile())) {
      file.stream().forEach(entry -> facts.add(entry.getName() + " " + entry.getCrc()));
    }
  }

  private static void addFolder(Path folder, Set<String> facts) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        facts.add(folder.relativize(file) + " " + Sha256.hex(Files.readAllBytes(file)));
      }
    }
  }
}
