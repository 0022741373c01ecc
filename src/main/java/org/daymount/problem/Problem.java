package org.daymount.problem;

import org.daymount.photo.PhotoFile;

/**
 * Something a person should hear about one file. The run goes on without it.
 *
 * @param text the fact and the next step, without the file's name
 */
public record Problem(PhotoFile file, Kind kind, String text) implements Comparable<Problem> {

  /** What is wrong, and whether the file counts as one that could not be used (exit code 3). */
  public enum Kind implements WarningKind {
    UNREADABLE(true),
    CUT_OFF(true),
    TOO_LARGE(true),
    NOT_YET_READABLE(true),
    FOLDER_UNREADABLE(true),
    NO_DATE(true),
    VIDEO(false),
    SCREENSHOT(false),
    COPY(false),
    SMALLER_COPY(false),
    OTHER_MONTH(false),
    OTHER_DAYS(false),
    NOT_WANTED(false),
    DAMAGED(false),
    CLIP_TIME(false),
    SIDECAR_IGNORED(false),
    COLOUR_PROFILE_IGNORED(false);

    private final boolean unusable;

    Kind(boolean unusable) {
      this.unusable = unusable;
    }

    public boolean isUnusable() {
      return unusable;
    }
  }

  @Override
  public int compareTo(Problem other) {
    int byFile = file.compareTo(other.file);
    return byFile != 0 ? byFile : kind.compareTo(other.kind);
  }
}
