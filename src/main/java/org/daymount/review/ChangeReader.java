package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.album.WantedSpace;
import org.daymount.choices.Choices;
import org.daymount.choices.CropChoice;
import org.daymount.choices.DayChoice;
import org.daymount.choices.PhotoChoice;
import org.daymount.choices.PhotoKey;
import org.daymount.choices.SpaceChoice;
import org.daymount.choices.StoryChoice;
import org.daymount.choices.UnknownFields;
import org.daymount.photo.Photo;
import org.daymount.pick.Candidate;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;
import org.daymount.pipeline.Picked;
import org.daymount.review.Change.Where;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.SizeText;

/** What the page asks to change, made into new choices. */
final class ChangeReader {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
  private static final PaperSize USUAL_SPACE = PaperSize.inches(4, 6);
  private static final int LONGEST_STORY = 20_000; // letters

  private final ThumbnailCache shelf;
  private final Choices choices;
  private final Picked picked;
  private final JsonNode asked;

  /**
   * @param picked what the person saw when asking
   */
  ChangeReader(ThumbnailCache shelf, Choices choices, Picked picked, JsonNode asked) {
    this.shelf = shelf;
    this.choices = choices;
    this.picked = picked;
    this.asked = asked;
  }

  Change read() throws HttpException {
    String session = asked.path("session").asText("");
    String what = asked.path("what").asText("");
    try {
      return switch (what) {
        case "photo" -> onSpace(photo(), "picture on ", "");
        case "crop" -> onSpace(crop(), "crop on ", session);
        case "turn" -> onSpace(turn(), "turn on ", "");
        case "size" -> onSpace(size(), "size on ", "");
        case "mat" -> onSpace(mat(), "mat on ", "");
        case "side" -> onSpace(side(), "picture on its side on ", "");
        case "direction" -> onSpace(direction(), "direction on ", "");
        case "page" -> onDay(page(), "page of " + words(day()), "page");
        case "add" -> onDay(spaceAdded(), "space added on " + words(day()), "page");
        case "remove" -> onDay(spaceTaken(), "space taken from " + words(day()), "page");
        case "stop" -> onDay(stopped(), "end of the album at " + words(day()), "page");
        case "story" -> change(story(), "story of " + words(day()), session, at(day(), "story"));
        case "swap" ->
            onDay(
                choices.withPagesSwapped(day(), date("other")),
                "swap of " + words(day()) + " and " + words(date("other")),
                "page");
        case "move" ->
            onDay(
                new FinishedPages(choices, picked).exchanged(day(), date("other")),
                "exchange of " + words(day()) + " and " + words(date("other")),
                "page");
        case "used" -> change(used(), "use of " + known("photo").file().lastName(), "", ofPhoto());
        case "given" ->
            change(given(), "day of " + known("photo").file().lastName(), "", ofPhoto());
        default ->
            throw new HttpException(HttpException.BAD_REQUEST, "'" + what + "' cannot be changed");
      };
    } catch (IllegalArgumentException e) {
      throw new HttpException(HttpException.BAD_REQUEST, e.getMessage());
    }
  }

  private static Change change(Choices changed, String words, String session, Where where) {
    return new Change(changed, words, session.isEmpty() ? "" : words + "/" + session, where);
  }

  private Change onSpace(Choices changed, String what, String session) throws HttpException {
    return change(changed, what + words(day()), session, at(day(), "space" + place()));
  }

  private Change onDay(Choices changed, String words, String part) throws HttpException {
    return change(changed, words, "", at(day(), part));
  }

  private static Where at(LocalDate day, String part) {
    return new Where(Optional.of(day), part);
  }

  /** On the day the photo belongs to, if it has one. */
  private Where ofPhoto() throws HttpException {
    Photo photo = known("photo");
    return picked.photosByDay().stream()
        .filter(day -> day.photos().stream().anyMatch(each -> each.file().equals(photo.file())))
        .map(day -> at(day.day(), "photos"))
        .findFirst()
        .orElse(Where.ANYWHERE);
  }

