package org.daymount.photo;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a picture is: one of the PHOTOS folders a person named, and the path below it with '/'
 * between its parts. A single file named on the command line has its own folder as the folder. A
 * still from a clip is called by the clip's name and its time, "clips/VID_1.mp4 at 0:07".
 *
 * @param frame of which clip and when, for a still from a clip
 */
public record PhotoFile(Path folder, String name, Optional<Frame> frame)
    implements Comparable<PhotoFile> {
  private static final Comparator<PhotoFile> ORDER =
      Comparator.comparing(PhotoFile::name).thenComparing(PhotoFile::folder);

  /**
   * @param clip path of the clip below the folder
   * @param at from its start
   */
  public record Frame(String clip, Duration at) {
    /** The last part of the clip's name. */
    public String lastName() {
      return lastPart(clip);
    }

    /** Minutes and seconds as players show them: 0:07, 1:02:07. */
    public String time() {
      return at.toHours() == 0
          ? String.format(Locale.ROOT, "%d:%02d", at.toMinutes(), at.toSecondsPart())
          : String.format(
              Locale.ROOT, "%d:%02d:%02d", at.toHours(), at.toMinutesPart(), at.toSecondsPart());
    }
  }

  /** A whole file. */
  public PhotoFile(Path folder, String name) {
    this(folder, name, Optional.empty());
  }

  /** A still from the clip that this file is. */
  public PhotoFile still(Duration at) {
    Frame still = new Frame(name, at);
    return new PhotoFile(folder, name + " at " + still.time(), Optional.of(still));
  }

  /** The file on the disk; of a still, the clip. */
  public Path path() {
    return folder.resolve(frame.map(Frame::clip).orElse(name));
  }

  /** The last part of the name. */
  public String lastName() {
    return lastPart(name);
  }

  private static String lastPart(String name) {
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
