package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.YearMonth;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.daymount.cache.Cache;
import org.daymount.choices.Choices;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pipeline.MonthMaker;
import org.daymount.pipeline.NoteInUse;
import org.daymount.pipeline.PlannedPages;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.Selected;
import org.daymount.pipeline.Survey;
import org.daymount.problem.UnusablePicture;

/**
 * The month while it is being changed: the choices, every step back and forth, and the picks that
 * follow from them. Each change is saved before it is shown. A change says which version it was
 * made on; one made on an older version is refused, so that two tabs do not undo each other.
 */
final class Editing implements AutoCloseable {
  private final MonthMaker maker;
  private final Request request;
  private final Survey surveyed;
  private final ThumbnailCache thumbnails;
  private final ChoicesStore store;
  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();
  private Choices choices;
  private Selected picked;
  private PlannedPages pages;
  private Optional<String> note;
  private long version = 1;

  /** What a change replaced, or an undo took back. */
  record Step(Choices choices, String words, String session, Change.Where where) {}

  /**
   * All that a view needs, of one moment.
   *
   * @param undo what the next undo would take back
   */
  record Now(
      long version,
      Choices choices,
      Selected picked,
      PlannedPages pages,
      Optional<Step> undo,
      Optional<Step> redo,
      Optional<String> message) {}

  Editing(
      Pictures pictures,
      Request request,
      Survey surveyed,
      ThumbnailCache thumbnails,
      Cache cache,
      Progress opening,
      String address)
      throws IOException {
    this.maker = new MonthMaker(pictures, opening, cache);
    this.request = request;
    this.surveyed = surveyed;
    this.thumbnails = thumbnails;
    YearMonth month = surveyed.month();
    this.store = ChoicesStore.open(request.out().choices(month), month, address);
    try {
      this.choices = store.read();
      pickAgain();
    } catch (IOException | RuntimeException e) {
      store.close();
      throw e;
    }
  }

  /** Reads the note again if it was edited, and the choices if something else wrote them. */
  synchronized Now now() throws IOException {
    Optional<String> message = Optional.empty();
    if (store.isChangedByOthers()) {
      try {
        reload();
        message =
            Optional.of("choices.json was changed by something else and has been read again.");
      } catch (RunFailed unreadable) {
        message = Optional.of(unreadable.getMessage());
      }
    } else if (!note.equals(noteNow())) {
      pickAgain();
      version++;
      message = Optional.of("The note was edited and has been read again.");
    }
    return state(message);
  }

  synchronized Now change(JsonNode asked) throws HttpException, IOException {
    check(asked);
    Change change = new ChangeReader(thumbnails, request.ingest(), choices, picked, asked).read();
    if (change.choices().equals(choices)) {
      return state(Optional.empty());
    }
    store.write(change.choices());
    Step last = done.peek();
    boolean continued =
        last != null && !change.session().isEmpty() && change.session().equals(last.session());
    if (!continued) {
      done.push(new Step(choices, change.words(), change.session(), change.where()));
    }
    undone.clear();
    choices = change.choices();
    return settle();
  }

  synchronized Now undo(JsonNode asked) throws HttpException, IOException {
    return step(asked, done, undone);
  }

  synchronized Now redo(JsonNode asked) throws HttpException, IOException {
    return step(asked, undone, done);
  }

  private Now step(JsonNode asked, Deque<Step> from, Deque<Step> to)
      throws HttpException, IOException {
    check(asked);
    if (from.isEmpty()) {
      return state(Optional.empty());
    }
    Step step = from.peek();
    store.write(step.choices());
    from.pop();
    to.push(new Step(choices, step.words(), "", step.where()));
    choices = step.choices();
    return settle();
  }

  /** The finished month as it stood then; slower, since the sheets are packed. */
  Month finish(Now now, Progress progress, Pictures pictures) {
    return new MonthMaker(pictures, progress).finish(request, surveyed, now.picked());
  }

  /** Makes the small pictures of all heroes. */
  void warmUp(ThumbnailCache thumbnails) {
    Selected now;
    synchronized (this) {
      now = picked;
    }
    now.picks().stream()
        .flatMap(day -> day.spaces().stream())
        .flatMap(space -> space.hero().stream())
        .map(ScoredCandidate::photo)
        .parallel()
        .forEach(
            photo -> {
              try {
                thumbnails.jpeg(
                    thumbnails.id(photo.file()),
                    thumbnails.turns(photo),
                    ThumbnailCache.FIRST_VIEW);
              } catch (HttpException | UnusablePicture e) {
                // the page asks for it again and hears why
              }
            });
  }

  private void check(JsonNode asked) throws HttpException, IOException {
    if (store.isChangedByOthers()) {
      try {
        reload();
      } catch (RunFailed unreadable) {
        throw new HttpException(HttpException.CONFLICT, unreadable.getMessage());
      }
      throw new HttpException(
          HttpException.CONFLICT,
          "choices.json was changed by something else meanwhile; it has been read again. Look at it"
              + " and make your change once more.");
    }
    if (asked.path("version").asLong(-1) != version) {
      throw new HttpException(
          HttpException.CONFLICT,
          "This month was changed in another tab meanwhile. What you see now is the newest; make"
              + " your change once more.");
    }
  }

  private void reload() throws IOException {
    Choices read = store.read();
    done.push(new Step(choices, "what was read again", "", Change.Where.ANYWHERE));
    undone.clear();
    choices = read;
    pickAgain();
    version++;
  }

  private Now settle() {
    version++;
    pickAgain();
    return state(Optional.empty());
  }

  private void pickAgain() {
    note = noteNow();
    picked = maker.pick(request, surveyed, choices);
    pages = maker.pages(request, picked);
  }

  private Optional<String> noteNow() {
    return NoteInUse.of(request, surveyed.month()).map(NoteInUse::text);
  }

  private Now state(Optional<String> message) {
    return new Now(
        version,
        choices,
        picked,
        pages,
        Optional.ofNullable(done.peek()),
        Optional.ofNullable(undone.peek()),
        message);
  }

  /** Another review may have the choices. */
  @Override
  public synchronized void close() {
    store.close();
  }
}
