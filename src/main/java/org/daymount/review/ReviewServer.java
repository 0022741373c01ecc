package org.daymount.review;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.Survey;
import org.daymount.start.UserFolders;

/**
 * The review's own web server, on the loopback address only. It answers at once; until the month is
 * open it tells how far the look at the pictures has come. GET shows, POST changes; everything that
 * is the person's needs the token printed at the start.
 */
public final class ReviewServer implements AutoCloseable {
  /** Seconds, so that a page still hears why the month is not open. */
  private static final int LAST_WORDS = 1;

  static {
    ServerLimits.set();
  }

  private final ProgressState opening = new ProgressState();
  private final HttpServer server;
  private final ExecutorService workers;
  private final Tickets tickets = new Tickets(System::nanoTime);
  private final Optional<StartApi> start;
  private volatile Optional<ApiHandler> prepared = Optional.empty();
  private volatile ApiHandler shown;

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
    this.start = startPage.map(page -> page.apply(this));
    InetAddress here = InetAddress.getByAddress("localhost", new byte[] {127, 0, 0, 1});
    this.server = HttpServer.create(new InetSocketAddress(here, port), 0);
    this.workers = ServerLimits.workers();
    server.setExecutor(workers);
    server.createContext("/", new RequestRouter(this, tickets, token)::handle);
    server.start();
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
      Pictures pictures, SheetWriter writer, Request request, Survey surveyed, Cache cache) {
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
    shown = prepared.orElseThrow();
    opening.done("");
    shown.warmUp();
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
    shown = null;
    prepared.ifPresent(ApiHandler::close);
    prepared = Optional.empty();
    return true;
  }

  boolean isOpen() {
    return shown != null;
  }

  ProgressState openingState() {
    return opening;
  }

  boolean isOpening() {
    return opening.now().isRunning();
  }

  /** Whether a month is being opened or its sheets are being made. */
  boolean isBusy() {
    ApiHandler month = shown;
    return isOpening() || month != null && month.progress().now().isRunning();
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
    server.stop(shown == null ? LAST_WORDS : 0);
    workers.shutdownNow();
    prepared.ifPresent(ApiHandler::close);
  }

  /**
   * @throws HttpException while no month is open
   */
  ApiHandler month() throws HttpException {
    ApiHandler month = shown;
    if (month == null) {
      throw new HttpException(HttpException.NOT_YET, "the pictures are still being looked at");
    }
    return month;
  }

  Optional<StartApi> start() {
    return start;
  }
}
