package org.daymount.output;

import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.UnusablePicture;

/** Small copies of photos as data addresses, so that a page needs nothing beside itself. */
final class PictureStrip {
  private final Pictures pictures;
  private final Cache kept;
  private final SmallCopies copies;
  private final Map<Key, Optional<String>> made = new ConcurrentHashMap<>();

  private record Key(PhotoFile file, ExifOrientation orientation, int longEdge) {}

  PictureStrip(Pictures pictures, Cache kept, SmallCopies copies) {
    this.pictures = pictures;
    this.kept = kept;
    this.copies = copies;
  }

  /** Empty when the photo can no longer be read. */
  Optional<String> dataAddress(Photo photo, int longEdge) {
    return made.computeIfAbsent(
        new Key(photo.file(), photo.orientation(), longEdge), key -> make(photo, longEdge));
  }

  private Optional<String> make(Photo photo, int longEdge) {
    String recipe = SmallCopies.recipe(photo, longEdge);
    Optional<KeptPicture> small = kept.get(Cache.Keep.DRAWN, recipe, KeptPicture.class);
    if (small.isEmpty()) {
      small = drawn(photo, longEdge);
      small.ifPresent(picture -> kept.put(Cache.Keep.DRAWN, recipe, picture));
    }
    return small.map(
        picture -> "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(picture.jpeg()));
  }

  private Optional<KeptPicture> drawn(Photo photo, int longEdge) {
    try {
      return Optional.of(new KeptPicture(copies.of(pictures, photo, longEdge)));
    } catch (UnusablePicture e) {
      return Optional.empty();
    }
  }
}
