package org.daymount.choices;

import java.util.Optional;
import org.daymount.album.SpaceSizes;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * What a person changed in one space of a day.
 *
 * @param direction the way the space lies
 * @param size of the space, short side first
 * @param quarterTurns clockwise, 0 to 3, applied to the photo after its EXIF orientation
 */
public record SpaceChoice(
    Optional<PhotoKey> photo,
    Optional<CropChoice> crop,
    Optional<Orientation> direction,
    Optional<PaperSize> size,
    int quarterTurns,
    UnknownFields other) {
  public static final SpaceChoice NONE =
      new SpaceChoice(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          0,
          UnknownFields.NONE);

  public SpaceChoice {
    if (quarterTurns < 0 || quarterTurns > 3) {
      throw new IllegalArgumentException("quarter turns are 0 to 3, were " + quarterTurns);
    }
    size = size.map(given -> SpaceSizes.checked(given.towards(Orientation.PORTRAIT)));
  }

  public SpaceChoice withPhoto(Optional<PhotoKey> changed) {
    return new SpaceChoice(changed, crop, direction, size, quarterTurns, other);
  }

  public SpaceChoice withCrop(Optional<CropChoice> changed) {
    return new SpaceChoice(photo, changed, direction, size, quarterTurns, other);
  }

  public SpaceChoice withDirection(Optional<Orientation> changed) {
    return new SpaceChoice(photo, crop, changed, size, quarterTurns, other);
  }

  public SpaceChoice withSize(Optional<PaperSize> changed) {
    return new SpaceChoice(photo, crop, direction, changed, quarterTurns, other);
  }

  public SpaceChoice withQuarterTurns(int changed) {
    return new SpaceChoice(photo, crop, direction, size, changed, other);
  }

  /** Whether the person put the photo here, by its content. */
  public boolean holds(PhotoKey key) {
    return photo.filter(held -> held.sha256().equals(key.sha256())).isPresent();
  }

  /** Without the photo, and without the crop and the turns that were meant for it. */
  public SpaceChoice emptied() {
    return withPhoto(Optional.empty()).withCrop(Optional.empty()).withQuarterTurns(0);
  }

  /** With the photo that lies here, though it was only proposed: the person works on it. */
  private SpaceChoice settledOn(PhotoKey shown) {
    return holds(shown) ? this : emptied().withPhoto(Optional.of(shown));
  }

  /**
   * A crop settles the photo too: it was drawn on this one.
   *
   * @param window pixels of the photo as it is shown, turned as the person asked
   * @param whole size of the photo as it is shown
   * @throws IllegalArgumentException if the window reaches beyond the photo
   */
  public SpaceChoice cropped(PhotoKey shown, PixelSize whole, PixelBox window) {
    if (!whole.whole().contains(window)) {
      throw new IllegalArgumentException("the crop reaches beyond the picture");
    }
    SpaceChoice settled = settledOn(shown);
    return settled.withCrop(
        Optional.of(new CropChoice(window.turned(whole, -settled.quarterTurns()), shown.sha256())));
  }

  /** Turned clockwise by so many quarters more; the crop was for the other way. */
  public SpaceChoice turned(PhotoKey shown, int quarterTurns) {
    SpaceChoice settled = settledOn(shown);
    return settled
        .withCrop(Optional.empty())
        .withQuarterTurns(Math.floorMod(settled.quarterTurns() + quarterTurns, 4));
  }

  /** Whether the page itself was changed, not only what lies on it. */
  public boolean changesPage() {
    return direction.isPresent() || size.isPresent();
  }
}
