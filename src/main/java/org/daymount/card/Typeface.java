package org.daymount.card;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The typefaces that travel with the program, so that a card looks the same on every machine: the
 * DejaVu family (Bitstream Vera licence, in the jar beside the files). System fonts are never asked
 * for.
 */
public enum Typeface {
  SERIF("DejaVuSerif.ttf"),
  SANS("DejaVuSans.ttf"),
  SANS_BOLD("DejaVuSans-Bold.ttf");

  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

  private final String file;
  private Font font;

  Typeface(String file) {
    this.file = file;
  }

  /** The TrueType file; to be closed by the caller. */
  public InputStream open() {
    InputStream stream = Typeface.class.getResourceAsStream(FOLDER + file);
    if (stream == null) {
      throw new IllegalStateException("the typeface " + file + " is not packed with the program");
    }
    return stream;
  }

  public boolean canShow(int codePoint) {
    return font().canDisplay(codePoint);
  }

  /** At one point; derive the size that is wanted. */
  synchronized Font font() {
    if (font == null) {
      try (InputStream stream = open()) {
        font = Font.createFont(Font.TRUETYPE_FONT, stream);
      } catch (FontFormatException e) {
        throw new IllegalStateException("the typeface " + file + " cannot be read", e);
      } catch (IOException e) {
        throw new UncheckedIOException("the typeface " + file + " cannot be read", e);
      }
    }
    return font;
  }
}
