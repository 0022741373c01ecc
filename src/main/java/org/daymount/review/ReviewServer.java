package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.output.OutputException;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.Surveyed;
import org.daymount.problem.UnusablePicture;
import org.daymount.start.UserFolders;

/**
 * The review's own web server, on the loopback address only. It answers at once; until the month is
 * open it tells how far the look at the pictures has come. GET shows, POST changes; everything that
 * is the person's needs the word printed at the start.
 */
public final class ReviewServer implements AutoCloseable {
  private static final String ENTER = "/api/enter";
  private static final String TICKET = "/api/ticket";
  private static final String PROGRESS = "/api/progress";
  private static final String OPENING = "/api/opening";
  private static final String EARLIER = "/earlier/";

  private static final int LAST_WORDS =
      1; // s, so that a page still hears why the month is not open

  static {
    ServerLimits.set();
  }

  private final ProgressState opening = new ProgressState();
  private final HttpServer server;
  private final ExecutorService workers;
  private final RequestGuard gate;
  private final Tickets tickets = new Tickets(System::nanoTime);
  private final String token;
  private final Optional<StartApi> start;
  private volatile Optional<ApiHandler> prepared = Optional.empty();
  private volatile ApiHandler desk;

  /**
   * Before any picture is looked at.
   *
   * @param folder where the month is made
   * @param month when it is known
   * @throws RunFailed when a review of it is open already, naming its address
   */
  public static void refuseSecond(Path folder, Optional<YearMonth> month) {
    ChoicesStore.refuseSecond(folder, month);
  }

  /**
   * Starts to answer; the month is shown later.
   *
   * @param port 0 for any that is free
   * @param token a word nobody can guess, new for each start
   * @throws RunFailed when the port is taken
   */
  public static ReviewServer start(int port, String token) {
    try {
      ReviewServer server = new ReviewServer(port, token, Optional.empty());
      server.opening.begin("finding pictures");
      return server;
    } catch (BindException e) {
      throw new RunFailed(
          "port " + port + " is taken or not allowed; choose another with --port, or leave it out");
    } catch (IOException e) {
      throw new RunFailed("the review cannot start: " + e.getMessage());
    }
  }

  /**
   * Starts to answer with the start page, where a month is chosen.
   *
   * @param opener does what is chosen there
   */
  public static ReviewServer startWithPage(String token, UserFolders user, MonthOpener opener) {
    try {
      return new ReviewServer(0, token, Optional.of(server -> new StartApi(user, opener, server)));
    } catch (IOException e) {
      throw new RunFailed("the start page cannot be shown: " + e.getMessage());
    }
  }

  private ReviewServer(int port, String token, Optional<Function<ReviewServer, StartApi>> startPage)
      throws IOException {
    this.token = token;
    this.start = startPage.map(page -> page.apply(this));
    InetAddress here = InetAddress.getByAddress("localhost", new byte[] {127, 0, 0, 1});
    this.server = HttpServer.create(new InetSocketAddress(here, port), 0);
    this.gate = new RequestGuard(server.getAddress().getPort(), token);
    this.workers = ServerLimits.workers();
    server.setExecutor(workers);
    server.createContext("/", this::handle);
    server.start();
  }

  /** All that is answered but the page's own files. */
  static List<Route> routes() {
    List<Route> all = new ArrayList<>(ApiHandler.routes());
    all.add(Route.get("/api/start"));
    StartApi.posted().forEach(each -> all.add(Route.post("/api/start/" + each)));
    List.of(ENTER, TICKET).forEach(each -> all.add(Route.post(each)));
    List.of(PROGRESS, OPENING, EARLIER + "*").forEach(each -> all.add(Route.get(each)));
    all.sort(Comparator.comparing(Route::address).thenComparing(Route::method));
    return all;
  }

  public int port() {
    return server.getAddress().getPort();
  }

  /** The address that lets one browser in, once: for a command line, which others can read. */
  public String addressForOnce() {
    return "http://127.0.0.1:" + port() + "/#ticket-" + tickets.issue();
  }

  /** Told how far the survey is, it tells those who have the page open already. */
  public Progress opening() {
    return opening;
  }

