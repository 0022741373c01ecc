package org.daymount.look;

import org.daymount.photo.Photo;

/** A photo with its measures. */
public record Looked(Photo photo, Measures measures) {
  /** The photo turned clockwise by a person, and everything in it with it. */
  public Looked turned(int quarterTurns) {
    return (quarterTurns & 3) == 0
        ? this
        : new Looked(photo.turned(quarterTurns), measures.turned(photo.size(), quarterTurns));
  }

  public Looked withClose(Measures.CloseLook close) {
    return new Looked(photo, measures.withClose(close));
  }
}
