package org.daymount.album;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class AlbumFileParserTest {
  private static final String QUAY =
      String.join(
          "\n",
          "page 6x8",
          "have two 4x6, 4x6 and two 3x4, full",
          "",
          "base Quay",
          "  4x6 portrait on mat  at 1, 1/2      # inches from the left and the top of the page",
          "  story 3x2            at 1 1/2, 6 3/4",
          "base two by two",
          "  3x4 at 0, 0",
          "  4x3 on mat 1/4in at 1,4",
          "  paper 6x8",
          "  strip 1/8x6 x2",
          "  days 1-3, 15");

  @Test
  void aReadyMadePageHasItsPlacesWhereTheyWereSaid() {
    BasePage quay = AlbumFileParser.parse(QUAY.replace("6 3/4", "6")).base("quay").orElseThrow();
    assertEquals(1, quay.photos().size());
    assertEquals(box(1, 0.5, 4, 6), quay.photos().get(0).box());
    assertEquals(Optional.of(Length.inchFraction(1, 8)), quay.photos().get(0).reveal());
    assertEquals(Optional.of(box(1.5, 6, 3, 2)), quay.story(), "it may lie over the mat's edge");
  }

  @Test
  void aPlaceThatFitsNowhereIsNamedWithItsLineAndTheRestHolds() {
    AlbumFile album = AlbumFileParser.parse(QUAY);
    assertEquals(
        List.of(
            "line 6: '3x2            at 1 1/2, 6 3/4' reaches beyond the page of 6x8 in; it is left"
                + " out"),
        album.remarks());
    assertEquals(Set.of("quay", "two by two"), album.names());
  }

  @Test
  void aPageSaysWhichWayItsPicturesLie() {
    List<Space> spaces = AlbumFileParser.parse(QUAY).base("Two by Two").orElseThrow().spaces();
    assertEquals(Optional.of(Orientation.PORTRAIT), spaces.get(0).direction());
    assertEquals(Optional.of(Orientation.LANDSCAPE), spaces.get(1).direction());
    assertEquals(Optional.of(Length.inchFraction(1, 4)), spaces.get(1).reveal());
  }

  @Test
  void aPictureOnItsSideLiesInABoxTurnedFromHowItIsRead() {
    BasePage gate =
        AlbumFileParser.parse(
                "base gate\n4x6 portrait on its side at 0, 0\n6x4 on its side at 0, 4")
            .base("gate")
            .orElseThrow();
    assertEquals(box(0, 0, 6, 4), gate.photos().get(0).box());
    assertEquals(box(0, 4, 6, 4), gate.photos().get(1).box(), "without a direction as written");
    for (Space space : gate.spaces()) {
      assertEquals(Optional.of(Orientation.PORTRAIT), space.direction());
      assertTrue(space.onSide());
    }
  }

  @Test
  void twoPhotosInOnePlaceAreNamedAndBothStay() {
    AlbumFile album = AlbumFileParser.parse("base a\n4x6 at 0, 0\n3x4 at 1, 1");
    assertEquals(List.of("line 3: '3x4 at 1, 1' lies over another photo of a"), album.remarks());
    assertEquals(2, album.base("a").orElseThrow().photos().size());
  }

  @Test
  void papersDaysAndKindsAtHandAreRead() {
    AlbumFile album = AlbumFileParser.parse(QUAY);
    BasePage two = album.base("two by two").orElseThrow();
    PaperSize strip = new PaperSize(Length.inchFraction(1, 8), Length.inches(6));
    assertEquals(List.of(PaperSize.inches(6, 8), strip, strip), two.papers());
    assertEquals(List.of(1, 2, 3, 15), two.days());
    assertEquals(Optional.of(PaperSize.inches(6, 8)), album.page());
    assertEquals(List.of(2, 3, 0), album.have().stream().map(List::size).toList());
  }

  @Test
  void whateverIsTypedIsReadOrNamedAndNeverThrown() {
    AlbumFile album =
        AlbumFileParser.parse(
            "page\n"
                + "have blue\n"
                + "base\n"
                + "4x6 at 0,0\n"
                + "base a\n"
                + "4x6\n"
                + "hello\n"
                + "4x6 at x, y\n"
                + "days 40\n"
                + "paper\n"
                + "story\n");
    assertEquals(10, album.remarks().size(), album.remarks().toString());
    assertTrue(album.remarks().stream().allMatch(remark -> remark.startsWith("line ")));
  }

  private static PaperBox box(double x, double y, double width, double height) {
    return PaperBox.at(Length.inches(x), Length.inches(y), PaperSize.inches(width, height));
  }
}
