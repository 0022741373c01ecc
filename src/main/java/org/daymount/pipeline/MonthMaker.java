package org.daymount.pipeline;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.day.DaySorter;
import org.daymount.day.Days;
import org.daymount.image.Pictures;
import org.daymount.ingest.FolderReader;
import org.daymount.ingest.Ingested;
import org.daymount.ingest.KnownContents;
import org.daymount.ingest.Listing;
import org.daymount.look.LookResult;
import org.daymount.look.Looker;
import org.daymount.look.Remembered;
import org.daymount.look.cache.Memory;
import org.daymount.month.Month;
import org.daymount.photo.Photo;
import org.daymount.pick.Contender;
import org.daymount.pick.DayPick;
import org.daymount.pick.HeroPicker;
import org.daymount.pick.PickSettings;
import org.daymount.sheet.Packing;
import org.daymount.sheet.SheetPacker;
import org.daymount.sheet.SheetSettings;

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
    Ingested found = read(request);
    Days days = new DaySorter().sort(found.photos(), request.daySettings());
    YearMonth month = days.month().orElseThrow(() -> NothingToDo.noDatedPhoto(request, found));
    AlbumPages album = AlbumPages.read(request, month, found.photos());
    Copies copies = Copies.exact(found.photos());
    LookResult firstLook = firstLook(request, days, copies);
    copies = copies.andSmaller(firstLook.looked());
    Bursts bursts = Bursts.find(days, firstLook.looked(), copies);
    CloseLooks close = closeLook(request, bursts);
    Map<LocalDate, List<Contender>> contenders = close.contenders();
    List<DayPick> picks =
        new HeroPicker(new PickSettings(request.crop()), album.choices(close.looked()))
            .pick(album.pages(), contenders);
    Stories stories = Stories.set(album.pages(), request.cards());
    PieceMaker pieces = pieces(request, picks, stories);
    progress.stage("packing " + pieces.pieces().size() + " pieces", 0);
    Packing packing =
        new SheetPacker()
            .pack(
                pieces.pieces(),
                new SheetSettings(request.settings().sheet(), request.settings().labTrim()));
    Month made =
        new MonthAssembler(request, found, days, album, copies, firstLook, bursts, close, stories)
            .assemble(month, picks, pieces, packing);
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

  private LookResult firstLook(Request request, Days days, Copies copies) {
    List<Photo> photos = copies.withoutCopies(Wanted.of(days));
    progress.stage("looking at pictures", photos.size());
    return new Looker(pictures, remembered()).first(photos, request.jobs(), progress::step);
  }

  private CloseLooks closeLook(Request request, Bursts bursts) {
    return new CloseLookStage(pictures, request.jobs(), progress, remembered()).look(bursts);
  }

  private Remembered remembered() {
    return memory.isPresent() ? memory.get() : Remembered.NOTHING;
  }

  private static PieceMaker pieces(Request request, List<DayPick> picks, Stories stories) {
    PieceMaker pieces = new PieceMaker(request.settings().sheet());
    for (DayPick day : picks) {
      pieces.add(day);
      stories.cards(day.page().day()).forEach(card -> pieces.add(card, day.spaces().size()));
    }
    return pieces;
  }
}
