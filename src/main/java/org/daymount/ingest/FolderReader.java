package org.daymount.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daymount.cache.Cache;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/**
 * Folders of files to photos and problems. Nothing is written, nothing is decoded, and one bad file
 * never ends the run.
 */
public final class FolderReader {
  private final Cache known;
  private final boolean datesOnly;

  public FolderReader() {
    this(Cache.NONE);
  }

  /**
   * @param known files of earlier runs, which are not read to their end again
   */
  public FolderReader(Cache known) {
    this(known, false);
  }

  private FolderReader(Cache known, boolean datesOnly) {
    this.known = known;
    this.datesOnly = datesOnly;
  }

  /**
   * Reads no more than is needed to tell days and copies. A file that no other can be a copy of,
   * because none has its length, gets no SHA-256; {@link Photo#sha256} is then some words that no
   * other photo has. Colour profiles are not looked at.
   */
  public static FolderReader forDates() {
    return new FolderReader(Cache.NONE, true);
  }

  /** As {@link #list(List, List)} with nothing to leave out. */
  public Listing list(List<Path> photosArguments) {
    return list(photosArguments, List.of());
  }

  /**
   * All files under the arguments, which are folders or single files.
   *
   * @param leaveOut folders not to walk into: where earlier output lies
   */
  public Listing list(List<Path> photosArguments, List<Path> leaveOut) {
    return new FolderLister().list(photosArguments, leaveOut);
  }

  /**
   * Reads the header, tags, end and SHA-256 of each file (see {@link #forDates}). The result does
   * not depend on {@code jobs}.
   *
   * @param jobs files read at the same time, at least 1
   * @param eachDone called once for each file, from any thread
   * @throws CancellationException when the calling thread is interrupted
   */
  public Ingested read(Listing listing, IngestSettings settings, int jobs, Runnable eachDone) {
    PhotoReader reader =
        datesOnly
            ? PhotoReader.forDates(settings, sharedLengths(listing.pictures())::contains)
            : new PhotoReader(settings, known);
    List<PhotoReader.Outcome> outcomes = readAll(listing.pictures(), reader::read, jobs, eachDone);
    List<Photo> photos = new ArrayList<>();
    List<Photo> unusable = new ArrayList<>();
    List<Problem> problems = new ArrayList<>(listing.problems());
    List<Problem> remarks = new ArrayList<>();
    for (PhotoReader.Outcome outcome : outcomes) {
      outcome.photo().ifPresent(outcome.problem().isEmpty() ? photos::add : unusable::add);
      outcome.problem().ifPresent(problems::add);
      outcome.remark().ifPresent(remarks::add);
    }
    List<PhotoFile> movingParts = new ArrayList<>();
    if (!listing.clips().isEmpty()) {
      ClipReader clips =
          new ClipReader(settings, datesOnly ? 1 : ClipReader.MOST_STILLS, LivePairs.of(outcomes));
      List<ClipReader.Outcome> read = readAll(listing.clips(), clips::read, jobs, eachDone);
      ClipTimes times =
          new ClipTimes(
              settings, photos, read.stream().flatMap(clip -> clip.found().stream()).toList());
      for (ClipReader.Outcome clip : read) {
        clip.problem().ifPresent(problems::add);
        if (clip.isMovingPart()) {
          movingParts.add(clip.file());
        }
        if (clip.found().isPresent()) {
          ClipTimes.Judged judged = times.judge(clip.found().get());
          judged.remark().ifPresent(remarks::add);
          photos.addAll(clip.found().get().photos(judged.taken()));
        }
      }
      photos.sort(Comparator.comparing(Photo::file));
    }
    Collections.sort(problems);
    NameInstants instants = NameInstants.of(photos, settings.zone());
    photos.replaceAll(instants::settled);
    unusable.replaceAll(instants::settled);
    List<PhotoFile> files = new ArrayList<>(listing.pictures());
    files.addAll(listing.clips());
    List<String> notes = new ArrayList<>(instants.notes());
    notes.addAll(settings.dates().notes(files, settings::isBelievable));
    Set<String> models =
        Stream.concat(photos.stream(), unusable.stream())
            .flatMap(photo -> photo.model().stream())
            .collect(Collectors.toSet());
    return new Ingested(
        photos,
        unusable,
        problems,
        movingParts,
        listing.others(),
        settings.clocks().unmatched(models),
        notes,
        remarks);
  }

  private static Set<Long> sharedLengths(List<PhotoFile> files) {
    Set<Long> seen = new HashSet<>();
    Set<Long> shared = new HashSet<>();
    for (PhotoFile file : files) {
      long length = file.path().toFile().length(); // 0 when it is gone: then it is not read either
      if (!seen.add(length)) {
        shared.add(length);
      }
    }
    return shared;
  }

  private static <T> List<T> readAll(
      List<PhotoFile> files, Function<PhotoFile, T> reader, int jobs, Runnable eachDone) {
    ExecutorService threads = Executors.newFixedThreadPool(Math.max(1, jobs));
    try {
      List<Future<T>> pending = new ArrayList<>();
      for (PhotoFile file : files) {
        pending.add(
            threads.submit(
                () -> {
                  T outcome = reader.apply(file);
                  eachDone.run();
                  return outcome;
                }));
      }
      List<T> outcomes = new ArrayList<>();
      for (Future<T> one : pending) {
        outcomes.add(one.get());
      }
      return outcomes;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("stopped while reading the photos");
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }
}
