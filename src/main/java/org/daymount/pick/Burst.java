package org.daymount.pick;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daymount.look.AnalysedPhoto;

/**
 * Photos of one day that show the same picture, in time order.
 *
 * @param id the day and a number counted through the day, {@code 2026-06-03/1}; empty for a photo
 *     that is alone
 * @param beaten stills from clips of the same moment: a photo goes before them
 */
public record Burst(Optional<String> id, List<AnalysedPhoto> photos, List<AnalysedPhoto> beaten) {
  public Burst {
    photos = List.copyOf(photos);
    beaten = List.copyOf(beaten);
    if (photos.isEmpty() || id.isPresent() != photos.size() + beaten.size() > 1) {
      throw new IllegalArgumentException(id + " with " + photos.size() + " photos");
    }
  }

  public Burst(Optional<String> id, List<AnalysedPhoto> photos) {
    this(id, photos, List.of());
  }

  /** All that show the moment. */
  public List<AnalysedPhoto> all() {
    return Stream.concat(photos.stream(), beaten.stream()).toList();
  }
}
