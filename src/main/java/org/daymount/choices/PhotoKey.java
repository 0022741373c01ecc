package org.daymount.choices;

import org.daymount.photo.Photo;

/**
 * A photo as choices name it: by its content, and by the file it was in, for people to read and for
 * a photo that was edited in place.
 *
 * @param sha256 of the whole file, lower case hexadecimal
 * @param file path below its PHOTOS folder, with '/' between its parts
 */
public record PhotoKey(String sha256, String file) implements Comparable<PhotoKey> {
  public PhotoKey {
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException(
          "'" + sha256 + "' is not a SHA-256 sum (64 digits 0-9 and a-f)");
    }
  }

  public static PhotoKey of(Photo photo) {
    return new PhotoKey(photo.sha256(), photo.file().name());
  }

  @Override
  public int compareTo(PhotoKey other) {
    int byFile = file.compareTo(other.file);
    return byFile != 0 ? byFile : sha256.compareTo(other.sha256);
  }
}
