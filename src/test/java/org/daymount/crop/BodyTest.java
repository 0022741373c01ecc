package org.daymount.crop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.daymount.look.Face;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;
import org.junit.jupiter.api.Test;

/**
 * Where a person may be cut. The joints are those of Drillis and Contini, "Body segment
 * parameters", 1966 (from memory), as parts of the standing height from the top: chin .130, knee
 * .715, ankle .961; chest, waist and thigh lie between.
 */
class BodyTest {
  private static final PixelSize PICTURE = new PixelSize(3000, 4000);
  private static final PixelBox PERSON = new PixelBox(1000, 500, 1000, 3000);
  private static final PaperSize WIDE = PaperSize.inches(6, 4);
  private static final CropSettings SETTINGS = CropSettings.of(Ppi.ppi(300), Ppi.ppi(100));

  private final Body seen = Body.of(List.of(), List.of(PERSON), PICTURE).get(0);

  @Test
  void neckKneeAndAnkleAreJoints() {
    for (double joint : new double[] {0.130, 0.715, 0.961}) {
      assertTrue(seen.isCutAtJoint(endingAt(joint)), "at " + joint);
    }
  }

  @Test
  void chestWaistThighAndBelowTheFeetAreNone() {
    for (double place : new double[] {0.25, 0.40, 0.55, 1.0, 1.1}) {
      assertFalse(seen.isCutAtJoint(endingAt(place)), "at " + place);
    }
  }

  @Test
  void aPersonIsSeenWellFromTheHeadToTheChest() {
    assertTrue(seen.isSeenToChest(endingAt(0.25)));
    assertFalse(seen.isSeenToChest(endingAt(0.15)));
    assertFalse(seen.isSeenToChest(new PixelBox(0, 800, 3000, 2000)), "without the head");
  }

  @Test
  void ofOneWhoSitsOrIsCutByThePictureOnlyTheNeckIsKnown() {
    Face face = new Face(new PixelBox(1400, 1000, 200, 200), 0.9); // a head of 360 px from 880 on
    PixelBox sitting = new PixelBox(1000, 800, 1200, 1600);
    Body body = Body.of(List.of(face), List.of(sitting), PICTURE).get(0);
    assertTrue(body.isCutAtJoint(new PixelBox(0, 0, 3000, 1300)), "just below the chin");
    assertFalse(body.isCutAtJoint(new PixelBox(0, 0, 3000, 2300)));
    assertFalse(body.isCutAtJoint(new PixelBox(0, 0, 3000, 2500)));
  }

  @Test
  void aCloseUpMayEndAtTheNeck() {
    Face face = new Face(new PixelBox(1000, 1000, 900, 900), 0.9);
    Body body = Body.of(List.of(face), List.of(), PICTURE).get(0);
    PixelBox closeUp = new PixelBox(0, 500, 3000, 1900);
    assertFalse(body.isCutAtJoint(closeUp));
    assertTrue(body.isSeenToChest(closeUp));
  }

  @Test
  void aCropMovesOffAKneeWhereThatCostsNextToNothing() {
    SomePhoto photo =
        SomePhoto.of(3000, 4000)
            .subject(1000, 500, 1000, 2500, "person", 0.8)
            .face(1350, 650, 220, 220, 0.9);
    PixelBox window = new Cropper().crop(photo.looked(), WIDE, SETTINGS).window();
    Body body =
        Body.of(photo.faces(), List.of(new PixelBox(1000, 500, 1000, 2500)), PICTURE).get(0);
    assertFalse(body.isCutAtJoint(window), window.toString());
    assertTrue(body.isSeenToChest(window), window.toString());
    assertEquals(2000, window.height());
  }

  private static PixelBox endingAt(double share) {
    int bottom = 500 + (int) Math.round(share * 3000);
    return new PixelBox(0, Math.max(0, bottom - 2000), 3000, Math.min(bottom, 2000));
  }
}
