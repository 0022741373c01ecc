package org.daymount.sample;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;

/** A tide table on a phone's screen, in shapes only: what a font draws differs between machines. */
final class Screenshot {
  static final String NAME = "Screenshot_20260608-101522.png";

  private Screenshot() {}

  static byte[] png() throws IOException {
    BufferedImage image = new BufferedImage(1080, 2340, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(new Color(0x10202c));
    g.fillRect(0, 0, 1080, 2340);
    g.setColor(new Color(0x1b3444));
    g.fillRect(0, 0, 1080, 96);
    words(g, 60, 34, new int[] {70, 30}, 0xc8d8e0, 28);
    g.setColor(new Color(0xc8d8e0));
    g.fillRoundRect(940, 34, 70, 30, 10, 10);
    words(g, 70, 190, new int[] {240, 170, 330}, 0xf2f6f8, 52);
    words(g, 70, 280, new int[] {160, 90}, 0x7fa0b0, 30);
    g.setColor(new Color(0x1b3444));
    g.fill(new RoundRectangle2D.Double(50, 380, 980, 620, 48, 48));
    Path2D curve = new Path2D.Double();
    for (int x = 0; x <= 880; x += 4) {
      double y = 690 - 190 * StrictMath.sin(x / 880.0 * 4 * StrictMath.PI + .6);
      if (x == 0) {
        curve.moveTo(100, y);
      } else {
        curve.lineTo(100 + x, y);
      }
    }
    g.setColor(new Color(0x5cc0d8));
    g.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(curve);
    g.setStroke(new BasicStroke(2));
    g.setColor(new Color(0x3a5a6a));
    g.drawLine(100, 690, 980, 690);
    g.setColor(new Color(0xf0b040));
    g.fillOval(505, 560, 34, 34);
    for (int row = 0; row < 6; row++) {
      int y = 1080 + row * 180;
      g.setColor(new Color(row % 2 == 0 ? 0x1b3444 : 0x173040));
      g.fill(new RoundRectangle2D.Double(50, y, 980, 150, 36, 36));
      words(g, 100, y + 54, new int[] {110, 60 + 14 * (row % 3)}, 0xe4eef2, 40);
      words(g, 620, y + 58, new int[] {90, 140 - 20 * (row % 2)}, 0x8fb4c4, 34);
      g.setColor(new Color(row % 2 == 0 ? 0x5cc0d8 : 0xf0b040));
      g.fillOval(930, y + 52, 44, 44);
    }
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** Bars where words would stand. */
  private static void words(Graphics2D g, int x, int y, int[] lengths, int colour, int tall) {
    g.setColor(new Color(colour));
    int at = x;
    for (int length : lengths) {
      g.fillRoundRect(at, y, length, tall, tall / 2, tall / 2);
      at += length + tall / 2;
    }
  }
}
