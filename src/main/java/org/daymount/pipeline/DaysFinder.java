package org.daymount.pipeline;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.day.DaySettings;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.IngestSettings;
import org.daymount.ingest.Ingested;
import org.daymount.ingest.Listing;
import org.daymount.look.Analysis;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthPhoto;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Duplicates;
import org.daymount.problem.Problem;
import org.daymount.problem.Warning;

/** The first part of the story alone: what was taken on which day. No picture is decoded. */
public final class DaysFinder {
  private final Progress progress;

  public DaysFinder(Progress progress) {
    this.progress = progress;
  }

  /**
   * @param month empty when no photo says when it was taken
   * @param days every wanted day, with its photos in order of time
   */
  public record Sorted(
      Optional<YearMonth> month,
      List<PhotoDay> days,
      List<MonthPhoto> photos,
      List<Warning> warnings) {
    public Sorted {
      days = List.copyOf(days);
      photos = List.copyOf(photos);
      warnings = List.copyOf(warnings);
    }

    /** As month.json has them, without spaces. */
    public List<MonthDay> monthDays() {
      return days.stream()
          .map(
              day ->
                  new MonthDay(
                      day.day(),
                      day.photos().isEmpty() ? MonthDay.State.EMPTY : MonthDay.State.FILLED,
                      Optional.empty(),
                      List.of()))
          .toList();
    }
  }

  /**
   * @param sums whether the SHA-256 of every photo is wanted; without, most files are not read to
   *     their end
   */
  public Sorted find(
      List<Path> folders, IngestSettings ingest, DaySettings settings, int jobs, boolean sums) {
    progress.stage("finding pictures", 0);
    FolderReader reader = sums ? new FolderReader() : FolderReader.forDates();
    Listing listing = reader.list(folders);
    progress.stage("reading dates", listing.pictures().size() + listing.clips().size());
    Ingested found = reader.read(listing, ingest, jobs, progress::step);
    Days days = new DaySorter().sort(found.photos(), settings);
    progress.end();
    Duplicates copies = Duplicates.exact(found.photos());
    Map<PhotoFile, Problem> problems =
        FileProblems.of(found, days, copies, new Analysis(List.of(), List.of()));
    return new Sorted(
        days.month(),
        days.days(),
        photos(found, copies, problems, settings),
        warnings(found, problems));
  }

  private static List<MonthPhoto> photos(
      Ingested found, Duplicates copies, Map<PhotoFile, Problem> problems, DaySettings settings) {
    Map<PhotoFile, MonthPhoto> photos = new TreeMap<>();
    for (Photo photo : found.all()) {
      photos.put(
          photo.file(),
          new MonthPhoto(
              photo.file(),
              Optional.of(photo),
              MonthPhotos.day(photo, settings),
              Optional.empty(),
              Optional.empty(),
              copies.original(photo.file()),
              false,
              Optional.ofNullable(problems.get(photo.file())).map(Problem::text)));
    }
    for (Problem problem : problems.values()) {
      if (problem.kind().isUnusable()) {
        photos.putIfAbsent(problem.file(), MonthPhotos.unreadable(problem));
      }
    }
    return List.copyOf(photos.values());
  }

  private static List<Warning> warnings(Ingested found, Map<PhotoFile, Problem> problems) {
    List<Warning> warnings = new ArrayList<>();
    found.notes().forEach(note -> warnings.add(Warning.general(Warning.Kind.DATES, note)));
    problems.values().forEach(problem -> warnings.add(Warning.of(problem)));
    return warnings;
  }
}
