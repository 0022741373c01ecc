package org.daymount.review;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.cli.CommandLines;

/** {@code daymount review} at work, started as a person would. */
final class RunningReview implements AutoCloseable {
  private static final Pattern ADDRESS =
      Pattern.compile("http://127\\.0\\.0\\.1:(\\d+)/#([0-9a-f]{32})");

  private final Thread command;
  private final ByteArrayOutputStream err;
  private final int port;
  private final String token;

  private RunningReview(Thread command, ByteArrayOutputStream err, int port, String token) {
    this.command = command;
    this.err = err;
    this.port = port;
    this.token = token;
  }

  /** Once the month is open. */
  static RunningReview start(String... arguments) throws Exception {
    RunningReview review = startOpening(arguments);
    review.awaitOpen();
    return review;
  }

  /** As soon as the address is known; the pictures are still being looked at. */
  static RunningReview startOpening(String... arguments) throws InterruptedException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    List<String> all = new ArrayList<>(List.of("review", "--quiet"));
    all.addAll(List.of(arguments));
    return started(all, out, err);
  }

  /** {@code daymount open} for a person whose home is that folder; no browser is opened. */
  static RunningReview startPage(Path home) throws InterruptedException {
    return started(
        List.of("open", "--no-browser", "--home", home.toString()),
        new ByteArrayOutputStream(),
        new ByteArrayOutputStream());
  }

  private static RunningReview started(
      List<String> all, ByteArrayOutputStream out, ByteArrayOutputStream err)
      throws InterruptedException {
    Thread command =
        new Thread(
            () ->
                CommandLines.runHere(
                    new PrintStream(out, true, StandardCharsets.UTF_8),
                    new PrintStream(err, true, StandardCharsets.UTF_8),
                    all.toArray(String[]::new)),
            "daymount review");
    command.start();
    boolean runs = true;
    while (runs) {
      runs = command.isAlive(); // asked first: one that ends at once has said all by then
      Matcher address = ADDRESS.matcher(out.toString(StandardCharsets.UTF_8));
      if (address.find()) {
        return new RunningReview(
            command, err, Integer.parseInt(address.group(1)), address.group(2));
      }
      Thread.sleep(50);
    }
    throw new AssertionError("the review ended: " + err.toString(StandardCharsets.UTF_8));
  }

  void awaitOpen() throws Exception {
    while (get("/api/month").statusCode() == 503) {
      if (!command.isAlive()) {
        throw new AssertionError("the review ended: " + err.toString(StandardCharsets.UTF_8));
      }
      Thread.sleep(50);
    }
  }

  /** Whether it ended by itself within two minutes, which is seconds on an idle machine. */
  boolean hasEnded() throws InterruptedException {
    command.join(120_000);
    return !command.isAlive();
  }

  String address() {
    return origin() + "/#" + token;
  }

  String origin() {
    return "http://127.0.0.1:" + port;
  }

  int port() {
    return port;
  }

  String token() {
    return token;
  }

  HttpResponse<String> get(String path) throws Exception {
    return send(request(path).GET().build());
  }

  HttpResponse<String> post(String path, String json) throws Exception {
    return send(request(path).POST(HttpRequest.BodyPublishers.ofString(json)).build());
  }

  HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(origin() + path)).header("X-Review-Token", token);
  }

  static HttpResponse<String> send(HttpRequest request) throws Exception {
    return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
  }

  @Override
  public void close() throws InterruptedException {
    command.interrupt();
    command.join(20_000);
    if (command.isAlive()) {
      throw new AssertionError("the review did not end");
    }
  }
}
