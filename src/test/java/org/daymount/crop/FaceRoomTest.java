package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.daymount.look.Face;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/**
 * The figures are those of docs/decisions.md (Faces); the head is found by adding them to the box.
 */
class FaceRoomTest {
  private static final PixelSize PICTURE = new PixelSize(4000, 3000);
  private static final Face FACE = new Face(new PixelBox(1000, 1000, 200, 300), 0.9);

  // 4,000 px over 4 in: 1/8 in is 125 px
  private final FaceRoom room = room(Length.inchFraction(1, 8));

  @Test
  void aHeadIsSixtyHundredthsHigherAQuarterWiderOnEachSideAndAFifthLower() {
    assertEquals(PixelBox.edges(950, 820, 1250, 1360), room.head(FACE));
  }

  @Test
  void aHeadKeepsAnEighthOfAnInchFromThePiecesEdges() {
    assertEquals(PixelBox.edges(825, 695, 1375, 1485), room.needed(FACE));
    assertEquals(room.head(FACE), room(Length.ZERO).needed(FACE));
  }

  @Test
  void airIsTwoFifthsOfTheFaceMoreAboveTheHairAndNowhereElse() {
    assertEquals(PixelBox.edges(825, 575, 1375, 1485), room.liked(FACE));
  }

  // Close-ups cut into the hair: common practice in portraits, no source.
  @Test
  void aFaceThatFillsItsWindowAsksForLessHairAndNeverForLessThanItself() {
    assertEquals(1500 - 630, hairline(1050)); // .35 of 3,000 px: 60 % of it still
    assertEquals(1500 - 576, hairline(1200)); // .40 of them: 48 %
    assertEquals(1500, hairline(1800));
    assertEquals(1500, hairline(2100));
  }

  private int hairline(int height) {
    Face face = new Face(new PixelBox(1000, 1500, 800, height), 0.9);
    return new FaceRoom(
            new PixelSize(4000, 6000),
            PICTURE,
            PaperSize.inches(4, 3),
            new CropSettings(Ppi.ppi(300), Ppi.ppi(200), Length.ZERO))
        .head(face)
        .y();
  }

  @Test
  void nothingIsAskedForBeyondThePicture() {
    Face atTheCorner = new Face(new PixelBox(10, 20, 200, 300), 0.9);
    assertEquals(PixelBox.edges(0, 0, 385, 505), room.liked(atTheCorner));
  }

  private static FaceRoom room(Length safeEdge) {
    CropSettings settings = new CropSettings(Ppi.ppi(300), Ppi.ppi(200), safeEdge);
    return new FaceRoom(PICTURE, PICTURE, PaperSize.inches(4, 3), settings);
  }
}
