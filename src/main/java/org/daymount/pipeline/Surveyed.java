package org.daymount.pipeline;

import java.time.YearMonth;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.daymount.day.Days;
import org.daymount.ingest.Ingested;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Analysis;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Trials;

/**
 * What is known of the pictures whatever a person chooses. It can be picked from again and again
 * without decoding anything twice.
 */
public final class Surveyed {
  private final YearMonth month;
  private final Ingested found;
  private final Days days;
  private final Copies copies;
  private final CloseLookStage close;
  private final Trials trials;
  private Analysis firstLook;

  Surveyed(
      YearMonth month,
      Ingested found,
      Days days,
      Copies copies,
      Analysis firstLook,
      CloseLookStage close,
      Trials trials) {
    this.month = month;
    this.found = found;
    this.days = days;
    this.copies = copies;
    this.firstLook = firstLook;
    this.close = close;
    this.trials = trials;
  }

  public YearMonth month() {
    return month;
  }

  /** Every photo that could be read, in the order of their names. */
  public List<Photo> photos() {
    return found.photos();
  }

  Ingested found() {
    return found;
  }

  Days days() {
    return days;
  }

  Copies copies() {
    return copies;
  }

  CloseLookStage close() {
    return close;
  }

  Trials trials() {
    return trials;
  }

  Analysis firstLook() {
    return firstLook;
  }

  /**
   * Photos of these contents that nobody has looked at yet: of other months, or days not asked for.
   */
  List<Photo> notYetLookedAt(Set<String> contents) {
    Set<PhotoFile> known = new HashSet<>();
    firstLook.looked().forEach(one -> known.add(one.photo().file()));
    firstLook.problems().forEach(problem -> known.add(problem.file()));
    return copies.withoutCopies(found.photos()).stream()
        .filter(photo -> contents.contains(photo.sha256()) && !known.contains(photo.file()))
        .toList();
  }

  void add(Analysis more) {
    List<AnalysedPhoto> looked = new java.util.ArrayList<>(firstLook.looked());
    looked.addAll(more.looked());
    List<org.daymount.problem.Problem> problems = new java.util.ArrayList<>(firstLook.problems());
    problems.addAll(more.problems());
    firstLook = new Analysis(looked, problems);
  }

  /** All that were looked at, each with the most that is known of it. */
  Map<PhotoFile, AnalysedPhoto> looked(CloseLooks closely) {
    Map<PhotoFile, AnalysedPhoto> all = new HashMap<>();
    firstLook.looked().forEach(one -> all.put(one.photo().file(), one));
    all.putAll(closely.looked());
    return all;
  }
}
