package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.daymount.album.DayPage;
import org.daymount.choices.Choices;
import org.daymount.choices.DateEdits;
import org.daymount.choices.PageEdits;
import org.daymount.choices.PhotoEdits;
import org.daymount.choices.PhotoKey;
import org.daymount.choices.SpaceChoice;
import org.daymount.ingest.IngestSettings;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.pick.DayPick;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pipeline.Selected;
import org.daymount.review.Change.Where;
import org.daymount.unit.Orientation;
import org.daymount.unit.SizeText;

/** What the page asks to change, made into new choices. */
final class ChangeReader {
  private static final int LONGEST_STORY = 20_000; // letters

  private final ThumbnailCache thumbnails;
  private final IngestSettings ingest;
  private final Choices choices;
  private final Selected picked;
  private final JsonNode asked;

  /**
   * @param ingest tells which dates can be
   * @param picked what the person saw when asking
   */
  ChangeReader(
      ThumbnailCache thumbnails,
      IngestSettings ingest,
      Choices choices,
      Selected picked,
      JsonNode asked) {
    this.thumbnails = thumbnails;
    this.ingest = ingest;
    this.choices = choices;
    this.picked = picked;
    this.asked = asked;
  }

  Change read() throws HttpException {
    String session = asked.path("session").asText("");
    String what = asked.path("what").asText("");
    try {
      return switch (what) {
        case "photo" ->
            onSpace(
                asked.hasNonNull("photo")
                    ? ofThePhoto().chosenFor(day(), place())
                    : with(space().emptied()),
                "picture on ");
        case "crop" -> onSpace(crop(), "crop on ", session);
        case "turn" -> onSpace(turn(), "turn on ");
        case "size" ->
            onSpace(page().size(place(), text("size").map(SizeText::parseSize)), "size on ");
        case "mat" -> onSpace(page().onMat(place(), asked.path("mat").asBoolean()), "mat on ");
        case "side" ->
            onSpace(
                page().lyingOnSide(place(), asked.path("side").asBoolean()),
                "picture on its side on ");
        case "direction" ->
            onSpace(
                page().direction(place(), text("direction").map(Orientation::parse)),
                "direction on ");
        case "page" -> onDay(page().words(text("words")), "page of " + ChangeFields.words(day()));
        case "add" -> onDay(page().withSpaceAdded(), "space added on " + ChangeFields.words(day()));
        case "remove" ->
            onDay(page().withoutSpace(place()), "space taken from " + ChangeFields.words(day()));
        case "stop" -> onDay(stopped(), "end of the album at " + ChangeFields.words(day()));
        case "story" ->
            change(story(), "story of " + ChangeFields.words(day()), session, at(day(), "story"));
        case "swap" ->
            onDay(
                choices.withPagesSwapped(day(), date("other")),
                "swap of "
                    + ChangeFields.words(day())
                    + " and "
                    + ChangeFields.words(date("other")));
        case "move" ->
            onDay(
                new FinishedPages(choices, picked).exchanged(day(), date("other")),
                "exchange of "
                    + ChangeFields.words(day())
                    + " and "
                    + ChangeFields.words(date("other")));
        case "used" -> onPhoto(ofThePhoto().used(text("used").map(Boolean::valueOf)), "use of ");
        case "given" -> onPhoto(given(), "date of ");
        default -> throw refused("'" + what + "' cannot be changed");
      };
    } catch (IllegalArgumentException e) {
      throw refused(e.getMessage());
    }
  }

  private static Change change(Choices changed, String words, String session, Where where) {
    return new Change(changed, words, session.isEmpty() ? "" : words + "/" + session, where);
  }

  private Change onSpace(Choices changed, String what, String session) throws HttpException {
    return change(changed, what + ChangeFields.words(day()), session, at(day(), "space" + place()));
  }

  private Change onSpace(Choices changed, String what) throws HttpException {
    return onSpace(changed, what, "");
  }

  private Change onDay(Choices changed, String words) throws HttpException {
    return change(changed, words, "", at(day(), "page"));
  }

  private Change onPhoto(Choices changed, String what) throws HttpException {
    Photo photo = known();
    return change(changed, what + photo.file().lastName(), "", whereLies(photo));
  }