  private Choices photo() throws HttpException {
    SpaceChoice before = space();
    if (!asked.hasNonNull("photo")) {
      return with(
          before.withPhoto(Optional.empty()).withCrop(Optional.empty()).withQuarterTurns(0));
    }
    Photo photo = known("photo");
    SpaceChoice after = before.withPhoto(Optional.of(key(photo)));
    if (!after.photo().equals(before.photo())) {
      after = after.withCrop(Optional.empty()).withQuarterTurns(0);
    }
    Choices changed = with(after);
    return changed.used(photo.sha256()).equals(Optional.of(false))
        ? withUsed(changed, photo, Optional.empty())
        : changed;
  }

  /** A crop settles the picture too: it was drawn on this one. */
  private Choices crop() throws HttpException {
    SpaceChoice before = space();
    if (!asked.hasNonNull("crop")) {
      return with(before.withCrop(Optional.empty()));
    }
    Photo shown = hero().looked().photo();
    JsonNode box = asked.get("crop");
    PixelBox window =
        new PixelBox(whole(box, "x"), whole(box, "y"), whole(box, "width"), whole(box, "height"));
    if (!shown.size().whole().contains(window)) {
      throw new HttpException(HttpException.BAD_REQUEST, "the crop reaches beyond the picture");
    }
    SpaceChoice settled = settled(before, shown);
    return with(
        settled.withCrop(
            Optional.of(
                new CropChoice(
                    window.turned(shown.size(), -settled.quarterTurns()), shown.sha256()))));
  }

  private Choices turn() throws HttpException {
    int turns = whole(asked, "quarterTurns");
    SpaceChoice settled = settled(space(), hero().looked().photo());
    return with(
        settled
            .withCrop(Optional.empty())
            .withQuarterTurns(Math.floorMod(settled.quarterTurns() + turns, 4)));
  }

  private static SpaceChoice settled(SpaceChoice space, Photo shown) {
    return space.photo().filter(key -> key.sha256().equals(shown.sha256())).isPresent()
        ? space
        : space.withPhoto(Optional.of(key(shown))).withCrop(Optional.empty()).withQuarterTurns(0);
  }

  private Choices size() throws HttpException {
    Optional<PaperSize> size = text("size").map(SizeText::parseSize);
    return onPage(
        pageChoice()
            .withSpace(
                place(), pageChoice().space(place()).withSize(size).withCrop(Optional.empty())));
  }

  private Choices direction() throws HttpException {
    Optional<Orientation> way = text("direction").map(Orientation::parse);
    return onPage(
        pageChoice()
            .withSpace(
                place(),
                pageChoice().space(place()).withDirection(way).withCrop(Optional.empty())));
  }

  /** A space laid on a mat, or the mat taken away; the reveal is the usual one. */
  private Choices mat() throws HttpException {
    boolean wanted = asked.path("mat").asBoolean();
    return withSpace(space -> wanted ? space.onMat(space.reveal()) : space.withoutMat());
  }

  /** A picture that lies on its side on the page, or is read as the page is. */
  private Choices side() throws HttpException {
    boolean wanted = asked.path("side").asBoolean();
    return withSpace(space -> space.lyingOnSide(wanted));
  }

  private Choices withSpace(UnaryOperator<WantedSpace> change) throws HttpException {
    List<WantedSpace> spaces = new ArrayList<>(shown().spaces());
    spaces.set(place(), change.apply(spaces.get(place())));
    PageSpec page = new PageSpec(DayPage.Kind.PICTURES, spaces);
    return PageSpecParser.text(page).equals(notedPage())
        ? onPage(pageChoice().withoutPageChanges())
        : onPage(shaped(pageChoice(), page));
  }

  /** Every later day of the month is left out of the album. */
  private Choices stopped() throws HttpException {
    PageSpec out = new PageSpec(DayPage.Kind.LEFT_OUT, List.of());
    Choices changed = choices;
    for (DayPick pick : picked.picks()) {
      LocalDate date = pick.page().day();
      if (date.isAfter(day()) && pick.page().kind() != DayPage.Kind.LEFT_OUT) {
        changed =
            changed.withDay(
                date,
                shaped(pick, pageChoice(date), out).withPageReplaced(Optional.of(notedPage(date))));
      }
    }
    return changed;
  }

  /** The whole page in the words of the month note; without words as the note has it. */
  private Choices page() throws HttpException {
    Optional<String> said = text("words").filter(words -> !words.isBlank());
    if (said.isEmpty() || said.get().equals(notedPage())) {
      return onPage(pageChoice().withoutPageChanges());
    }
    return onPage(shaped(pageChoice(), PageSpecParser.parse(said.get())));
  }

