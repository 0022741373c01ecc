package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.output.OutputException;
import org.daymount.pipeline.RunFailed;
import org.daymount.problem.UnusablePicture;

/** Who answers which address, after the {@link RequestGuard} has let the request pass. */
final class RequestRouter {
  private static final String ENTER = "/api/enter";
  private static final String TICKET = "/api/ticket";
  private static final String PROGRESS = "/api/progress";
  private static final String OPENING = "/api/opening";
  private static final String EARLIER = "/earlier/";

  private final ReviewServer server;
  private final Tickets tickets;
  private final String token;
  private final RequestGuard guard;

  RequestRouter(ReviewServer server, Tickets tickets, String token) {
    this.server = server;
    this.tickets = tickets;
    this.token = token;
    this.guard = new RequestGuard(server.port(), token);
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

  void handle(HttpExchange received) throws IOException {
    try (WebExchange exchange = new WebExchange(received)) {
      Optional<ProgressState> progress = Optional.empty();
      ApiResponse answer = null;
      try {
        guard.checkOrigin(exchange.headers());
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
    return ApiResponse.json(status, Map.of("message", message));
  }

  /** What is told as it goes on, when the address asks for that. */
  private Optional<ProgressState> progress(WebExchange exchange) throws HttpException {
    String path = exchange.path();
    if (!path.equals(PROGRESS) && !path.equals(OPENING)) {
      return Optional.empty();
    }
    guard.checkToken(exchange.key());
    exchange.needGet();
    return Optional.of(path.equals(OPENING) ? server.openingState() : server.month().progress());
  }

  private ApiResponse answer(WebExchange exchange)
      throws HttpException, UnusablePicture, IOException {
    return exchange.path().startsWith("/api/") ? api(exchange) : shown(exchange);
  }

  /** The page's files, open to all on this computer, and pictures, which need the token. */
  private ApiResponse shown(WebExchange exchange)
      throws HttpException, UnusablePicture, IOException {
    exchange.needGet();
    String path = exchange.path();
    if (ApiHandler.isPicture(path)) {
      guard.checkToken(exchange.key());
      return ApiResponse.jpeg(server.month().picture(path.split("/")));
    }
    if (start().isPresent() && path.matches(EARLIER + "\\d{1,3}")) {
      guard.checkToken(exchange.key());
      return ApiResponse.jpeg(
          start().get().firstSheet(Integer.parseInt(path.substring(EARLIER.length()))));
    }
    return PageFiles.at(path);
  }

  private ApiResponse api(WebExchange exchange) throws HttpException, IOException {
    if (exchange.path().equals(ENTER)) {
      return entered(exchange);
    }
    guard.checkToken(exchange.headers().getFirst("X-Review-Token"));
    String what = exchange.path().substring("/api/".length());
    if (exchange.path().equals(TICKET)) { // asked by a second start of the program
      exchange.needPost();
      return one("address", server.addressForOnce());
    }
    Optional<JsonNode> posted = Optional.empty();
    if (ApiHandler.isPosted(what) || exchange.isPost() && isEither(what)) {
      exchange.needPost();
      posted = Optional.of(exchange.body());
    } else {
      exchange.needGet();
    }
    if (start().isEmpty() && what.equals("start")) {
      return ApiResponse.json(ApiResponse.OK, Map.of()); // a review of one month: no start page
    }
    return ApiResponse.json(
        ApiResponse.OK,
        start().isPresent() && StartApi.isOfStart(what)
            ? start().get().reply(what, posted)
            : server.month().reply(what, posted));
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
    return ApiResponse.json(ApiResponse.OK, Map.of(name, value));
  }

  /** Whether the method says what is asked at this address. */
  private boolean isEither(String what) {
    return ApiHandler.isOfView(what) || start().isPresent() && StartApi.isOfStart(what);
  }

  private Optional<StartApi> start() {
    return server.start();
  }
}
