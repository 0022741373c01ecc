package org.daymount.pick;

import java.util.ArrayList;
import java.util.List;
import org.daymount.crop.Crop;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.look.detect.Detectors;
import org.daymount.pick.Score.Part;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Ppi;

/**
 * What a photo is worth in a space, as a sum of named parts. The weights are plain judgement,
 * ordered as a person would: a face tells a day best, then a clear subject, good light, a crisp
 * picture, and a crop that loses nothing.
 */
final class Scorer {
  static final String DAMAGE = "damage";
  private static final double FACES_WORTH = 0.9;
  private static final double SUBJECT_WORTH = 0.45;
  private static final double LIGHT_WORTH = 0.8;
  private static final double CRISP_WORTH = 0.7;
  private static final double CROP_WORTH = 1.0;
  private static final double RESOLUTION_WORTH = 0.4;
  private static final double BORDER_COST = 0.5;
  private static final double DAMAGE_COST = 10; // more than all else together: the last resort
  private static final double PORTRAIT_FACE_SHARE =
      0.10; // of the picture's height; larger adds nothing

  private Scorer() {}

  static Score score(AnalysedPhoto looked, Crop crop, Ppi wanted) {
    Measures measures = looked.measures();
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("faces", FACES_WORTH * faces(looked)));
    parts.add(new Part("subject", SUBJECT_WORTH * subject(looked)));
    parts.add(new Part("light", LIGHT_WORTH * measures.exposure()));
    parts.add(new Part("crispness", CRISP_WORTH * measures.clarity()));
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
    return new Score(parts);
  }

  /** 0 without a face, towards 1 for one to three that are large enough to be recognised. */
  private static double faces(AnalysedPhoto looked) {
    double sum = 0;
    for (Face face : looked.measures().faces()) {
      if (face.confidence() >= Detectors.SCORE_FACE) {
        double share = face.box().height() / (double) looked.photo().size().height();
        sum += 0.4 + 0.6 * Math.min(1, share / PORTRAIT_FACE_SHARE);
      }
    }
    return 1 - Math.exp(-1.2 * sum);
  }

  private static double subject(AnalysedPhoto looked) {
    double best = 0;
    PixelBox whole = looked.photo().size().whole();
    for (Subject subject : looked.measures().subjects()) {
      double share = Math.sqrt(subject.box().area() / (double) whole.area());
      best = Math.max(best, subject.confidence() * Math.min(1, share / 0.4));
    }
    return best;
  }

  /** How many faces are sure enough to be spoken of. */
  static long sureFaces(AnalysedPhoto looked) {
    return looked.measures().faces().stream()
        .filter(f -> f.confidence() >= Detectors.SCORE_FACE)
        .count();
  }
}
