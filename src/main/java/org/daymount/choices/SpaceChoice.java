package org.daymount.choices;

import java.util.Optional;
import org.daymount.album.SpaceSizes;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

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

  /** Whether the page itself was changed, not only what lies on it. */
  public boolean changesPage() {
    return direction.isPresent() || size.isPresent();
  }
}
