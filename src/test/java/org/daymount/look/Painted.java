package org.daymount.look;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** Pictures painted for tests; the same seed paints the same picture. */
public final class Painted {
  private Painted() {}

  public static BufferedImage plain(int width, int height, Color colour) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setColor(colour);
    pen.fillRect(0, 0, width, height);
    pen.dispose();
    return picture;
  }

  /** Blobs and strokes of many sizes, all over the picture. */
  public static BufferedImage scene(int width, int height, long seed) {
    Random random = new Random(seed);
    BufferedImage picture = plain(width, height, colour(random));
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    for (int i = 0; i < 60; i++) {
      pen.setColor(colour(random));
      double size = 4 + random.nextDouble() * width / 4;
      double x = random.nextDouble() * width - size / 2;
      double y = random.nextDouble() * height - size / 2;
      pen.fill(new Ellipse2D.Double(x, y, size, size * (0.3 + random.nextDouble())));
      pen.drawLine((int) x, (int) y, random.nextInt(width), random.nextInt(height));
    }
    pen.dispose();
    return picture;
  }

  /** A red disc on grey, its centre at a fraction of each side. */
  public static BufferedImage disc(int width, int height, double atX, double atY, int radius) {
    BufferedImage picture = plain(width, height, new Color(150, 155, 160));
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(200, 40, 30));
    pen.fill(
        new Ellipse2D.Double(
            atX * width - radius, atY * height - radius, 2.0 * radius, 2.0 * radius));
    pen.dispose();
    return picture;
  }

  private static Color colour(Random random) {
    return new Color(random.nextInt(256), random.nextInt(256), random.nextInt(256));
  }
}
