package org.daymount.evaluate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.crop.Crop;
import org.daymount.crop.CropSettings;
import org.daymount.image.Previews;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.detect.Detectors;
import org.daymount.pick.Candidate;
import org.daymount.pick.HeroPicker;
import org.daymount.pick.PickSettings;
import org.daymount.pick.Score.Part;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.UserChoice;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * How often the picture with the highest score is the one a person would take, on days made of
 * marked pictures: {@code days/days.json} (schema: days[] with day, photos[] of file, best[],
 * second[], never[] and alike[][]) and the pictures in {@code photos/} and {@code days/made/}.
 *
 * <p>Each picture is scored by itself in a 4x6 space, so bursts and the day before do not speak.
 * With {@code -Deval.enlarged=3} all is done again with everything enlarged, and the days whose
 * picture changes are told. Odd days are the half that was tuned on, even days the other.
 */
final class DayTable {
  private static final PickSettings SETTINGS =
      new PickSettings(CropSettings.of(Ppi.ppi(300), Ppi.ppi(50))); // the pictures are small
  private static final int ENLARGED = Integer.getInteger("eval.enlarged", 1);
  private static final PickSettings LARGE_SETTINGS =
      new PickSettings(CropSettings.of(Ppi.ppi(300 * ENLARGED), Ppi.ppi(50 * ENLARGED)));
  private static final DayPage PAGE =
      new DayPage(
          LocalDate.of(2026, 6, 3),
          DayPage.Kind.PICTURES,
          List.of(Space.free(PaperSize.inches(4, 6))),
          Optional.empty());

  private final PrintStream out;
  private final List<Day> days;
  private final Map<String, List<Part>> parts = new HashMap<>();
  private final Map<String, Crop> crops = new HashMap<>();
  private final Map<String, List<Part>> enlarged = new HashMap<>();

  private record Day(
      int number,
      String title,
      List<String> files,
      Set<String> best,
      Set<String> second,
      Set<String> never) {
    Rank rank(String file) {
      return best.contains(file)
          ? Rank.BEST
          : second.contains(file) ? Rank.SECOND : never.contains(file) ? Rank.NEVER : Rank.OTHER;
    }
  }

  enum Rank {
    BEST,
    SECOND,
    OTHER,
    NEVER
  }

  DayTable(Path folder, Function<BufferedImage, CloseLook> detector, PrintStream out)
      throws IOException {
    this.out = out;
    this.days = days(folder.resolve("days").resolve("days.json"));
    Set<String> files = new LinkedHashSet<>();
    days.forEach(day -> files.addAll(day.files));
    for (String file : files) {
      Path made = folder.resolve("days").resolve("made").resolve(file);
      Path path = Files.exists(made) ? made : folder.resolve("photos").resolve(file);
      BufferedImage picture = EvalSet.rgb(ImageIO.read(path.toFile()));
      ScoredCandidate scored = scored(looked(file, picture, detector.apply(picture)), SETTINGS);
      parts.put(file, scored.score().parts());
      crops.put(file, scored.crop());
      if (ENLARGED > 1) {
        BufferedImage large = Alter.smaller(picture, ENLARGED);
        BufferedImage small = Previews.scaled(large, Detectors.WORKING_LONG_EDGE);
        CloseLook look = Detectors.scaled(detector.apply(small), sizeOf(small), sizeOf(large));
        enlarged.put(file, scored(looked(file, large, look), LARGE_SETTINGS).score().parts());
      }
    }
  }

  private static AnalysedPhoto looked(String file, BufferedImage picture, CloseLook look) {
    EvalPhoto photo = new EvalPhoto(file, picture, List.of(), Optional.empty());
    return new AnalysedPhoto(photo.photo(), new Measurer().measure(picture).withClose(look));
  }

  private static PixelSize sizeOf(BufferedImage picture) {
    return new PixelSize(picture.getWidth(), picture.getHeight());
  }

  private static ScoredCandidate scored(AnalysedPhoto photo, PickSettings settings) {
    return new HeroPicker(settings, UserChoice.NONE)
        .pick(List.of(PAGE), Map.of(PAGE.day(), List.of(new Candidate(photo, List.of()))))
        .get(0)
        .spaces()
        .get(0)
        .hero()
        .orElseThrow();
  }

  /** A picture of a day, with the crop it would be printed with. */
  record Contender(String file, Rank rank, Crop crop) {}

  /** The pictures of each day, the highest score first, under the day's number. */
  Map<Integer, List<Contender>> ordered() {
    Map<Integer, List<Contender>> ordered = new LinkedHashMap<>();
    for (Day day : days) {
      ordered.put(
          day.number,
          order(day, Set.of()).stream()
              .map(file -> new Contender(file, day.rank(file), crops.get(file)))
              .toList());
    }
    return ordered;
  }

