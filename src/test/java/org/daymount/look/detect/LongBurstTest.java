package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.daymount.evaluate.Alter;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Painted;
import org.daymount.look.Subject;
import org.daymount.photo.Photo;
import org.daymount.pick.BurstWinner;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Twenty painted frames of a dog before a busy hedge. The camera focuses on the hedge in all but
 * one, and the hedge is most of the picture. The detectors are played: they see the dog in every
 * frame.
 */
@Tag("slow")
class LongBurstTest {
  private static final int FRAMES = 20;
  private static final int WIDTH = 480;
  private static final int HEIGHT = 360;
  private static final PixelBox DOG = new PixelBox(190, 120, 100, 120);

  private final AtomicInteger looks = new AtomicInteger();
  private final List<BufferedImage> pictures = new ArrayList<>();
  private final List<AnalysedPhoto> burst = new ArrayList<>();

  private final CloseLooker looker =
      new CloseLooker(
          (photo, edge) -> pictures.get(Integer.parseInt(photo.file().lastName())),
          (small, tagged) -> {
            looks.incrementAndGet();
            PixelSize size = new PixelSize(small.getWidth(), small.getHeight());
            PixelBox box = DOG.scaled(new PixelSize(WIDTH, HEIGHT), size);
            return new CloseLook(List.of(), List.of(new Subject(box, "dog", 0.8)), 0);
          });

  private void paint(int sharpOnTheDog) {
    BufferedImage all = Painted.scene(WIDTH, HEIGHT, 3);
    Graphics2D pen = all.createGraphics();
    pen.setClip(dogsOutline(0));
    pen.drawImage(fur(), DOG.x(), DOG.y(), null);
    pen.dispose();
    for (int i = 0; i < FRAMES; i++) {
      boolean right = i == sharpOnTheDog;
      BufferedImage soft = Alter.blurred(all, 1.5 + 0.02 * i);
      BufferedImage frame = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
      Graphics2D focus = frame.createGraphics();
      focus.drawImage(right ? soft : all, 0, 0, null);
      focus.setClip(dogsOutline(3));
      focus.drawImage(right ? all : soft, 0, 0, null);
      focus.dispose();
      pictures.add(frame);
      burst.add(new AnalysedPhoto(photo(i), new Measurer().measure(frame)));
    }
  }

  private static Ellipse2D dogsOutline(int around) {
    return new Ellipse2D.Double(
        DOG.x() - around,
        DOG.y() - around,
        DOG.width() + 2.0 * around,
        DOG.height() + 2.0 * around);
  }

  @BeforeEach
  void noLooksYet() {
    looks.set(0);
  }

  @Test
  void theOnlyFrameThatIsSharpOnTheSubjectWinsWhereverItLies() {
    for (int right : new int[] {0, 9, 13, 19}) {
      pictures.clear();
      burst.clear();
      paint(right);
      List<AnalysedPhoto> closer = looker.look(burst);
      List<AnalysedPhoto> close =
          closer.stream().filter(frame -> frame.measures().close().isPresent()).toList();
      AnalysedPhoto winner = BurstWinner.of(close).looked();
      assertEquals(Integer.toString(right), winner.photo().file().lastName());
    }
  }

  @Test
  void theFirstLookAloneWouldHaveTakenAnotherFrame() {
    paint(13);
    AnalysedPhoto misled = BurstWinner.of(burst).looked();
    assertTrue(!misled.photo().file().lastName().equals("13"), "the test proves nothing");
  }

  @Test
  void theDetectorsSeeOnlyAFewFrames() {
    paint(13);
    looker.look(burst);
    int most = FirstFrames.COUNT + CloseLooker.LATER_FRAMES;
    assertTrue(looks.get() <= most, looks + " looks");
  }

  @Test
  void framesComeBackInTheirOrder() {
    paint(13);
    assertEquals(
        burst.stream().map(AnalysedPhoto::photo).toList(),
        looker.look(burst).stream().map(AnalysedPhoto::photo).toList());
  }

  private static BufferedImage fur() {
    BufferedImage fur = Painted.plain(DOG.width(), DOG.height(), new Color(150, 110, 70));
    Random random = new Random(5);
    Graphics2D pen = fur.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int i = 0; i < 900; i++) {
      int shade = random.nextInt(100);
      pen.setColor(new Color(100 + shade, 70 + shade, 40 + shade));
      int x = random.nextInt(DOG.width());
      int y = random.nextInt(DOG.height());
      pen.drawLine(x, y, x + random.nextInt(5) - 2, y + 4 + random.nextInt(6));
    }
    pen.dispose();
    return fur;
  }

  private static Photo photo(int number) {
    return PhotoBuilder.named(Integer.toString(number))
        .sha256("content " + number)
        .size(new PixelSize(WIDTH, HEIGHT))
        .photo();
  }
}
