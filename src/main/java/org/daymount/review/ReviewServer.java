package org.daymount.review;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.daymount.image.Pictures;
import org.daymount.month.MonthJson;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.Surveyed;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PaperSize;

/**
 * The review's own web server, on the loopback address only. GET shows, POST changes; everything
 * that is the person's needs the word printed at the start.
 */
public final class ReviewServer implements AutoCloseable {
  private static final PaperSize USUAL_CARD = PaperSize.inches(3, 4);
  private static final int LONGEST_BODY = 200_000; // bytes
  private static final long HEARTBEAT = 15_000; // ms

  /** Nothing but the page's own files; no inline script, no frame, no form, no other host. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  private final ObjectMapper mapper = new ObjectMapper();
  private final Surveyed surveyed;
  private final Editing editing;
  private final Shelf shelf;
  private final MonthView months;
  private final PhotosView photos;
  private final CardView cards;
  private final SheetRun sheets;
  private final HttpServer server;
  private final ExecutorService workers;
  private final Gate gate;

  /**
   * Starts to answer.
   *
   * @param port 0 for any that is free
   * @param token a word nobody can guess, new for each start
   * @throws RunFailed when choices.json or the note cannot be read, or the port is taken
   */
  public static ReviewServer start(
      Pictures pictures,
      MonthJson json,
      Request request,
      Surveyed surveyed,
      int port,
      String token) {
    try {
      return new ReviewServer(pictures, json, request, surveyed, port, token);
    } catch (java.net.BindException e) {
      throw new RunFailed(
          "port " + port + " is taken or not allowed; choose another with --port, or leave it out");
    } catch (IOException e) {
      throw new RunFailed("the review cannot start: " + e.getMessage());
    }
  }

  private ReviewServer(
      Pictures pictures, MonthJson json, Request request, Surveyed surveyed, int port, String token)
      throws IOException {
    this.surveyed = surveyed;
    this.shelf = new Shelf(pictures, surveyed.photos(), request.jobs());
    this.editing = new Editing(pictures, request, surveyed, shelf);
    this.months = new MonthView(request, surveyed, shelf);
    this.photos = new PhotosView(shelf);
    this.cards = new CardView(request.cards().orElse(USUAL_CARD));
    this.sheets = new SheetRun(pictures, json, request, request.out().folder(surveyed.month()));
    InetAddress here = InetAddress.getByAddress("localhost", new byte[] {127, 0, 0, 1});
    this.server = HttpServer.create(new InetSocketAddress(here, port), 0);
    this.gate = new Gate(server.getAddress().getPort(), token);
    this.workers =
        Executors.newCachedThreadPool(
            task -> {
              Thread thread = new Thread(task, "review");
              thread.setDaemon(true);
              return thread;
            });
    server.setExecutor(workers);
    server.createContext("/", this::handle);
    server.start();
  }

  public int port() {
    return server.getAddress().getPort();
  }

