package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateTableTest {
  @TempDir Path folder;

  private static LocalDateTime local(DateTable table, String name) {
    return table.of(new PhotoFile(Path.of("photos"), name)).orElseThrow().local();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a.jpg,2026-06-03,14:25",
        "a.jpg;2026-06-03;14:25",
        "a.jpg\t2026-06-03\t14:25:00",
        "file,date,time\r\na.jpg,2026-06-03,14:25\r\n",
        "\"a.jpg\",\"2026-06-03 14:25\"",
        "a.jpg , 3.6.2026 , 14:25\n\n",
        "a.jpg,2026-06-03T14:25:00+02:00,"
      })
  void theCommonFormsOfATableAreRead(String text) {
    assertEquals(
        LocalDateTime.parse("2026-06-03T14:25"), local(DateTable.parse(text, "t"), "a.jpg"));
  }

  /** RFC 4180, 2.6 and 2.7: commas and quotes within quotes. */
  @Test
  void aNameWithACommaIsQuoted() {
    DateTable table = DateTable.parse("\"tea, \"\"late\"\".jpg\",2026-06-03", "t");
    assertEquals(LocalDateTime.parse("2026-06-03T12:00"), local(table, "tea, \"late\".jpg"));
  }

  @Test
  void aNameWithItsFolderComesBeforeTheNameAlone() {
    DateTable table = DateTable.parse("a.jpg,2026-06-03\nquay/a.jpg,2026-06-04", "t");
    assertEquals(4, local(table, "quay/a.jpg").getDayOfMonth());
    assertEquals(3, local(table, "barn/a.jpg").getDayOfMonth());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a.jpg,31 June | row 1: '31 June' is no date",
        "a.jpg,2026-06-03\\nb.jpg,2026-06-31 | row 2: '2026-06-31' is no date",
        "a.jpg,2026-06-03\\na.jpg,2026-06-04 | row 2: a.jpg has another date further up",
        ",2026-06-03 | row 1: no file is named"
      })
  void aLineThatCannotBeReadIsNamed(String text, String expected) {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> DateTable.parse(text.replace("\\n", "\n"), "dates.csv"));
    assertTrue(e.getMessage().startsWith("dates.csv, " + expected), e.getMessage());
  }

  @Test
  void whatAPersonSaysComesBeforeTheCameraAndWhatIsNotThereIsNamed() throws IOException {
    ExifPhoto.painted().original("2020:01:01 00:00:00").write(folder.resolve("a.jpg"));
    ExifPhoto.painted().write(folder.resolve("b.jpg"));
    Path file = folder.resolve("dates.csv");
    Files.writeString(
        file,
        "\uFEFFa.jpg,2026-06-03,14:25\nb.jpg,2026-06-04\nc.jpg,2026-06-05\n",
        StandardCharsets.UTF_8);
    IngestSettings settings =
        new IngestSettings(
            ClockCorrections.NONE,
            Reading.TODAY,
            ZoneOffset.UTC,
            DateTable.read(file, "dates.csv"),
            false);
    Ingested ingested = Reading.all(settings, 1, folder);
    List<Photo> photos = ingested.photos();
    assertEquals(
        LocalDateTime.parse("2026-06-03T14:25"), photos.get(0).taken().local().orElseThrow());
    assertEquals(TakenFrom.PERSON, photos.get(0).taken().from());
    assertEquals(false, photos.get(1).taken().hourKnown());
    assertEquals(
        List.of("dates.csv names c.jpg, which is not among the pictures; look at the spelling"),
        ingested.notes());
  }

  /** The same check as for a camera's date: none before 1990 and none of tomorrow's tomorrow. */
  @Test
  void anAbsurdDateIsNotTaken() throws IOException {
    ExifPhoto.painted().original("2026:06:03 14:25:30").write(folder.resolve("a.jpg"));
    IngestSettings settings =
        new IngestSettings(
            ClockCorrections.NONE,
            Reading.TODAY,
            ZoneOffset.UTC,
            DateTable.parse("a.jpg,2062-06-03", "t"),
            false);
    Ingested ingested = Reading.all(settings, 1, folder);
    assertEquals(TakenFrom.ORIGINAL, ingested.photos().get(0).taken().from());
    assertTrue(ingested.notes().get(0).contains("2062-06-03"), ingested.notes().toString());
  }
}
