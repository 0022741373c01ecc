package org.daymount.fuzz;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/**
 * Damages pictures by the thousand and reads each in a Java of its own with 512 MB: none may bring
 * that down, take more than ten seconds of processor time or more memory than {@link
 * #MOST_MEMORY_KB}, and each must be used or named with a reason.
 *
 * <pre>mvn -q -Pfuzz test-compile exec:exec -Dfuzz.files=10000 -Dfuzz.seed=1 -Dfuzz.damage=parts
 * </pre>
 *
 * Files that did harm stay in {@code target/fuzz}.
 */
public final class Fuzz {
  static final long MOST_MEMORY_KB = 800_000;
  private static final long MOST_CPU_MILLIS = 10_000;
  private static final long MOST_WAIT_SECONDS = 600; // of a batch, on a machine with other work
  private static final int BATCH = 250;

  /** Printed without a word, printed with one, refused with one, or no picture any more. */
  private static final List<String> OUTCOMES = List.of("used", "damaged", "named", "left");

  /** A kind of damage that is told apart beside the kinds of files. */
  private static final String IN_EXIF = "exif";

  /** A kind of files that alone is read, out of the same ones; all where it is empty. */
  private static final String ONLY = System.getProperty("fuzz.only", "");

  /** How files are damaged. */
  enum Damage {
    /** Bytes anywhere, numbers at which arithmetic goes wrong, the EXIF block on its own. */
    BYTES,
    /** As cards and cables do, with the structure of each format in view. */
    PARTS
  }

  /** What became of the files. */
  record Tally(
      Map<String, int[]> byKind,
      int decodersEnded,
      List<String> faults,
      long slowestMillis,
      long mostMemoryKb) {}

  private final Path work;
  private final Map<String, List<byte[]>> seeds;
  private final Map<String, int[]> byKind = new TreeMap<>(); // in the order of OUTCOMES
  private final List<String> faults = new ArrayList<>();
  private int decodersEnded; // processes of the native decoder that a file brought down
  private long slowest;
  private long mostMemory;

  Fuzz(Path work) throws IOException {
    this.work = Files.createDirectories(work);
    this.seeds = Seeds.find(System.getProperty("java.class.path"), work);
  }

  /** Arguments: how many files, seed, work folder, and {@code bytes} or {@code parts}. */
  public static void main(String[] arguments) throws IOException {
    int count = Integer.parseInt(arguments[0]);
    Fuzz fuzz = new Fuzz(Path.of(arguments[2]));
    Damage damage = Damage.valueOf(arguments[3].toUpperCase(Locale.ROOT));
    Tally tally = fuzz.run(count, Long.parseLong(arguments[1]), damage);
    System.out.println("kind   used  damaged, said so  named  other kind of file");
    tally
        .byKind()
        .forEach(
            (kind, n) ->
                System.out.printf("%-5s %5d  %16d  %5d  %5d%n", kind, n[0], n[1], n[2], n[3]));
    System.out.println("native decoders ended: " + tally.decodersEnded());
    System.out.println("slowest file: " + tally.slowestMillis() + " ms of processor time");
    System.out.println("most memory: " + tally.mostMemoryKb() / 1000 + " MB");
    tally.faults().forEach(fault -> System.out.println("FAULT " + fault));
    System.out.println(tally.faults().isEmpty() ? "no fault" : tally.faults().size() + " faults");
    if (!tally.faults().isEmpty()) {
      System.exit(1);
    }
  }

