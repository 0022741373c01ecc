package org.daymount.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Compares this program with well-known decoders on the same files, in the same run, taking turns.
 *
 * <pre>
 * mvn -q -Pbenchmark test-compile exec:exec -Dbenchmark.photos=100 -Dbenchmark.rounds=5
 * </pre>
 *
 * <p>Only the ratios say something: seconds depend on the machine and on who else uses it. A
 * program that is not installed is left out and named.
 */
public final class Benchmark {
  /** The month that most people have, as the argument names it. */
  private static final String CASUAL = "casual";

  private static final int CASUAL_PHOTOS = 120;

  private final Path work;
  private final int rounds;
  private final String only;
  private final String without;

  private Benchmark(Path work, int rounds, String only, String without) {
    this.work = work;
    this.rounds = rounds;
    this.only = only;
    this.without = without;
  }

  /**
   * @param arguments folder for the photos and what is made of them; numbers of photos with commas
   *     between them, or {@code casual}; rounds; regular expressions for the names of the
   *     contenders that are wanted, and for those of them that are not
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Benchmark benchmark =
        new Benchmark(
            Path.of(arguments[0]).toAbsolutePath(),
            Integer.parseInt(arguments[2]),
            arguments[3],
            arguments[4]);
    List<Results> sizes = new ArrayList<>();
    for (String photos : arguments[1].split(",")) {
      Results results = benchmark.run(photos.strip());
      results.print();
      sizes.add(results);
    }
    Slope.print(sizes);
  }

  private Results run(String month) throws IOException, InterruptedException {
    Path jpegs = work.resolve("month-" + month);
    Path heics = work.resolve("month-" + month + "-heic");
    Path scratch = Files.createDirectories(work.resolve("scratch-" + month));
    boolean casual = month.equals(CASUAL);
    int photos =
        casual
            ? PaintedMonth.makeCasual(jpegs, CASUAL_PHOTOS).size()
            : PaintedMonth.make(jpegs, Integer.parseInt(month)).size();
    int heicCount = casual ? 0 : PaintedHeics.make(heics, photos).size();
    List<Contender> contenders = new ArrayList<>(Contenders.installed(heicCount > 0));
    contenders.removeIf(c -> !c.name().matches(only) || c.name().matches(without));
    System.out.printf(
        Locale.ROOT,
        "%d JPEG and %d HEIC photos, %d rounds, Java %s, %d processors%n%n",
        photos,
        heicCount,
        rounds,
        Runtime.version(),
        Runtime.getRuntime().availableProcessors());
    List<String> arguments =
        List.of(
            jpegs.toString(),
            System.getProperty("java.class.path"),
            scratch.toString(),
            heics.toString());
    return new Results(
        photos, heicCount, takeTurns(contenders, arguments, scratch.resolve("times.txt")));
  }

  private Map<Contender, Cost> takeTurns(
      List<Contender> contenders, List<String> arguments, Path log)
      throws IOException, InterruptedException {
    Map<Contender, List<Cost>> costs = new LinkedHashMap<>();
    for (int round = 1; round <= rounds; round++) {
      for (Contender contender : contenders) {
        Optional<Cost> cost = MeasuredProcess.run(contender.script(), arguments, log);
        if (cost.isEmpty()) {
          System.out.println("failed: " + contender.name());
          continue;
        }
        System.err.printf(
            Locale.ROOT, "%d %s: %.2f s%n", round, contender.name(), cost.get().cpu());
        costs.computeIfAbsent(contender, key -> new ArrayList<>()).add(cost.get());
      }
    }
    Map<Contender, Cost> medians = new LinkedHashMap<>();
    costs.forEach((contender, list) -> medians.put(contender, Cost.median(list)));
    return medians;
  }
}
