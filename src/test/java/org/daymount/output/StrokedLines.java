package org.daymount.output;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;

/** Reads back what a page draws: where its straight lines run and where its pictures lie. */
final class StrokedLines extends PDFGraphicsStreamEngine {
  private final List<float[]> lines = new ArrayList<>();
  private final List<PDRectangle> pictures = new ArrayList<>();
  private final Point2D.Float at = new Point2D.Float();

  private StrokedLines(PDPage page) {
    super(page);
  }

  /** x0, y0, x1, y1 in points. */
  static List<float[]> all(PDPage page) throws IOException {
    StrokedLines engine = new StrokedLines(page);
    engine.processPage(page);
    return engine.lines;
  }

  static List<float[]> upright(PDPage page) throws IOException {
    return all(page).stream().filter(line -> line[0] == line[2]).toList();
  }

  static List<PDRectangle> pictures(PDPage page) throws IOException {
    StrokedLines engine = new StrokedLines(page);
    engine.processPage(page);
    return engine.pictures;
  }

  @Override
  public void drawImage(PDImage image) {
    Matrix m = getGraphicsState().getCurrentTransformationMatrix();
    Point2D.Float a = m.transformPoint(0, 0);
    Point2D.Float b = m.transformPoint(1, 1);
    pictures.add(
        new PDRectangle(
            Math.min(a.x, b.x), Math.min(a.y, b.y), Math.abs(a.x - b.x), Math.abs(a.y - b.y)));
  }

  @Override
  public void moveTo(float x, float y) {
    at.setLocation(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    lines.add(new float[] {at.x, at.y, x, y});
    at.setLocation(x, y);
  }

  @Override
  public Point2D getCurrentPoint() {
    return at;
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

  @Override
  public void clip(int windingRule) {}

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    at.setLocation(x3, y3);
  }

  @Override
  public void closePath() {}

  @Override
  public void endPath() {}

  @Override
  public void strokePath() {}

  @Override
  public void fillPath(int windingRule) {}

  @Override
  public void fillAndStrokePath(int windingRule) {}

  @Override
  public void shadingFill(COSName shadingName) {}
}
