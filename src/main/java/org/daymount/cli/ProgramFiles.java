package org.daymount.cli;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.daymount.file.Sha256;

/**
 * Tells the program that is running from every other build of it, so that nothing another one drew
 * is taken for this one's.
 */
final class ProgramFiles {
  private ProgramFiles() {}

  /** Told once: a program does not change while it runs. */
  private static final class Told {
    static final Optional<String> FINGERPRINT = tell();
  }

  /**
   * Of a jar the checksums of all that is in it; of a folder of classes, as developers have, names,
   * lengths and times. With the Java that runs it, whose own drawing may differ from another's, and
   * the names and lengths of libraries beside it. Empty when nobody can say.
   */
  static Optional<String> fingerprint() {
    return Told.FINGERPRINT;
  }

  private static Optional<String> tell() {
    try {
      MessageDigest digest = Sha256.digest();
      add(digest, Version.withJava());
      CodeSource own = ProgramFiles.class.getProtectionDomain().getCodeSource();
      Path place = Path.of(own.getLocation().toURI());
      for (String fact : Files.isDirectory(place) ? inFolder(place) : inJar(place)) {
        add(digest, fact);
      }
      for (String library : System.getProperty("java.class.path").split(File.pathSeparator)) {
        Path file = Path.of(library);
        add(digest, file.getFileName() + " " + file.toFile().length());
      }
      return Optional.of(HexFormat.of().formatHex(digest.digest(), 0, 16));
    } catch (IOException | URISyntaxException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static void add(MessageDigest digest, String fact) {
    digest.update((fact + "\n").getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> inJar(Path jar) throws IOException {
    try (ZipFile file = new ZipFile(jar.toFile())) {
      return file.stream().map(entry -> entry.getName() + " " + entry.getCrc()).toList();
    }
  }

  private static List<String> inFolder(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .sorted()
          .map(
              file ->
                  folder.relativize(file)
                      + " "
                      + file.toFile().length()
                      + " "
                      + file.toFile().lastModified())
          .toList();
    }
  }
}
