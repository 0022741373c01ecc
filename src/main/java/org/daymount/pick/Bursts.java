package org.daymount.pick;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.detect.CloseLooks;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/** The pictures of each day that can be picked, with those that show the same moment together. */
public record Bursts(Map<LocalDate, List<Burst>> byDay) {
  static final int BURSTS_A_DAY = 8; // looked at closely

  public Bursts {
    byDay = Collections.unmodifiableMap(new TreeMap<>(byDay));
  }

  /**
   * @param days with each photo at the time it has, which is not always the one it was looked at
   * @param takesPart whether a photo may be picked; a day without any has no entry
   */
  public static Bursts find(Days days, List<AnalysedPhoto> looked, Predicate<Photo> takesPart) {
    Map<PhotoFile, AnalysedPhoto> known = new HashMap<>();
    for (AnalysedPhoto one : looked) {
      if (takesPart.test(one.photo())) {
        known.put(one.photo().file(), one);
      }
    }
    Map<LocalDate, List<Burst>> byDay = new TreeMap<>();
    for (PhotoDay day : days.days()) {
      List<AnalysedPhoto> photos =
          day.photos().stream()
              .filter(photo -> known.containsKey(photo.file()))
              .map(photo -> new AnalysedPhoto(photo, known.get(photo.file()).measures()))
              .toList();
      if (!photos.isEmpty()) {
        byDay.put(day.day(), new BurstFinder().find(day.day(), photos));
      }
    }
    return new Bursts(byDay);
  }

  /** The bursts of each day that are worth a close look, in the order of the days. */
  public List<List<AnalysedPhoto>> promising() {
    Set<Burst> promising = new HashSet<>();
    byDay.values().forEach(day -> promising.addAll(promising(day)));
    return all().stream().filter(promising::contains).map(Burst::photos).toList();
  }

  /** Of each burst the frame that stands for it, per day and in order of time. */
  public Map<LocalDate, List<Candidate>> contenders(CloseLooks close) {
    Map<LocalDate, List<Candidate>> contenders = new TreeMap<>();
    byDay.forEach(
        (day, bursts) ->
            contenders.put(day, bursts.stream().map(one -> contender(one, close)).toList()));
    return contenders;
  }

  List<Burst> all() {
    List<Burst> all = new ArrayList<>();
    byDay.values().forEach(all::addAll);
    return all;
  }

  /** The id of the burst each photo is in. */
  public Map<PhotoFile, Optional<String>> groups() {
    Map<PhotoFile, Optional<String>> groups = new HashMap<>();
    for (Burst burst : all()) {
      burst.all().forEach(photo -> groups.put(photo.photo().file(), burst.id()));
    }
    return groups;
  }

  /** Frames that nobody looked at closely cannot win over those that were. */
  private static Candidate contender(Burst burst, CloseLooks closeLooks) {
    Candidate best = bestPhoto(burst, closeLooks);
    List<AnalysedPhoto> alike = new ArrayList<>(best.alike());
    alike.addAll(burst.beaten());
    return new Candidate(best.looked(), alike);
  }

  private static Candidate bestPhoto(Burst burst, CloseLooks closeLooks) {
    List<AnalysedPhoto> frames = closeLooks.frames(burst.photos());
    boolean anySound = frames.stream().anyMatch(frame -> !frame.isDamaged());
    List<AnalysedPhoto> close =
        frames.stream()
            .filter(f -> f.measures().close().isPresent() && !(anySound && f.isDamaged()))
            .toList();
    if (close.isEmpty()) {
      return BurstWinner.of(frames);
    }
    Candidate best = BurstWinner.of(close);
    List<AnalysedPhoto> alike = new ArrayList<>(best.alike());
    frames.stream().filter(f -> !close.contains(f)).forEach(alike::add);
    return new Candidate(best.looked(), alike);
  }

  private static List<Burst> promising(List<Burst> day) {
    return day.stream()
        .sorted(Comparator.comparingDouble((Burst burst) -> -promise(burst)))
        .limit(BURSTS_A_DAY)
        .toList();
  }

  /** Light and crispness of its best frame, and a little for having been worth several. */
  private static double promise(Burst burst) {
    double best = 0;
    for (AnalysedPhoto frame : burst.photos()) {
      if (frame.isDamaged()) {
        continue; // the last resort
      }
      best = Math.max(best, frame.measures().exposure() + frame.measures().clarity());
    }
    return best + 0.1 * Math.min(5, burst.photos().size());
  }
}
