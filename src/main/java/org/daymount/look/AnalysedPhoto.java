package org.daymount.look;

import org.daymount.photo.Photo;

/** A photo with its measures. */
public record AnalysedPhoto(Photo photo, Measures measures) {
  /** Whether its coded data are not in order: taken only where there is no sound one. */
  public boolean isDamaged() {
    return measures.damage().isPresent();
  }

  /** The photo turned clockwise by a person, and everything in it with it. */
  public AnalysedPhoto turned(int quarterTurns) {
    return (quarterTurns & 3) == 0
        ? this
        : new AnalysedPhoto(
            photo.turned(quarterTurns), measures.turned(photo.size(), quarterTurns));
  }

  public AnalysedPhoto withClose(Measures.CloseLook close) {
    return new AnalysedPhoto(photo, measures.withClose(close));
  }
}
