package org.daymount.output;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.daymount.crop.Crop;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Subject;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;

/**
 * A photo with what was found in it: faces in a dashed line, subjects in a dotted one, and every
 * proposed crop in a full line, thinner for smaller pieces.
 */
public final class LookDrawing {
  private static final int LONG_EDGE = 1600;
  private static final double QUALITY = 0.9;

  private final Pictures pictures;

  public LookDrawing(Pictures pictures) {
    this.pictures = pictures;
  }

  /** A JPEG with a long edge of at most 1,600 pixels. */
  public byte[] jpeg(AnalysedPhoto looked, List<Crop> crops) throws UnusablePicture {
    BufferedImage picture = pictures.whole(looked.photo(), LONG_EDGE);
    Graphics2D graphics = picture.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    double scale = picture.getWidth() / (double) looked.photo().size().width();
    for (Crop crop : crops) {
      float width = crop.piece().squareInches() > 20 ? 5 : 2.5f;
      outline(graphics, crop.window(), scale, new BasicStroke(width), new Color(250, 246, 236));
    }
    for (Subject subject : looked.measures().subjects()) {
      outline(graphics, subject.box(), scale, broken(3, 6), new Color(200, 226, 190));
    }
    for (Face face : looked.measures().faces()) {
      outline(graphics, face.box(), scale, broken(14, 8), new Color(245, 190, 150));
    }
    graphics.dispose();
    return Previews.jpeg(picture, LONG_EDGE, QUALITY);
  }

  private static BasicStroke broken(float on, float off) {
    return new BasicStroke(
        3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {on, off}, 0);
  }

  /** Drawn twice, dark and wide first, so that it is seen on any picture. */
  private static void outline(
      Graphics2D graphics, PixelBox box, double scale, BasicStroke stroke, Color colour) {
    Rectangle2D shape =
        new Rectangle2D.Double(
            box.x() * scale, box.y() * scale, box.width() * scale, box.height() * scale);
    graphics.setColor(new Color(40, 36, 30, 150));
    graphics.setStroke(
        new BasicStroke(
            stroke.getLineWidth() + 3,
            stroke.getEndCap(),
            stroke.getLineJoin(),
            10,
            stroke.getDashArray(),
            0));
    graphics.draw(shape);
    graphics.setColor(colour);
    graphics.setStroke(stroke);
    graphics.draw(shape);
  }
}
