package org.daymount.ingest;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/** The offsets from UTC that photos name, for what tells its time in UTC alone. */
final class KnownOffsets {
  private final TreeMap<Instant, ZoneOffset> at = new TreeMap<>();

  private KnownOffsets() {}

  /**
   * @param photos in an order that does not change; of two at the same instant the first counts
   */
  static KnownOffsets of(List<Photo> photos) {
    KnownOffsets known = new KnownOffsets();
    for (Photo photo : photos) {
      Taken taken = photo.taken();
      // a name has no offset of its own: one with an offset is TakenRules' word for UTC
      if (taken.local().isPresent()
          && taken.offset().isPresent()
          && taken.from() != TakenFrom.NAME) {
        ZoneOffset offset = taken.offset().get();
        known.at.putIfAbsent(taken.local().get().toInstant(offset), offset);
      }
    }
    return known;
  }

  boolean areNone() {
    return at.isEmpty();
  }

  /** That of the photo nearest in time, the earlier of two as near; empty when none names any. */
  Optional<ZoneOffset> nearest(Instant instant) {
    Map.Entry<Instant, ZoneOffset> before = at.floorEntry(instant);
    Map.Entry<Instant, ZoneOffset> after = at.ceilingEntry(instant);
    if (before == null || after == null) {
      return Optional.ofNullable(before == null ? after : before).map(Map.Entry::getValue);
    }
    Duration since = Duration.between(before.getKey(), instant);
    boolean first = since.compareTo(Duration.between(instant, after.getKey())) <= 0;
    return Optional.of((first ? before : after).getValue());
  }
}