  private Choices spaceAdded() throws HttpException {
    List<WantedSpace> spaces = new ArrayList<>(shown().spaces());
    spaces.add(spaces.isEmpty() ? WantedSpace.of(USUAL_SPACE) : spaces.get(spaces.size() - 1));
    PageSpec page = new PageSpec(DayPage.Kind.PICTURES, spaces);
    return onPage(shaped(pageChoice(), sayable(page)));
  }

  private Choices spaceTaken() throws HttpException {
    List<WantedSpace> spaces = new ArrayList<>(shown().spaces());
    spaces.remove(place());
    PageSpec page =
        new PageSpec(spaces.isEmpty() ? DayPage.Kind.NO_PHOTO : DayPage.Kind.PICTURES, spaces);
    return onPage(
        pageChoice()
            .withSpaceTaken(place())
            .withPage(Optional.of(sayable(page)))
            .withoutSpaceShapes());
  }

  private static PageSpec sayable(PageSpec page) throws HttpException {
    if (page.spaces().size() > PageSpecParser.MOST_SPACES) {
      throw new HttpException(
          HttpException.BAD_REQUEST,
          "a page has at most " + PageSpecParser.MOST_SPACES + " spaces");
    }
    return page;
  }

  /** A crop stays where its space keeps its shape. */
  private DayChoice shaped(DayChoice day, PageSpec page) throws HttpException {
    return shaped(dayPick(), day, page);
  }

  private static DayChoice shaped(DayPick pick, DayChoice day, PageSpec page) {
    List<WantedSpace> before = PageSpecParser.words(pick.page()).spaces();
    DayChoice changed = day.withPage(Optional.of(page)).withoutSpaceShapes();
    for (int place : day.spaces().keySet()) {
      boolean same =
          place < before.size()
              && place < page.spaces().size()
              && before.get(place).equals(page.spaces().get(place));
      if (!same) {
        changed = changed.withSpace(place, changed.space(place).withCrop(Optional.empty()));
      }
    }
    return changed;
  }

  /** The page as it is now, in the words of the note. */
  private PageSpec shown() throws HttpException {
    return PageSpecParser.words(dayPick().page());
  }

  private String notedPage() throws HttpException {
    return notedPage(day());
  }

  private String notedPage(LocalDate day) {
    DayPage noted = picked.noted(choices.pageOf(day));
    return noted == null ? "" : PageSpecParser.text(noted);
  }

  /**
   * The day's choices, without changes of its page that do not hold any more because the note was
   * edited after them.
   */
  private DayChoice pageChoice() throws HttpException {
    return pageChoice(day());
  }

  private DayChoice pageChoice(LocalDate date) {
    DayChoice day = choices.day(date);
    String now = notedPage(date);
    return day.pageReplaced().filter(before -> !before.equals(now)).isPresent()
        ? day.withoutPageChanges()
        : day;
  }

  /** The page's words at the time are kept, so that a later edit of the note is noticed. */
  private Choices onPage(DayChoice changed) throws HttpException {
    return choices.withDay(
        day(),
        changed.withPageReplaced(
            changed.changesPage() ? Optional.of(notedPage()) : Optional.empty()));
  }

  private Choices story() throws HttpException {
    DayChoice day = choices.day(day());
    DayPage noted = picked.noted(day());
    Optional<String> before = noted == null ? Optional.empty() : noted.story();
    if (!asked.hasNonNull("text")) {
      return choices.withDay(day(), day.withStory(Optional.empty()));
    }
    String text = asked.get("text").asText().replace("\r\n", "\n");
    if (text.length() > LONGEST_STORY) {
      throw new HttpException(HttpException.BAD_REQUEST, "a story has at most 20,000 letters");
    }
    boolean asNoted = text.equals(before.orElse(""));
    return choices.withDay(
        day(),
        day.withStory(asNoted ? Optional.empty() : Optional.of(new StoryChoice(text, before))));
  }

  private Choices used() throws HttpException {
    Photo photo = known("photo");
    Optional<Boolean> word =
        asked.hasNonNull("used") ? Optional.of(asked.get("used").asBoolean()) : Optional.empty();
    Choices changed = withUsed(choices, photo, word);
    return word.equals(Optional.of(false)) ? withoutIn(changed, photo) : changed;
  }

