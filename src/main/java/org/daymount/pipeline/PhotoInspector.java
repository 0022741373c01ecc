package org.daymount.pipeline;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.crop.Crop;
import org.daymount.crop.CropSettings;
import org.daymount.crop.Cropper;
import org.daymount.day.DaySettings;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.image.Pictures;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.IngestSettings;
import org.daymount.ingest.Ingested;
import org.daymount.ingest.Listing;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Analysis;
import org.daymount.look.LookCache;
import org.daymount.look.PhotoAnalyser;
import org.daymount.look.detect.CloseLookStage;
import org.daymount.look.detect.CloseLooks;
import org.daymount.month.MonthPhoto;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Duplicates;
import org.daymount.problem.Problem;
import org.daymount.unit.PaperSize;

/** Everything that is read from and measured in single photos, whatever their month. */
public final class PhotoInspector {
  private static final List<PaperSize> TRIED =
      List.of(
          PaperSize.inches(6, 4),
          PaperSize.inches(4, 6),
          PaperSize.inches(4, 3),
          PaperSize.inches(3, 4));

  private final Pictures pictures;
  private final Progress progress;

  public PhotoInspector(Pictures pictures, Progress progress) {
    this.pictures = pictures;
    this.progress = progress;
  }

  /**
   * One file.
   *
   * @param looked empty when it could not be decoded
   * @param crops as proposed for 6x4, 4x6, 4x3 and 3x4 in
   * @param withoutDetectors why faces and subjects were not looked for, if they were not
   */
  public record Inspected(
      MonthPhoto photo,
      Optional<Problem> problem,
      Optional<AnalysedPhoto> looked,
      List<Crop> crops,
      Optional<String> withoutDetectors) {
    public Inspected {
      crops = List.copyOf(crops);
    }
  }

  /** In order of their names. */
  public List<Inspected> inspect(
      List<Path> files, IngestSettings ingest, DaySettings settings, CropSettings crop, int jobs) {
    progress.stage("finding pictures", 0);
    Listing listing = new FolderReader().list(files);
    progress.stage("reading dates", listing.pictures().size() + listing.clips().size());
    Ingested found = new FolderReader().read(listing, ingest, jobs, progress::step);
    progress.stage("looking at pictures", found.photos().size());
    Analysis first = new PhotoAnalyser(pictures).first(found.photos(), jobs, progress::step);
    CloseLooks close =
        new CloseLookStage(
                pictures,
                jobs,
                LookCache.NONE,
                groups -> progress.stage("looking for faces and subjects", groups),
                progress::step)
            .look(first.looked().stream().map(List::of).toList(), List.of());
    progress.end();
    Days days = new DaySorter().sort(found.photos(), settings);
    Map<PhotoFile, Problem> problems =
        new HashMap<>(FileProblems.of(found, days, Duplicates.exact(found.photos()), first));
    problems.values().removeIf(problem -> isAboutTheMonth(problem.kind()));
    return inspected(found, problems, first, close, settings, crop);
  }

  /** Being of another month is no fault of a photo that was asked for by name. */
  private static boolean isAboutTheMonth(Problem.Kind kind) {
    return kind == Problem.Kind.OTHER_MONTH
        || kind == Problem.Kind.OTHER_DAYS
        || kind == Problem.Kind.NO_DATE;
  }

  private static List<Inspected> inspected(
      Ingested found,
      Map<PhotoFile, Problem> problems,
      Analysis first,
      CloseLooks close,
      DaySettings settings,
      CropSettings crop) {
    Map<PhotoFile, AnalysedPhoto> looked = close.over(first);
    List<Inspected> all = new ArrayList<>();
    for (Photo photo : found.all()) {
      Optional<Problem> problem = Optional.ofNullable(problems.remove(photo.file()));
      Optional<AnalysedPhoto> seen = Optional.ofNullable(looked.get(photo.file()));
      MonthPhoto entry =
          new MonthPhoto(
              photo.file(),
              Optional.of(photo),
              MonthPhotos.day(photo, settings),
              seen.map(AnalysedPhoto::measures),
              Optional.empty(),
              Optional.empty(),
              false,
              problem.map(Problem::text));
      List<Crop> crops =
          seen.map(s -> TRIED.stream().map(size -> new Cropper().crop(s, size, crop)).toList())
              .orElse(List.of());
      all.add(new Inspected(entry, problem, seen, crops, close.without()));
    }
    for (Problem problem : problems.values()) {
      all.add(
          new Inspected(
              MonthPhotos.unreadable(problem),
              Optional.of(problem),
              Optional.empty(),
              List.of(),
              close.without()));
    }
    all.sort((a, b) -> a.photo().file().compareTo(b.photo().file()));
    return List.copyOf(all);
  }
}
