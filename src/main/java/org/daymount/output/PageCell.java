package org.daymount.output;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.output.Guide.PageSteps;
import org.daymount.output.SmallPrint.Words;
import org.daymount.page.AlbumPage;
import org.daymount.page.Place;
import org.daymount.unit.PaperBox;

/** A page of the guide: drawn small as it will look, each piece named in its place. */
final class PageCell implements PdfGrid.Cell {
  private static final double GAP = 3;

  private final Month month;
  private final PageSteps steps;
  private final Optional<AlbumPage> page;
  private final PieceNames names;
  private final PdfPage canvas;
  private final SmallPrint print;

  PageCell(Month month, PageSteps steps, PieceNames names, PdfPage canvas, SmallPrint print) {
    this.month = month;
    this.steps = steps;
    this.page = month.album().page(steps.day());
    this.names = names;
    this.canvas = canvas;
    this.print = print;
  }

  @Override
  public double height(double width) throws IOException {
    return print.height(heading(), width)
        + 2 * GAP
        + drawingHeight(width)
        + print.height(words(), width);
  }

  @Override
  public void draw(PDPageContentStream stream, double left, double top, double width)
      throws IOException {
    print.draw(stream, heading(), left, top, width);
    double under = top - print.height(heading(), width) - GAP;
    if (page.isPresent()) {
      double scale = scale(width);
      PageDrawing.of(month, page.get()).draw(canvas.on(stream, left, under, scale));
      for (Place place : page.get().places()) {
        tag(place, stream, left, under, scale);
      }
    }
    print.draw(stream, words(), left, under - drawingHeight(width) - GAP, width);
  }

  private void tag(Place place, PDPageContentStream stream, double left, double under, double scale)
      throws IOException {
    PaperBox box = place.box();
    double x = left + scale * (box.x().inPoints() + box.width().inPoints() / 2);
    double y = under - scale * (box.y().inPoints() + box.height().inPoints() / 2);
    for (String label : labels(place)) {
      print.tag(stream, label, x, y, scale * box.width().inPoints());
      y -= 9;
    }
  }

  private List<String> labels(Place place) {
    if (place.index().isEmpty() || place.what() == Place.What.MAT) {
      return List.of();
    }
    int index = place.index().get();
    return place.what() == Place.What.STORY
        ? names.cards(steps.day()).stream().skip(index).limit(1).toList()
        : month.days().stream()
            .filter(day -> day.day().equals(steps.day()))
            .map(MonthDay::spaces)
            .findFirst()
            .orElseThrow()
            .get(index)
            .pieces();
  }

  private double scale(double width) {
    return width / month.album().settings().page().width().inPoints();
  }

  private double drawingHeight(double width) {
    return page.isPresent()
        ? month.album().settings().page().height().inPoints() * scale(width)
        : 0;
  }

  private List<Words> heading() {
    List<Words> words = new ArrayList<>();
    words.add(Words.bold(steps.heading()));
    page.ifPresent(p -> words.add(Words.plain("Leaf " + p.leaf() + ", " + p.side().word())));
    return words;
  }

  private List<Words> words() {
    return steps.steps().stream().map(step -> Words.plain("□ " + step)).toList();
  }
}
