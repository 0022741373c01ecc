package org.daymount.testphoto;

import java.nio.file.Path;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.photo.Taken;
import org.daymount.unit.PixelSize;

/**
 * A photo as the reading of its file would give it, for tests that need no file or have their own:
 * unless told otherwise an upright JPEG of 4000 x 3000 pixels that does not say when it was taken.
 */
public final class PhotoBuilder {
  private final PhotoFile file;
  private long bytes = 1000;
  private String sha256 = "00";
  private PhotoFormat format = PhotoFormat.JPEG;
  private PixelSize size = new PixelSize(4000, 3000);
  private ExifOrientation orientation = ExifOrientation.TOP_LEFT;
  private boolean orientationTagged = true;
  private Taken taken = Taken.UNKNOWN;
  private Optional<String> burst = Optional.empty();
  private Optional<String> screenshot = Optional.empty();

  private PhotoBuilder(PhotoFile file) {
    this.file = file;
  }

  public static PhotoBuilder named(String name) {
    return at(Path.of("photos"), name);
  }

  public static PhotoBuilder at(Path folder, String name) {
    return new PhotoBuilder(new PhotoFile(folder, name));
  }

  public PhotoBuilder bytes(long length) {
    this.bytes = length;
    return this;
  }

  public PhotoBuilder sha256(String sum) {
    this.sha256 = sum;
    return this;
  }

  public PhotoBuilder format(PhotoFormat newFormat) {
    this.format = newFormat;
    return this;
  }

  /** In upright pixels. */
  public PhotoBuilder size(PixelSize upright) {
    this.size = upright;
    return this;
  }

  public PhotoBuilder orientation(ExifOrientation tag) {
    this.orientation = tag;
    return this;
  }

  /** The file has no such tag, so that the way up is not certain. */
  public PhotoBuilder withoutOrientation() {
    this.orientationTagged = false;
    return this;
  }

  public PhotoBuilder taken(Taken when) {
    this.taken = when;
    return this;
  }

  /** As the phone marks the frames of a burst. */
  public PhotoBuilder burst(String mark) {
    this.burst = Optional.of(mark);
    return this;
  }

  public PhotoBuilder screenshot(String why) {
    this.screenshot = Optional.of(why);
    return this;
  }

  public Photo photo() {
    return new Photo(
        file,
        bytes,
        sha256,
        format,
        size,
        orientation,
        orientationTagged,
        taken,
        Optional.empty(),
        burst,
        screenshot);
  }
}
