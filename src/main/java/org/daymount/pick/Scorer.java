package org.daymount.pick;

import java.util.ArrayList;
import java.util.List;
import org.daymount.crop.Crop;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.MainFaces;
import org.daymount.look.Measures;
import org.daymount.look.PersonInFront;
import org.daymount.pick.Score.Part;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/**
 * What a photo is worth in a space, as a sum of named parts. The weights are plain judgement,
 * ordered as a person would: the people a day was spent with tell it best, then animals, sights and
 * food; light, crispness and how well it crops decide among pictures that show as much. A spoilt
 * picture comes after every sound one.
 */
final class Scorer {
  static final String DAMAGE = "damage";
  private static final double FACES_WORTH = 1.0;
  private static final double SUBJECT_WORTH = 0.7;
  private static final double LIGHT_WORTH = 0.25;
  private static final double CRISP_WORTH = 0.3;
  private static final double CROP_WORTH = 0.25;
  private static final double RESOLUTION_WORTH = 0.4;
  private static final double BORDER_COST = 0.2;

  /** More than all other parts together can differ. */
  private static final double SPOILT = -5;

  /** One prominent face is worth .8, three are worth all but .01 of what many are. */
  private static final double MORE_FACES = 1.6;

  /** Of what things are worth beside as many faces as can count. */
  private static final double THINGS_BESIDE_FACES = 0.5;

  private static final double CRISP_ENOUGH =
      0.65; // a blur of .6 mm on a 6 in print; crisper adds nothing

  /** Of a damaged file: even a spoilt picture goes before it. */
  private static final double DAMAGE_COST = 10;

  private Scorer() {}

  static Score score(AnalysedPhoto looked, Crop crop, Ppi wanted) {
    Measures measures = looked.measures();
    PixelSize picture = looked.photo().size();
    double faces = faces(looked);
    double things = ThingWorth.of(measures.subjects(), picture);
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("faces", FACES_WORTH * faces));
    parts.add(new Part("subject", SUBJECT_WORTH * things * (1 - THINGS_BESIDE_FACES * faces)));
    double dullness = faces > 0 ? 0 : ThingWorth.dullness(measures.subjects(), picture);
    if (dullness < 0) {
      parts.add(new Part("dull", dullness));
    }
    parts.add(new Part("light", LIGHT_WORTH * measures.light()));
    double crisp = Math.min(1, measures.clarityThere() / CRISP_ENOUGH);
    parts.add(new Part("crispness", CRISP_WORTH * crisp));
    parts.add(new Part("crop", CROP_WORTH * crop.quality()));
    double resolution = Math.min(1, crop.ppi().value() / wanted.value());
    parts.add(new Part("resolution", RESOLUTION_WORTH * resolution));
    if (crop.fit() == Crop.Fit.BORDER) {
      double share = crop.picture().squareInches() / crop.piece().squareInches();
      parts.add(new Part("white border", -BORDER_COST * (2 - share)));
    }
    if (looked.isDamaged()) {
      parts.add(new Part(DAMAGE, -DAMAGE_COST));
    }
    if (measures.isSpoilt()) {
      parts.add(new Part("spoilt", SPOILT));
    }
    return new Score(parts);
  }

  /**
   * 0 without a main face or behind someone's back, towards 1 for one to three that fill their
   * picture.
   */
  private static double faces(AnalysedPhoto looked) {
    PixelSize picture = looked.photo().size();
    Measures measures = looked.measures();
    if (PersonInFront.isSeenIn(measures.faces(), measures.subjects(), picture)) {
      return 0;
    }
    double sum = 0;
    for (Face face : measures.countedFaces(picture)) {
      sum += MainFaces.prominence(face, picture);
    }
    return 1 - Math.exp(-MORE_FACES * sum);
  }

  /** How many main faces are sure enough to be spoken of. */
  static long sureFaces(AnalysedPhoto looked) {
    return looked.measures().countedFaces(looked.photo().size()).size();
  }
}
