package org.daymount.pipeline;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.daymount.album.DayPage;
import org.daymount.choices.Choices;
import org.daymount.choices.UserDays;
import org.daymount.choices.UserOverrides;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Analysis;
import org.daymount.look.detect.CloseLooks;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Bursts;
import org.daymount.pick.DayPick;
import org.daymount.problem.Problem;
import org.daymount.problem.Warning;

/** A month with a picture for every space, not yet laid out on sheets. */
public final class Selected {
  private final Survey surveyed;
  private final AlbumPages album;
  private final Days days;
  private final Bursts bursts;
  private final CloseLooks close;
  private final Map<PhotoFile, AnalysedPhoto> looked;
  private final List<DayPick> picks;
  private final Map<PhotoFile, Problem> problems;

  Selected(
      Survey surveyed,
      AlbumPages album,
      Days days,
      Analysis firstLook,
      Bursts bursts,
      CloseLooks close,
      List<DayPick> picks) {
    this.surveyed = surveyed;
    this.album = album;
    this.days = days;
    this.bursts = bursts;
    this.close = close;
    this.looked = close.over(firstLook);
    this.picks = List.copyOf(picks);
    this.problems =
        UserOverrides.on(
            FileProblems.of(surveyed.found(), days, surveyed.copies(), firstLook),
            surveyed.photos(),
            album.choices(),
            usedFiles());
  }

  public List<DayPick> picks() {
    return picks;
  }

  /** The day's page as the defaults and the note alone have it. */
  public Optional<DayPage> noted(LocalDate day) {
    return Optional.ofNullable(album.noted().get(day));
  }

  /** The choices as they were obeyed: with the photos that are there now. */
  public Choices obeyed() {
    return album.choices();
  }

  /** Every wanted day of the month with its photos in order of time, empty ones too. */
  public List<PhotoDay> photosByDay() {
    return days.days();
  }

  /** Photos whose day nobody knows. */
  public List<Photo> undated() {
    return days.undated();
  }

  /** Photos that lie on none of these days, though it is known when they were taken. */
  public List<Photo> elsewhere() {
    Set<PhotoFile> here = new HashSet<>();
    days.days().forEach(day -> day.photos().forEach(photo -> here.add(photo.file())));
    days.undated().forEach(photo -> here.add(photo.file()));
    return surveyed.photos().stream()
        .filter(photo -> !here.contains(photo.file()))
        .map(photo -> UserDays.dated(photo, album.choices()))
        .toList();
  }

  /** The burst a photo is in; a still that was not looked at is in that of its clip. */
  public Map<PhotoFile, Optional<String>> groups() {
    Map<PhotoFile, Optional<String>> groups = bursts.groups();
    Map<Path, Optional<String>> clips = new HashMap<>();
    groups.forEach(
        (file, group) -> {
          if (file.frame().isPresent()) {
            clips.put(file.path(), group);
          }
        });
    for (PhotoDay day : days.days()) {
      for (Photo photo : day.photos()) {
        PhotoFile file = photo.file();
        if (isToBeSeenYet(photo) && clips.containsKey(file.path())) {
          groups.putIfAbsent(file, clips.get(file.path()));
        }
      }
    }
    return groups;
  }

  /** Whether this is a still that is only looked at when a person chooses it. */
  public boolean isToBeSeenYet(Photo photo) {
    return photo.file().frame().isPresent()
        && !looked.containsKey(photo.file())
        && !problems.containsKey(photo.file());
  }

  /** What was measured, for every photo that was decoded. */
  public Map<PhotoFile, AnalysedPhoto> looked() {
    return looked;
  }

  /** Why a photo is not printed, or is left out of the picking. */
  public Map<PhotoFile, Problem> problems() {
    return new TreeMap<>(problems);
  }

  /** What the person should know about the note, the choices and the pages. */
  public List<Warning> pageWarnings() {
    return album.warnings();
  }

  AlbumPages album() {
    return album;
  }

  Days days() {
    return days;
  }

  CloseLooks close() {
    return close;
  }

  Set<PhotoFile> usedFiles() {
    Set<PhotoFile> used = new HashSet<>();
    for (DayPick pick : picks) {
      pick.spaces().forEach(space -> space.hero().ifPresent(hero -> used.add(hero.photo().file())));
    }
    return used;
  }
}
