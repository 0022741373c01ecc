package org.daymount.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.daymount.card.Lettering;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.Ppi;

/** Piece labels and cut marks, on the waste only: nothing of them touches a piece. */
final class WastePainter {
  private static final Color INK = new Color(0x55, 0x5B, 0x63);
  private static final Length LABEL_TYPE = Length.inchFraction(5, 64);
  private static final Length LABEL_HEIGHT = Length.inchFraction(7, 64);
  private static final Length GAP = Length.inchFraction(1, 32);
  private static final Length MARK_LENGTH = Length.inchFraction(3, 16);

  /** Half of what has to stay free around a mark: a hairline is 1/4 pt, about 1/288 in. */
  private static final Length MARK_CLEARANCE = Length.inchFraction(1, 64);

  private final Lettering lettering = new Lettering();

  /**
   * @param margin what the printer leaves white, where names come last
   */
  void paint(Sheet sheet, Length margin, Ppi ppi, BufferedImage image) {
    Waste waste = new Waste(sheet);
    PaperBox reached = PaperBox.at(margin, margin, sheet.size().inset(margin));
    List<PaperBox> marks = new ArrayList<>(marks(sheet, waste));
    if (margin.isPositive()) {
      marks.addAll(cutEnds(sheet, waste, reached));
    }
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(INK);
    marks.forEach(mark -> paintMark(mark, ppi, g));
    List<PaperBox> taken = new ArrayList<>(marks);
    for (PlacedPiece placed : sheet.pieces()) {
      labelPlace(placed, waste, reached, taken)
          .ifPresent(
              place -> {
                taken.add(place);
                paintLabel(placed.piece().label(), place, ppi, g);
              });
    }
    g.dispose();
  }

  /** Where the piece's edges, made longer past its corners, run over waste. */
  private static List<PaperBox> marks(Sheet sheet, Waste waste) {
    List<PaperBox> marks = new ArrayList<>();
    for (PlacedPiece placed : sheet.pieces()) {
      PaperBox box = placed.box();
      for (Length x : List.of(box.x(), box.right())) {
        marks.add(upright(x, box.y().minus(GAP).minus(MARK_LENGTH)));
        marks.add(upright(x, box.bottom().plus(GAP)));
      }
      for (Length y : List.of(box.y(), box.bottom())) {
        marks.add(across(y, box.x().minus(GAP).minus(MARK_LENGTH)));
        marks.add(across(y, box.right().plus(GAP)));
      }
    }
    return marks.stream()
        .distinct()
        .filter(mark -> waste.isOnSheet(mark) && waste.isEmpty(mark))
        .toList();
  }

  /** Where each cut begins and ends, as far out as the printer reaches, if that is waste. */
  static List<PaperBox> cutEnds(Sheet sheet, Waste waste, PaperBox reached) {
    List<PaperBox> ends = new ArrayList<>();
    for (Cut cut : sheet.cuts()) {
      boolean upDown = cut.axis() == Cut.Axis.X;
      Length from = cut.from().max(upDown ? reached.y() : reached.x());
      Length to = cut.to().min(upDown ? reached.bottom() : reached.right()).minus(MARK_LENGTH);
      for (Length at : List.of(from, to)) {
        ends.add(upDown ? upright(cut.at(), at) : across(cut.at(), at));
      }
    }
    return ends.stream()
        .distinct()
        .filter(end -> reached.contains(end) && waste.isEmpty(end))
        .toList();
  }

  private static PaperBox upright(Length x, Length top) {
    return new PaperBox(x.minus(MARK_CLEARANCE), top, MARK_CLEARANCE.times(2), MARK_LENGTH);
  }

  private static PaperBox across(Length y, Length left) {
    return new PaperBox(left, y.minus(MARK_CLEARANCE), MARK_LENGTH, MARK_CLEARANCE.times(2));
  }

  private static void paintMark(PaperBox mark, Ppi ppi, Graphics2D g) {
    int thick = Math.max(1, Length.inchFraction(1, 288).toPixels(ppi));
    boolean isUpright = mark.height().isLongerThan(mark.width());
    int x = mark.x().plus(isUpright ? MARK_CLEARANCE : Length.ZERO).toPixels(ppi);
    int y = mark.y().plus(isUpright ? Length.ZERO : MARK_CLEARANCE).toPixels(ppi);
    g.fillRect(
        x,
        y,
        isUpright ? thick : mark.width().toPixels(ppi),
        isUpright ? mark.height().toPixels(ppi) : thick);
  }

  /** A place for the label along one of the piece's sides; below and right are tried first. */
  private Optional<PaperBox> labelPlace(
      PlacedPiece placed, Waste waste, PaperBox reached, List<PaperBox> taken) {
    Length length =
        Length.inches(lettering.width(placed.piece().label()) * LABEL_TYPE.inInches())
            .plus(GAP.times(2));
    PaperBox box = placed.box();
    List<PaperBox> places = new ArrayList<>();
    for (int step = 0; step < 24; step++) {
      Length along = GAP.times(1 + 4 * step);
      Length x = box.x().plus(along);
      Length y = box.y().plus(along);
      places.add(new PaperBox(x, box.bottom().plus(GAP), length, LABEL_HEIGHT));
      places.add(new PaperBox(box.right().plus(GAP), y, LABEL_HEIGHT, length));
      places.add(new PaperBox(x, box.y().minus(GAP).minus(LABEL_HEIGHT), length, LABEL_HEIGHT));
      places.add(new PaperBox(box.x().minus(GAP).minus(LABEL_HEIGHT), y, LABEL_HEIGHT, length));
    }
    return places.stream()
        .filter(waste::isOnSheet)
        .filter(waste::isEmpty)
        .filter(place -> taken.stream().noneMatch(place::overlaps))
        .min(
            Comparator.comparing((PaperBox place) -> !reached.contains(place))
                .thenComparing(place -> away(place, box)));
  }

  /** How far the place reaches beyond the piece's side, so that a label stays beside its piece. */
  private static Length away(PaperBox place, PaperBox box) {
    Length sideways = place.right().minus(box.right()).max(Length.ZERO);
    Length down = place.bottom().minus(box.bottom()).max(Length.ZERO);
    boolean isBeside =
        place.x().compareTo(box.right()) >= 0 || !place.right().isLongerThan(box.x());
    return isBeside ? down : sideways;
  }

  private void paintLabel(String label, PaperBox place, Ppi ppi, Graphics2D g) {
    double inch = ppi.value();
    boolean isUpright = place.height().isLongerThan(place.width());
    AffineTransform to =
        AffineTransform.getTranslateInstance(
            place.x().inInches() * inch, place.y().inInches() * inch);
    if (isUpright) { // reads from the bottom up
      to.translate(0, place.height().inInches() * inch);
      to.quadrantRotate(-1);
    }
    to.scale(inch, inch);
    double baseline = LABEL_HEIGHT.inInches() - GAP.inInches();
    double type = LABEL_TYPE.inInches();
    g.fill(to.createTransformedShape(lettering.outline(label, GAP.inInches(), baseline, type)));
  }
}
