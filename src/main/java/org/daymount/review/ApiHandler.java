package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.image.Pictures;
import org.daymount.look.cache.Memory;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.Surveyed;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PaperSize;

/** The opened month: what the page asks, answered as data and pictures. */
final class ApiHandler implements AutoCloseable {
  private static final PaperSize USUAL_CARD = PaperSize.inches(3, 4);

  /** What has a {@link ViewApi} of its own: the names in the addresses; each has one in `views`. */
  private static final Set<String> VIEWS = Set.of("note");

  private static final Set<String> POSTED = Set.of("change", "undo", "redo", "card", "make");

  private final Editing editing;
  private final ThumbnailCache shelf;
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
      Surveyed surveyed,
      Optional<Memory> memory,
      Progress opening,
      String address)
      throws IOException {
    this.shelf = new ThumbnailCache(pictures, surveyed.photos(), request.jobs());
    this.editing = new Editing(pictures, request, surveyed, shelf, memory, opening, address);
    this.cards = new CardView(request.cards().orElse(USUAL_CARD));
    this.months = new MonthView(request, surveyed, shelf, cards);
    this.photos = new PhotosView(shelf);
    this.sheets = new SheetJob(pictures, writer, request.out().folder(surveyed.month()));
    this.views = Map.of("note", new NoteView(request, surveyed.month()));
  }

  /** Whether the address is one of a view's own, where the method says what is asked. */
  static boolean isOfView(String what) {
    return VIEWS.contains(what.split("/", 2)[0]);
  }

  /** Whether the address changes something, and so must be posted to. */
  static boolean isPosted(String what) {
    return POSTED.contains(what);
  }

  /**
   * @param what the address below /api/
   * @param posted the body of what is posted; empty for GET
   */
  ObjectNode reply(String what, Optional<JsonNode> posted) throws HttpException, IOException {
    JsonNode body = posted.orElseGet(JsonNodeFactory.instance::objectNode);
    return switch (what) {
      case "month" -> months.of(editing.now());
      case "undated" -> photos.undated(editing.now());
      case "sheets" -> sheets.made(editing.now().version());
      case "change" -> months.of(editing.change(body));
      case "undo" -> months.of(editing.undo(body));
      case "redo" -> months.of(editing.redo(body));
      case "card" -> cards.of(date(body.path("day").asText()), body.path("text").asText());
      case "make" -> {
        Editing.Now now = editing.now();
        sheets.start(editing, now, body.path("force").asBoolean());
        yield sheets.made(now.version());
      }
      default -> {
        if (what.startsWith("day/")) {
          yield photos.day(editing.now(), date(what.substring("day/".length())));
        }
        if (isOfView(what)) {
          yield ofView(what, posted);
        }
        throw new HttpException(HttpException.NOT_FOUND, "there is no such page");
      }
    };
  }

  private ObjectNode ofView(String what, Optional<JsonNode> posted)
      throws HttpException, IOException {
    String[] parts = what.split("/", 2);
    String rest = parts.length == 2 ? parts[1] : "";
    ViewApi view = views.get(parts[0]);
    Editing.Now now = editing.now();
    return posted.isPresent() ? view.change(rest, posted.get(), now) : view.show(rest, now);
  }

  /**
   * {@code /picture/p12/1/480}: id, quarter turns, long edge; {@code /detail/p12/500/250}: id, and
   * the middle in thousandths of its width and height; {@code /sheet/2/1}: index, run; {@code
   * /card/7}: as numbered by {@link CardView}.
   */
  byte[] picture(String[] parts) throws HttpException, UnusablePicture, IOException {
    String kind = parts[1];
    if (kind.equals("sheet") && parts.length == 4) {
      return sheets.jpeg(number(parts[2]));
    }
    if (kind.equals("card") && parts.length == 3) {
      return cards.picture(number(parts[2]));
    }
    if (kind.equals("picture") && parts.length == 5) {
      return shelf.jpeg(parts[2], number(parts[3]), number(parts[4]));
    }
    if (kind.equals("detail") && parts.length == 5) {
      return shelf.detail(parts[2], number(parts[3]) / 1000.0, number(parts[4]) / 1000.0);
    }
    throw new HttpException(HttpException.NOT_FOUND, "there is no such picture");
  }

  /** How far the sheets are. */
  ProgressState board() {
    return sheets.board();
  }

  /** Makes the pictures of the first view before they are asked for. */
  void warmUp() {
    editing.warmUp(shelf);
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
