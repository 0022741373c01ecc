package org.daymount.pipeline;

import java.util.stream.Collectors;
import org.daymount.ingest.Ingested;

/** Says why there is no month to make. */
final class EmptyMonth {
  private EmptyMonth() {}

  static RunFailed noDatedPhoto(Request request, Ingested found) {
    String where =
        request.photos().stream().map(Object::toString).collect(Collectors.joining(" and "));
    int pictures = found.photos().size() + found.unusable().size();
    if (pictures == 0) {
      return new RunFailed(
          "no pictures in " + where + "; name the folder the phone's pictures were copied to");
    }
    return new RunFailed(
        "none of the "
            + pictures
            + " pictures in "
            + where
            + " says when it was taken; name the month with --month to list them");
  }
}
