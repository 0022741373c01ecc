package org.daymount.testphoto;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.util.Arrays;
import java.util.Random;

/** Painted pictures that differ from each other as photos of different things do. */
public final class Scenes {
  private Scenes() {}

  /** Overlapping shapes of one seed's colours and places; the same seed paints the same picture. */
  public static BufferedImage scene(long seed, int width, int height) {
    Random random = new Random(seed * 7919 + 17);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(colour(random));
    graphics.fillRect(0, 0, width, height);
    for (int i = 0; i < 40; i++) {
      graphics.setColor(colour(random));
      int w = width / 12 + random.nextInt(width / 4);
      int h = height / 12 + random.nextInt(height / 4);
      int x = random.nextInt(width) - w / 2;
      int y = random.nextInt(height) - h / 2;
      if (random.nextBoolean()) {
        graphics.fillOval(x, y, w, h);
      } else {
        graphics.fillRect(x, y, w, h);
      }
    }
    graphics.dispose();
    return picture;
  }

  /** The same picture out of focus: a box blur of the given radius in pixels. */
  public static BufferedImage blurred(BufferedImage sharp, int radius) {
    int side = 2 * radius + 1;
    float[] even = new float[side];
    Arrays.fill(even, 1f / side);
    BufferedImage across =
        new ConvolveOp(new Kernel(side, 1, even), ConvolveOp.EDGE_NO_OP, null)
            .filter(sharp, new BufferedImage(sharp.getWidth(), sharp.getHeight(), sharp.getType()));
    return new ConvolveOp(new Kernel(1, side, even), ConvolveOp.EDGE_NO_OP, null)
        .filter(across, new BufferedImage(sharp.getWidth(), sharp.getHeight(), sharp.getType()));
  }

  private static Color colour(Random random) {
    return new Color(30 + random.nextInt(200), 30 + random.nextInt(200), 30 + random.nextInt(200));
  }
}
