package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/** A 6 x 8 in piece printed on four sheets of 3 x 4 in, which meet in its middle. */
class FaceSeamsTest {
  private static final PaperSize PIECE = PaperSize.inches(6, 8);
  private static final Seams FOUR =
      piece ->
          List.of(
              quarter(piece, 0, 0),
              quarter(piece, 1, 0),
              quarter(piece, 0, 1),
              quarter(piece, 1, 1));

  private static PaperBox quarter(PaperSize piece, int column, int row) {
    Length width = piece.width().half();
    Length height = piece.height().half();
    return new PaperBox(width.times(column), height.times(row), width, height);
  }

  @Test
  void aHeadMayTouchAJoinButNotReachAcrossIt() {
    // 3,000 px over 6 in: the sheets meet at 1,500 and 2,000
    PixelSize picture = new PixelSize(3000, 4000);
    for (int[] shift : new int[][] {{0, 0}, {1600, 0}, {0, 2300}, {1600, 2300}}) {
      PixelBox inside = new PixelBox(shift[0], shift[1], 1398, 1701);
      assertFalse(cuts(picture, inside, picture.whole(), PIECE), inside.toString());
    }
    assertFalse(cuts(picture, new PixelBox(1080, 100, 420, 450), picture.whole(), PIECE));
    assertTrue(cuts(picture, new PixelBox(1081, 100, 420, 450), picture.whole(), PIECE));
    assertFalse(cuts(picture, new PixelBox(1500, 100, 420, 450), picture.whole(), PIECE));
    assertTrue(cuts(picture, new PixelBox(1499, 100, 420, 450), picture.whole(), PIECE));
    assertFalse(cuts(picture, new PixelBox(100, 1550, 420, 450), picture.whole(), PIECE));
    assertTrue(cuts(picture, new PixelBox(100, 1551, 420, 450), picture.whole(), PIECE));
    assertFalse(cuts(picture, new PixelBox(100, 2000, 420, 450), picture.whole(), PIECE));
    assertTrue(cuts(picture, new PixelBox(100, 1999, 420, 450), picture.whole(), PIECE));
  }

  @Test
  void whereTheSheetsMeetIsCountedFromTheWindow() {
    // A window of 3,000 x 4,000 from 700, 900 on: the sheets meet at 2,200 and 2,900.
    PixelSize picture = new PixelSize(6000, 8000);
    PixelBox window = new PixelBox(700, 900, 3000, 4000);
    assertFalse(cuts(picture, new PixelBox(1779, 1000, 420, 450), window, PIECE));
    assertTrue(cuts(picture, new PixelBox(1782, 1000, 420, 450), window, PIECE));
    assertFalse(cuts(picture, new PixelBox(2201, 1000, 420, 450), window, PIECE));
    assertTrue(cuts(picture, new PixelBox(2198, 1000, 420, 450), window, PIECE));
    assertFalse(cuts(picture, new PixelBox(1000, 2449, 420, 450), window, PIECE));
    assertTrue(cuts(picture, new PixelBox(1000, 2452, 420, 450), window, PIECE));
    assertFalse(cuts(picture, new PixelBox(1000, 2901, 420, 450), window, PIECE));
    assertTrue(cuts(picture, new PixelBox(1000, 2898, 420, 450), window, PIECE));
  }

  @Test
  void aPictureWithWhiteAroundItIsCutInItsMiddleToo() {
    // 3,000 x 4,000 px printed 3 x 4 in, centred on the piece: its middle stays on the joins.
    PixelSize picture = new PixelSize(3000, 4000);
    PaperSize small = PaperSize.inches(3, 4);
    assertFalse(cuts(picture, new PixelBox(1079, 100, 420, 450), picture.whole(), small));
    assertTrue(cuts(picture, new PixelBox(1082, 100, 420, 450), picture.whole(), small));
    assertFalse(cuts(picture, new PixelBox(1501, 100, 420, 450), picture.whole(), small));
    assertFalse(cuts(picture, new PixelBox(100, 1549, 420, 450), picture.whole(), small));
    assertTrue(cuts(picture, new PixelBox(100, 1552, 420, 450), picture.whole(), small));
    assertFalse(cuts(picture, new PixelBox(100, 2001, 420, 450), picture.whole(), small));
  }

