package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.daymount.cli.Shell.Result;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The test print, of a picture that is middle grey all over. */
class StripCommandTest {
  private static final int GREY = 0x76; // about 18 % of white

  @TempDir Path home;
  private Path photo;

  @BeforeEach
  void aGreyPicture() throws IOException {
    photo = home.resolve("grey.jpg");
    BufferedImage picture = new BufferedImage(900, 1200, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 1200; y++) {
      for (int x = 0; x < 900; x++) {
        picture.setRGB(x, y, GREY * 0x010101);
      }
    }
    ExifPhoto.painted().picture(picture).original("2026:06:03 10:00:00").write(photo);
  }

  @Test
  void onePrintShowsThePictureThreeTimesEachAThirdOfAStopLighter() throws IOException {
    Result made = strip();
    assertEquals(0, made.code(), made.err());
    BufferedImage print = ImageIO.read(out("sheets/strip.jpg").toFile());
    assertEquals(1800, print.getWidth()); // 6 x 4 in at 300 ppi
    assertEquals(1200, print.getHeight());
    for (int copy = 0; copy < 3; copy++) {
      int level = print.getRGB(300 + copy * 600, 300) & 0xff;
      double stops = Math.log(linear(level) / linear(GREY)) / Math.log(2);
      assertEquals(copy / 3.0, stops, 0.05, "copy " + copy);
    }
  }

  @Test
  void theGreyScaleGoesFromBlackToWhiteInEqualSteps() throws IOException {
    strip();
    BufferedImage print = ImageIO.read(out("sheets/strip.jpg").toFile());
    int scale = 1200 - 38 - 47 - 56; // in the middle of 3/8 in, above a line and the edge
    for (int step = 0; step <= 10; step++) {
      int x = 38 + (int) (1724 * (step + 0.5) / 11);
      assertEquals(255 * step / 10.0, print.getRGB(x, scale) & 0xff, 3, "step " + step);
    }
  }

  @Test
  void thePdfIsTheSameAtTrueSizeAndOnHomePaperHasARuler() throws IOException {
    strip();
    try (PDDocument pdf = Loader.loadPDF(out("strip.pdf").toFile())) {
      assertEquals(1, pdf.getNumberOfPages());
      assertEquals(6 * 72, pdf.getPage(0).getMediaBox().getWidth(), 0.01); // ISO 32000-1, 8.3.2.3
    }
    for (String[] paper : new String[][] {{"--sheet", "a4"}, {"--paper", "letter"}}) {
      assertEquals(0, strip(paper).code());
      try (PDDocument pdf = Loader.loadPDF(out("strip.pdf").toFile())) {
        assertEquals(1, pdf.getNumberOfPages());
        String text = new PDFTextStripper().getText(pdf);
        assertTrue(text.contains("Print at 100%"), text);
      }
    }
  }

  @Test
  void aSecondTimeNothingIsWritten() {
    strip();
    assertTrue(strip().out().contains("nothing was rewritten"));
  }

  @Test
  void aPictureThatCannotBeReadIsNamedAndNothingIsWritten() throws IOException {
    byte[] whole = Files.readAllBytes(photo);
    Files.write(photo, Arrays.copyOf(whole, whole.length / 2));
    Result result = strip();
    assertEquals(1, result.code());
    assertTrue(result.err().contains("grey.jpg"), result.err());
    assertFalse(Files.exists(out("sheets/strip.jpg")));
    assertFalse(Files.exists(out("strip.pdf")));
    assertEquals(2, new Shell(home).run("strip", "nothing.jpg").code());
  }

  @Test
  void aMonthsFolderIsLeftAlone() throws IOException {
    Files.createDirectories(out(""));
    Files.writeString(out("month.json"), "{}");
    Result result = strip();
    assertEquals(2, result.code());
    assertTrue(result.err().contains("holds a month"), result.err());
    assertEquals("{}", Files.readString(out("month.json")));
  }

  private Result strip(String... more) {
    String[] start = {"strip", photo.toString(), "--out", "out"};
    String[] all = Arrays.copyOf(start, start.length + more.length);
    System.arraycopy(more, 0, all, start.length, more.length);
    return new Shell(home).run(all);
  }

  private Path out(String name) {
    return home.resolve("out").resolve(name);
  }

  /** IEC 61966-2-1. */
  private static double linear(int level) {
    return Math.pow((level / 255.0 + 0.055) / 1.055, 2.4);
  }
}