  /** A photo that is left out leaves the spaces it was chosen for. */
  private static Choices withoutIn(Choices choices, Photo photo) {
    Choices changed = choices;
    for (LocalDate date : choices.days().keySet()) {
      for (Map.Entry<Integer, SpaceChoice> space : choices.day(date).spaces().entrySet()) {
        if (space
            .getValue()
            .photo()
            .filter(key -> key.sha256().equals(photo.sha256()))
            .isPresent()) {
          changed =
              changed.withDay(
                  date,
                  changed
                      .day(date)
                      .withSpace(
                          space.getKey(),
                          space
                              .getValue()
                              .withPhoto(Optional.empty())
                              .withCrop(Optional.empty())
                              .withQuarterTurns(0)));
        }
      }
    }
    return changed;
  }

  private Choices given() throws HttpException {
    Photo photo = known("photo");
    Optional<LocalDate> day = asked.hasNonNull("day") ? Optional.of(date("day")) : Optional.empty();
    PhotoChoice before = photoChoice(choices, photo);
    return with(choices, new PhotoChoice(key(photo), before.used(), day, before.other()));
  }

  private static Choices withUsed(Choices choices, Photo photo, Optional<Boolean> used) {
    PhotoChoice before = photoChoice(choices, photo);
    return with(choices, new PhotoChoice(key(photo), used, before.day(), before.other()));
  }

  private static PhotoChoice photoChoice(Choices choices, Photo photo) {
    return choices
        .photos()
        .getOrDefault(
            photo.sha256(), new PhotoChoice(key(photo), Optional.empty(), Optional.empty()));
  }

  private static Choices with(Choices choices, PhotoChoice changed) {
    boolean saysNothing =
        changed.used().isEmpty()
            && changed.day().isEmpty()
            && changed.other().equals(UnknownFields.NONE);
    if (!saysNothing) {
      return choices.withPhoto(changed);
    }
    Map<String, PhotoChoice> left = new TreeMap<>(choices.photos());
    left.remove(changed.photo().sha256());
    return new Choices(choices.days(), left, choices.other());
  }

  private Choices with(SpaceChoice changed) throws HttpException {
    return choices.withDay(day(), choices.day(day()).withSpace(place(), changed));
  }

  private SpaceChoice space() throws HttpException {
    return choices.space(day(), place());
  }

  private Candidate hero() throws HttpException {
    return pick()
        .hero()
        .orElseThrow(
            () ->
                new HttpException(HttpException.BAD_REQUEST, "there is no picture in this space"));
  }

  private SpacePick pick() throws HttpException {
    return dayPick().spaces().get(place());
  }

  private DayPick dayPick() throws HttpException {
    LocalDate day = day();
    return picked.picks().stream()
        .filter(pick -> pick.page().day().equals(day))
        .findFirst()
        .orElseThrow(
            () -> new HttpException(HttpException.BAD_REQUEST, day + " is not in this month"));
  }

  private int place() throws HttpException {
    int place = whole(asked, "space");
    if (place < 0 || place >= dayPick().spaces().size()) {
      throw new HttpException(
          HttpException.BAD_REQUEST, "there is no space " + (place + 1) + " on this day");
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
        throw new HttpException(HttpException.BAD_REQUEST, date + " is not in this month");
      }
      return date;
    } catch (DateTimeException e) {
      throw new HttpException(HttpException.BAD_REQUEST, "a day is missing");
    }
  }

  private Photo known(String field) throws HttpException {
    return shelf
        .photo(asked.path(field).asText(""))
        .orElseThrow(
            () -> new HttpException(HttpException.BAD_REQUEST, "there is no such picture"));
  }

  private Optional<String> text(String field) {
    return asked.hasNonNull(field) ? Optional.of(asked.get(field).asText()) : Optional.empty();
  }

  private static int whole(JsonNode node, String field) throws HttpException {
    if (!node.path(field).isIntegralNumber() || !node.path(field).canConvertToInt()) {
      throw new HttpException(HttpException.BAD_REQUEST, field + " must be a whole number");
    }
    return node.get(field).intValue();
  }

  private static PhotoKey key(Photo photo) {
    return new PhotoKey(photo.sha256(), photo.file().name());
  }

  private static String words(LocalDate day) {
    return DAY.format(day);
  }
}
