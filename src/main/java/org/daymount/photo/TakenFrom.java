package org.daymount.photo;

import java.util.Locale;

/** Where the time of a photo was read, best first. */
public enum TakenFrom {
  /** A person's own table of dates, or a day given in the review. */
  PERSON,
  ORIGINAL,
  DIGITIZED,
  XMP,
  PNG,

  /** The clip that a still is from says it. */
  CLIP,

  /** An XMP file beside the photo. */
  SIDECAR,
  NAME,
  GPS,
  FILE_TIME,
  NONE;

  /** The word used in month.json. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether the camera wrote it, into the picture or the clip. */
  public boolean isCameras() {
    return switch (this) {
      case ORIGINAL, DIGITIZED, XMP, PNG, CLIP, GPS -> true;
      case PERSON, SIDECAR, NAME, FILE_TIME, NONE -> false;
    };
  }

  /** Whether the day may be used without a person saying so. The file's own time is a guess. */
  public boolean isTrusted() {
    return this != FILE_TIME && this != NONE;
  }
}
