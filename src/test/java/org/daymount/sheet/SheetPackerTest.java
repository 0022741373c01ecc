package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class SheetPackerTest {
  private static final PaperSize SHEET_4X6 = PaperSize.inches(4, 6);
  private static final PaperSize SHEET_6X8 = PaperSize.inches(6, 8);

  private final SheetPacker packer = new SheetPacker();

  @Test
  void nothingToCutNeedsNoSheet() {
    Packing packing = packer.pack(List.of(), edgeToEdge(SHEET_4X6));
    assertEquals(List.of(), packing.sheets());
    assertTrue(packing.provenFewest());
  }

  @Test
  void aLandscapePictureLiesUprightOnASheetThatLies() {
    Sheet sheet = onlySheet(pieces(PaperSize.inches(6, 4)), edgeToEdge(SHEET_4X6));
    assertEquals(PaperSize.inches(6, 4), sheet.size());
    assertFalse(sheet.pieces().get(0).turned());
    assertEquals(List.of(), sheet.cuts(), "it is the whole sheet");
  }

  @Test
  void aPortraitPictureLiesUprightOnASheetThatStands() {
    Sheet sheet = onlySheet(pieces(PaperSize.inches(4, 6)), edgeToEdge(PaperSize.inches(6, 4)));
    assertEquals(SHEET_4X6, sheet.size());
    assertFalse(sheet.pieces().get(0).turned());
  }

  @Test
  void aSmallLandscapePictureIsNotTurnedWhereItHasRoom() {
    Sheet sheet = onlySheet(pieces(PaperSize.inches(4, 3)), edgeToEdge(SHEET_4X6));
    assertEquals(SHEET_4X6, sheet.size());
    assertFalse(sheet.pieces().get(0).turned());
    assertEquals(1, sheet.cuts().size());
  }

  // Arithmetic: 2 x 3 = 6.
  @Test
  void twoThreeByFoursFillAFourBySixWithOneCut() {
    Sheet sheet =
        onlySheet(pieces(PaperSize.inches(4, 3), PaperSize.inches(4, 3)), edgeToEdge(SHEET_4X6));
    assertEquals(1, sheet.cuts().size());
    assertTrue(sheet.pieces().stream().noneMatch(PlacedPiece::turned));
  }

  @Test
  void twoPortraitPicturesStandSideBySideOnASheetThatLies() {
    Sheet sheet =
        onlySheet(pieces(PaperSize.inches(3, 4), PaperSize.inches(3, 4)), edgeToEdge(SHEET_4X6));
    assertEquals(PaperSize.inches(6, 4), sheet.size());
    assertTrue(sheet.pieces().stream().noneMatch(PlacedPiece::turned));
  }

  @Test
  void ofEqualSizesEachGoesWhereItLiesUpright() {
    // Three of 2 x 3 fill all but 2 of 4 x 5 square inches: two stand side by side, 3 deep, and one
    // lies below them, 2 deep. Whoever comes first, no other way holds them.
    PaperSize standing = PaperSize.inches(2, 3);
    PaperSize lying = PaperSize.inches(3, 2);
    for (List<Piece> three :
        List.of(
            pieces(lying, standing, standing),
            pieces(standing, lying, standing),
            pieces(standing, standing, lying))) {
      Sheet sheet = onlySheet(three, edgeToEdge(PaperSize.inches(4, 5)));
      assertTrue(sheet.pieces().stream().noneMatch(PlacedPiece::turned), sheet.toString());
    }
  }

  @Test
  void aSheetTakesTheNextDaysOfWhateverSize() {
    // Any two fit a sheet, so that three sheets in the order of the days are possible.
    PaperSize low = PaperSize.inches(4, 2.9);
    PaperSize high = PaperSize.inches(4, 3);
    Packing packing = packer.pack(pieces(low, high, high, low, high, high), edgeToEdge(SHEET_4X6));
    assertEquals(
        List.of(Set.of("01a", "02a"), Set.of("03a", "04a"), Set.of("05a", "06a")),
        packing.sheets().stream().map(SheetPackerTest::labels).toList());
    assertEquals("3 sheets, the fewest that straight cuts allow (proven)", packing.how());
    assertEquals(
        "1 sheet, the fewest that straight cuts allow (proven)",
        packer.pack(pieces(low), edgeToEdge(SHEET_4X6)).how());
  }

  // Arithmetic: 2 x 3 = 6, so any gap breaks it.
  @Test
  void twoThreeByFoursOneNanometreLargerNeedTwoSheets() {
    PaperSize gapped =
        new PaperSize(
            PaperSize.inches(3, 4).width().plus(new Length(1)), PaperSize.inches(3, 4).height());
    Packing packing = packer.pack(pieces(gapped, gapped), edgeToEdge(SHEET_4X6));
    assertEquals(2, packing.sheets().size());
    assertTrue(packing.provenFewest());
  }

  // Arithmetic: 4 x 6 is 24 of 48 square inches.
  @Test
  void exactlyTwoFourBySixesFitASixByEight() {
    for (int count = 1; count <= 7; count++) {
      Packing packing = packer.pack(copies(SHEET_4X6, count), edgeToEdge(SHEET_6X8));
      assertEquals((count + 1) / 2, packing.sheets().size());
      assertTrue(packing.provenFewest());
    }
  }

  @Test
  void inchesAndCentimetresAreNotMixedUp() {
    // 10 x 15 cm is 3.937 x 5.906 in: it fits a 4 x 6 in sheet, but not the other way round.
    Packing metricOnInch =
        packer.pack(pieces(PaperSize.millimetres(100, 150)), edgeToEdge(SHEET_4X6));
    assertEquals(2, metricOnInch.sheets().get(0).cuts().size());
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> packer.pack(pieces(SHEET_4X6), edgeToEdge(PaperSize.millimetres(100, 150))));
    assertTrue(refused.getMessage().contains("piece 01a"), refused.getMessage());
  }

  @Test
  void daysKeepTheirOrderWhereItCostsNoSheet() {
    // By days: 4x6, then pairs of 3x4. On 6x8 both 4x6+4x6 / four 3x4 and 4x6 + two 3x4, twice,
    // take two sheets; only the second keeps the days together.
    Packing packing =
        packer.pack(
            pieces(
                SHEET_4X6,
                PaperSize.inches(3, 4),
                PaperSize.inches(3, 4),
                SHEET_4X6,
                PaperSize.inches(3, 4),
                PaperSize.inches(3, 4)),
            edgeToEdge(SHEET_6X8));
    assertEquals(2, packing.sheets().size());
    assertEquals(Set.of("01a", "02a", "03a"), labels(packing.sheets().get(0)));
    assertEquals(Set.of("04a", "05a", "06a"), labels(packing.sheets().get(1)));
  }

  @Test
  void daysGiveWayWhereTheirOrderWouldCostASheet() {
    // 3x4 on days 1 and 3 must share a sheet, or three sheets would be cut.
    Packing packing =
        packer.pack(
            pieces(PaperSize.inches(3, 4), SHEET_4X6, PaperSize.inches(3, 4)),
            edgeToEdge(SHEET_4X6));
    assertEquals(2, packing.sheets().size());
    assertEquals(Set.of("01a", "03a"), labels(packing.sheets().get(0)));
  }

  @Test
  void piecesOfOneDepthAreTrimmedByOneCut() {
    // A row of 3, 2 and 2 in deep: two cuts between them, one for the common waste below the last
    // two, and one each for the waste to the right and below.
    Sheet sheet =
        onlySheet(
            pieces(PaperSize.inches(1, 2), PaperSize.inches(1, 3), PaperSize.inches(1, 2)),
            edgeToEdge(PaperSize.inches(3.5, 3.5)));
    assertEquals(5, sheet.cuts().size(), sheet.cuts().toString());
  }

  @Test
  void piecesOfOneDepthAreTrimmedByOneCutInsideAPartToo() {
    // A tall piece and beside it a column of 1, 1.5 and 1 in across: cuts between the two, to the
    // right of the column and below it, two inside it, and one for the waste beside the two of 1
    // in.
    FilledTree column =
        new FilledTree.Join(
            Cut.Axis.Y, leaf(1, 1), new FilledTree.Join(Cut.Axis.Y, leaf(1.5, 1), leaf(1, 1)));
    FilledTree tree = SharedTrims.in(new FilledTree.Join(Cut.Axis.X, leaf(2, 6), column));
    Sheet sheet = new SheetLayout(Length.ZERO, Length.ZERO).lay(tree, SHEET_4X6);
    Cutting.assertCutsFreeEveryPiece(sheet);
    assertEquals(6, sheet.cuts().size(), sheet.cuts().toString());
  }

  private static FilledTree leaf(double width, double height) {
    return new FilledTree.Leaf(new Piece("a", PaperSize.inches(width, height), 0), false);
  }

  @Test
  void wasteGoesToTheRightAndTheBottom() {
    Sheet sheet = onlySheet(pieces(PaperSize.inches(3.75, 5.75)), edgeToEdge(SHEET_4X6));
    assertEquals(
        PaperBox.at(Length.ZERO, Length.ZERO, PaperSize.inches(3.75, 5.75)),
        sheet.pieces().get(0).box());
    assertEquals(2, sheet.cuts().size());
  }

  @Test
  void labTrimKeepsAPieceClearOfTheEdgeWhereThereIsWaste() {
    SheetSettings settings = new SheetSettings(SHEET_4X6, Length.inchFraction(1, 16));
    Sheet sheet = onlySheet(pieces(PaperSize.inches(3.75, 5.75)), settings);
    PlacedPiece placed = sheet.pieces().get(0);
    assertEquals(Length.inchFraction(1, 16), placed.box().x());
    assertEquals(Length.inchFraction(1, 16), placed.box().y());
    assertFalse(SheetLayoutTest.touchesTrim(settings, sheet, placed));
    assertEquals(4, sheet.cuts().size());
    Cutting.assertCutsFreeEveryPiece(sheet);
  }

  @Test
  void labTrimSharesOutWasteThatIsTooNarrow() {
    // 4 - 3.95 = 0.05 in for two edges that want 1/16 in each.
    SheetSettings settings = new SheetSettings(SHEET_4X6, Length.inchFraction(1, 16));
    Sheet sheet = onlySheet(pieces(PaperSize.inches(3.95, 5.75)), settings);
    PlacedPiece placed = sheet.pieces().get(0);
    assertEquals(Length.inches(0.025), placed.box().x());
    assertTrue(SheetLayoutTest.touchesTrim(settings, sheet, placed));
  }

  @Test
  void labTrimCostsNoSheetAndSaysWhichPiecesReachTheEdge() {
    SheetSettings settings = new SheetSettings(SHEET_4X6, Length.inchFraction(1, 16));
    Sheet sheet = onlySheet(pieces(PaperSize.inches(4, 3), PaperSize.inches(3, 2)), settings);
    Cutting.assertCutsFreeEveryPiece(sheet);
    for (PlacedPiece placed : sheet.pieces()) {
      assertEquals(
          placed.piece().label().equals("01a"),
          SheetLayoutTest.touchesTrim(settings, sheet, placed),
          placed + "");
    }
  }

  @Test
  void aTypicalMonthIsQuickProvenAndTheSameEveryTime() {
    List<Piece> month = month(90, 1);
    Packing first = packer.pack(month, edgeToEdge(SHEET_6X8));
    double seconds = Double.MAX_VALUE;
    for (int tries = 0; tries < 3 && seconds >= 5; tries++) { // other work may run on the machine
      long start = System.nanoTime();
      Packing again = packer.pack(month, edgeToEdge(SHEET_6X8));
      seconds = (System.nanoTime() - start) / 1e9;
      assertEquals(first, again);
    }
    assertAllThere(month, first);
    assertTrue(first.provenFewest(), first.how());
    assertTrue(seconds < 5, "took " + seconds + " s");
  }

  @Test
  void thousandsOfEqualSmallPiecesAreQuickAndProven() {
    List<Piece> many = copies(PaperSize.inches(1, 1), 5_000);
    Packing packing = packer.pack(many, edgeToEdge(SHEET_4X6));
    assertEquals(209, packing.sheets().size()); // 5,000 / 24, rounded up
    assertTrue(packing.provenFewest());
    assertAllThere(many, packing);
  }

  @Test
  void tooManySizesToListEveryWayStillGiveSheetsAndAnHonestWord() {
    Random random = new Random(7);
    List<Piece> odd = new ArrayList<>();
    double area = 0;
    for (int i = 0; i < 60; i++) {
      PaperSize size =
          PaperSize.millimetres(
              20 + random.nextInt(8_000) / 100.0, 20 + random.nextInt(8_000) / 100.0);
      area += size.squareInches();
      odd.add(new Piece("%02da".formatted(i + 1), size, i));
    }
    Packing packing = packer.pack(odd, edgeToEdge(SHEET_4X6));
    assertAllThere(odd, packing);
    assertFalse(packing.provenFewest());
    String bound = "at least %.0f are needed".formatted(Math.ceil(area / 24));
    assertTrue(packing.how().contains(bound), packing.how());
    assertEquals(packing, packer.pack(odd, edgeToEdge(SHEET_4X6)));
  }

  @Test
  void patternsMadeAsNeededAreProvenWhereTheyMeetTheBound() {
    // Seven sizes on a large card: more ways to cut it than are listed.
    List<Piece> month = month(100, 1);
    Packing packing = packer.pack(month, edgeToEdge(MatPlan.CARD));
    assertAllThere(month, packing);
    assertTrue(packing.provenFewest(), packing.how());
  }

  @Test
  void theListOfAllWaysIsGivenUpInsteadOfCutShort() {
    CuttingInstance one =
        new CuttingInstance(
            6, 8, List.of(new PieceKind(1, 2, true)), new int[] {Integer.MAX_VALUE});
    assertTrue(PatternFinder.all(one, 10).isEmpty());
    List<Pattern> all = PatternFinder.all(one, 100_000).orElseThrow();
    assertEquals(24, all.get(0).counts()[0]); // 48 / 2
    assertEquals(1, all.size());
  }

  @Property(tries = 150)
  void noOtherCuttingPlanNeedsFewerSheets(@ForAll("smallMonths") SmallMonth month) {
    List<Piece> wanted = pieces(month.sizes().toArray(PaperSize[]::new));
    Packing packing =
        packer.pack(wanted, edgeToEdge(PaperSize.inches(month.width(), month.height())));
    assertTrue(packing.provenFewest());
    assertAllThere(wanted, packing);
    assertEquals(
        EveryWay.fewestSheets(month.sizes(), month.width(), month.height()),
        packing.sheets().size());
  }

  @Property(tries = 100)
  void labTrimChangesPlacesButNotTheNumberOfSheets(@ForAll("smallMonths") SmallMonth month) {
    List<Piece> wanted = pieces(month.sizes().toArray(PaperSize[]::new));
    PaperSize sheet = PaperSize.inches(month.width(), month.height());
    Packing plain = packer.pack(wanted, edgeToEdge(sheet));
    Packing kept = packer.pack(wanted, new SheetSettings(sheet, Length.inchFraction(1, 16)));
    assertEquals(plain.sheets().size(), kept.sheets().size());
    assertAllThere(wanted, kept);
  }

  record SmallMonth(int width, int height, List<PaperSize> sizes) {}

  @Provide
  Arbitrary<SmallMonth> smallMonths() {
    Arbitrary<Integer> side = Arbitraries.integers().between(1, 4);
    Arbitrary<PaperSize> size = Combinators.combine(side, side).as(PaperSize::inches);
    return Combinators.combine(
            Arbitraries.integers().between(4, 6),
            Arbitraries.integers().between(4, 7),
            size.list().ofMinSize(1).ofMaxSize(7))
        .as(SmallMonth::new);
  }

  /** The usual sizes of pages and pockets, in a mix that does not change. */
  static List<Piece> month(int count, long seed) {
    List<PaperSize> usual =
        List.of(
            PaperSize.inches(4, 6),
            PaperSize.inches(6, 4),
            PaperSize.inches(3, 4),
            PaperSize.inches(4, 3),
            PaperSize.inches(3.75, 5.75),
            PaperSize.inches(2, 3),
            PaperSize.inches(4, 4),
            PaperSize.inches(2.75, 3.75),
            PaperSize.inches(3.5, 5));
    Random random = new Random(seed);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pieces.add(new Piece("%03da".formatted(i), usual.get(random.nextInt(usual.size())), i / 3));
    }
    return pieces;
  }

  private Sheet onlySheet(List<Piece> pieces, SheetSettings settings) {
    Packing packing = packer.pack(pieces, settings);
    assertEquals(1, packing.sheets().size());
    assertAllThere(pieces, packing);
    return packing.sheets().get(0);
  }

  static SheetSettings edgeToEdge(PaperSize sheet) {
    return new SheetSettings(sheet, Length.ZERO);
  }

  static List<Piece> pieces(PaperSize... sizes) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < sizes.length; i++) {
      pieces.add(new Piece("%02da".formatted(i + 1), sizes[i], i));
    }
    return pieces;
  }

  static List<Piece> copies(PaperSize size, int count) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      pieces.add(new Piece("%04da".formatted(i), size, i));
    }
    return pieces;
  }

  static Set<String> labels(Sheet sheet) {
    Set<String> labels = new HashSet<>();
    sheet.pieces().forEach(placed -> labels.add(placed.piece().label()));
    return labels;
  }

  /** Every piece is on one sheet, and the cuts of every sheet free its pieces. */
  static void assertAllThere(List<Piece> wanted, Packing packing) {
    List<Piece> placed = new ArrayList<>();
    for (Sheet sheet : packing.sheets()) {
      Cutting.assertCutsFreeEveryPiece(sheet);
      sheet.pieces().forEach(piece -> placed.add(piece.piece()));
    }
    assertEquals(wanted.size(), placed.size());
    assertEquals(new HashSet<>(wanted), new HashSet<>(placed));
  }
}
