package org.daymount.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import org.daymount.card.Lettering;
import org.daymount.image.Lightener;
import org.daymount.image.Lightening;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * A print to choose {@code --lighter} by: one photo as it is, a third and two thirds of a stop
 * lighter, each whole and with the option's value beside it, above a grey scale from black to white
 * that nothing is done to.
 */
public final class StripPainter {
  /** A copy of the photo on the strip. */
  private record Copy(Lightening lightening, String words) {}

  private static final List<Copy> COPIES =
      List.of(
          new Copy(Lightening.NONE, "0: as it is"),
          new Copy(new Lightening(1 / 3.0), "+1/3: --lighter 1/3"),
          new Copy(new Lightening(2 / 3.0), "+2/3: --lighter 2/3"));

  /** Black, nine greys and white, in equal steps of the sRGB value. */
  private static final int STEPS = 11;

  private static final Length CLEAR = Length.inchFraction(1, 8);
  private static final Length TYPE = Length.inchFraction(3, 32);
  private static final Length LINE = Length.inchFraction(5, 32);
  private static final Length SCALE = Length.inchFraction(3, 8);
  private static final Length GAP = Length.inchFraction(1, 32);

  /** The grey scale, a line above and one below it, and room above that. */
  private static final Length FOOT = SCALE.plus(LINE.times(2)).plus(CLEAR);

  private static final Color INK = Color.BLACK;
  private static final String ABOUT_SCALE =
      "Grey, in parts of 100. On a good print each step can be told from the next.";

  private final PictureSource pictures;
  private final Lettering lettering = new Lettering();

  public StripPainter(PictureSource pictures) {
    this.pictures = pictures;
  }

  /**
   * @param photo shown whole, three times
   * @param margin kept white at each edge; at least 1/8 in is, for labs that trim
   * @param foot kept white above the lower margin
   * @return of the paper's size, lying as the copies come out largest; sRGB
   */
  public BufferedImage paint(Photo photo, PaperSize paper, Length margin, Length foot, Ppi ppi)
      throws UnusablePicture {
    Length edge = margin.max(CLEAR);
    Layout upright = layout(paper, photo, edge, foot);
    Layout lying = layout(paper.turned(), photo, edge, foot);
    Layout best = lying.copy().squareInches() > upright.copy().squareInches() ? lying : upright;
    PixelSize size = best.paper().toPixels(ppi);
    BufferedImage image =
        new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, size.width(), size.height());
    PixelSize pixels = best.copy().toPixels(ppi);
    BufferedImage plain = pictures.part(photo, photo.size().whole(), pixels);
    for (int i = 0; i < COPIES.size(); i++) {
      PaperBox place = best.place(i);
      Copy copy = COPIES.get(i);
      BufferedImage shown = new Lightener(copy.lightening()).lighten(plain);
      g.drawImage(shown, place.x().toPixels(ppi), place.y().toPixels(ppi), null);
      label(g, copy.words(), place.x(), place.bottom().plus(LINE).minus(GAP), ppi);
    }
    scale(g, best.paper(), edge, best.paper().height().minus(edge).minus(foot), ppi);
    g.dispose();
    return image;
  }

  /**
   * Copies in a row or in a column.
   *
   * @param copy its size on paper
   * @param across from one copy's corner to the next one's; so is {@code down}
   */
  private record Layout(
      PaperSize paper, PaperSize copy, Length left, Length top, Length across, Length down) {
    PaperBox place(int index) {
      return PaperBox.at(left.plus(across.times(index)), top.plus(down.times(index)), copy);
    }
  }

  private static Layout layout(PaperSize paper, Photo photo, Length edge, Length foot) {
    int n = COPIES.size();
    Length width = paper.width().minus(edge.times(2));
    Length height = paper.height().minus(edge.times(2)).minus(foot).minus(FOOT);
    Length across = new Length((width.nanometres() - CLEAR.nanometres() * (n - 1)) / n);
    Length down = new Length(height.nanometres() / n);
    PaperSize inRow = largest(photo, across, height.minus(LINE));
    PaperSize inColumn =
        largest(photo, width, down.minus(LINE).minus(CLEAR)); // a label stands by its own
    return inRow.squareInches() >= inColumn.squareInches()
        ? new Layout(paper, inRow, edge, edge, across.plus(CLEAR), Length.ZERO)
        : new Layout(paper, inColumn, edge, edge, Length.ZERO, down);
  }

  /** The photo's shape within a width and a height. */
  private static PaperSize largest(Photo photo, Length width, Length height) {
    double aspect = photo.size().aspect();
    Length wide = width.min(new Length(Math.round(height.nanometres() * aspect)));
    Length tall = height.min(new Length(Math.round(width.nanometres() / aspect)));
    return new PaperSize(wide.max(CLEAR), tall.max(CLEAR)); // a very long panorama is squeezed
  }

  private void scale(Graphics2D g, PaperSize paper, Length edge, Length foot, Ppi ppi) {
    Length width = paper.width().minus(edge.times(2));
    int bottom = foot.minus(LINE).toPixels(ppi);
    int top = foot.minus(LINE).minus(SCALE).toPixels(ppi);
    label(g, ABOUT_SCALE, edge, foot.minus(LINE).minus(SCALE).minus(GAP), ppi);
    for (int step = 0; step < STEPS; step++) {
      Length x = edge.plus(new Length(width.nanometres() * step / STEPS));
      int from = x.toPixels(ppi);
      int to = edge.plus(new Length(width.nanometres() * (step + 1) / STEPS)).toPixels(ppi);
      g.setColor(grey(step));
      g.fillRect(from, top, to - from, bottom - top);
      label(g, Integer.toString(100 * step / (STEPS - 1)), x, foot.minus(GAP), ppi);
    }
    g.setColor(INK); // so that white can be seen on white paper
    g.drawRect(edge.toPixels(ppi), top, width.toPixels(ppi) - 1, bottom - top - 1);
  }

  private static Color grey(int step) {
    int level = Math.round(255f * step / (STEPS - 1));
    return new Color(level, level, level);
  }

  private void label(Graphics2D g, String words, Length x, Length baseline, Ppi ppi) {
    g.setColor(INK);
    double inch = ppi.value();
    g.fill(
        lettering.outline(
            words, x.inInches() * inch, baseline.inInches() * inch, TYPE.inInches() * inch));
  }
}
