package org.daymount.evaluate;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.imageio.ImageIO;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.crop.CropSettings;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.pick.Candidate;
import org.daymount.pick.HeroPicker;
import org.daymount.pick.PickSettings;
import org.daymount.pick.UserChoice;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * Days with two spaces: is the pair one that a person would take? {@code two} of a day in {@code
 * days/days.json} names the spaces ("4x6 portrait"), the good pairs and the acceptable ones; every
 * other pair is wrong. Two equal spaces may hold a pair in either order. Each picture stands for
 * itself, so bursts do not speak.
 */
final class PageTable {
  private static final PickSettings SETTINGS =
      new PickSettings(CropSettings.of(Ppi.ppi(300), Ppi.ppi(50))); // the pictures are small
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

  private final Path folder;
  private final Function<BufferedImage, CloseLook> detector;
  private final PrintStream out;

  PageTable(Path folder, Function<BufferedImage, CloseLook> detector, PrintStream out) {
    this.folder = folder;
    this.detector = detector;
    this.out = out;
  }

  void print() throws IOException {
    int[][] counts = new int[2][3];
    List<String> wrong = new ArrayList<>();
    JsonNode days = new ObjectMapper().readTree(folder.resolve("days/days.json").toFile());
    for (JsonNode day : days.path("days")) {
      if (day.has("two")) {
        List<String> pair = picked(day);
        int judged = judged(day.path("two"), pair);
        counts[day.path("day").asInt() % 2][judged]++;
        if (judged > 0) {
          wrong.add(
              "  day " + day.path("day").asInt() + (judged == 1 ? " acceptable " : " ") + pair);
        }
      }
    }
    out.printf("%n%-34s %6s %12s %8s%n", "Two spaces", "good", "acceptable", "wrong");
    row("all", sum(counts[0], counts[1]));
    row("odd, tuned on", counts[1]);
    row("even, not tuned on", counts[0]);
    wrong.forEach(out::println);
  }

  private static int[] sum(int[] one, int[] other) {
    return new int[] {one[0] + other[0], one[1] + other[1], one[2] + other[2]};
  }

  private void row(String name, int[] counts) {
    out.printf("%-34s %6d %12d %8d%n", name, counts[0], counts[1], counts[2]);
  }

  private List<String> picked(JsonNode day) throws IOException {
    List<Space> spaces = new ArrayList<>();
    for (JsonNode space : day.path("two").path("spaces")) {
      Orientation way =
          space.asText().endsWith("portrait") ? Orientation.PORTRAIT : Orientation.LANDSCAPE;
      spaces.add(
          new Space(PaperSize.inches(4, 6).towards(way), Optional.of(way), Optional.empty()));
    }
    List<Candidate> contenders = new ArrayList<>();
    for (JsonNode photo : day.path("photos")) {
      contenders.add(
          new Candidate(
              looked(photo.path("file").asText(), LocalTime.parse(photo.path("time").asText())),
              List.of()));
    }
    DayPage page = new DayPage(DAY, DayPage.Kind.PICTURES, spaces, Optional.empty());
    return new HeroPicker(SETTINGS, UserChoice.NONE)
        .pick(List.of(page), Map.of(DAY, contenders)).get(0).spaces().stream()
            .map(space -> space.hero().map(h -> h.looked().photo().file().name()).orElse("none"))
            .toList();
  }

  private AnalysedPhoto looked(String file, LocalTime time) throws IOException {
    Path made = folder.resolve("days").resolve("made").resolve(file);
    Path path = Files.exists(made) ? made : folder.resolve("photos").resolve(file);
    BufferedImage picture = EvalSet.rgb(ImageIO.read(path.toFile()));
    Photo photo =
        PhotoBuilder.named(file)
            .sha256(file)
            .size(new PixelSize(picture.getWidth(), picture.getHeight()))
            .taken(Taken.at(DAY.atTime(time), TakenFrom.ORIGINAL))
            .photo();
    return new AnalysedPhoto(
        photo, new Measurer().measure(picture).withClose(detector.apply(picture)));
  }

  /** 0 good, 1 acceptable, 2 wrong. */
  private static int judged(JsonNode two, List<String> pair) {
    boolean eitherOrder =
        two.path("spaces").get(0).asText().equals(two.path("spaces").get(1).asText());
    return isOneOf(two.path("good"), pair, eitherOrder)
        ? 0
        : isOneOf(two.path("acceptable"), pair, eitherOrder) ? 1 : 2;
  }

  private static boolean isOneOf(JsonNode pairs, List<String> pair, boolean eitherOrder) {
    for (JsonNode one : pairs) {
      List<String> named = List.of(one.get(0).asText(), one.get(1).asText());
      boolean turned = List.of(named.get(1), named.get(0)).equals(pair);
      if (named.equals(pair) || eitherOrder && turned) {
        return true;
      }
    }
    return false;
  }
}
