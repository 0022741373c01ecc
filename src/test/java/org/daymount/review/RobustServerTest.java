package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The server against clients that do not behave, before any month is open. */
@Tag("slow")
class RobustServerTest {
  private static final String WORD = "0123456789abcdef0123456789abcdef";
  private static ReviewServer server;

  @BeforeAll
  static void start() {
    server = ReviewServer.start(0, WORD);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path))
        .header("X-Review-Token", WORD);
  }

  /** The connection may be silent, stop inside a line, or promise a body and not send it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "GET / HT",
        "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX-Slow: ",
        "POST /api/change HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nX-Review-Token: "
            + WORD
            + "\r\nContent-Length: 9\r\n\r\n{"
      })
  void aConnectionThatNeverFinishesItsRequestIsClosed(String begun) throws Exception {
    try (Socket socket = new Socket("127.0.0.1", server.port())) {
      socket.getOutputStream().write(ascii(begun.formatted(server.port())));
      socket.setSoTimeout(4_000 + 2_000 * ServerLimits.LONGEST_REQUEST);
      byte[] said = new byte[10_000];
      int end = 0;
      try {
        while (end >= 0) { // a timeout here is the failure
          end = socket.getInputStream().read(said);
        }
      } catch (java.net.SocketException reset) {
        assertTrue(reset.getMessage().contains("reset"), reset.getMessage());
      }
    }
    assertEquals(200, RunningReview.send(request("/").build()).statusCode());
  }

  @Test
  void manyOpenConnectionsDoNotKeepOthersOut() throws Exception {
    List<Socket> sockets = new ArrayList<>();
    try {
      for (int i = 0; i < 300; i++) {
        Socket socket = new Socket("127.0.0.1", server.port());
        sockets.add(socket);
        socket.getOutputStream().write(ascii("GET / HTTP/1.1\r\nHost: "));
      }
      long until = System.nanoTime() + 3_000_000_000L * ServerLimits.LONGEST_REQUEST;
      while (!answers() && System.nanoTime() < until) {
        Thread.sleep(100);
      }
      assertTrue(answers(), "still kept out");
    } finally {
      for (Socket socket : sockets) {
        socket.close();
      }
    }
  }

  private static boolean answers() throws Exception {
    try {
      return RunningReview.send(request("/").build()).statusCode() == 200;
    } catch (IOException closedUnanswered) {
      return false;
    }
  }

  /** RFC 9110, 9.3.2: the same headers as GET would give, and no content. */
  @ParameterizedTest
  @ValueSource(strings = {"/", "/review.css", "/api/month", "/nowhere", "/picture/p0/0/240"})
  void headIsAnsweredLikeGetWithoutContent(String path) throws Exception {
    String address = path + "?key=" + WORD;
    HttpResponse<String> got = RunningReview.send(request(address).GET().build());
    HttpResponse<String> head =
        RunningReview.send(
            request(address).method("HEAD", HttpRequest.BodyPublishers.noBody()).build());
    assertEquals(got.statusCode(), head.statusCode());
    assertEquals("", head.body());
    for (String name : new String[] {"content-type", "content-length", "cache-control"}) {
      assertEquals(got.headers().firstValue(name), head.headers().firstValue(name), name);
    }
    assertEquals(
        got.body().getBytes(StandardCharsets.UTF_8).length,
        head.headers().firstValueAsLong("content-length").orElse(-1));
  }

  @Test
  void headOfTheProgressEndsAtOnce() throws Exception {
    HttpResponse<String> head =
        RunningReview.send(
            request("/api/opening?key=" + WORD)
                .method("HEAD", HttpRequest.BodyPublishers.noBody())
                .build());
    assertEquals(200, head.statusCode());
    assertEquals("text/event-stream", head.headers().firstValue("content-type").orElse(""));
  }

  @Test
  void aMethodThatIsNotTakenIsToldWhichOnesAre() throws Exception {
    HttpResponse<String> reply = RunningReview.send(request("/review.css").DELETE().build());
    assertEquals(405, reply.statusCode());
    assertEquals("GET, HEAD", reply.headers().firstValue("allow").orElse(""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET  HTTP/1.1", "nonsense", "GET mailto:someone HTTP/1.1", "OPTIONS * HTTP/1.1",
        "GET /%zz HTTP/1.1", "GET //////// HTTP/9.9", "\u0000\u0001\u0002", "GET http:// HTTP/1.1"
      })
  void aRequestThatMakesNoSenseHarmsNobody(String line) throws Exception {
    try (Socket socket = new Socket("127.0.0.1", server.port())) {
      socket.setSoTimeout(4_000 + 2_000 * ServerLimits.LONGEST_REQUEST);
      socket
          .getOutputStream()
          .write(
              ascii(
                  line + "\r\nHost: 127.0.0.1:" + server.port() + "\r\nConnection: close\r\n\r\n"));
      String reply = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(!reply.startsWith("HTTP/1.1 200"), reply);
    }
    assertEquals(200, RunningReview.send(request("/").build()).statusCode());
  }

  /** RFC 9111, 5.2.2.5: nothing of it is written to a browser's disk. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/review.js",
        "/api/month",
        "/picture/p0/0/240",
        "/api/progress",
        "/sheet/0/1"
      })
  void noAnswerIsKeptByABrowser(String path) throws Exception {
    HttpResponse<String> reply = RunningReview.send(request(path + "?key=" + WORD).GET().build());
    assertEquals("no-store", reply.headers().firstValue("cache-control").orElse(""));
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
