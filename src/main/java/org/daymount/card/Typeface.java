package org.daymount.card;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.unpack.Unpacked;

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
  private static final List<String> FILES =
      Stream.of(values()).map(typeface -> FOLDER + typeface.file).toList();

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
      // from a file of ours: from a stream Java makes a copy for each run, and takes one that was
      // cut short (a full disk, a limit on the size of files) for a broken typeface
      try {
        Path folder = Unpacked.ofThisUser().together("typefaces", FILES);
        font = Font.createFont(Font.TRUETYPE_FONT, folder.resolve(file).toFile());
      } catch (IOException e) {
        throw new UncheckedIOException("the typeface " + file + " " + e.getMessage(), e);
      } catch (FontFormatException e) {
        throw new IllegalStateException("the typeface " + file + " cannot be read", e);
      }
    }
    return font;
  }
}
