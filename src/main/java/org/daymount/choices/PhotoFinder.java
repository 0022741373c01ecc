package org.daymount.choices;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.photo.Photo;

/** Finds the photos that choices speak of among those that are there now. */
public final class PhotoFinder {
  /** How a photo was found. */
  public enum Match {
    /** The same content under the same name. */
    SAME,
    /** The same content under another name. */
    RENAMED,
    /** Another content under the same name: edited, or another photo altogether. */
    CHANGED,
    MISSING
  }

  /**
   * @param photo as it is now; empty when missing
   */
  public record Found(Match match, Optional<Photo> photo) {}

  private final Map<String, Photo> byContentAndName = new HashMap<>();
  private final Map<String, Photo> byContent = new HashMap<>();
  private final Map<String, Photo> byName = new HashMap<>();

  public PhotoFinder(Collection<Photo> photos) {
    List<Photo> sorted =
        photos.stream().sorted((one, two) -> one.file().compareTo(two.file())).toList();
    for (Photo photo : sorted) {
      byContentAndName.putIfAbsent(photo.sha256() + photo.file().name(), photo);
      byContent.putIfAbsent(photo.sha256(), photo);
      byName.putIfAbsent(photo.file().name(), photo);
    }
  }

  public Found find(PhotoKey key) {
    Photo same = byContentAndName.get(key.sha256() + key.file());
    if (same != null) {
      return new Found(Match.SAME, Optional.of(same));
    }
    Photo renamed = byContent.get(key.sha256());
    if (renamed != null) {
      return new Found(Match.RENAMED, Optional.of(renamed));
    }
    Photo changed = byName.get(key.file());
    return changed == null
        ? new Found(Match.MISSING, Optional.empty())
        : new Found(Match.CHANGED, Optional.of(changed));
  }
}
