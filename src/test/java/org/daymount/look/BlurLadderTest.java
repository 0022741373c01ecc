package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.daymount.image.Pictures;
import org.daymount.photo.Photo;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is out of focus in a large picture is still so when it was decoded at a quarter. */
@Tag("slow")
class BlurLadderTest {
  private static final int WIDTH = 1600;
  private static final int HEIGHT = 1200;
  private static final int QUARTER = 400;

  @TempDir Path folder;

  @Test
  void eachStepOfBlurIsSeenInAPictureDecodedAtAQuarter() throws IOException {
    double before = Double.POSITIVE_INFINITY;
    BufferedImage sharp = Painted.scene(WIDTH, HEIGHT, 5);
    for (double sigma : new double[] {0, 2, 3, 5, 8}) {
      BufferedImage frame = sigma == 0 ? sharp : blurred(sharp, sigma);
      double sharpness = sharpnessAtAQuarter(frame);
      assertTrue(sharpness < before, "sigma " + sigma + ": " + sharpness + " after " + before);
      before = sharpness;
    }
  }

  private double sharpnessAtAQuarter(BufferedImage frame) throws IOException {
    Path file = folder.resolve("frame.jpg");
    assertTrue(ImageIO.write(frame, "jpeg", file.toFile()));
    Photo photo =
        PhotoBuilder.at(folder, "frame.jpg")
            .bytes(Files.size(file))
            .size(new PixelSize(WIDTH, HEIGHT))
            .photo();
    return new Measurer().measure(new Pictures().whole(photo, QUARTER)).sharpness();
  }

  private static BufferedImage blurred(BufferedImage picture, double sigma) {
    Rgb rgb = Rgb.of(picture, new PixelSize(WIDTH, HEIGHT));
    Plane red = rgb.red().blurred(sigma);
    Plane green = rgb.green().blurred(sigma);
    Plane blue = rgb.blue().blurred(sigma);
    BufferedImage out = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        out.setRGB(
            x,
            y,
            Math.round(red.at(x, y)) << 16
                | Math.round(green.at(x, y)) << 8
                | Math.round(blue.at(x, y)));
      }
    }
    return out;
  }
}