  Tally run(int count, long seed, Damage damage) throws IOException {
    Mutator mutator = new Mutator(seed);
    PartsDamager damager = new PartsDamager(seed);
    List<String> kinds = new ArrayList<>(seeds.keySet());
    if (damage == Damage.BYTES) {
      kinds.add(IN_EXIF);
    }
    List<Path> batch = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String kind = kinds.get(i % kinds.size());
      batch.add(
          damage == Damage.PARTS
              ? damaged(damager, kind, i, i / kinds.size())
              : damaged(mutator, kind, i, i / kinds.size()));
      if (!ONLY.isEmpty() && !kind.equals(ONLY)) {
        Files.delete(batch.remove(batch.size() - 1));
      }
      if (batch.size() == BATCH || i == count - 1) {
        read(batch);
        batch.clear();
      }
    }
    return new Tally(byKind, decodersEnded, faults, slowest, mostMemory);
  }

  private Path damaged(PartsDamager damager, String kind, int number, int seed) throws IOException {
    List<byte[]> whole = seeds.get(kind);
    byte[] bytes = damager.damaged(kind, whole.get(seed % whole.size()), whole);
    return Files.write(work.resolve(number + "." + kind), bytes);
  }

  private Path damaged(Mutator mutator, String kind, int number, int seed) throws IOException {
    List<byte[]> whole = seeds.get(kind.equals(IN_EXIF) ? "jpeg" : kind);
    byte[] chosen = whole.get(seed % whole.size());
    int from = 0;
    int length = chosen.length;
    if (kind.equals(IN_EXIF)) {
      from = exif(chosen);
      length = Math.min(chosen.length - from, 4000);
    }
    Path file = work.resolve(number + "." + kind);
    return Files.write(file, mutator.damaged(chosen, from, length, whole));
  }

  /** Where the EXIF block begins; 0 where there is none. */
  private static int exif(byte[] jpeg) {
    return Math.max(0, new String(jpeg, StandardCharsets.ISO_8859_1).indexOf("Exif\0\0"));
  }

  /** A worker that breaks is started again behind the file that broke it. */
  private void read(List<Path> batch) throws IOException {
    int done = 0;
    while (done < batch.size()) {
      done += readSome(batch.subList(done, batch.size()));
    }
    for (Path file : batch) {
      String name = file.getFileName().toString();
      if (faults.stream().noneMatch(fault -> fault.contains(name))) {
        Files.delete(file);
      }
    }
  }

  private int readSome(List<Path> files) throws IOException {
    Path output = work.resolve("worker.txt");
    Process process =
        new ProcessBuilder(FuzzWorker.command(files))
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    boolean ended = waitFor(process);
    int done = tally(output);
    if (done < files.size()) {
      faults.add(
          files.get(done).getFileName()
              + (ended ? " ended the reader, exit code " + process.exitValue() : " hangs"));
      Files.copy(
          output,
          work.resolve("fault-" + files.get(done).getFileName() + ".txt"),
          java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      return done + 1;
    }
    if (process.exitValue() != 0) {
      faults.add("the reader ended with code " + process.exitValue() + " behind all files");
    }
    return done;
  }

  private static boolean waitFor(Process process) {
    try {
      return process.waitFor(MOST_WAIT_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } finally {
      process.destroyForcibly();
    }
  }

  /** How many files were read to their end. */
  private int tally(Path output) throws IOException {
    int done = 0;
    try (BufferedReader lines = Files.newBufferedReader(output, StandardCharsets.ISO_8859_1)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        String[] words = line.split(" ", 4);
        int column = OUTCOMES.indexOf(words[0]);
        if (column >= 0) {
          done++;
          String kind = words[1].substring(words[1].indexOf('.') + 1);
          byKind.computeIfAbsent(kind, k -> new int[OUTCOMES.size()])[column]++;
          decodersEnded += line.contains("ended the reader of HEIC") ? 1 : 0;
          long millis = Long.parseLong(words[2]);
          slowest = Math.max(slowest, millis);
          if (millis > MOST_CPU_MILLIS) {
            faults.add(words[1] + " took " + millis + " ms");
          }
        } else if (words[0].equals("memory")) {
          long kilobytes = Long.parseLong(words[1]);
          mostMemory = Math.max(mostMemory, kilobytes);
          if (kilobytes > MOST_MEMORY_KB) {
            faults.add("the reader held " + kilobytes / 1000 + " MB");
          }
        }
      }
    }
    return done;
  }
}
