package org.daymount.problem;

import java.io.IOException;
import org.daymount.photo.PhotoFile;

/** Thrown at the edge of one file and turned into a {@link Problem} there; never ends a run. */
public final class UnusablePicture extends IOException {
  private static final long serialVersionUID = 1L;

  private final Problem.Kind kind;

  /**
   * @param message the fact and the next step, without the file's name
   */
  public UnusablePicture(Problem.Kind kind, String message) {
    super(message);
    this.kind = kind;
  }

  public Problem.Kind kind() {
    return kind;
  }

  public Problem of(PhotoFile file) {
    return new Problem(file, kind, getMessage());
  }
}
