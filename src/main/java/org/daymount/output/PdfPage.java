package org.daymount.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import org.daymount.card.CardPainter;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryNote;
import org.daymount.crop.Crop;
import org.daymount.output.PdfText.Weight;
import org.daymount.photo.Photo;
import org.daymount.sheet.PieceContent;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/** Pages drawn into a PDF at any scale. */
final class PdfPage implements PageCanvas {
  private static final double LETTERS = 1.6;
  private static final Color PAPER = Color.WHITE;

  private final PagePictures pictures;
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
   * @param ppi of cards and notes, for each inch of the album's page
   */
  PdfPage(PagePictures pictures, PdfPictures embedder, PdfText text, Ppi ppi) {
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
          case PAGE, PRINT, BY_HAND -> 1f;
          case POCKET, FREE -> 0.97f;
          case MAT -> 0.8f;
          case MISSING -> 0.9f;
        };
    stream.setNonStrokingColor(fill);
    stream.setStrokingColor(look == Look.PAGE ? 0.35f : 0.6f);
    stream.setLineWidth(0.5f);
    boolean dashed = look == Look.FREE || look == Look.BY_HAND;
    stream.setLineDashPattern(dashed ? new float[] {4, 3} : new float[] {}, 0);
    add(box);
    if (look == Look.PRINT) {
      stream.setStrokingColor(0.88f);
      stream.fillAndStroke();
    } else if (look == Look.BY_HAND) {
      stream.stroke();
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
  public void picture(Photo photo, Crop crop, PaperBox box, boolean turned) throws IOException {
    draw(image(photo, crop), box, turned);
  }

  /** An image is a unit square with its foot at 0 (ISO 32000-1:2008, 8.9.5.1). */
  private void draw(PDImageXObject image, PaperBox box, boolean turned) throws IOException {
    float wide = width(box);
    float tall = height(box);
    stream.drawImage(
        image,
        turned
            ? new Matrix(0, -tall, wide, 0, x(box), y(box) + tall)
            : new Matrix(wide, 0, 0, tall, x(box), y(box)));
  }

  /** What is printed on a piece, as it lies on its sheet. */
  void piece(PieceContent content, PaperBox box, boolean turned) throws IOException {
    stream.saveGraphicsState();
    add(box);
    stream.clip();
    // Onto the piece as it is read: its bottom left corner is 0, 0, and a unit is a point of it.
    stream.transform(
        turned
            ? new Matrix(0, (float) -scale, (float) scale, 0, x(box), y(box) + height(box))
            : new Matrix((float) scale, 0, 0, (float) scale, x(box), y(box)));
    PaperSize read = turned ? box.size().turned() : box.size();
    if (content.card().isPresent()) {
      StoryCard card = content.card().get();
      stream.drawImage(
          image(card), 0, 0, (float) read.width().inPoints(), (float) read.height().inPoints());
    } else {
      PieceContent.Picture shown = content.picture().orElseThrow();
      PaperSize picture = shown.crop().picture();
      PaperSize whole = shown.crop().piece();
      Length left = whole.width().minus(picture.width()).half().minus(shown.part().x());
      Length top = whole.height().minus(picture.height()).half().minus(shown.part().y());
      stream.drawImage(
          image(shown.photo(), shown.crop()),
          (float) left.inPoints(),
          (float) read.height().minus(top).minus(picture.height()).inPoints(),
          (float) picture.width().inPoints(),
          (float) picture.height().inPoints());
    }
    stream.restoreGraphicsState();
  }

  private PDImageXObject image(Photo photo, Crop crop) throws IOException {
    Shown shown = new Shown(photo, crop);
    PDImageXObject image = embedded.get(shown);
    if (image == null) {
      image = embedder.embed(pictures.jpeg(photo, crop));
      embedded.put(shown, image);
    }
    return image;
  }

  @Override
  public void card(StoryCard card, PaperBox box, boolean turned) throws IOException {
    draw(image(card), box, turned);
    stream.setStrokingColor(0.6f);
    stream.setLineWidth(0.4f);
    add(box);
    stream.stroke();
    stream.setStrokingColor(0f);
  }

  private PDImageXObject image(StoryCard card) throws IOException {
    return lettering(card, card.size(), g -> cards.paint(card, g));
  }

  @Override
  public void note(StoryNote note, PaperBox box) throws IOException {
    PDImageXObject image = lettering(note, note.size(), g -> cards.paint(note, g));
    stream.drawImage(image, x(box), y(box), width(box), height(box));
  }

  /** Letters painted at a finer resolution than pictures, for they are read. */
  private PDImageXObject lettering(Object key, PaperSize size, Consumer<Graphics2D> letters)
      throws IOException {
    PDImageXObject image = embedded.get(key);
    if (image == null) {
      double fine = ppi.value() * LETTERS;
      PixelSize pixels = size.toPixels(new Ppi(fine));
      BufferedImage painted =
          new BufferedImage(pixels.width(), pixels.height(), BufferedImage.TYPE_INT_RGB);
      Graphics2D g = painted.createGraphics();
      g.setColor(PAPER);
      g.fillRect(0, 0, pixels.width(), pixels.height());
      g.scale(fine / 72, fine / 72);
      letters.accept(g);
      g.dispose();
      image = embed(painted);
      embedded.put(key, image);
    }
    return image;
  }

  private PDImageXObject embed(BufferedImage image) throws IOException {
    return embedder.embed(PagePictures.jpeg(image));
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
