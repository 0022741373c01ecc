package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.imageio.ImageIO;
import org.daymount.look.Face;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Subject;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * On the six photographs that the npm package {@code @vladmandic/face-api} 1.7.15 brings as samples
 * (the build has fetched it for its weights); the people in them were counted by eye.
 */
@Tag("slow")
class DetectorsTest {
  private static final Path SAMPLES =
      Path.of(
          System.getProperty("weights.directory", "target/weights"),
          "node_modules/@vladmandic/face-api/demo");

  private static Detectors detectors;

  @BeforeAll
  static void load() throws DetectorsUnavailable {
    detectors = Detectors.load();
  }

  @AfterAll
  static void close() {
    detectors.close();
  }

  @ParameterizedTest
  @CsvSource({
    "sample1.jpg, 3",
    "sample2.jpg, 3",
    "sample3.jpg, 3",
    "sample4.jpg, 4",
    "sample5.jpg, 5",
    "sample6.jpg, 4"
  })
  void everyFaceIsFoundAndNothingElseIsTakenForOne(String name, int people) throws IOException {
    CloseLook look = detectors.look(sample(name));

    assertEquals(people, look.faces().size());
    assertTrue(look.faces().stream().allMatch(Face::counts), "every face counts: " + look.faces());
    assertTrue(look.subjects().stream().anyMatch(subject -> subject.what().equals("person")));
  }

  @Test
  void aFaceLiesAtTheTopOfItsPerson() throws IOException {
    CloseLook look = detectors.look(sample("sample6.jpg"));

    for (Subject person : look.subjects().stream().filter(s -> s.confidence() > 0.5).toList()) {
      PixelBox box = person.box();
      assertTrue(
          look.faces().stream()
              .map(Face::box)
              .anyMatch(
                  face ->
                      face.centreX() > box.x()
                          && face.centreX() < box.right()
                          && face.centreY() > box.y()
                          && face.centreY() < box.y() + box.height() / 3.0),
          "a face in the upper third of " + person);
    }
  }

  @Test
  void aDrawnLandscapeHasNoFaces() {
    BufferedImage picture = new BufferedImage(640, 427, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setColor(new Color(0x9ec7e8));
    graphics.fillRect(0, 0, 640, 230);
    graphics.setColor(new Color(0x3f7a3a));
    graphics.fillRect(0, 230, 640, 197);
    graphics.setColor(new Color(0xf5e08a));
    graphics.fillOval(480, 40, 70, 70);
    graphics.dispose();

    assertEquals(List.of(), detectors.look(picture).faces());
  }

  @ParameterizedTest
  @CsvSource({"1", "2"})
  void aLyingPictureInWhichNobodyIsSeenIsTurnedAndItsFacesAreGivenWhereTheyLie(int quarters)
      throws IOException {
    BufferedImage upright = smallOnGrey("sample3.jpg");
    BufferedImage lying = upright;
    for (int i = 0; i < quarters; i++) {
      lying = turnedRight(lying);
    }
    assertEquals(List.of(), detectors.look(lying).faces(), "nobody is seen in it as it lies");
    CloseLook expected = detectors.look(upright);

    CloseLook found = detectors.lookTurning(lying);

    assertEquals(3, expected.faces().size());
    assertEquals(expected.faces().size(), found.faces().size());
    for (int i = 0; i < expected.faces().size(); i++) {
      PixelBox box = expected.faces().get(i).box();
      PixelSize size = new PixelSize(upright.getWidth(), upright.getHeight());
      for (int turn = 0; turn < quarters; turn++) {
        box = new PixelBox(size.height() - box.bottom(), box.x(), box.height(), box.width());
        size = size.turned();
      }
      assertEquals(box, found.faces().get(i).box());
    }
  }

  @Test
  void anUprightPictureIsNotTurned() throws IOException {
    BufferedImage picture = sample("sample1.jpg");

    assertEquals(detectors.look(picture), detectors.lookTurning(picture));
  }

  @Test
  void manyThreadsGetTheSameAnswerAsOne() throws Exception {
    BufferedImage picture = sample("sample4.jpg");
    CloseLook alone = detectors.look(picture);
    ExecutorService threads = Executors.newFixedThreadPool(3);
    try {
      Callable<CloseLook> look = () -> detectors.look(picture);
      for (Future<CloseLook> answer : threads.invokeAll(List.of(look, look, look))) {
        assertEquals(alone, answer.get());
      }
    } finally {
      threads.shutdown();
    }
  }

  @Test
  void thePictureIsLeftAsItIs() throws IOException {
    BufferedImage picture = sample("sample3.jpg");
    int[] before = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, 640);

    detectors.lookTurning(picture);

    assertArrayEquals(
        before, picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, 640));
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "1, 640", "640, 3"})
  void aPictureOfAnySizeCanBeLookedAt(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);

    assertEquals(List.of(), detectors.look(picture).faces());
  }

  @Test
  void aLookCanBeScaledToTheWholePicture() {
    CloseLook small =
        new CloseLook(
            List.of(new Face(new PixelBox(10, 20, 30, 40), 0.9)),
            List.of(new Subject(new PixelBox(0, 0, 640, 480), "dog", 0.8)),
            7);

    CloseLook whole = Detectors.scaled(small, new PixelSize(640, 480), new PixelSize(6400, 4800));

    assertEquals(new PixelBox(100, 200, 300, 400), whole.faces().get(0).box());
    assertEquals(new PixelBox(0, 0, 6400, 4800), whole.subjects().get(0).box());
    assertEquals(7, whole.sharpnessThere());
  }

  /** At the working size. */
  private static BufferedImage sample(String name) throws IOException {
    BufferedImage image = ImageIO.read(SAMPLES.resolve(name).toFile());
    PixelSize size =
        new PixelSize(image.getWidth(), image.getHeight()).within(Detectors.WORKING_LONG_EDGE);
    BufferedImage small =
        new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = small.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(image, 0, 0, size.width(), size.height(), null);
    graphics.dispose();
    return small;
  }

  /** With faces of some twenty pixels, too small to be seen on their side. */
  private static BufferedImage smallOnGrey(String name) throws IOException {
    BufferedImage image = ImageIO.read(SAMPLES.resolve(name).toFile());
    BufferedImage grey = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = grey.createGraphics();
    graphics.setColor(Color.GRAY);
    graphics.fillRect(0, 0, 640, 480);
    Image small = image.getScaledInstance(160, -1, Image.SCALE_AREA_AVERAGING);
    graphics.drawImage(small, 200, 100, null);
    graphics.dispose();
    return grey;
  }

  private static BufferedImage turnedRight(BufferedImage image) {
    BufferedImage turned =
        new BufferedImage(image.getHeight(), image.getWidth(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        turned.setRGB(image.getHeight() - 1 - y, x, image.getRGB(x, y));
      }
    }
    return turned;
  }
}
