package org.daymount.photo;

import java.nio.file.Path;
import java.util.Comparator;

/**
 * Where a picture file is: one of the PHOTOS folders a person named, and the path below it with '/'
 * between its parts. A single file named on the command line has its own folder as the folder.
 */
public record PhotoFile(Path folder, String name) implements Comparable<PhotoFile> {
  private static final Comparator<PhotoFile> ORDER =
      Comparator.comparing(PhotoFile::name).thenComparing(PhotoFile::folder);

  public Path path() {
    return folder.resolve(name);
  }

  /** The last part of the name. */
  public String lastName() {
    return name.substring(name.lastIndexOf('/') + 1);
  }

  @Override
  public int compareTo(PhotoFile other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return name;
  }
}
