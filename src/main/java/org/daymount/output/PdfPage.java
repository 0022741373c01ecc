package org.daymount.output;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.daymount.card.CardPainter;
import org.daymount.card.StoryCard;
import org.daymount.crop.Crop;
import org.daymount.image.Previews;
import org.daymount.output.PdfText.Weight;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * Pages drawn into a PDF at any scale. Each picture is decoded once, at the resolution asked for.
 */
final class PdfPage implements PageCanvas {
  private static final double QUALITY = 0.85;

  private final PictureSource pictures;
  private final PdfPictures embedder;
  private final PdfText text;
  private final Ppi ppi;
  private final CardPainter cards = new CardPainter();
  private final Map<Object, PDImageXObject> embedded = new HashMap<>();
  private PDPageContentStream stream;
  private double left;
  private double top;
  private double scale = 1;

  private record Shown(Photo photo, Crop crop) {}

  /**
   * @param ppi of pictures and cards, for each inch of the album's page
   */
  PdfPage(PictureSource pictures, PdfPictures embedder, PdfText text, Ppi ppi) {
    this.pictures = pictures;
    this.embedder = embedder;
    this.text = text;
    this.ppi = ppi;
  }

  /**
   * @param left of the page's top left corner, points
   * @param top of it, points from the bottom
   * @param scale points on paper for each point of the page
   */
  PdfPage on(PDPageContentStream stream, double left, double top, double scale) {
    this.stream = stream;
    this.left = left;
    this.top = top;
    this.scale = scale;
    return this;
  }

  @Override
  public void rectangle(PaperBox box, Look look) throws IOException {
    float fill =
        switch (look) {
          case PAGE, PRINT -> 1f;
          case POCKET, FREE -> 0.97f;
          case MAT -> 0.8f;
          case MISSING -> 0.9f;
        };
    stream.setNonStrokingColor(fill);
    stream.setStrokingColor(look == Look.PAGE ? 0.35f : 0.6f);
    stream.setLineWidth(0.5f);
    stream.setLineDashPattern(look == Look.FREE ? new float[] {4, 3} : new float[] {}, 0);
    add(box);
    if (look == Look.PRINT) {
      stream.fill();
    } else {
      stream.fillAndStroke();
    }
    stream.setLineDashPattern(new float[] {}, 0);
    stream.setNonStrokingColor(0f);
    stream.setStrokingColor(0f);
  }

  private void add(PaperBox box) throws IOException {
    stream.addRect(x(box), y(box), width(box), height(box));
  }

  @Override
  public void picture(Photo photo, Crop crop, PaperBox box) throws IOException {
    Shown shown = new Shown(photo, crop);
    PDImageXObject image = embedded.get(shown);
    if (image == null) {
      try {
        image = embed(pictures.part(photo, crop.window(), pixels(box.size())));
      } catch (UnusablePicture e) {
        throw new IOException(photo.file() + ": " + e.getMessage(), e);
      }
      embedded.put(shown, image);
    }
    stream.drawImage(image, x(box), y(box), width(box), height(box));
  }

  @Override
  public void card(StoryCard card, PaperBox box) throws IOException {
    PDImageXObject image = embedded.get(card);
    if (image == null) {
      PixelSize size = pixels(card.size());
      BufferedImage painted =
          new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
      Graphics2D g = painted.createGraphics();
      g.scale(ppi.value() / 72, ppi.value() / 72);
      cards.paint(card, g);
      g.dispose();
      image = embed(painted);
      embedded.put(card, image);
    }
    stream.drawImage(image, x(box), y(box), width(box), height(box));
    stream.setStrokingColor(0.6f);
    stream.setLineWidth(0.4f);
    add(box);
    stream.stroke();
    stream.setStrokingColor(0f);
  }

  private PDImageXObject embed(BufferedImage image) throws IOException {
    return embedder.embed(
        Previews.jpeg(image, Math.max(image.getWidth(), image.getHeight()), QUALITY));
  }

  private PixelSize pixels(PaperSize size) {
    return size.toPixels(ppi);
  }

  @Override
  public void word(String word, PaperBox box) throws IOException {
    double type = Math.max(5, 14 * scale);
    double wide = text.width(word, Weight.PLAIN, type);
    stream.setNonStrokingColor(0.45f);
    text.draw(
        stream,
        word,
        Weight.PLAIN,
        type,
        x(box) + width(box) / 2 - wide / 2,
        y(box) + height(box) / 2 - type * 0.35);
    stream.setNonStrokingColor(0f);
  }

  private float x(PaperBox box) {
    return (float) (left + box.x().inPoints() * scale);
  }

  private float y(PaperBox box) {
    return (float) (top - box.bottom().inPoints() * scale);
  }

  private float width(PaperBox box) {
    return (float) (box.width().inPoints() * scale);
  }

  private float height(PaperBox box) {
    return (float) (box.height().inPoints() * scale);
  }
}
