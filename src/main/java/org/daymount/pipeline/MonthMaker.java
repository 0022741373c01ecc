package org.daymount.pipeline;

import java.awt.image.BufferedImage;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.daymount.cache.Cache;
import org.daymount.choices.Choices;
import org.daymount.choices.UserDays;
import org.daymount.choices.UserOverrides;
import org.daymount.crop.Seams;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.image.Pictures;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.Ingested;
import org.daymount.ingest.Listing;
import org.daymount.look.Analysis;
import org.daymount.look.LookAhead;
import org.daymount.look.LookCache;
import org.daymount.look.PhotoAnalyser;
import org.daymount.look.detect.AheadLooks;
import org.daymount.look.detect.CloseLookStage;
import org.daymount.look.detect.CloseLooks;
import org.daymount.look.detect.DetectorsOnDemand;
import org.daymount.month.Month;
import org.daymount.page.PagePlanner;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.AloneByTime;
import org.daymount.pick.Bursts;
import org.daymount.pick.DayPick;
import org.daymount.pick.Duplicates;
import org.daymount.pick.HeroPicker;
import org.daymount.pick.PickSettings;
import org.daymount.pick.Trials;
import org.daymount.pick.UserChoices;
import org.daymount.sheet.Packing;
import org.daymount.sheet.PieceMaker;
import org.daymount.sheet.SheetJoins;
import org.daymount.sheet.SheetPacker;

/**
 * The whole decision, from folders to a finished month; nothing is written. Read {@link #make}
 * first: it is the order of everything. Not for several threads at once.
 */
public final class MonthMaker {
  private final Pictures pictures;
  private final Progress progress;
  private final Cache cache;

  // caches beside the story: they save time and change nothing
  private final LookCache earlierRuns;
  private final LookCache remembered;
  private final BiConsumer<Photo, BufferedImage> shown;
  private Optional<DetectorsOnDemand> detectors = Optional.empty();
  private Optional<Request> trialsOf = Optional.empty();
  private Trials trials;

  public MonthMaker(Pictures pictures, Progress progress) {
    this(pictures, progress, Cache.NONE);
  }

  public MonthMaker(Pictures pictures, Progress progress, Cache cache) {
    this(pictures, progress, cache, (photo, picture) -> {});
  }

  /**
   * @param cache of earlier runs
   * @param shown is handed photos that are looked at closely, small, from several threads
   */
  public MonthMaker(
      Pictures pictures, Progress progress, Cache cache, BiConsumer<Photo, BufferedImage> shown) {
    this.shown = shown;
    this.pictures = pictures;
    this.progress = progress;
    this.cache = cache;
    this.earlierRuns = new LookCache(cache);
    this.remembered =
        cache == Cache.NONE ? new LookCache(Cache.empty("this run alone")) : earlierRuns;
  }

  /**
   * The order of everything, in three parts that take values and give values: what there is, what
   * is picked from it, and how that is printed. {@link #survey}, {@link #pick} and {@link #finish}
   * below are each to be read from top to bottom; the review does the first once, the second
   * whenever a person changes something, and the third when sheets are asked for.
   *
   * @param noteRead told what was read in the note, if there is one, before anything is laid out
   * @throws RunFailed when there is nothing to make a month of, or the note cannot be read
   */
  public Month make(Request request, Consumer<NoteInUse.Reading> noteRead) {
    Survey surveyed =
        surveyed(request, month -> UserFiles.choices(request, month)); // or tells at once
    Selected picked = pick(request, surveyed, UserFiles.choices(request, surveyed.month()));
    picked.album().note().ifPresent(noteRead);
    return finish(request, surveyed, picked);
  }

  /**
   * Reads and looks at everything; what a person chose makes no difference yet.
   *
   * @param found told the month as soon as the dates are read, before any picture is looked at
   */
  public Survey survey(Request request, Consumer<YearMonth> found) {
    try {
      return surveyed(request, found);
    } finally {
      detectors.ifPresent(DetectorsOnDemand::close);
    }
  }

  /** As {@link #survey}; the detectors stay loaded for the pick that follows. */
  private Survey surveyed(Request request, Consumer<YearMonth> found) {
    Ingested read = read(request);
    Days days = new DaySorter().sort(read.photos(), request.daySettings());
    YearMonth month = days.month().orElseThrow(() -> EmptyMonth.noDatedPhoto(request, read));
    found.accept(month);
    Duplicates exact = Duplicates.exact(read.photos());
    Set<PhotoFile> alone = AloneByTime.of(days, photo -> !exact.isCopy(photo));
    Analysis firstLook =
        firstLook(
            request,
            exact.withoutCopies(PhotosToDecode.of(days)),
            earlierRuns,
            cache != Cache.NONE // a photo is then read once for both looks
                ? new AheadLooks(alone, detectors(request), remembered, shown)
                : LookAhead.NONE);
    Duplicates copies = exact.andSmaller(firstLook.looked());
    return new Survey(month, read, days, copies, firstLook);
  }