  void print() {
    out.printf("%n%-34s %6s %12s %12s %8s%n", "Days", "days", "best", "best two", "never");
    row("all", number -> true, Set.of());
    row("odd, tuned on", number -> number % 2 == 1, Set.of());
    row("even, not tuned on", number -> number % 2 == 0, Set.of());
    Set<String> names = new LinkedHashSet<>();
    parts.values().forEach(list -> list.forEach(part -> names.add(part.name())));
    names.forEach(name -> row("without " + name, number -> true, Set.of(name)));
    if (ENLARGED > 1) {
      turned();
    }
    for (Day day : days) {
      List<String> order = order(day, Set.of());
      if (day.rank(order.get(0)) != Rank.BEST) {
        out.printf("  day %d, %s%n", day.number, day.title);
        Set<String> told = new LinkedHashSet<>(order.subList(0, 2));
        told.addAll(day.best);
        told.stream().filter(parts::containsKey).forEach(file -> told(day, file));
      }
    }
  }

  /** Which days' pictures change when everything is enlarged, and by what. */
  private void turned() {
    int turned = 0;
    for (Day day : days) {
      String before = order(day, Set.of()).get(0);
      String after =
          day.files.stream()
              .max(Comparator.comparingDouble((String file) -> total(enlarged, file, Set.of())))
              .orElseThrow();
      if (!before.equals(after)) {
        turned++;
        out.printf("  day %d turns when enlarged%n", day.number);
        for (String file : List.of(before, after)) {
          out.printf("    %s %s%n    %s%n", file, parts.get(file), enlarged.get(file));
        }
      }
    }
    out.printf("%d of %d days turn when enlarged %d times%n", turned, days.size(), ENLARGED);
  }

  private void told(Day day, String file) {
    StringBuilder line = new StringBuilder();
    parts
        .get(file)
        .forEach(
            part -> line.append(String.format(Locale.ROOT, " %s %.2f", part.name(), part.value())));
    out.printf(
        Locale.ROOT, "    %s %s %.2f:%s%n", file, day.rank(file), total(file, Set.of()), line);
  }

  private void row(String name, IntPredicate wanted, Set<String> without) {
    List<Rank> ranks =
        days.stream()
            .filter(day -> wanted.test(day.number))
            .map(day -> day.rank(order(day, without).get(0)))
            .toList();
    long best = ranks.stream().filter(rank -> rank == Rank.BEST).count();
    long second = ranks.stream().filter(rank -> rank == Rank.SECOND).count();
    long never = ranks.stream().filter(rank -> rank == Rank.NEVER).count();
    out.printf(
        Locale.ROOT,
        "%-34s %6d %4d (%3.0f %%) %4d (%3.0f %%) %8d%n",
        name,
        ranks.size(),
        best,
        100.0 * best / ranks.size(),
        best + second,
        100.0 * (best + second) / ranks.size(),
        never);
  }

  private List<String> order(Day day, Set<String> without) {
    return day.files.stream()
        .sorted(Comparator.comparingDouble((String file) -> -total(file, without)))
        .toList();
  }

  private double total(String file, Set<String> without) {
    return total(parts, file, without);
  }

  private static double total(Map<String, List<Part>> of, String file, Set<String> without) {
    return of.get(file).stream()
        .filter(part -> !without.contains(part.name()))
        .mapToDouble(Part::value)
        .sum();
  }

  private static List<Day> days(Path file) throws IOException {
    List<Day> days = new ArrayList<>();
    for (JsonNode day : new ObjectMapper().readTree(file.toFile()).path("days")) {
      List<Set<String>> alike = new ArrayList<>();
      day.path("alike").forEach(group -> alike.add(Set.copyOf(texts(group))));
      days.add(
          new Day(
              day.path("day").asInt(),
              day.path("title").asText(),
              stream(day.path("photos")).map(photo -> photo.path("file").asText()).toList(),
              widened(texts(day.path("best")), alike),
              widened(texts(day.path("second")), alike),
              Set.copyOf(texts(day.path("never")))));
    }
    return days;
  }

  /** With those that differ from one of them by a small shift only. */
  private static Set<String> widened(List<String> files, List<Set<String>> alike) {
    Set<String> all = new HashSet<>(files);
    alike.stream().filter(group -> files.stream().anyMatch(group::contains)).forEach(all::addAll);
    return all;
  }

  private static List<String> texts(JsonNode array) {
    return stream(array).map(JsonNode::asText).toList();
  }

  private static Stream<JsonNode> stream(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false);
  }
}
