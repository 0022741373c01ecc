package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The attacks on the review, on every address that its server knows. */
@Tag("slow")
class StartAttacksTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SECRET = "the words of a diary";

  /** Asked without the word: for a ticket, which has a test of its own. */
  private static final String ENTER = "/api/enter";

  /** Every address that shows or changes something of the person's, from the server's tables. */
  private static final List<String> POSTED = addresses(true);

  private static final List<String> SHOWN = addresses(false);

  private static final List<String> EVERY =
      Stream.of(POSTED, SHOWN, List.of(ENTER)).flatMap(List::stream).toList();

  private static List<String> addresses(boolean posted) {
    return RequestRouter.routes().stream()
        .filter(each -> each.isPost() == posted && !each.address().equals(ENTER))
        .map(each -> each.address().replace("*", "0"))
        .toList();
  }

  @TempDir static Path home;
  private static RunningReview start;
  private static Path photos;
  private static String folder;

  /** A month is open, and its sheets are not made. */
  @BeforeAll
  static void openAMonth() throws Exception {
    photos = SmallMonth.paint(home.resolve("Pictures/June"));
    Files.writeString(home.resolve("diary.txt"), SECRET);
    start = RunningReview.startPage(home);
    folder = typed(photos.toString()).at("/folder/id").asText();
    ObjectNode wish = JSON.createObjectNode().put("month", "2026-06");
    wish.putArray("folders").add(folder);
    assertEquals(200, start.post("/api/start/open", wish.toString()).statusCode());
    start.awaitOpen();
  }

  @AfterAll
  static void end() throws Exception {
    start.close();
    try (Stream<Path> there = Files.walk(home)) {
      List<String> unexpected =
          there
              .map(file -> home.relativize(file).toString())
              .filter(name -> !name.isEmpty())
              .filter(
                  name ->
                      !name.matches(
                          "(Pictures|Daymount|\\.config|diary\\.txt|links)(/.*)?|\\.cache.*"))
              .toList();
      assertEquals(List.of(), unexpected, "nothing was written anywhere else");
    }
  }

  private static JsonNode typed(String place) throws Exception {
    String body = JSON.createObjectNode().put("typed", place).toString();
    return JSON.readTree(start.post("/api/start/folder", body).body());
  }

  /** What the page's scripts ask for is in the tables that the attacks are taken from. */
  @Test
  void theScriptsAskNothingThatIsNotInTheTables() throws Exception {
    Pattern asked = Pattern.compile("\\b(get|post|begin)\\([`']([a-z]+(?:/[a-z]+)?)");
    TreeSet<String> unknown = new TreeSet<>();
    int found = 0;
    try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/org/daymount/review"))) {
      for (Path script : scripts.filter(each -> each.toString().endsWith(".js")).toList()) {
        Matcher call = asked.matcher(Files.readString(script));
        while (call.find()) {
          found++;
          String address = "/api/" + call.group(2);
          boolean posts = !call.group(1).equals("get");
          if (!(posts ? POSTED : SHOWN).contains(address)
              && !EVERY.contains(address)
              && !SHOWN.contains(address + "/0")) {
            unknown.add(script.getFileName() + " " + call.group());
          }
        }
      }
    }
    assertTrue(found > 12, found + " calls found");
    assertEquals(new TreeSet<>(), unknown);
  }

  @Test
  void withoutTheWordOrWithAnotherStartsWordNothingIsShownOrDone() throws Exception {
    for (String word :
        new String[] {null, "", "0".repeat(32), start.token().toUpperCase(), "null"}) {
      for (String path : POSTED) {
        HttpRequest.Builder asked = HttpRequest.newBuilder(URI.create(start.origin() + path));
        if (word != null) {
          asked.header("X-Review-Token", word);
        }
        HttpResponse<String> reply =
            RunningReview.send(asked.POST(BodyPublishers.ofString("{\"sure\":true}")).build());
        if (!start.token().equals(word)) { // all digits: the same in capitals
          assertEquals(403, reply.statusCode(), path + " with " + word);
        }
      }
      for (String path : SHOWN) {
        String address = start.origin() + path + (word == null ? "" : "?key=" + word);
        assertEquals(
            403,
            RunningReview.send(HttpRequest.newBuilder(URI.create(address)).build()).statusCode(),
            path + " with " + word);
      }
    }
    assertEquals(200, start.get("/api/start").statusCode());
  }

  @Test
  void aForeignHostIsTurnedAwayEverywhere() throws Exception {
    for (String host :
        List.of(
            "evil.example:" + start.port(),
            "127.0.0.1",
            "127.0.0.1:1",
            "127.0.0.1.evil.example:" + start.port(),
            "[::1]:" + start.port(),
            "0.0.0.0:" + start.port(),
            "2130706433:" + start.port())) {
      for (String path : EVERY) {
        String method = SHOWN.contains(path) ? "GET" : "POST";
        assertTrue(
            raw(method, path, "Host: " + host, "{\"sure\":true}").startsWith("HTTP/1.1 403"),
            host + path);
      }
    }
    String two = "Host: 127.0.0.1:" + start.port() + "\r\nHost: evil.example";
    assertFalse(raw("GET", "/api/start", two, "").startsWith("HTTP/1.1 200"), "two hosts");
    assertEquals(200, start.get("/api/start").statusCode());
  }

  @Test
  void aForeignOriginOrSiteIsTurnedAwayThoughItKnowsTheWord() throws Exception {
    for (String header :
        List.of(
            "Origin: http://evil.example",
            "Origin: null",
            "Origin: https://127.0.0.1:" + start.port(),
            "Origin: http://localhost:" + start.port(), // not the host that was asked
            "Origin: http://127.0.0.1:1",
            "Sec-Fetch-Site: cross-site",
            "Sec-Fetch-Site: same-site")) {
      for (String path : EVERY) {
        String method = SHOWN.contains(path) ? "GET" : "POST";
        String host = "Host: 127.0.0.1:" + start.port() + "\r\n" + header;
        assertTrue(
            raw(method, path + "?key=" + start.token(), host, "{\"sure\":true}")
                .startsWith("HTTP/1.1 403"),
            header + " " + path);
      }
    }
  }

  @Test
  void nothingThatIsPostedCanBeAskedByALink() throws Exception {
    for (String path : POSTED) {
      int status = start.get(path + "?key=" + start.token()).statusCode();
      assertTrue(status == 404 || status == 405, path + " " + status);
    }
  }

  /**
   * Path traversal in sixty spellings and more (after OWASP's list), wherever something is named.
   */
  @Test
  void noSpellingOfAPathReachesAFileOrFolderThatWasNotListed() throws Exception {
    TreeSet<String> spellings = new TreeSet<>();
    for (String up :
        List.of(
            "..", "%2e%2e", "%252e%252e", "..%c0%af", "..%ef%bc%8f", "....", ".%2e", "\u2025")) {
      for (String slash : List.of("/", "%2f", "\\", "%5c", "//", "/./", "%00/")) {
        spellings.add(up + slash + "diary.txt");
        spellings.add(up + slash + up + slash + "diary.txt");
      }
    }
    spellings.addAll(
        List.of(
            home.resolve("diary.txt").toString(),
            home.resolve("diary.txt").toUri().toString(),
            "~/diary.txt",
            "C:\\diary.txt",
            "\\\\?\\C:\\diary.txt",
            "sheets/../../../diary.txt",
            "sheets.pdf/../../../diary.txt",
            ".daymount-cache",
            "choices.json",
            "sheets/sheet-01.jpg",
            "sheets.pdf\u0000",
            " "));
    assertTrue(spellings.size() >= 60, spellings.size() + " spellings");
    for (String spelling : spellings) {
      for (String[] asked :
          new String[][] {
            {"/api/start/folder", "{'in':%s}"},
            {"/api/start/dates", "{'folders':[%s]}"},
            {"/api/start/texts", "{'folders':[%s],'month':'2026-06'}"},
            {"/api/start/open", "{'folders':[%s],'month':'2026-06'}"},
            {"/api/start/show", "{'file':%s}"},
            {"/api/card", "{'day':%s,'text':'x'}"},
          }) {
        String body = asked[1].replace('\'', '"').formatted(JSON.writeValueAsString(spelling));
        HttpResponse<String> reply = start.post(asked[0], body);
        assertEquals(404, reply.statusCode(), asked[0] + " " + body);
        assertFalse(reply.body().contains(SECRET));
      }
      for (String under : below()) {
        String reply =
            raw("GET", under + spelling.replace(" ", "%20"), "Host: 127.0.0.1:" + start.port(), "");
        assertFalse(reply.startsWith("HTTP/1.1 200"), under + spelling);
        assertFalse(reply.contains(SECRET), under + spelling);
      }
    }
  }

  /** Every folder there is among the addresses. */
  private static TreeSet<String> below() {
    TreeSet<String> folders = new TreeSet<>();
    for (Route route : RequestRouter.routes()) {
      for (int at = 0; at >= 0; at = route.address().indexOf('/', at + 1)) {
        folders.add(route.address().substring(0, at + 1).replace("*", "0"));
      }
    }
    assertTrue(folders.containsAll(List.of("/", "/earlier/", "/api/day/", "/picture/0/0/")));
    return folders;
  }

  /** What is typed is a folder or nothing, and is told apart from a file by no more than that. */
  @Test
  void aTypedPathShowsNoFileAndNoHiddenFolder() throws Exception {
    Path hidden = Files.createDirectories(home.resolve(".config/hidden/below"));
    Path links = Files.createDirectories(home.resolve("links"));
    Files.createSymbolicLink(links.resolve("to-hidden"), hidden);
    Files.createSymbolicLink(links.resolve("to-itself"), links.resolve("to-itself"));
    Files.createSymbolicLink(links.resolve("up"), links);
    Files.createSymbolicLink(links.resolve("to-a-file"), home.resolve("diary.txt"));
    for (Path place :
        List.of(
            hidden,
            links.resolve("to-hidden"),
            links.resolve("to-itself"),
            links.resolve("to-a-file"),
            home.resolve("diary.txt"),
            home.resolve("nothing"),
            links.resolve("up/to-hidden/.."))) {
      String body = JSON.createObjectNode().put("typed", place.toString()).toString();
      HttpResponse<String> reply = start.post("/api/start/folder", body);
      assertEquals(400, reply.statusCode(), place + " " + reply.body());
      assertFalse(reply.body().contains(SECRET));
    }
    JsonNode listed = typed(links.toString());
    List<String> names = new ArrayList<>();
    listed.path("folders").forEach(each -> names.add(each.path("name").asText()));
    assertEquals(List.of("up"), names, "a link is shown where it leads to a folder in sight");
    assertEquals(links.toRealPath().toString(), listed.at("/folders/0/place").asText());
    assertTrue(listed.at("/folders/0/link").asBoolean());
  }

  /** A number that was handed out may have become a link into a hidden folder since. */
  @Test
  void aFolderThatIsExchangedForALinkIsLookedAtAnew() throws Exception {
    Path real = Files.createDirectories(home.resolve("Pictures/changing"));
    String id = typed(real.toString()).at("/folder/id").asText();
    Files.delete(real);
    Files.createSymbolicLink(real, Files.createDirectories(home.resolve(".config/secret")));
    String body = JSON.createObjectNode().put("in", id).toString();
    assertEquals(400, start.post("/api/start/folder", body).statusCode());
    Files.delete(real);
  }

  @Test
  void settingsThePageDoesNotAskAreRefusedAndNoFileIsReadByItsPath() throws Exception {
    for (String option : List.of("album", "dates", "note", "out", "port", "month", "help", "")) {
      ObjectNode wish = JSON.createObjectNode().put("month", "2026-06");
      wish.putArray("folders").add(folder);
      wish.putObject("album").put(option, home.resolve("diary.txt").toString());
      HttpResponse<String> reply = start.post("/api/start/open", wish.toString());
      assertEquals(400, reply.statusCode(), option + reply.body());
      assertFalse(reply.body().contains(SECRET), reply.body());
    }
  }

  @Test
  void aBodyThatIsTooLongOrNoJsonIsRefusedAndNothingIsKept() throws Exception {
    String note = Files.readString(photos.resolve("note.txt"));
    for (String path : POSTED) {
      if (path.equals("/api/ticket")) {
        continue; // its body is not read
      }
      String big = JSON.createObjectNode().put("text", "x".repeat(300_000)).toString();
      assertEquals(413, start.post(path, big).statusCode(), path);
      assertEquals(400, start.post(path, "{\"text\":").statusCode(), path);
    }
    for (String path : List.of("/api/start/folder", "/api/note/read", "/api/start/open")) {
      for (String odd : List.of("[]", "null", "7", "\"\"", "{}", "[".repeat(5000), "")) {
        int status = start.post(path, odd).statusCode();
        assertTrue(status < 500, path + " " + odd + " " + status);
      }
    }
    assertEquals(note, Files.readString(photos.resolve("note.txt")));
    assertTrue(Files.notExists(home.resolve("Daymount/2026-06/note-mended.txt")));
  }

  @Test
  void aClientThatStopsInTheMiddleOfABodyKeepsNobodyWaiting() throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (String path : POSTED) {
        for (int i = 0; i < 2; i++) {
          Socket socket = new Socket("127.0.0.1", start.port());
          slow.add(socket);
          socket
              .getOutputStream()
              .write(
                  ("POST %s HTTP/1.1\r\nHost: 127.0.0.1:%d\r\nX-Review-Token: %s\r\n"
                          + "Content-Length: 100000\r\n\r\n{\"in\":")
                      .formatted(path, start.port(), start.token())
                      .getBytes(StandardCharsets.US_ASCII));
        }
      }
      long begun = System.nanoTime();
      assertNotEquals(0, typed(photos.toString()).at("/folder/pictures").asInt());
      assertTrue((System.nanoTime() - begun) / 1e9 < ServerLimits.LONGEST_REQUEST, "no waiting");
      for (Socket socket : slow) {
        socket.setSoTimeout(4_000 + 2_000 * ServerLimits.LONGEST_REQUEST);
        try {
          while (socket.getInputStream().read() >= 0) { // a timeout here is the failure
            continue;
          }
        } catch (SocketException reset) {
          assertTrue(reset.getMessage().contains("reset"), reset.getMessage());
        }
      }
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
    assertEquals(200, start.get("/api/start").statusCode());
  }

  @Test
  void aTicketLetsInOnceAndGuessesNever() throws Exception {
    String address = JSON.readTree(start.post("/api/ticket", "{}").body()).path("address").asText();
    String ticket = address.substring(address.indexOf("#ticket-") + "#ticket-".length());
    assertEquals(200, enter(ticket).statusCode());
    for (String used : List.of(ticket, "", "0".repeat(32), ticket.toUpperCase(), start.token())) {
      HttpResponse<String> reply = enter(used);
      assertEquals(403, reply.statusCode(), used);
      assertFalse(reply.body().contains(start.token()));
    }
  }

  private static HttpResponse<String> enter(String ticket) throws Exception {
    return RunningReview.send(
        HttpRequest.newBuilder(URI.create(start.origin() + "/api/enter"))
            .POST(BodyPublishers.ofString("{\"ticket\":\"" + ticket + "\"}"))
            .build());
  }

  /** What no well-behaved client would send. */
  private static String raw(String method, String path, String host, String body)
      throws IOException {
    try (Socket socket = new Socket("127.0.0.1", start.port())) {
      socket.setSoTimeout(20_000);
      byte[] content = body.getBytes(StandardCharsets.UTF_8);
      socket
          .getOutputStream()
          .write(
              (method
                      + " "
                      + path
                      + " HTTP/1.1\r\n"
                      + host
                      + "\r\nX-Review-Token: "
                      + start.token()
                      + "\r\nConnection: close\r\nContent-Length: "
                      + content.length
                      + "\r\n\r\n"
                      + body)
                  .getBytes(StandardCharsets.UTF_8));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (SocketException reset) {
      return "closed: " + reset.getMessage();
    }
  }
}
