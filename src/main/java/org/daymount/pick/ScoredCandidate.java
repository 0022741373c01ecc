package org.daymount.pick;

import java.util.List;
import org.daymount.crop.Crop;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.Photo;

/**
 * A photo tried in one space.
 *
 * @param reasons in words a person would use, strongest first
 */
public record ScoredCandidate(AnalysedPhoto looked, Crop crop, Score score, List<String> reasons) {
  public ScoredCandidate {
    reasons = List.copyOf(reasons);
  }

  public Photo photo() {
    return looked.photo();
  }
}
