package org.daymount.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.daymount.cli.Shell.Result;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.Scenes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What prints are made on and how they are spoken of, on a month of two painted days. */
@Tag("slow")
class PrintingOptionsTest {
  @TempDir Path home;

  @BeforeEach
  void twoDaysOfJune() throws IOException {
    Path photos = Files.createDirectories(home.resolve("june"));
    for (int day = 3; day <= 4; day++) {
      ExifPhoto.painted()
          .picture(Scenes.scene(day, 1800, 1350))
          .original("2026:06:0" + day + " 10:00:00")
          .write(photos.resolve("day " + day + ".jpg"));
    }
  }

  @Test
  void whereCentimetresAreUsedTheyStandFirstInEverythingThatIsSaid() throws IOException {
    String[] words = {"--space", "two 3x4 portrait", "--page", "6x8"};
    assertEquals(0, sheets(Locale.GERMANY, words).code());
    String guide = text("guide.pdf");
    assertTrue(guide.contains("1 print of 10x15 cm (4x6 in)"), guide);
    assertTrue(guide.contains("7.6 cm (3 in) from the left"), guide);
    assertFalse(guide.contains("3 in (7.6 cm)"), guide);
    assertEquals("cm", month().get("settings").get("units").asText());
    assertTrue(Files.readString(out("index.html")).contains("7.6x10.2 cm (3x4) portrait"));
    assertTrue(sheets(Locale.GERMANY, "--dry-run").out().contains("of 10x15 cm (4x6 in)"));

    assertEquals(0, sheets(Locale.GERMANY, concat(words, "--units", "inches")).code());
    assertTrue(text("guide.pdf").contains("3 in (7.6 cm) from the left"));
    assertEquals(0, sheets(Locale.US, concat(words, "--units", "cm")).code());
    assertTrue(text("guide.pdf").contains("7.6 cm (3 in) from the left"));
  }

  /** That 13x18 cm is sold for the 5x7 in print is common practice, no source. */
  @Test
  void thirteenByEighteenIsOnePrintOfItsOwn() throws IOException {
    for (String sheet : new String[] {"5x7", "13x18cm"}) {
      assertEquals(0, sheets(Locale.US, "--space", "13x18cm", "--sheet", sheet).code());
      JsonNode sheets = month().get("sheets");
      assertEquals(2, sheets.size(), sheet);
      for (JsonNode one : sheets) {
        assertEquals(1, one.get("pieces").size());
        assertEquals(0, one.get("cuts").size());
        assertEquals(35, one.get("width").asDouble() * one.get("height").asDouble(), 1e-9);
      }
    }
  }

  @Test
  void thirteenByEighteenIsCutToFitAFiveBySevenPocketAtHome() throws IOException {
    Result made =
        sheets(Locale.FRANCE, "--space", "two 13x18cm", "--page", "7x10", "--sheet", "a4");
    assertEquals(0, made.code(), made.err());
    assertEquals("two 5x7", month().get("pages").get(0).get("kind").asText());
    assertEquals(7, month().get("days").get(2).get("spaces").get(0).get("pieceWidth").asDouble());
  }

  @Test
  void aUnitThatIsNoneIsAWrongCommandLine() {
    Result result = sheets(Locale.US, "--units", "feet");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("use inches or cm"), result.err());
  }

  @Test
  void lighterPrintsAreAskedForAndRememberedAndOffIsTheSameAsNotAsking() throws IOException {
    sheets(Locale.US);
    byte[] plain = Files.readAllBytes(out("sheets/sheet-01.jpg"));
    byte[] pdf = Files.readAllBytes(out("sheets.pdf"));
    assertEquals(0, month().get("settings").get("lighter").asDouble());
    sheets(Locale.US, "--lighter", "0");
    assertArrayEquals(plain, Files.readAllBytes(out("sheets/sheet-01.jpg")));
    assertArrayEquals(pdf, Files.readAllBytes(out("sheets.pdf")));

    assertEquals(0, sheets(Locale.US, "--lighter", "1/3").code());
    assertEquals(0.3333, month().get("settings").get("lighter").asDouble());
    BufferedImage before = ImageIO.read(new ByteArrayInputStream(plain));
    BufferedImage after = ImageIO.read(out("sheets/sheet-01.jpg").toFile());
    int lighter = 0;
    for (int x = 0; x < before.getWidth(); x += 7) {
      for (int y = 0; y < before.getHeight(); y += 7) {
        lighter += Integer.signum(sum(after.getRGB(x, y)) - sum(before.getRGB(x, y)));
      }
    }
    int looked = (before.getWidth() / 7 + 1) * (before.getHeight() / 7 + 1);
    assertTrue(lighter > looked * 0.9, lighter + " of " + looked);
    assertEquals(2, sheets(Locale.US, "--lighter", "3").code());
    assertEquals(2, sheets(Locale.US, "--lighter", "bright").code());
  }

  private static int sum(int rgb) {
    return (rgb >> 16 & 0xff) + (rgb >> 8 & 0xff) + (rgb & 0xff);
  }

  private Result sheets(Locale locale, String... more) {
    String[] start = {"sheets", home.resolve("june").toString(), "--out", "out", "--days", "3-4"};
    return new Shell(home, locale).run(concat(start, more));
  }

  private static String[] concat(String[] first, String... second) {
    return Stream.concat(Stream.of(first), Stream.of(second)).toArray(String[]::new);
  }

  private String text(String pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(out(pdf).toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  private Path out(String name) {
    return home.resolve("out").resolve(name);
  }

  private JsonNode month() throws IOException {
    return new ObjectMapper().readTree(out("month.json").toFile());
  }
}
