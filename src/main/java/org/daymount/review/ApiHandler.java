package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.pipeline.NoteInUse;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.Survey;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PaperSize;

/** The opened month: what the page asks, answered as data and pictures. */
final class ApiHandler implements AutoCloseable {
  private static final PaperSize USUAL_CARD = PaperSize.inches(3, 4);

  private interface Reply {
    Object to(ApiHandler month, JsonNode body) throws HttpException, IOException;
  }

  private interface Picture {
    byte[] of(ApiHandler month, String[] parts) throws HttpException, UnusablePicture, IOException;
  }

  /** What GET shows below /api/; days besides. */
  private static final Map<String, Reply> SHOWN =
      Map.of(
          "month", (month, body) -> month.months.of(month.editing.now()),
          "undated", (month, body) -> month.photos.undated(month.editing.now()),
          "elsewhere", (month, body) -> month.photos.elsewhere(month.editing.now()),
          "sheets", (month, body) -> month.sheets.made(month.editing.now().version()));

  private static final String DAY = "day/";

  /** What POST changes below /api/. */
  private static final Map<String, Reply> POSTED =
      Map.of(
          "change", (month, body) -> month.months.of(month.editing.change(body)),
          "undo", (month, body) -> month.months.of(month.editing.undo(body)),
          "redo", (month, body) -> month.months.of(month.editing.redo(body)),
          "card", ApiHandler::card,
          "make", ApiHandler::make);

  /**
   * {@code /picture/p12/1/480}: id, quarter turns, long edge; {@code /detail/p12/500/250}: id, and
   * the middle in thousandths of its width and height; {@code /sheet/2/1}: index, run; {@code
   * /card/7}: as numbered by {@link CardView}.
   */
  private static final Map<String, Picture> PICTURES =
      Map.of(
          "picture/*/*/*",
              (month, of) -> month.thumbnails.jpeg(of[2], number(of[3]), number(of[4])),
          "detail/*/*/*",
              (month, of) ->
                  month.thumbnails.detail(of[2], number(of[3]) / 1000.0, number(of[4]) / 1000.0),
          "sheet/*/*", (month, of) -> month.sheets.jpeg(number(of[2])),
          "card/*", (month, of) -> month.cards.picture(number(of[2])));

  /**
   * What has a {@link ViewApi} of its own: the names in the addresses, and what is posted below.
   */
  private static final Map<String, Set<String>> VIEWS = Map.of("note", NoteView.posted());

  private final Editing editing;
  private final ThumbnailCache thumbnails;
  private final MonthView months;
  private final PhotosView photos;
  private final CardView cards;
  private final SheetJob sheets;
  private final Map<String, ViewApi> views;

  /**
   * Decodes what can still become a hero, so it takes a while.
   *
   * @param opening is told how far the first choice is
   * @param address of the server, without the token
   * @throws org.daymount.pipeline.RunFailed when choices.json or the note cannot be read
   */
  ApiHandler(
      Pictures pictures,
      SheetWriter writer,
      Request request,
      Survey surveyed,
      Cache cache,
      Progress opening,
      String address)
      throws IOException {
    NoteInUse.clearParts(request, surveyed.month());
    this.thumbnails = new ThumbnailCache(pictures, surveyed.photos(), request.jobs());
    this.editing = new Editing(pictures, request, surveyed, thumbnails, cache, opening, address);
    this.cards = new CardView(request.cards().orElse(USUAL_CARD));
    this.months = new MonthView(request, surveyed, thumbnails, cards);
    this.photos = new PhotosView(thumbnails);
    this.sheets = new SheetJob(pictures, writer, request.out().folder(surveyed.month()));
    this.views = Map.of("note", new NoteView(request, surveyed.month()));
  }

  /** Whether the address is one of a view's own, where the method says what is asked. */
  static boolean isOfView(String what) {
    return VIEWS.containsKey(first(what));
  }

  /** Whether the address changes something, and so must be posted to. */
  static boolean isPosted(String what) {
    return POSTED.containsKey(what);
  }

  /**
   * @param what the address below /api/
   * @param posted the body of what is posted; empty for GET
   */
  Object reply(String what, Optional<JsonNode> posted) throws HttpException, IOException {
    if (isOfView(what)) {
      return ofView(what, posted);
    }
    if (what.startsWith(DAY)) {
      return photos.day(editing.now(), date(what.substring(DAY.length())));
    }
    Reply reply = (posted.isPresent() ? POSTED : SHOWN).get(what);
    if (reply == null) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such page");
    }
    return reply.to(this, posted.orElseGet(JsonNodeFactory.instance::objectNode));
  }

  private CardView.Cards card(JsonNode body) throws HttpException {
    return cards.of(date(body.path("day").asText()), body.path("text").asText());
  }

  private SheetJob.Made make(JsonNode body) throws IOException {
    Editing.Now now = editing.now();
    sheets.start(editing, now, body.path("force").asBoolean());
    return sheets.made(now.version());
  }

  private Object ofView(String what, Optional<JsonNode> posted) throws HttpException, IOException {
    String[] parts = what.split("/", 2);
    String rest = parts.length == 2 ? parts[1] : "";
    ViewApi view = views.get(parts[0]);
    Editing.Now now = editing.now();
    return posted.isPresent() ? view.change(rest, posted.get(), now) : view.show(rest, now);
  }

  /** Whether the address is one of a picture. */
  static boolean isPicture(String path) {
    return PICTURES.keySet().stream().anyMatch(each -> path.startsWith("/" + first(each) + "/"));
  }

  /**
   * @param parts of the address, between its slashes
   */
  byte[] picture(String[] parts) throws HttpException, UnusablePicture, IOException {
    for (Map.Entry<String, Picture> each : PICTURES.entrySet()) {
      String[] known = each.getKey().split("/");
      if (parts.length == known.length + 1 && parts[1].equals(known[0])) {
        return each.getValue().of(this, parts);
      }
    }
    throw new HttpException(HttpException.NOT_FOUND, "there is no such picture");
  }

  private static String first(String address) {
    return address.split("/", 2)[0];
  }

  /** All that is answered here; a star stands for what varies. */
  static List<Route> routes() {
    List<Route> all = new ArrayList<>();
    SHOWN.keySet().forEach(each -> all.add(Route.get("/api/" + each)));
    all.add(Route.get("/api/" + DAY + "*"));
    POSTED.keySet().forEach(each -> all.add(Route.post("/api/" + each)));
    PICTURES.keySet().forEach(each -> all.add(Route.get("/" + each)));
    VIEWS.forEach(
        (view, posted) -> {
          all.add(Route.get("/api/" + view));
          posted.forEach(each -> all.add(Route.post("/api/" + view + "/" + each)));
        });
    return all;
  }

  /** How far the sheets are. */
  ProgressState progress() {
    return sheets.state();
  }

  /** Makes the pictures of the first view before they are asked for. */
  void warmUp() {
    editing.warmUp(thumbnails);
  }

  @Override
  public void close() {
    editing.close();
  }

  private static int number(String text) throws HttpException {
    if (!text.matches("\\d{1,6}")) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such picture");
    }
    return Integer.parseInt(text);
  }

  private static LocalDate date(String text) throws HttpException {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such day");
    }
  }
}
