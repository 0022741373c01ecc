package org.daymount.card;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

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

  /**
   * Java copies a typeface to the temporary directory before it reads it, and takes a copy that was
   * cut short (a full disk, a limit on the size of files) for a broken typeface.
   */
  private String why(Exception e) {
    Path probe = null;
    try (InputStream stream = open()) {
      probe = Files.createTempFile("daymount", ".ttf");
      Files.copy(stream, probe, StandardCopyOption.REPLACE_EXISTING);
      return e.getMessage();
    } catch (IOException full) {
      return "files cannot be written to "
          + System.getProperty("java.io.tmpdir")
          + ": "
          + full.getMessage()
          + "; make room there, or raise the limit on the size of files";
    } finally {
      delete(probe);
    }
  }

  private static void delete(Path probe) {
    try {
      if (probe != null) {
        Files.deleteIfExists(probe);
      }
    } catch (IOException e) {
      // an empty file in the temporary directory
    }
  }

  /** At one point; derive the size that is wanted. */
  synchronized Font font() {
    if (font == null) {
      try (InputStream stream = open()) {
        font = Font.createFont(Font.TRUETYPE_FONT, stream);
      } catch (FontFormatException | IOException e) {
        throw new IllegalStateException(
            "the typeface " + file + " cannot be read (" + why(e) + ")", e);
      }
    }
    return font;
  }
}