  /**
   * Makes the month ready to be shown; decodes what can still become a hero.
   *
   * @param writer makes the sheets, when asked to
   * @param cache of earlier runs
   * @throws RunFailed when choices.json or the note cannot be read
   */
  public void prepare(
      Pictures pictures, SheetWriter writer, Request request, Surveyed surveyed, Cache cache) {
    try {
      prepared =
          Optional.of(
              new ApiHandler(
                  pictures,
                  writer,
                  request,
                  surveyed,
                  cache,
                  opening,
                  "http://127.0.0.1:" + port()));
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

  /**
   * Another month is about to be opened; the one that is open, if any, is let go.
   *
   * @return false when something is being made
   */
  boolean beginMonth() {
    if (isBusy() || !opening.begin("finding pictures")) {
      return false;
    }
    desk = null;
    prepared.ifPresent(ApiHandler::close);
    prepared = Optional.empty();
    return true;
  }

  boolean isOpen() {
    return desk != null;
  }

  boolean isOpening() {
    return opening.now().isRunning();
  }

  /** Whether a month is being opened or its sheets are being made. */
  boolean isBusy() {
    ApiHandler month = desk;
    return isOpening() || month != null && month.board().now().isRunning();
  }

  /** Until the person ends the program on the start page. */
  public void awaitEnd() throws InterruptedException {
    start.orElseThrow().awaitEnd();
  }

  /** The month cannot be opened: whoever has the page open already hears why. */
  public void fail(String why) {
    opening.failed(why);
  }

  @Override
  public void close() {
    server.stop(desk == null ? LAST_WORDS : 0);
    workers.shutdownNow();
    prepared.ifPresent(ApiHandler::close);
  }

  private void handle(HttpExchange received) throws IOException {
    try (WebExchange exchange = new WebExchange(received)) {
      Optional<ProgressState> progress = Optional.empty();
      ApiResponse answer = null;
      try {
        gate.checkOrigin(exchange.headers());
        progress = progress(exchange);
        answer = progress.isPresent() ? null : answer(exchange);
      } catch (HttpException e) {
        answer = said(e.status(), e.getMessage());
      } catch (UnusablePicture e) {
        answer = said(HttpException.NOT_FOUND, e.getMessage());
      } catch (RunFailed | OutputException e) {
        answer = said(ApiResponse.FAILED, e.getMessage());
      } catch (IOException | RuntimeException e) {
        answer = said(ApiResponse.FAILED, "something went wrong that should not have (" + e + ")");
      }
      if (answer == null) {
        exchange.sendProgress(progress.orElseThrow());
      } else {
        exchange.send(answer);
      }
    }
  }

  private static ApiResponse said(int status, String message) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("message", message);
    return ApiResponse.json(status, node);
  }

  /** What is told as it goes on, when the address asks for that. */
  private Optional<ProgressState> progress(WebExchange exchange) throws HttpException {
    String path = exchange.path();
    if (!path.equals(PROGRESS) && !path.equals(OPENING)) {
      return Optional.empty();
    }
    gate.checkToken(exchange.key());
    exchange.needGet();
    return Optional.of(path.equals(OPENING) ? opening : desk().board());
  }

  private ApiResponse answer(WebExchange exchange)
      throws HttpException, UnusablePicture, IOException {
    return exchange.path().startsWith("/api/") ? api(exchange) : shown(exchange);
  }

  /** The page's files, open to all on this computer, and pictures, which need the word. */
  private ApiResponse shown(WebExchange exchange)
      throws HttpException, UnusablePicture, IOException {
    exchange.needGet();
    String path = exchange.path();
    if (ApiHandler.isPicture(path)) {
      gate.checkToken(exchange.key());
      return ApiResponse.jpeg(desk().picture(path.split("/")));
    }
    if (start.isPresent() && path.matches(EARLIER + "\\d{1,3}")) {
      gate.checkToken(exchange.key());
      return ApiResponse.jpeg(
          start.get().firstSheet(Integer.parseInt(path.substring(EARLIER.length()))));
    }
    return PageFiles.at(path);
  }

  private ApiResponse api(WebExchange exchange) throws HttpException, IOException {
    if (exchange.path().equals(ENTER)) {
      return entered(exchange);
    }
    gate.checkToken(exchange.headers().getFirst("X-Review-Token"));
    String what = exchange.path().substring("/api/".length());
    if (exchange.path().equals(TICKET)) { // asked by a second start of the program
      exchange.needPost();
      return one("address", addressForOnce());
    }
    Optional<JsonNode> posted = Optional.empty();
    if (ApiHandler.isPosted(what) || exchange.isPost() && isEither(what)) {
      exchange.needPost();
      posted = Optional.of(exchange.body());
    } else {
      exchange.needGet();
    }
    if (start.isEmpty() && what.equals("start")) {
      return ApiResponse.json(ApiResponse.OK, Map.of()); // a review of one month: no start page
    }
    return ApiResponse.json(
        ApiResponse.OK,
        start.isPresent() && StartApi.isOfStart(what)
            ? start.get().reply(what, posted)
            : desk().reply(what, posted));
  }

  /** A ticket handed in for the token: the one address that is asked without it. */
  private ApiResponse entered(WebExchange exchange) throws HttpException, IOException {
    exchange.needPost();
    if (!tickets.take(exchange.body().path("ticket").asText(""))) {
      throw new HttpException(
          HttpException.FORBIDDEN,
          "this address opens the page once, and was used or is too old; start Daymount again, and"
              + " it opens another");
    }
    return one("token", token);
  }

  private static ApiResponse one(String name, String value) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put(name, value);
    return ApiResponse.json(ApiResponse.OK, node);
  }

  /** Whether the method says what is asked at this address. */
  private boolean isEither(String what) {
    return ApiHandler.isOfView(what) || start.isPresent() && StartApi.isOfStart(what);
  }

  private ApiHandler desk() throws HttpException {
    if (desk == null) {
      throw new HttpException(HttpException.NOT_YET, "the pictures are still being looked at");
    }
    return desk;
  }
}
