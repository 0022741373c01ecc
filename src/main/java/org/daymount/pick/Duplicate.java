package org.daymount.pick;

import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/**
 * A file that repeats another.
 *
 * @param original the file that is kept; never itself a copy
 * @param exact whether the two are the same byte for byte
 */
public record Duplicate(PhotoFile file, PhotoFile original, boolean exact) {
  /** Why the copy is left out, in words. */
  public Problem problem() {
    return exact
        ? new Problem(
            file, Problem.Kind.COPY, "is the same file as " + original + ", which is used")
        : new Problem(
            file,
            Problem.Kind.SMALLER_COPY,
            "is a smaller copy of " + original + ", which is used");
  }
}
