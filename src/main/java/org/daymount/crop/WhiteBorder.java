package org.daymount.crop;

import org.daymount.look.MainFaces;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * When a main thing that no window holds is worth white paper around the whole picture. A person
 * seen from the head to the chest is not cut badly, whatever legs are lost, unless what they hold
 * is cut; food that fills its picture is only taken closer; what may be nothing is worth it only
 * where most of it would go.
 */
final class WhiteBorder {
  private static final double MAY_BE_LOST = 0.15; // of a thing that is surely there
  private static final double MAY_BE_LOST_OF_ARMS = 0.3; // where the face is a portrait's
  private static final double MAY_BE_LOST_OF_A_PART =
      0.3; // where the picture's edge cuts it already
  private static final double MAY_BE_LOST_OF_NOTHING = 0.5;
  private static final double MAY_BE_LOST_BESIDE_A_PORTRAIT = 0.45; // a motorcycle below its rider
  private static final double MUST_BE_KEPT = 0.55; // of all interest
  private static final double FILLS = 0.5; // of the picture's area
  private static final double SMALL = 0.1; // of it; on a picture printed smaller hardly to be seen
  private static final double SPECK = 0.05; // of it
  private static final double PORTRAIT = 0.4; // prominence of a face that is what a picture shows

  private final CropSearch placing;
  private final PixelSize picture;

  WhiteBorder(CropSearch placing, PixelSize picture) {
    this.placing = placing;
    this.picture = picture;
  }

  boolean isBetterThan(PixelBox window, WeightedBox main) {
    if (main.subject().isMeal() && main.box().area() >= FILLS * picture.area()) {
      return false;
    }
    if (losesMostOfWhatIsThere(window, main) || placing.cutsHeldThing()) {
      return true;
    }
    double lost = 1 - placing.keptOfMain(window);
    return lost > mayBeLost(main)
        && main.box().area() >= SMALL * picture.area()
        && !showsPeopleWell(window, main, lost);
  }

  /** Of a row of cooks or a herd; specks in a wide view may go. */
  private boolean losesMostOfWhatIsThere(PixelBox window, WeightedBox main) {
    return window.width() < picture.width()
        && placing.kept() < MUST_BE_KEPT
        && main.box().area() >= SPECK * picture.area();
  }

  private double mayBeLost(WeightedBox main) {
    if (!main.isSure()) {
      return MAY_BE_LOST_OF_NOTHING;
    }
    if (isCutByPicture(main.box())) {
      return MAY_BE_LOST_OF_A_PART;
    }
    return main.isPerson() && isPortrait() ? MAY_BE_LOST_OF_ARMS : MAY_BE_LOST;
  }

  private boolean isCutByPicture(PixelBox box) {
    int edge = picture.longEdge() / 100; // boxes end a little before
    return box.x() <= edge
        || box.y() <= edge
        || box.right() >= picture.width() - edge
        || box.bottom() >= picture.height() - edge;
  }

  /** Arms stretched out and people who lie lose more than legs by a window that is narrower. */
  private boolean showsPeopleWell(PixelBox window, WeightedBox main, double lost) {
    boolean losesLegs = window.width() == picture.width();
    boolean isPerson = main.isPerson();
    boolean toChest =
        !placing.bodies().isEmpty()
            && placing.bodies().stream().allMatch(body -> body.isSeenToChest(window));
    return isPerson
        ? losesLegs && toChest
        : isPortrait()
            && (toChest || !losesLegs)
            && (lost <= MAY_BE_LOST_BESIDE_A_PORTRAIT || isAroundFaces(main));
  }

  /** An umbrella, a large toy. */
  private boolean isAroundFaces(WeightedBox main) {
    return placing.faces().stream().allMatch(main.subject()::holds);
  }

  private boolean isPortrait() {
    return placing.faces().stream()
        .anyMatch(face -> face.counts() && MainFaces.prominence(face, picture) >= PORTRAIT);
  }
}