  @Override
  public void close() {
    server.stop(0);
    workers.shutdownNow();
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      Headers headers = exchange.getResponseHeaders();
      headers.set("Content-Security-Policy", POLICY);
      headers.set("X-Content-Type-Options", "nosniff");
      headers.set("Referrer-Policy", "no-referrer");
      headers.set("Cross-Origin-Resource-Policy", "same-origin");
      headers.set("Cross-Origin-Opener-Policy", "same-origin");
      headers.set("X-Frame-Options", "DENY");
      if (exchange.getRequestURI().getPath().equals("/api/progress")) {
        progress(exchange);
        return;
      }
      Answer answer = answer(exchange);
      headers.set("Content-Type", answer.type());
      headers.set(
          "Cache-Control", answer.keep() ? "private, max-age=86400, immutable" : "no-store");
      exchange.sendResponseHeaders(answer.status(), answer.body().length);
      exchange.getResponseBody().write(answer.body());
    }
  }

  private Answer answer(HttpExchange exchange) throws IOException {
    try {
      gate.checkOrigin(exchange.getRequestHeaders());
      return exchange.getRequestURI().getPath().startsWith("/api/")
          ? api(exchange)
          : shown(exchange);
    } catch (Refused e) {
      return said(e.status(), e.getMessage());
    } catch (UnusablePicture e) {
      return said(Refused.NOT_FOUND, e.getMessage());
    } catch (RunFailed e) {
      return said(Answer.FAILED, e.getMessage());
    } catch (IOException e) {
      return said(Answer.FAILED, "not saved: " + e.getMessage());
    } catch (RuntimeException e) {
      return said(Answer.FAILED, "something went wrong that should not have (" + e + ")");
    }
  }

  private static Answer said(int status, String message) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("message", message);
    return Answer.json(status, node);
  }

  /** The page's files, open to all on this computer, and pictures, which need the word. */
  private Answer shown(HttpExchange exchange) throws Refused, IOException {
    need(exchange, "GET");
    String path = exchange.getRequestURI().getPath();
    if (path.startsWith("/picture/") || path.startsWith("/sheet/")) {
      gate.checkToken(key(exchange));
      return picture(path.split("/"));
    }
    String file = path.equals("/") ? "review.html" : path.substring(1);
    String type =
        Answer.typeOf(file)
            .orElseThrow(() -> new Refused(Refused.NOT_FOUND, "there is no such page"));
    try (InputStream in = ReviewServer.class.getResourceAsStream(file)) {
      return new Answer(Answer.OK, type, in.readAllBytes(), false);
    }
  }

  /** {@code /picture/p12/1/480}: id, quarter turns, long edge; {@code /sheet/2/1}: index, run. */
  private Answer picture(String[] parts) throws Refused, IOException {
    if (parts[1].equals("sheet") && parts.length == 4) {
      return Answer.jpeg(sheets.jpeg(number(parts[2])));
    }
    if (parts.length != 5) {
      throw new Refused(Refused.NOT_FOUND, "there is no such picture");
    }
    return Answer.jpeg(shelf.jpeg(parts[2], number(parts[3]), number(parts[4])));
  }

  private Answer api(HttpExchange exchange) throws Refused, IOException {
    gate.checkToken(exchange.getRequestHeaders().getFirst("X-Review-Word"));
    String what = exchange.getRequestURI().getPath().substring("/api/".length());
    return Answer.json(Answer.OK, reply(exchange, what));
  }

  private ObjectNode reply(HttpExchange exchange, String what) throws Refused, IOException {
    switch (what) {
      case "month":
        need(exchange, "GET");
        return months.of(editing.now());
      case "undated":
        need(exchange, "GET");
        return photos.undated(editing.now());
      case "sheets":
        need(exchange, "GET");
        return sheets.made(editing.now().version());
      case "change":
        return months.of(editing.change(body(exchange)));
      case "undo":
        return months.of(editing.undo(body(exchange)));
      case "redo":
        return months.of(editing.redo(body(exchange)));
      case "card":
        JsonNode story = body(exchange);
        return cards.of(date(story.path("day").asText()), story.path("text").asText());
      case "make":
        body(exchange);
        long version = editing.now().version();
        sheets.start(editing, version);
        return sheets.made(version);
      default:
        if (what.startsWith("day/")) {
          need(exchange, "GET");
          return photos.day(editing.now(), date(what.substring("day/".length())));
        }
        throw new Refused(Refused.NOT_FOUND, "there is no such page");
    }
  }

  /** Server-sent events (WHATWG HTML, 9.2) until the browser goes away or the run has ended. */
  private void progress(HttpExchange exchange) throws IOException {
    try {
      gate.checkOrigin(exchange.getRequestHeaders());
      gate.checkToken(key(exchange));
      need(exchange, "GET");
    } catch (Refused e) {
      exchange.sendResponseHeaders(e.status(), -1);
      return;
    }
    exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.sendResponseHeaders(Answer.OK, 0);
    OutputStream out = exchange.getResponseBody();
    SheetRun.State seen = null;
    try {
      do {
        seen = sheets.next(seen, HEARTBEAT);
        out.write(("data: " + seen.node() + "\n\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
      } while (seen.kind().equals("running"));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private JsonNode body(HttpExchange exchange) throws Refused, IOException {
    need(exchange, "POST");
    byte[] bytes = exchange.getRequestBody().readNBytes(LONGEST_BODY + 1);
    if (bytes.length > LONGEST_BODY) {
      throw new Refused(Refused.TOO_LARGE, "that is too long");
    }
    try {
      return mapper.readTree(bytes);
    } catch (JsonProcessingException e) {
      throw new Refused(Refused.BAD_REQUEST, "the request is not JSON");
    }
  }

  private static void need(HttpExchange exchange, String method) throws Refused {
    if (!exchange.getRequestMethod().equals(method)) {
      throw new Refused(Refused.WRONG_METHOD, "this address takes " + method + " only");
    }
  }

  private static String key(HttpExchange exchange) {
    String query = exchange.getRequestURI().getQuery();
    return query != null && query.startsWith("key=") ? query.substring("key=".length()) : null;
  }

  private static int number(String text) throws Refused {
    if (!text.matches("\\d{1,6}")) {
      throw new Refused(Refused.NOT_FOUND, "there is no such picture");
    }
    return Integer.parseInt(text);
  }

  private static LocalDate date(String text) throws Refused {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new Refused(Refused.NOT_FOUND, "there is no such day");
    }
  }

  /** Makes the pictures of the first view, so that it opens at once. */
  public void warmUp() {
    editing.warmUp(shelf);
  }
}