  /**
   * A picture for every space; the note is read anew. Decodes only what a choice brings in that was
   * not looked at before.
   *
   * @param made as they are saved
   */
  public Selected pick(Request request, Survey surveyed, Choices made) {
    AlbumPages album = AlbumPages.read(request, surveyed.month(), surveyed.photos(), made);
    Choices choices = album.choices();
    Days days = UserDays.of(surveyed.days(), surveyed.photos(), choices, request.daySettings());
    Set<String> chosen = UserChoices.daysByContent(choices).keySet();
    Analysis looked =
        surveyed
            .firstLook()
            .and(
                firstLook(
                    request,
                    surveyed.notYetLookedAt(PhotosToDecode.byPerson(days, choices, chosen)),
                    remembered,
                    LookAhead.NONE));
    Bursts bursts =
        Bursts.find(
            days,
            looked.looked(),
            photo -> UserOverrides.takesPart(photo, surveyed.copies().isCopy(photo), choices));
    CloseLooks close =
        closeLook(request)
            .look(
                bursts.promising(),
                looked.looked().stream()
                    .filter(one -> chosen.contains(one.photo().sha256()))
                    .toList());
    UserChoices person = new UserChoices(choices, close.over(looked).values(), surveyed.photos());
    List<DayPick> picks =
        new HeroPicker(trials(request), person)
            .pick(album.pages(), UserChoices.leftFor(bursts.contenders(close), choices));
    return new Selected(surveyed, album, days, looked, bursts, close, picks);
  }

  /** Lays the picks and stories out on sheets. */
  public Month finish(Request request, Survey surveyed, Selected picked) {
    PlannedPages pages = pages(request, picked);
    PieceMaker pieces = pieces(request, picked.picks(), pages.stories());
    progress.stage("packing " + pieces.pieces().size() + " pieces", 0);
    Packing packing = new SheetPacker().pack(pieces.pieces(), request.settings().sheets());
    Month made =
        new MonthAssembler(request, surveyed, picked, pages.stories())
            .assemble(pieces, packing, pages.plan());
    progress.end();
    return made;
  }

  /** Where everything lies in the album: the part of {@link #finish} that needs no sheets. */
  public PlannedPages pages(Request request, Selected picked) {
    Stories stories = Stories.of(request, picked);
    PagePlanner.Plan plan =
        new PagePlanner(request.pages())
            .plan(PageContents.of(picked.picks(), stories, request.pages().album()));
    return new PlannedPages(plan, stories);
  }

  private Ingested read(Request request) {
    progress.stage("finding pictures", 0);
    Listing listing = new FolderReader().list(request.photos(), request.leaveOut());
    progress.stage("reading dates", listing.pictures().size() + listing.clips().size());
    return new FolderReader(cache).read(listing, request.ingest(), request.jobs(), progress::step);
  }

  private Analysis firstLook(
      Request request, List<Photo> photos, LookCache known, LookAhead ahead) {
    if (photos.isEmpty()) {
      return new Analysis(List.of(), List.of());
    }
    progress.stage("looking at pictures", photos.size());
    return new PhotoAnalyser(pictures, known, ahead).first(photos, request.jobs(), progress::step);
  }

  private DetectorsOnDemand detectors(Request request) {
    if (detectors.isEmpty()) {
      detectors = Optional.of(new DetectorsOnDemand(request.jobs()));
    }
    return detectors.get();
  }

  private CloseLookStage closeLook(Request request) {
    return new CloseLookStage(
        pictures,
        request.jobs(),
        remembered,
        groups -> progress.stage("looking for faces and subjects", groups),
        progress::step,
        detectors(request),
        shown);
  }

  /** Those of earlier picks, as long as the request stays the same. */
  private Trials trials(Request request) {
    if (!trialsOf.equals(Optional.of(request))) {
      Seams seams = new SheetJoins(request.settings().sheets().usable());
      trials = new Trials(new PickSettings(request.crop().with(seams)));
      trialsOf = Optional.of(request);
    }
    return trials;
  }

  private static PieceMaker pieces(Request request, List<DayPick> picks, Stories stories) {
    PieceMaker pieces = new PieceMaker(request.settings().sheets().usable());
    for (DayPick day : picks) {
      pieces.add(day);
      stories.cards(day.page().day()).forEach(card -> pieces.add(card, day.spaces().size()));
    }
    return pieces;
  }
}
