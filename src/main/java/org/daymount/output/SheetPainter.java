package org.daymount.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.daymount.card.CardPainter;
import org.daymount.card.StoryCard;
import org.daymount.crop.Crop;
import org.daymount.month.MonthSheet;
import org.daymount.problem.UnusablePicture;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * Paints a sheet in pixels: pictures and cards on their pieces, labels and cut marks on the waste.
 *
 * <p>Every edge is turned from its position on paper into a pixel position, so that pieces that
 * meet on paper meet in the picture, without a gap and without an overlap.
 */
public final class SheetPainter {
  private static final double POINTS_PER_INCH = 72; // ISO 32000-1:2008, 8.3.2.3

  private final PictureSource pictures;
  private final CardPainter cards = new CardPainter();
  private final WastePainter waste = new WastePainter();

  public SheetPainter(PictureSource pictures) {
    this.pictures = pictures;
  }

  /**
   * @param margin what the printer leaves white at each edge; zero for prints of a lab
   * @return TYPE_INT_RGB, sRGB, exactly the sheet's size: a 4x6 sheet at 300 ppi is 1200 x 1800
   * @throws IOException when a photo cannot be read any more; the message names it
   */
  public BufferedImage paint(MonthSheet monthSheet, Length margin, Ppi ppi) throws IOException {
    Sheet sheet = monthSheet.sheet();
    BufferedImage image = white(sheet.size().toPixels(ppi));
    for (PlacedPiece placed : sheet.pieces()) {
      PixelBox box = pixels(placed.box(), ppi);
      PixelSize upright = placed.turned() ? box.size().turned() : box.size();
      BufferedImage piece = piece(monthSheet, placed, upright, ppi);
      put(placed.turned() ? Turn.clockwise(piece) : piece, image, box.x(), box.y());
    }
    waste.paint(sheet, margin, ppi, image);
    return image;
  }

  /** The pixels of a rectangle on paper. */
  static PixelBox pixels(PaperBox box, Ppi ppi) {
    return PixelBox.edges(
        box.x().toPixels(ppi),
        box.y().toPixels(ppi),
        Math.max(box.x().toPixels(ppi) + 1, box.right().toPixels(ppi)),
        Math.max(box.y().toPixels(ppi) + 1, box.bottom().toPixels(ppi)));
  }

  private BufferedImage piece(MonthSheet sheet, PlacedPiece placed, PixelSize target, Ppi ppi)
      throws IOException {
    PieceContent content = sheet.content().get(placed.piece().label());
    if (content == null) {
      throw new IllegalArgumentException(
          sheet.file() + ": nothing is said about piece " + placed.piece().label());
    }
    return content.card().isPresent()
        ? card(content.card().get(), target, ppi)
        : picture(content.picture().orElseThrow(), target, ppi);
  }

  private BufferedImage card(StoryCard card, PixelSize target, Ppi ppi) {
    BufferedImage image = white(target);
    Graphics2D g = image.createGraphics();
    g.scale(ppi.value() / POINTS_PER_INCH, ppi.value() / POINTS_PER_INCH);
    cards.paint(card, g);
    g.dispose();
    return image;
  }

  private BufferedImage picture(PieceContent.Picture picture, PixelSize target, Ppi ppi)
      throws IOException {
    if (isWhole(picture)) {
      return whole(picture, target, ppi);
    }
    // A part is cut out of the whole as it would be painted, so that parts meet without a seam.
    BufferedImage whole = whole(picture, picture.crop().piece().toPixels(ppi), ppi);
    int x = Math.min(picture.part().x().toPixels(ppi), whole.getWidth() - target.width());
    int y = Math.min(picture.part().y().toPixels(ppi), whole.getHeight() - target.height());
    if (x < 0 || y < 0) {
      throw new IllegalArgumentException(
          picture.photo().file() + ": a part of " + target + " px is larger than its picture");
    }
    return whole.getSubimage(x, y, target.width(), target.height());
  }

  private static boolean isWhole(PieceContent.Picture picture) {
    return picture.part().size().equals(picture.crop().piece());
  }

  private BufferedImage whole(PieceContent.Picture picture, PixelSize target, Ppi ppi)
      throws IOException {
    Crop crop = picture.crop();
    if (crop.fit() == Crop.Fit.FILL) {
      return part(picture, target);
    }
    Length left = crop.piece().width().minus(crop.picture().width()).half();
    Length top = crop.piece().height().minus(crop.picture().height()).half();
    PixelBox inside = pixels(PaperBox.at(left, top, crop.picture()), ppi).within(target);
    BufferedImage image = white(target);
    put(part(picture, inside.size()), image, inside.x(), inside.y());
    return image;
  }

  private BufferedImage part(PieceContent.Picture picture, PixelSize target) throws IOException {
    try {
      return pictures.part(picture.photo(), picture.crop().window(), target);
    } catch (UnusablePicture e) {
      throw new IOException(picture.photo().file() + ": " + e.getMessage(), e);
    }
  }

  private static BufferedImage white(PixelSize size) {
    BufferedImage image =
        new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, size.width(), size.height());
    g.dispose();
    return image;
  }

  private static void put(BufferedImage piece, BufferedImage sheet, int x, int y) {
    Graphics2D g = sheet.createGraphics();
    g.drawImage(piece, AffineTransform.getTranslateInstance(x, y), null);
    g.dispose();
  }
}
