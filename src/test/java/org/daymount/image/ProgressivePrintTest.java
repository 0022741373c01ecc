package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgressivePrintTest {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 480;

  @TempDir Path folder;

  /** Against the full decoder of Java's ImageIO (libjpeg): no part of it is decoded differently. */
  @Test
  void aPartOfAProgressivePhotoIsWhatAFullDecoderMakesOfIt() throws IOException, UnusablePicture {
    Path file = folder.resolve("progressive.jpg");
    writeProgressive(file);
    BufferedImage whole = ImageIO.read(file.toFile());
    Photo photo = TestPhotos.upright(file, PhotoFormat.JPEG, WIDTH, HEIGHT);
    PixelBox window = new PixelBox(64, 48, 400, 300);
    BufferedImage part = new Pictures().part(photo, window, new PixelSize(400, 300));
    double squares = 0;
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 400; x++) {
        Color expected = new Color(whole.getRGB(64 + x, 48 + y));
        Color actual = new Color(part.getRGB(x, y));
        squares += Math.pow(expected.getRed() - actual.getRed(), 2);
        squares += Math.pow(expected.getGreen() - actual.getGreen(), 2);
        squares += Math.pow(expected.getBlue() - actual.getBlue(), 2);
      }
    }
    double decibels = 10 * Math.log10(255.0 * 255 * 3 * 400 * 300 / Math.max(1, squares));
    assertTrue(decibels > 50, decibels + " dB");
  }

  private static void writeProgressive(Path file) throws IOException {
    BufferedImage painted = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = painted.createGraphics();
    graphics.setPaint(new GradientPaint(0, 0, Color.ORANGE, WIDTH, HEIGHT, Color.BLUE));
    graphics.fillRect(0, 0, WIDTH, HEIGHT);
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      graphics.setColor(new Color(random.nextInt(1 << 24)));
      graphics.fillOval(random.nextInt(WIDTH), random.nextInt(HEIGHT), 40, 30);
    }
    graphics.dispose();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    param.setProgressiveMode(ImageWriteParam.MODE_DEFAULT);
    param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    param.setCompressionQuality(0.9f);
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(painted, null, null), param);
    } finally {
      writer.dispose();
    }
  }
}
