package org.daymount.pick;

import java.util.List;
import java.util.Optional;
import org.daymount.look.AnalysedPhoto;

/**
 * Photos of one day that show the same picture, in time order.
 *
 * @param id the day and a number counted through the day, {@code 2026-06-03/1}; empty for a photo
 *     that is alone
 */
public record Burst(Optional<String> id, List<AnalysedPhoto> photos) {
  public Burst {
    photos = List.copyOf(photos);
    if (photos.isEmpty() || id.isPresent() != photos.size() > 1) {
      throw new IllegalArgumentException(id + " with " + photos.size() + " photos");
    }
  }
}
