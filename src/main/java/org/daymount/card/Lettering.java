package org.daymount.card;

import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;

/** Short labels as outlines, in the plain typeface. */
public final class Lettering {
  private final TextShaper setting = new TextShaper(Typeface.SANS);

  /** In type sizes. */
  public double width(String label) {
    return setting.width(label);
  }

  /** The label with its baseline starting at x, y; all in the unit of {@code typeSize}. */
  public Shape outline(String label, double x, double y, double typeSize) {
    TextLayout set = setting.layout(label);
    AffineTransform place = AffineTransform.getTranslateInstance(x, y);
    place.scale(TextShaper.scale(typeSize), TextShaper.scale(typeSize));
    return set.getOutline(place);
  }
}
