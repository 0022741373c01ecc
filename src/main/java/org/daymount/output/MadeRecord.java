package org.daymount.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Which files of a folder this program made, each with the SHA-256 of its bytes. While files are
 * moved to their places a name may have two sums: of the file that was there, and of the one to
 * come.
 */
final class MadeRecord {
  /** The file's name. */
  static final String FILE = ".daymount-made";

  /**
   * Names that the program gives to what it makes. A record is a file like any other: what it says
   * of a name that leads elsewhere, or to something of the person's, is not believed.
   */
  private static final Pattern OURS =
      Pattern.compile("[a-z0-9-]+\\.(html|json|pdf)|[a-z]+/[a-z0-9-]+\\.jpg");

  private static final String CHOICES = "choices.json";
  private static final int SUM_DIGITS = 64;
  private static final long MOST_BYTES = 10_000_000; // some 100,000 names

  private final Map<String, Set<String>> sums = new TreeMap<>();

  static boolean isOurs(String name) {
    return OURS.matcher(name).matches() && !name.equals(CHOICES);
  }

  /** Empty when there is none, or something else is in its place. */
  static MadeRecord read(Path folder) throws IOException {
    MadeRecord record = new MadeRecord();
    Path file = folder.resolve(FILE);
    if (Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES) {
      String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
      for (String line : text.split("\n")) {
        if (line.indexOf("  ") == SUM_DIGITS) {
          record.add(line.substring(SUM_DIGITS + 2), line.substring(0, SUM_DIGITS));
        }
      }
    }
    return record;
  }

  /** Nothing for names that are not ours. */
  void add(String name, String sum) {
    if (isOurs(name)) {
      sums.computeIfAbsent(name, any -> new TreeSet<>()).add(sum);
    }
  }

  void addAll(MadeRecord other) {
    other.sums.forEach((name, all) -> all.forEach(sum -> add(name, sum)));
  }

  Set<String> names() {
    return sums.keySet();
  }

  boolean holds(String name) {
    return sums.containsKey(name);
  }

  boolean holds(String name, String sum) {
    return sums.getOrDefault(name, Set.of()).contains(sum);
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder();
    sums.forEach(
        (name, all) -> all.forEach(sum -> text.append(sum).append("  ").append(name).append('\n')));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
