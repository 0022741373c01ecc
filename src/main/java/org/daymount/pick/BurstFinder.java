package org.daymount.pick;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Fingerprint;

/**
 * Groups the photos of one day that show the same picture. A photo joins the group of any earlier
 * one it is like, so a burst that drifts stays one burst (Cooper et al. 2005 group by time and
 * likeness in the same way).
 */
public final class BurstFinder {
  /** Photos at most this far apart may differ more. Both ends count. */
  public static final Duration AT_ONCE = Duration.ofSeconds(10);

  private static final Comparator<AnalysedPhoto> BY_TIME =
      Comparator.comparing(
              (AnalysedPhoto looked) -> looked.photo().taken().local().orElse(LocalDateTime.MAX))
          .thenComparing(looked -> looked.photo().file());

  /**
   * Every photo is in exactly one group; groups are ordered by their first photo. The ids do not
   * depend on the order in which the photos are given.
   *
   * @param photos of that day; copies should be left out first
   */
  public List<Burst> find(LocalDate day, List<AnalysedPhoto> photos) {
    Map<Boolean, List<AnalysedPhoto>> byKind =
        photos.stream().sorted(BY_TIME).collect(Collectors.partitioningBy(BurstFinder::isStill));
    List<List<AnalysedPhoto>> groups = new ArrayList<>();
    for (AnalysedPhoto looked : byKind.get(false)) {
      join(looked, groups);
    }
    Map<List<AnalysedPhoto>, List<AnalysedPhoto>> beaten = new IdentityHashMap<>();
    boolean alone = groups.isEmpty();
    for (List<AnalysedPhoto> clip : clips(byKind.get(true))) {
      place(clip, groups, beaten, alone);
    }
    groups.sort(Comparator.comparing(group -> group.get(0), BY_TIME));
    List<Burst> bursts = new ArrayList<>();
    int number = 0;
    for (List<AnalysedPhoto> group : groups) {
      List<AnalysedPhoto> stills = beaten.getOrDefault(group, List.of());
      bursts.add(
          group.size() + stills.size() == 1
              ? new Burst(Optional.empty(), group)
              : new Burst(Optional.of(day + "/" + ++number), group, stills));
    }
    return List.copyOf(bursts);
  }

  private static boolean isStill(AnalysedPhoto looked) {
    return looked.photo().file().frame().isPresent();
  }

  private static Collection<List<AnalysedPhoto>> clips(List<AnalysedPhoto> stills) {
    return stills.stream()
        .collect(
            Collectors.groupingBy(
                still -> still.photo().file().path(), LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  /**
   * A clip is one moment however it moves, so it joins the photos that most of its stills are like
   * and never joins photos to each other. Where there are none it stands alone: on a day without
   * photos with all its stills, else with the one that seems best, which alone is looked at
   * closely.
   *
   * @param alone whether the day has no photos
   */
  private static void place(
      List<AnalysedPhoto> clip,
      List<List<AnalysedPhoto>> groups,
      Map<List<AnalysedPhoto>, List<AnalysedPhoto>> beaten,
      boolean alone) {
    List<AnalysedPhoto> best = null;
    long most = 0;
    for (List<AnalysedPhoto> group : groups) {
      long alike =
          isStill(group.get(0))
              ? 0
              : clip.stream()
                  .filter(still -> group.stream().anyMatch(photo -> alike(photo, still)))
                  .count();
      if (alike > most) {
        best = group;
        most = alike;
      }
    }
    if (best == null && alone) {
      groups.add(clip);
    } else if (best == null) {
      Candidate leading = BurstWinner.of(clip);
      best = new ArrayList<>(List.of(leading.looked()));
      groups.add(best);
      beaten.put(best, new ArrayList<>(leading.alike()));
    } else {
      beaten.computeIfAbsent(best, any -> new ArrayList<>()).addAll(clip);
    }
  }

  /** Puts the photo with all groups it is like, which become one. */
  private static void join(AnalysedPhoto looked, List<List<AnalysedPhoto>> groups) {
    List<AnalysedPhoto> joined = new ArrayList<>();
    for (List<AnalysedPhoto> group : List.copyOf(groups)) {
      if (group.stream().anyMatch(member -> alike(member, looked))) {
        joined.addAll(group);
        groups.remove(group);
      }
    }
    joined.add(looked);
    joined.sort(BY_TIME);
    groups.add(joined);
  }

  /**
   * Frames that the phone marked as one burst are one, whatever they show. A still taken beside a
   * marked burst is not of it, so it must show the same picture, not only a like one.
   */
  private static boolean alike(AnalysedPhoto a, AnalysedPhoto b) {
    Optional<String> marked = a.photo().burst();
    if (marked.isPresent() && marked.equals(b.photo().burst())) {
      return true;
    }
    Fingerprint one = a.measures().fingerprint();
    Fingerprint two = b.measures().fingerprint();
    return NearDuplicates.anyTime(one, two)
        || marked.equals(b.photo().burst())
            && SameScene.taken(a.photo(), b.photo(), AT_ONCE)
            && NearDuplicates.atOnce(one, two);
  }
}
