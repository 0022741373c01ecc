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
  private static final String EACH = "for f in \"$1\"/*.jpg; do ";

  private final Path folder;
  private final Path scratch;
  private final Map<String, String> contenders = new LinkedHashMap<>();

  private Benchmark(Path work, int photos) {
    this.folder = work.resolve("month-" + photos);
    this.scratch = work.resolve("scratch");
  }

  /**
   * @param arguments folder for the photos and what is made of them, number of photos, rounds, and
   *     a regular expression for the names of the contenders that are wanted
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    int photos = Integer.parseInt(arguments[1]);
    int rounds = Integer.parseInt(arguments[2]);
    Benchmark benchmark = new Benchmark(Path.of(arguments[0]).toAbsolutePath(), photos);
    PaintedMonth.make(benchmark.folder, photos);
    Files.createDirectories(benchmark.scratch);
    benchmark.enter();
    benchmark.contenders.keySet().removeIf(name -> !name.matches(arguments[3]));
    System.out.printf(
        Locale.ROOT,
        "%d photos, %d rounds, Java %s, %d processors%n%n",
        photos,
        rounds,
        Runtime.version(),
        Runtime.getRuntime().availableProcessors());
    benchmark.print(benchmark.run(rounds));
  }

  private void enter() throws IOException, InterruptedException {
    String java = "\"" + ProcessHandle.current().info().command().orElse("java") + "\" -cp \"$2\" ";
    String here = "org.daymount.benchmark.";
    String sheets = java + "org.daymount.Main sheets \"$1\" --quiet --out \"$3\"/out";
    enter(
        "djpeg", "djpeg -scale 1/8 -grayscale", EACH + "djpeg -scale 1/8 -grayscale \"$f\"; done");
    contenders.put("reduced decoder, 1/8", java + here + "ReducedDecode \"$1\" EIGHTH");
    contenders.put("reduced decoder, 1/4", java + here + "ReducedDecode \"$1\" QUARTER");
    contenders.put("analysis, one thread", java + here + "FirstLook \"$1\" 1");
    contenders.put("analysis, two threads", java + here + "FirstLook \"$1\" 2");
    enter(
        "vipsthumbnail",
        "vipsthumbnail --size 1000",
        "VIPS_CONCURRENCY=2 vipsthumbnail --size 1000 -o \"$3\"/%s.v.jpg \"$1\"/*.jpg");
    enter(
        "convert",
        "ImageMagick, 1000 pixels",
        EACH
            + "convert -define jpeg:size=2000x2000 \"$f\" -resize 1000x1000"
            + " \"$3\"/magick.jpg; done");
    contenders.put("daymount days", java + "org.daymount.Main days \"$1\"");
    contenders.put("daymount sheets, first run", "rm -rf \"$3\"/out; " + sheets);
    contenders.put("daymount sheets, second run", sheets);
    contenders.put("daymount --help", java + "org.daymount.Main --help");
  }

  private void enter(String program, String name, String script)
      throws IOException, InterruptedException {
    if (MeasuredProcess.isInstalled(program)) {
      contenders.put(name, script);
    } else {
      System.out.println("left out: " + program + " is not installed");
    }
  }

  private Map<String, List<Cost>> run(int rounds) throws IOException, InterruptedException {
    List<String> arguments =
        List.of(folder.toString(), System.getProperty("java.class.path"), scratch.toString());
    Map<String, List<Cost>> costs = new LinkedHashMap<>();
    for (int round = 0; round < rounds; round++) {
      for (Map.Entry<String, String> contender : contenders.entrySet()) {
        Optional<Cost> cost = MeasuredProcess.run(contender.getValue(), arguments);
        if (cost.isEmpty()) {
          System.out.println("failed: " + contender.getKey());
          continue;
        }
        System.err.printf("%d %s %s%n", round + 1, contender.getKey(), cost.get());
        costs.computeIfAbsent(contender.getKey(), name -> new ArrayList<>()).add(cost.get());
      }
    }
    return costs;
  }

  private void print(Map<String, List<Cost>> costs) {
    Optional<Cost> floor = median(costs, "djpeg -scale 1/8 -grayscale");
    Optional<Cost> thumbnail = median(costs, "vipsthumbnail --size 1000");
    System.out.printf(
        Locale.ROOT,
        "%-30s %9s %9s %8s %12s %12s%n",
        "median",
        "CPU s",
        "wall s",
        "MB",
        "CPU/djpeg",
        "wall/vips");
    for (String name : costs.keySet()) {
      Cost cost = median(costs, name).orElseThrow();
      System.out.printf(
          Locale.ROOT,
          "%-30s %9.2f %9.2f %8.0f %12s %12s%n",
          name,
          cost.cpu(),
          cost.wall(),
          cost.megabytes(),
          ratio(cost.cpu(), floor.map(Cost::cpu)),
          ratio(cost.wall(), thumbnail.map(Cost::wall)));
    }
  }

  private static Optional<Cost> median(Map<String, List<Cost>> costs, String name) {
    return Optional.ofNullable(costs.get(name)).map(Cost::median);
  }

  private static String ratio(double value, Optional<Double> of) {
    return of.map(floor -> String.format(Locale.ROOT, "%.2f", value / floor)).orElse("-");
  }
}
