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
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.daymount.image.Pictures;
import org.daymount.look.cache.Memory;
import org.daymount.month.MonthJson;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.Surveyed;
import org.daymount.problem.UnusablePicture;

/**
 * The review's own web server, on the loopback address only. It answers at once; until the month is
 * open it tells how far the look at the pictures has come. GET shows, POST changes; everything that
 * is the person's needs the word printed at the start.
 */
public final class ReviewServer implements AutoCloseable {
  private static final int LONGEST_BODY = 200_000; // bytes
  private static final long HEARTBEAT = 15_000; // ms
  private static final long BETWEEN_NEWS = 100; // ms; steps may come much faster
  private static final int LAST_WORDS =
      1; // s, so that a page still hears why the month is not open

  /** Nothing but the page's own files; no inline script, no frame, no form, no other host. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  private final ObjectMapper mapper = new ObjectMapper();
  private final ProgressState opening = new ProgressState();
  private final HttpServer server;
  private final ExecutorService workers;
  private final RequestGuard gate;
  private Optional<ApiHandler> prepared = Optional.empty();
  private volatile ApiHandler desk;

  /**
   * Starts to answer; the month is shown later.
   *
   * @param port 0 for any that is free
   * @param token a word nobody can guess, new for each start
   * @throws RunFailed when the port is taken
   */
  public static ReviewServer start(int port, String token) {
    try {
      return new ReviewServer(port, token);
    } catch (BindException e) {
      throw new RunFailed(
          "port " + port + " is taken or not allowed; choose another with --port, or leave it out");
    } catch (IOException e) {
      throw new RunFailed("the review cannot start: " + e.getMessage());
    }
  }

  private ReviewServer(int port, String token) throws IOException {
    opening.begin("finding pictures");
    InetAddress here = InetAddress.getByAddress("localhost", new byte[] {127, 0, 0, 1});
    this.server = HttpServer.create(new InetSocketAddress(here, port), 0);
    this.gate = new RequestGuard(server.getAddress().getPort(), token);
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

  /** Told how far the survey is, it tells those who have the page open already. */
  public Progress opening() {
    return opening;
  }

  /**
   * Makes the month ready to be shown; decodes what can still become a hero.
   *
   * @param memory of earlier runs
   * @throws RunFailed when choices.json or the note cannot be read
   */
  public void prepare(
      Pictures pictures,
      MonthJson json,
      Request request,
      Surveyed surveyed,
      Optional<Memory> memory) {
    try {
      prepared = Optional.of(new ApiHandler(pictures, json, request, surveyed, memory));
    } catch (IOException e) {
      throw new RunFailed("the review cannot start: " + e.getMessage());
    }
  }

  /**
   * Shows the prepared month, and makes the pictures of its first view before they are asked for.
   */
  public void open() {
    desk = prepared.orElseThrow();
    opening.done("");
    desk.warmUp();
  }

  /** The month cannot be opened: whoever has the page open already hears why. */
  public void fail(String why) {
    opening.failed(why);
  }

  @Override
  public void close() {
    server.stop(desk == null ? LAST_WORDS : 0);
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
      String path = exchange.getRequestURI().getPath();
      if (path.equals("/api/progress") || path.equals("/api/opening")) {
        progress(exchange, path.endsWith("opening"));
        return;
      }
      ApiResponse answer = answer(exchange);
      headers.set("Content-Type", answer.type());
      headers.set(
          "Cache-Control", answer.keep() ? "private, max-age=86400, immutable" : "no-store");
      exchange.sendResponseHeaders(answer.status(), answer.body().length);
      exchange.getResponseBody().write(answer.body());
    }
  }

