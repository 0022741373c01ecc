package org.daymount.pick;

import java.util.List;
import org.daymount.album.Space;
import org.daymount.crop.Crop;
import org.daymount.crop.Cropper;
import org.daymount.look.AnalysedPhoto;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/** One photo tried in one space, in every way the space may lie. */
record SpaceTrial(Candidate contender, Orientation way, Crop crop, Score score) {
  /** A print smaller than this on its short side is not a picture of the day any more. */
  private static final Length SMALLEST_PRINT = Length.inches(1);

  /** The way that scores best; the space's first way wins a tie. */
  static SpaceTrial best(Candidate contender, Space space, PickSettings settings) {
    SpaceTrial best = null;
    for (Orientation way : space.ways()) {
      SpaceTrial trial = in(contender, space, way, settings);
      if (best == null || trial.score.total() > best.score.total()) {
        best = trial;
      }
    }
    return best;
  }

  static SpaceTrial in(Candidate contender, Space space, Orientation way, PickSettings settings) {
    Crop crop = new Cropper().crop(contender.looked(), space.pieceSize(way), settings.crop());
    return of(contender, way, crop, settings);
  }

  static SpaceTrial of(Candidate contender, Orientation way, Crop crop, PickSettings settings) {
    Score score = Scorer.score(contender.looked(), crop, settings.crop().wanted());
    return new SpaceTrial(contender, way, crop, score);
  }

  boolean isAcceptable() {
    PaperSize picture = crop.picture();
    return !SMALLEST_PRINT.isLongerThan(picture.width().min(picture.height()));
  }

  AnalysedPhoto looked() {
    return contender.looked();
  }

  ScoredCandidate candidate(List<String> reasons) {
    return new ScoredCandidate(looked(), crop, score, reasons);
  }
}
