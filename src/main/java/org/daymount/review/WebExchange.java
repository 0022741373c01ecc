package org.daymount.review;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/** One request and its answer, with what holds for all of them. */
final class WebExchange implements AutoCloseable {
  private static final int LONGEST_BODY = 200_000; // bytes
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Nothing but the page's own files; no inline script, no frame, no form, no other host. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  private final HttpExchange exchange;

  WebExchange(HttpExchange exchange) {
    this.exchange = exchange;
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("X-Frame-Options", "DENY");
    // pictures are the person's and addresses hold the token: no browser writes either to its disk
    headers.set("Cache-Control", "no-store");
  }

  Headers headers() {
    return exchange.getRequestHeaders();
  }

  /** Without the query; empty for a request that names none. */
  String path() {
    String path = exchange.getRequestURI().getPath();
    return path == null ? "" : path;
  }

  /** The token, of an address that carries it: where a browser cannot be told to send a header. */
  String key() {
    String query = exchange.getRequestURI().getQuery();
    return query != null && query.startsWith("key=") ? query.substring("key=".length()) : null;
  }

  /** Whoever may GET may ask with HEAD what GET would answer (RFC 9110, 9.3.2). */
  void needGet() throws HttpException {
    need("GET", "HEAD");
  }

  boolean isPost() {
    return exchange.getRequestMethod().equals("POST");
  }

  void needPost() throws HttpException {
    need("POST");
  }

  private void need(String... methods) throws HttpException {
    if (!Arrays.asList(methods).contains(exchange.getRequestMethod())) {
      // RFC 9110, 15.5.6
      exchange.getResponseHeaders().put("Allow", List.of(String.join(", ", methods)));
      throw new HttpException(
          HttpException.WRONG_METHOD, "this address takes " + methods[0] + " only");
    }
  }

  private boolean wantsHeadersOnly() {
    return exchange.getRequestMethod().equals("HEAD");
  }

  JsonNode body() throws HttpException, IOException {
    byte[] bytes = exchange.getRequestBody().readNBytes(LONGEST_BODY + 1);
    if (bytes.length > LONGEST_BODY) {
      throw new HttpException(HttpException.TOO_LARGE, "that is too long");
    }
    try {
      return JSON.readTree(bytes);
    } catch (JsonProcessingException e) {
      throw new HttpException(HttpException.BAD_REQUEST, "the request is not JSON");
    }
  }

  void send(ApiResponse answer) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Type", answer.type());
    if (wantsHeadersOnly()) {
      headers.set("Content-Length", Integer.toString(answer.body().length));
      exchange.sendResponseHeaders(answer.status(), -1);
    } else {
      exchange.sendResponseHeaders(answer.status(), answer.body().length);
      exchange.getResponseBody().write(answer.body());
    }
  }

  /** Server-sent events (WHATWG HTML, 9.2) until the browser goes away or the run has ended. */
  void sendProgress(ProgressState state) throws IOException {
    exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
    if (wantsHeadersOnly()) {
      exchange.sendResponseHeaders(ApiResponse.OK, -1);
      return;
    }
    exchange.sendResponseHeaders(ApiResponse.OK, 0);
    state.tellUntilEnd(exchange.getResponseBody());
  }

  @Override
  public void close() {
    exchange.close();
  }
}
