package org.daymount.ingest;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/**
 * Times that a file's name tells in UTC, as a wall clock showed them: with the offset of the
 * nearest photo that names its own, else with that of a zone.
 */
final class NameInstants {
  private final KnownOffsets known;
  private final ZoneId zone;
  private final List<String> notes = new ArrayList<>();

  private NameInstants(KnownOffsets known, ZoneId zone) {
    this.known = known;
    this.zone = zone;
  }

  /**
   * @param photos all that were read, in the order of their names
   * @param zone where no photo names an offset
   */
  static NameInstants of(List<Photo> photos, ZoneId zone) {
    NameInstants instants = new NameInstants(KnownOffsets.of(photos), zone);
    Map<ZoneOffset, Integer> counts = new TreeMap<>();
    for (Photo photo : photos) {
      if (isOpen(photo.taken())) {
        counts.merge(instants.offset(instant(photo.taken())), 1, Integer::sum);
      }
    }
    counts.forEach((offset, count) -> instants.notes.add(instants.note(offset, count)));
    return instants;
  }

  /** One sentence for each offset that was used, smallest first. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  /** The photo with a wall clock's time; itself where its time is one already. */
  Photo settled(Photo photo) {
    Taken taken = photo.taken();
    if (!isOpen(taken)) {
      return photo;
    }
    Instant instant = instant(taken);
    ZoneOffset offset = offset(instant);
    return photo.at(
        new Taken(
            Optional.of(LocalDateTime.ofInstant(instant, offset)),
            Optional.of(offset),
            TakenFrom.NAME));
  }

  /** A name has no offset of its own, so one with an offset is {@link TakenRules}' word for UTC. */
  private static boolean isOpen(Taken taken) {
    return taken.from() == TakenFrom.NAME && taken.offset().isPresent();
  }

  private static Instant instant(Taken open) {
    return open.local().orElseThrow().toInstant(ZoneOffset.UTC);
  }

  private ZoneOffset offset(Instant at) {
    return known.nearest(at).orElseGet(() -> zone.getRules().getOffset(at));
  }

  private String note(ZoneOffset offset, int count) {
    String what =
        count == 1
            ? "1 picture has its time in its name only, and that is UTC (PXL_...); it is"
            : count
                + " pictures have their time in their names only, and that is UTC (PXL_...); they are";
    String shown = offset.equals(ZoneOffset.UTC) ? "UTC" : "UTC" + offset;
    return known.areNone()
        ? what + " read in " + zone + " (" + shown + "); --zone names another"
        : what + " read at " + shown + ", as the nearest picture that names its offset";
  }
}