  private static Where at(LocalDate day, String part) {
    return new Where(Optional.of(day), part);
  }

  /** On the day the photo belongs to, if it has one. */
  private Where whereLies(Photo photo) {
    return picked.photosByDay().stream()
        .filter(day -> day.photos().stream().anyMatch(each -> each.file().equals(photo.file())))
        .map(day -> at(day.day(), "photos"))
        .findFirst()
        .orElse(Where.ANYWHERE);
  }

  private Choices crop() throws HttpException {
    return with(
        asked.hasNonNull("crop")
            ? space()
                .cropped(PhotoKey.of(hero()), hero().size(), ChangeFields.box(asked.get("crop")))
            : space().withCrop(Optional.empty()));
  }

  private Choices turn() throws HttpException {
    return with(space().turned(PhotoKey.of(hero()), ChangeFields.whole(asked, "quarterTurns")));
  }

  private Choices with(SpaceChoice changed) throws HttpException {
    return choices.withDay(day(), choices.day(day()).withSpace(place(), changed));
  }

  private PageEdits page() throws HttpException {
    return page(choices, dayPick().page());
  }

  private PageEdits page(Choices before, DayPage shown) {
    LocalDate day = shown.day();
    return new PageEdits(before, day, shown, picked.noted(before.pageOf(day)));
  }

  /** Every later day of the month is left out of the album. */
  private Choices stopped() throws HttpException {
    Choices changed = choices;
    for (DayPick pick : picked.picks()) {
      DayPage page = pick.page();
      if (page.day().isAfter(day()) && page.kind() != DayPage.Kind.LEFT_OUT) {
        changed = page(changed, page).leftOut();
      }
    }
    return changed;
  }

  private Choices story() throws HttpException {
    Optional<String> text = text("text").map(typed -> typed.replace("\r\n", "\n"));
    if (text.filter(typed -> typed.length() > LONGEST_STORY).isPresent()) {
      throw refused("a story has at most 20,000 letters");
    }
    return choices.withStory(day(), text, picked.noted(day()).flatMap(DayPage::story));
  }

  private PhotoEdits ofThePhoto() throws HttpException {
    return new PhotoEdits(choices, PhotoKey.of(known()));
  }

  private Choices given() throws HttpException {
    Photo meant = known();
    Optional<Taken> said = text("day").map(day -> ingest.said(day, text("time").orElse("")));
    return DateEdits.given(choices, meant, thumbnails.ofSameFile(meant), said);
  }

  private SpaceChoice space() throws HttpException {
    return choices.space(day(), place());
  }

  private Photo hero() throws HttpException {
    return dayPick()
        .spaces()
        .get(place())
        .hero()
        .map(ScoredCandidate::photo)
        .orElseThrow(() -> refused("there is no picture in this space"));
  }

  private DayPick dayPick() throws HttpException {
    LocalDate day = day();
    return picked.picks().stream()
        .filter(pick -> pick.page().day().equals(day))
        .findFirst()
        .orElseThrow(() -> refused(day + " is not in this month"));
  }

  private int place() throws HttpException {
    int place = ChangeFields.whole(asked, "space");
    if (place < 0 || place >= dayPick().spaces().size()) {
      throw refused("there is no space " + (place + 1) + " on this day");
    }
    return place;
  }

  private LocalDate day() throws HttpException {
    return date("day");
  }

  private LocalDate date(String field) throws HttpException {
    try {
      LocalDate date = LocalDate.parse(asked.path(field).asText(""));
      if (picked.picks().stream().noneMatch(pick -> pick.page().day().equals(date))) {
        throw refused(date + " is not in this month");
      }
      return date;
    } catch (DateTimeException e) {
      throw refused("a day is missing");
    }
  }

  private Photo known() throws HttpException {
    String photo = asked.path("photo").asText("");
    return thumbnails.photo(photo).orElseThrow(() -> refused("there is no such picture"));
  }

  private Optional<String> text(String field) {
    return ChangeFields.text(asked, field);
  }

  private static HttpException refused(String why) {
    return new HttpException(HttpException.BAD_REQUEST, why);
  }
}
