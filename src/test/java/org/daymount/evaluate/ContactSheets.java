package org.daymount.evaluate;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.daymount.crop.Crop;
import org.daymount.unit.PixelBox;

/** Many small pictures on few large ones, to be looked at by a person. */
final class ContactSheets {
  private static final int SIDE = 190; // pixels, of the longer side of a small picture
  private static final int LINE = 16;
  private static final int GAP = 8;
  private static final Color TABLE = new Color(0x9a9a9a);
  private static final Color NO_COLOUR = new Color(0, true);

  private final Path folder;

  ContactSheets(Path folder) throws IOException {
    this.folder = Files.createDirectories(folder);
  }

  /** A frame in a picture, in the picture's pixels. */
  record Frame(PixelBox box, Color colour) {}

  /**
   * A picture with a line of words below it.
   *
   * @param edge around it; null for none
   */
  record Tile(BufferedImage picture, String words, Color edge) {
    Tile(BufferedImage picture, String words) {
      this(picture, words, NO_COLOUR);
    }
  }

  /** Writes rows of tiles, {@code name-1.jpg} and so on. */
  void write(String name, List<List<Tile>> rows, int rowsOnASheet) throws IOException {
    for (int first = 0; first < rows.size(); first += rowsOnASheet) {
      List<List<Tile>> some = rows.subList(first, Math.min(rows.size(), first + rowsOnASheet));
      Path file = folder.resolve(name + "-" + (first / rowsOnASheet + 1) + ".jpg");
      ImageIO.write(sheet(some), "jpg", file.toFile());
    }
  }

  private static BufferedImage sheet(List<List<Tile>> rows) {
    int columns = rows.stream().mapToInt(List::size).max().orElse(1);
    BufferedImage sheet =
        new BufferedImage(
            columns * (SIDE + GAP) + GAP,
            rows.size() * (SIDE + LINE + GAP) + GAP,
            BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = pen(sheet);
    pen.setColor(TABLE);
    pen.fillRect(0, 0, sheet.getWidth(), sheet.getHeight());
    pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        draw(
            rows.get(row).get(column),
            GAP + column * (SIDE + GAP),
            GAP + row * (SIDE + LINE + GAP),
            pen);
      }
    }
    pen.dispose();
    return sheet;
  }

  private static void draw(Tile tile, int x, int y, Graphics2D pen) {
    BufferedImage small = small(tile.picture);
    pen.drawImage(small, x, y, null);
    pen.setStroke(new BasicStroke(4));
    pen.setColor(tile.edge);
    pen.drawRect(x - 2, y - 2, small.getWidth() + 3, small.getHeight() + 3);
    pen.setColor(Color.BLACK);
    pen.setClip(x, y, SIDE, SIDE + LINE);
    pen.drawString(tile.words, x, y + SIDE + LINE - 4);
    pen.setClip(null);
  }

  private static BufferedImage small(BufferedImage picture) {
    double scale = SIDE / (double) Math.max(picture.getWidth(), picture.getHeight());
    BufferedImage small =
        new BufferedImage(
            Math.max(1, (int) Math.round(picture.getWidth() * scale)),
            Math.max(1, (int) Math.round(picture.getHeight() * scale)),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = pen(small);
    pen.drawImage(picture, 0, 0, small.getWidth(), small.getHeight(), null);
    pen.dispose();
    return small;
  }

  /** A crop as it will lie in the album: the piece, white where no picture is. */
  static BufferedImage printed(BufferedImage picture, Crop crop) {
    PixelBox window = crop.window();
    double scale = 640 / crop.piece().width().max(crop.piece().height()).inInches();
    int width = (int) Math.round(crop.piece().width().inInches() * scale);
    int height = (int) Math.round(crop.piece().height().inInches() * scale);
    int across = (int) Math.round(crop.picture().width().inInches() * scale);
    int down = (int) Math.round(crop.picture().height().inInches() * scale);
    BufferedImage piece = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = pen(piece);
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, width, height);
    pen.drawImage(
        picture.getSubimage(window.x(), window.y(), window.width(), window.height()),
        (width - across) / 2,
        (height - down) / 2,
        across,
        down,
        null);
    pen.dispose();
    return piece;
  }

  /** The whole picture with frames in it. */
  static BufferedImage framed(BufferedImage picture, List<Frame> frames) {
    BufferedImage copy = EvalSet.rgb(picture);
    Graphics2D pen = pen(copy);
    pen.setStroke(new BasicStroke(5));
    for (Frame frame : frames) {
      pen.setColor(frame.colour);
      PixelBox box = frame.box;
      pen.drawRect(box.x(), box.y(), box.width() - 1, box.height() - 1);
    }
    pen.dispose();
    return copy;
  }

  private static Graphics2D pen(BufferedImage picture) {
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    return pen;
  }
}
