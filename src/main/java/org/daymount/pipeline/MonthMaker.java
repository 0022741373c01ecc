package org.daymount.pipeline;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.daymount.choices.Choices;
import org.daymount.crop.Seams;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.image.Pictures;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.Ingested;
import org.daymount.ingest.KnownContents;
import org.daymount.ingest.Listing;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Analysis;
import org.daymount.look.PhotoAnalyser;
import org.daymount.look.Remembered;
import org.daymount.look.cache.Memory;
import org.daymount.month.Month;
import org.daymount.page.PagePlanner;
import org.daymount.photo.Photo;
import org.daymount.pick.DayPick;
import org.daymount.pick.HeroPicker;
import org.daymount.pick.PickSettings;
import org.daymount.pick.Trials;
import org.daymount.sheet.Packing;
import org.daymount.sheet.SheetPacker;

/**
 * The whole decision, from folders to a finished month; nothing is written. Read {@link #make}
 * first: it is the order of everything.
 */
public final class MonthMaker {
  private final Pictures pictures;
  private final Progress progress;
  private final Optional<Memory> memory;

  public MonthMaker(Pictures pictures, Progress progress) {
    this(pictures, progress, Optional.empty());
  }

  /**
   * @param memory of earlier runs: saves time, changes nothing
   */
  public MonthMaker(Pictures pictures, Progress progress, Optional<Memory> memory) {
    this.pictures = pictures;
    this.progress = progress;
    this.memory = memory;
  }

  /**
   * @throws RunFailed when there is nothing to make a month of, or the note cannot be read
   */
  public Month make(Request request) {
    Surveyed surveyed = survey(request);
    Choices choices =
        PersonsFiles.choices(request.out().choices(surveyed.month()), surveyed.month());
    return finish(request, surveyed, pick(request, surveyed, choices));
  }

  /** Reads and looks at everything; what a person chose makes no difference yet. */
  public Surveyed survey(Request request) {
    Ingested found = read(request);
    Days days = new DaySorter().sort(found.photos(), request.daySettings());
    YearMonth month = days.month().orElseThrow(() -> NothingToDo.noDatedPhoto(request, found));
    Copies copies = Copies.exact(found.photos());
    Analysis firstLook = firstLook(request, copies.withoutCopies(Wanted.of(days)));
    CloseLookStage close = new CloseLookStage(pictures, request.jobs(), progress, remembered());
    return new Surveyed(
        month,
        found,
        days,
        copies.andSmaller(firstLook.looked()),
        firstLook,
        close,
        new Trials(new PickSettings(request.crop().with(joins(request)))));
  }

  /**
   * A picture for every space; the note is read anew. Decodes only what a choice brings in that was
   * not looked at before.
   *
   * @param made as they are saved
   */
  public Picked pick(Request request, Surveyed surveyed, Choices made) {
    AlbumPages album = AlbumPages.read(request, surveyed.month(), surveyed.photos(), made);
    Choices choices = album.choices();
    Set<String> chosen = ChosenByPerson.daysByContent(choices).keySet();
    List<Photo> unseen = surveyed.notYetLookedAt(chosen);
    if (!unseen.isEmpty()) {
      surveyed.add(firstLook(request, unseen));
    }
    Days days = DaysByPerson.of(surveyed.days(), choices);
    List<AnalysedPhoto> looked = surveyed.firstLook().looked();
    Bursts bursts = Bursts.find(days, looked, surveyed.copies(), choices);
    CloseLooks close =
        surveyed
            .close()
            .look(
                bursts, looked.stream().filter(l -> chosen.contains(l.photo().sha256())).toList());
    ChosenByPerson person =
        new ChosenByPerson(choices, surveyed.looked(close).values(), surveyed.photos());
    List<DayPick> picks =
        new HeroPicker(surveyed.trials(), person)
            .pick(album.pages(), ChosenByPerson.leftFor(close.contenders(), choices));
    return new Picked(surveyed, album, days, bursts, close, picks);
  }

  /** Lays the picks and stories out on sheets. */
  public Month finish(Request request, Surveyed surveyed, Picked picked) {
    Stories stories = Stories.set(picked.album().pages(), request.cards());
    PieceMaker pieces = pieces(request, picked.picks(), stories);
    progress.stage("packing " + pieces.pieces().size() + " pieces", 0);
    Packing packing = new SheetPacker().pack(pieces.pieces(), request.settings().sheets());
    PagePlanner.Plan pages =
        new PagePlanner(request.pages()).plan(PageContents.of(picked.picks(), stories));
    Month made =
        new MonthAssembler(request, surveyed, picked, stories).assemble(pieces, packing, pages);
    progress.end();
    return made;
  }

  private Ingested read(Request request) {
    progress.stage("finding pictures", 0);
    Listing listing = new FolderReader().list(request.photos(), request.leaveOut());
    progress.stage("reading dates", listing.pictures().size());
    KnownContents known = memory.isPresent() ? memory.get() : KnownContents.NONE;
    return new FolderReader(known).read(listing, request.ingest(), request.jobs(), progress::step);
  }

  private Analysis firstLook(Request request, List<Photo> photos) {
    progress.stage("looking at pictures", photos.size());
    return new PhotoAnalyser(pictures, remembered()).first(photos, request.jobs(), progress::step);
  }

  private static Seams joins(Request request) {
    return new SheetJoins(request.settings().sheets().usable());
  }

  private Remembered remembered() {
    return memory.isPresent() ? memory.get() : Remembered.NOTHING;
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