  /** Every place is tried here; the search may stop short of the nearest by one of its steps. */
  @Test
  void aWindowIsMovedNoFurtherThanTheFaceAsks() {
    PixelSize picture = new PixelSize(3000, 5000);
    PixelBox usual = new PixelBox(0, 500, 3000, 4000); // its middle is at 2,500
    for (int top = 2000; top <= 2600; top += 60) {
      FaceSeams joined = joined(picture, new PixelBox(300, top, 500, 500));
      PixelBox moved = joined.window(usual).orElseThrow();
      int least = Integer.MAX_VALUE;
      for (int y = 0; y <= 1000; y++) {
        if (!joined.cutsFace(new PixelBox(0, y, 3000, 4000), PIECE)) {
          least = Math.min(least, Math.abs(y - 500));
        }
      }
      assertEquals(usual.size(), moved.size());
      assertTrue(Math.abs(moved.y() - 500) <= least + 1000 / 40, moved + ", least " + least);
    }
  }

  @Test
  void aWindowThatSlidesSidewaysIsMovedNoFurtherEither() {
    PixelSize picture = new PixelSize(4500, 4000);
    PixelBox usual = new PixelBox(750, 0, 3000, 4000); // its middle is at 2,250
    for (int left = 1800; left <= 2220; left += 60) {
      FaceSeams joined = joined(picture, new PixelBox(left, 300, 420, 450));
      PixelBox moved = joined.window(usual).orElseThrow();
      int least = Integer.MAX_VALUE;
      for (int x = 0; x <= 1500; x++) {
        if (!joined.cutsFace(new PixelBox(x, 0, 3000, 4000), PIECE)) {
          least = Math.min(least, Math.abs(x - 750));
        }
      }
      assertTrue(Math.abs(moved.x() - 750) <= least + 1500 / 40, moved + ", least " + least);
    }
  }

  @Test
  void aWindowMayMoveToTheVeryEdge() {
    // Between 1,980 and 2,493 the head is off the join only from 493 of 500 on.
    PixelSize picture = new PixelSize(3000, 4500);
    FaceSeams joined = joined(picture, new PixelBox(300, 1980, 420, 513));
    assertEquals(
        Optional.of(new PixelBox(0, 500, 3000, 4000)),
        joined.window(new PixelBox(0, 250, 3000, 4000)));
  }

  /** The same along both axes at once: a picture of the piece's shape, seen closer. */
  @Test
  void aCloserWindowIsTheLargestThatWillDo() {
    PixelSize picture = new PixelSize(3000, 4000);
    PixelBox head = new PixelBox(1250, 300, 450, 500);
    // To have all of the head on one side the middle moves to 1,250 or 1,700; a window of width w
    // reaches from w / 2 to 3,000 - w / 2, so w is 2,500 or 2,600 at most; in steps of a twentieth.
    PixelBox closer = joined(picture, head).window(picture.whole()).orElseThrow();
    assertEquals(0.85 * 3000, closer.width(), 1);
    assertEquals(0.85 * 4000, closer.height(), 1);
    assertTrue(closer.centreX() >= 1700, closer.toString());
  }

  @Test
  void aWindowIsTakenAQuarterCloserAtMost() {
    PixelSize picture = new PixelSize(3000, 4000);
    // The middle would have to move to 1,110, so a window of 2,220 would do: .74 of the whole.
    assertEquals(
        Optional.empty(),
        joined(picture, new PixelBox(1110, 300, 780, 700)).window(picture.whole()));
    // Here 2,260 is enough: .753
    assertEquals(
        0.75 * 3000,
        joined(picture, new PixelBox(1130, 300, 740, 700))
            .window(picture.whole())
            .orElseThrow()
            .width(),
        1);
  }

  @Test
  void aWindowIsNotTakenSoCloseThatItsPixelsBecomeTooFew() {
    // .85 of 1,400 px over 6 in are 198 ppi; the least is 200. With 1,420 they are 201.
    PixelBox head = new PixelBox(583, 140, 210, 233);
    assertEquals(
        Optional.empty(),
        joined(new PixelSize(1400, 1867), head).window(new PixelBox(0, 0, 1400, 1867)));
    assertTrue(
        joined(new PixelSize(1420, 1893), head).window(new PixelBox(0, 0, 1420, 1893)).isPresent());
  }

  private static boolean cuts(PixelSize picture, PixelBox head, PixelBox window, PaperSize print) {
    return joined(picture, head).cutsFace(window, print);
  }

  /** With a face whose head, hair and chin included, is that box (to a pixel); no edge kept. */
  private static FaceSeams joined(PixelSize picture, PixelBox head) {
    CropSettings settings = new CropSettings(Ppi.ppi(300), Ppi.ppi(200), Length.ZERO, FOUR);
    int width = (int) Math.round(head.width() / 1.5); // a quarter more on each side
    int height = (int) Math.round(head.height() / 1.8); // .6 above and .2 below
    int up = (int) Math.ceil(0.6 * height);
    int aside = (int) Math.ceil(0.25 * width);
    Face face = new Face(new PixelBox(head.x() + aside, head.y() + up, width, height), 0.9);
    return new FaceSeams(picture, List.of(face), PIECE, settings);
  }
}