  private ApiResponse answer(HttpExchange exchange) throws IOException {
    try {
      gate.checkOrigin(exchange.getRequestHeaders());
      return exchange.getRequestURI().getPath().startsWith("/api/")
          ? api(exchange)
          : shown(exchange);
    } catch (HttpException e) {
      return said(e.status(), e.getMessage());
    } catch (UnusablePicture e) {
      return said(HttpException.NOT_FOUND, e.getMessage());
    } catch (RunFailed e) {
      return said(ApiResponse.FAILED, e.getMessage());
    } catch (IOException e) {
      return said(ApiResponse.FAILED, "not saved: " + e.getMessage());
    } catch (RuntimeException e) {
      return said(ApiResponse.FAILED, "something went wrong that should not have (" + e + ")");
    }
  }

  private static ApiResponse said(int status, String message) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("message", message);
    return ApiResponse.json(status, node);
  }

  /** The page's files, open to all on this computer, and pictures, which need the word. */
  private ApiResponse shown(HttpExchange exchange) throws HttpException, IOException {
    need(exchange, "GET");
    String path = exchange.getRequestURI().getPath();
    if (path.matches("/(picture|detail|sheet)/.*")) {
      gate.checkToken(key(exchange));
      return ApiResponse.jpeg(desk().picture(path.split("/")));
    }
    String file = path.equals("/") ? "review.html" : path.substring(1);
    String type =
        ApiResponse.typeOf(file)
            .orElseThrow(() -> new HttpException(HttpException.NOT_FOUND, "there is no such page"));
    try (InputStream in = ReviewServer.class.getResourceAsStream(file)) {
      return new ApiResponse(ApiResponse.OK, type, in.readAllBytes(), false);
    }
  }

  private ApiResponse api(HttpExchange exchange) throws HttpException, IOException {
    gate.checkToken(exchange.getRequestHeaders().getFirst("X-Review-Token"));
    String what = exchange.getRequestURI().getPath().substring("/api/".length());
    need(exchange, ApiHandler.isPosted(what) ? "POST" : "GET");
    JsonNode body =
        ApiHandler.isPosted(what) ? body(exchange) : JsonNodeFactory.instance.objectNode();
    return ApiResponse.json(ApiResponse.OK, desk().reply(what, body));
  }

  private ApiHandler desk() throws HttpException {
    if (desk == null) {
      throw new HttpException(HttpException.NOT_YET, "the pictures are still being looked at");
    }
    return desk;
  }

  /** Server-sent events (WHATWG HTML, 9.2) until the browser goes away or the run has ended. */
  private void progress(HttpExchange exchange, boolean ofOpening) throws IOException {
    ProgressState board;
    try {
      gate.checkOrigin(exchange.getRequestHeaders());
      gate.checkToken(key(exchange));
      need(exchange, "GET");
      board = ofOpening ? opening : desk().board();
    } catch (HttpException e) {
      exchange.sendResponseHeaders(e.status(), -1);
      return;
    }
    exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
    exchange.getResponseHeaders().set("Cache-Control", "no-store");
    exchange.sendResponseHeaders(ApiResponse.OK, 0);
    OutputStream out = exchange.getResponseBody();
    ProgressState.State seen = null;
    try {
      do {
        seen = board.next(seen, HEARTBEAT);
        out.write(("data: " + seen.node() + "\n\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
        Thread.sleep(seen.isRunning() ? BETWEEN_NEWS : 0);
      } while (seen.isRunning());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private JsonNode body(HttpExchange exchange) throws HttpException, IOException {
    byte[] bytes = exchange.getRequestBody().readNBytes(LONGEST_BODY + 1);
    if (bytes.length > LONGEST_BODY) {
      throw new HttpException(HttpException.TOO_LARGE, "that is too long");
    }
    try {
      return mapper.readTree(bytes);
    } catch (JsonProcessingException e) {
      throw new HttpException(HttpException.BAD_REQUEST, "the request is not JSON");
    }
  }

  private static void need(HttpExchange exchange, String method) throws HttpException {
    if (!exchange.getRequestMethod().equals(method)) {
      throw new HttpException(HttpException.WRONG_METHOD, "this address takes " + method + " only");
    }
  }

  private static String key(HttpExchange exchange) {
    String query = exchange.getRequestURI().getQuery();
    return query != null && query.startsWith("key=") ? query.substring("key=".length()) : null;
  }
}
