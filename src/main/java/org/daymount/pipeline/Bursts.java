package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.choices.Choices;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Burst;
import org.daymount.pick.BurstFinder;

/** The pictures of each day that can be picked, with those that show the same moment together. */
record Bursts(Map<LocalDate, List<Burst>> byDay) {

  /**
   * Copies and pictures of screens are not picked unless a person wants them, nor are those a
   * person left out; a day without anything else has no entry.
   */
  static Bursts find(Days days, List<AnalysedPhoto> looked, Copies copies, Choices choices) {
    Map<PhotoFile, AnalysedPhoto> known = new HashMap<>();
    for (AnalysedPhoto one : looked) {
      if (PersonsWord.takesPart(one.photo(), copies, choices)) {
        known.put(one.photo().file(), one);
      }
    }
    Map<LocalDate, List<Burst>> byDay = new TreeMap<>();
    for (PhotoDay day : days.days()) {
      List<AnalysedPhoto> photos =
          day.photos().stream().map(p -> known.get(p.file())).filter(Objects::nonNull).toList();
      if (!photos.isEmpty()) {
        byDay.put(day.day(), new BurstFinder().find(day.day(), photos));
      }
    }
    return new Bursts(byDay);
  }

  /** Photos that nobody compares with each other, as if they were one day's. */
  static Bursts ofSingles(List<Burst> singles) {
    return new Bursts(singles.isEmpty() ? Map.of() : Map.of(LocalDate.EPOCH, singles));
  }

  List<Burst> all() {
    List<Burst> all = new ArrayList<>();
    byDay.values().forEach(all::addAll);
    return all;
  }

  Map<PhotoFile, Optional<String>> groups() {
    Map<PhotoFile, Optional<String>> groups = new HashMap<>();
    for (Burst burst : all()) {
      burst.photos().forEach(photo -> groups.put(photo.photo().file(), burst.id()));
    }
    return groups;
  }
}
