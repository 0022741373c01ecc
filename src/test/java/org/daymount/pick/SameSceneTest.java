package org.daymount.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.RescaleOp;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

/** A second try at a picture, taken minutes later, is not the page's second picture. */
class SameSceneTest {
  private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 3, 12, 0);
  private static final PixelSize SIZE = new PixelSize(600, 450);

  private final BufferedImage quay = scene(1);
  private final AnalysedPhoto first = photo("quay.jpg", quay, NOON, 0.9);

  @Test
  void aCloserCropMinutesLaterIsTheSameScene() {
    for (double share : new double[] {0.9, 0.75, 0.6}) {
      AnalysedPhoto closer = photo("closer.jpg", closer(quay, share), NOON.plusMinutes(2), 0.9);
      assertTrue(SameScene.between(first, closer) > 0.5, "share " + share);
      assertTrue(SameScene.between(closer, first) > 0.5, "share " + share);
    }
  }

  @Test
  void anotherExposureMinutesLaterIsTheSameScene() {
    for (float gain : new float[] {0.6f, 1.3f}) {
      BufferedImage lit = new RescaleOp(gain, 0, null).filter(quay, null);
      assertTrue(
          SameScene.between(first, photo("lit.jpg", lit, NOON.plusMinutes(4), 0.9)) > 0.5,
          "gain " + gain);
    }
  }

  @Test
  void otherScenesAreNotNorIsTheSameAnHourLater() {
    for (int seed = 2; seed < 12; seed++) {
      AnalysedPhoto other = photo("other.jpg", scene(seed), NOON.plusMinutes(1), 0.9);
      assertEquals(0, SameScene.between(first, other), 0.3, "seed " + seed);
    }
    AnalysedPhoto later = photo("later.jpg", quay, NOON.plusHours(1), 0.9);
    assertEquals(0, SameScene.between(first, later));
  }

  @Test
  void aGuessedTimeProvesNothing() {
    AnalysedPhoto guessed =
        new AnalysedPhoto(
            PhotoBuilder.named("g.jpg").taken(Taken.at(NOON, TakenFrom.FILE_TIME)).photo(),
            first.measures());
    assertEquals(0, SameScene.between(first, guessed));
  }

  @Test
  void aPageOfTwoShowsAnotherSceneThoughTenCloserCropsAreWorthMore() {
    AnalysedPhoto[] photos = new AnalysedPhoto[12];
    photos[0] = first;
    for (int i = 1; i < 11; i++) {
      photos[i] =
          photo("closer" + i + ".jpg", closer(quay, 0.95 - 0.02 * i), NOON.plusSeconds(20 * i), 1);
    }
    photos[11] = photo("other.jpg", scene(5), NOON.plusMinutes(7), 0.3);
    Set<String> heroes = heroes(photos);
    assertEquals(2, heroes.size());
    assertTrue(heroes.contains("other.jpg"), heroes.toString());
  }

  @Test
  void withNothingElseTheSameSceneFillsBothSpaces() {
    Set<String> heroes =
        heroes(first, photo("closer.jpg", closer(quay, 0.7), NOON.plusMinutes(1), 1));
    assertEquals(Set.of("quay.jpg", "closer.jpg"), heroes);
  }

  private static Set<String> heroes(AnalysedPhoto... photos) {
    Space space = Space.free(PaperSize.inches(4, 6));
    DayPage page =
        new DayPage(
            LocalDate.of(2026, 6, 3),
            DayPage.Kind.PICTURES,
            List.of(space, space),
            Optional.empty());
    List<Candidate> contenders = Arrays.stream(photos).map(Pictures::alone).toList();
    return new HeroPicker(Pictures.SETTINGS, UserChoice.NONE)
        .pick(List.of(page), Map.of(page.day(), contenders)).get(0).spaces().stream()
            .map(space1 -> space1.hero().orElseThrow().looked().photo().file().name())
            .collect(Collectors.toSet());
  }

  private static AnalysedPhoto photo(
      String name, BufferedImage picture, LocalDateTime taken, double worth) {
    Measures measures = new Measurer().measure(picture);
    Subject dog = new Subject(new PixelBox(1000, 800, 1600, 1400), "dog", 0.6 * worth);
    return new AnalysedPhoto(
        PhotoBuilder.named(name).sha256(name).taken(Taken.at(taken, TakenFrom.ORIGINAL)).photo(),
        measures.withClose(new Measures.CloseLook(List.of(), List.of(dog), 0)));
  }

  /** Boxes of all sizes, as a street has. */
  private static BufferedImage scene(long seed) {
    Random chance = new Random(seed);
    BufferedImage picture =
        new BufferedImage(SIZE.width(), SIZE.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    for (int i = 0; i < 60; i++) {
      pen.setColor(new Color(chance.nextInt(256), chance.nextInt(256), chance.nextInt(256)));
      int side = 40 + chance.nextInt(160);
      pen.fillRect(
          chance.nextInt(SIZE.width()) - 40, chance.nextInt(SIZE.height()) - 40, side, side);
    }
    pen.dispose();
    return picture;
  }

  private static BufferedImage closer(BufferedImage picture, double share) {
    BufferedImage closer =
        new BufferedImage(SIZE.width(), SIZE.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = closer.createGraphics();
    int width = (int) (share * SIZE.width());
    int height = (int) (share * SIZE.height());
    int x = (SIZE.width() - width) / 3;
    int y = (SIZE.height() - height) / 2;
    pen.drawImage(picture, 0, 0, SIZE.width(), SIZE.height(), x, y, x + width, y + height, null);
    pen.dispose();
    return closer;
  }
}
