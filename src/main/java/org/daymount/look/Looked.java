package org.daymount.look;

import org.daymount.photo.Photo;

/** A photo with its measures. */
public record Looked(Photo photo, Measures measures) {
  public Looked withClose(Measures.CloseLook close) {
    return new Looked(photo, measures.withClose(close));
  }
}
