package org.daymount.album;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PageSpecParserTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4x6|4x6",
        "6x4|4x6",
        "two 3x4|3x4, 3x4",
        "2 x 3x4|3x4, 3x4",
        "2x 3x4|3x4, 3x4",
        "2 3x4|3x4, 3x4",
        "2 x 3 x 4|3x4, 3x4",
        "3x4 x2|3x4, 3x4",
        "3x4 x 2|3x4, 3x4",
        "two 3x4s|3x4, 3x4",
        "4x6 landscape and 3x4 tall|4x6 landscape, 3x4 portrait",
        "4x6 wide, tall 3x4|4x6 landscape, 3x4 portrait",
        "tall 4x6|4x6 portrait",
        "4x6, tall|4x6 portrait",
        "4x6 tall 3x4 wide|4x6 portrait, 3x4 landscape",
        "tall 4x6 wide 3x4|4x6 portrait, 3x4 landscape",
        "two tall 3x4|3x4 portrait, 3x4 portrait",
        "6x8|6x8",
        "4x6 on mat|4x6 on mat",
        "4x6 on a mat|4x6 on mat",
        "4x6 on mat 1/4in|4x6 on mat 0.25in",
        "4x6 on mat with 5 mm reveal|4x6 on mat 5mm",
        "4x6 on mat 3x4|4x6 on mat, 3x4",
        "4x6 on mat 2 3x4|4x6 on mat, 3x4, 3x4",
        "4x6 and 3x4, both on mat|4x6 on mat, 3x4 on mat",
        "portrait|portrait",
        "wide on mat|landscape on mat",
        "No photo|no photo",
        "no pictures.|no photo",
        "leave out|leave out",
        "10x15cm tall|100x150mm portrait",
        "A6|105x148mm",
        "a 4x6 + one 3x4|4x6, 3x4",
        "4x6 portrait on its side|4x6 portrait on its side",
        "two upright 4x6 on their sides|4x6 portrait on its side, 4x6 portrait on its side",
        "3x4 landscape sideways|3x4 landscape on its side",
        "3x4 sideways|3x4 landscape",
        "4x6 on its side, 3x4|4x6 on its side, 3x4",
        "4x6 hochkant auf der Seite|4x6 portrait on its side",
      })
  void wordsForAPageAreUnderstood(String typed, String canonical) {
    PageSpecParser.Read read = PageSpecParser.read(NormalizedText.fold(typed), 0);
    assertEquals(canonical, PageSpecParser.text(read.words()), typed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "4x6, 3x4 portrait, 6x8 landscape on mat 5mm",
        "4x6 portrait on mat on its side",
        "portrait on mat",
        "no photo"
      })
  void canonicalWordsAreReadBackTheSame(String words) {
    assertEquals(words, PageSpecParser.text(PageSpecParser.parse(words)));
  }

  @ParameterizedTest
  @CsvSource({
    "4x6 on matt,on matt",
    "4x6 prints,prints",
    "banana,banana",
    "two,two",
    "4x6 no photo,no photo",
    "no photo 4x6,4x6",
    "tall wide,wide",
    "99 4x6,99 4x6",
    "4x6 tall 1x1000,1x1000",
    "0.1x4,0.1x4",
    "tall ships,ships"
  })
  void whatIsNotUnderstoodIsNamed(String typed, String named) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> PageSpecParser.parse(typed))
            .getMessage();
    assertTrue(message.startsWith("'" + named + "'"), message);
  }

  @ParameterizedTest
  @CsvSource({
    "two 60x60,larger than any page",
    "4x6 and .0001x.0001,smaller than can be cut",
    "24.5x4,larger than any page"
  })
  void aSizeThatNoSpaceCanHaveIsCalledThat(String typed, String said) {
    String message =
        assertThrows(IllegalArgumentException.class, () -> PageSpecParser.parse(typed))
            .getMessage();
    assertTrue(message.contains(said), message);
  }

  @Test
  void nothingIsNotAPage() {
    assertThrows(IllegalArgumentException.class, () -> PageSpecParser.parse(" , "));
  }

  // Common practice, no source: the mat stays at 4 x 6, the picture is trimmed to 3 3/4 x 5 3/4.
  @Test
  void aFourBySixOnMatTakesAPictureOfThreeAndThreeQuartersByFiveAndThreeQuarters() {
    Space space =
        PageSpecParser.parse("4x6 on mat").spaces().get(0).with(AlbumDefaults.STANDARD).get(0);
    assertEquals(PaperSize.inches(3.75, 5.75), space.pieceSize(Orientation.PORTRAIT));
    assertEquals(PaperSize.inches(5.75, 3.75), space.pieceSize(Orientation.LANDSCAPE));
  }

  @Test
  void portraitOnAFourBySixFixesItsDirection() {
    Space space =
        PageSpecParser.parse("4x6 portrait").spaces().get(0).with(AlbumDefaults.STANDARD).get(0);
    assertEquals(List.of(Orientation.PORTRAIT), space.ways());
  }

  @Test
  void defaultsAreMadeFromTheSameWords() {
    AlbumDefaults defaults = AlbumDefaults.of("two 3x4, one 4x6 wide on mat", Length.inches(0.25));
    assertEquals(3, defaults.spaces().size());
    assertEquals(Optional.of(Length.inches(0.25)), defaults.spaces().get(2).reveal());
    assertThrows(
        IllegalArgumentException.class, () -> AlbumDefaults.of("no photo", Length.inches(0.25)));
  }
}
