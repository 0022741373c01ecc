package org.daymount.review;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The review's server as programs meet it, without a browser. */
@Tag("slow")
class ReviewServerTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path home;
  private static Path photos;
  private static Path out;
  private static RunningReview review;

  @BeforeAll
  static void start() throws Exception {
    photos = SmallMonth.paint(home.resolve("photos"));
    out = home.resolve("out");
    review = start(out);
  }

  @AfterAll
  static void stop() throws Exception {
    if (review != null) {
      review.close();
    }
  }

  private static RunningReview start(Path out) throws Exception {
    return RunningReview.start(
        photos.toString(), "--out", out.toString(), "--days", "1-6", "--jobs", "2");
  }

  @Test
  void itListensOnTheLoopbackAddressAlone() throws Exception {
    for (NetworkInterface each : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress address : Collections.list(each.getInetAddresses())) {
        if (address.isLoopbackAddress() || address.isLinkLocalAddress()) {
          continue;
        }
        try (Socket socket = new Socket()) {
          assertThrows(
              IOException.class,
              () -> socket.connect(new InetSocketAddress(address, review.port()), 500),
              "reached from " + address);
        }
      }
    }
    assertEquals(200, review.get("/").statusCode());
    assertEquals(List.of("0100007F"), listening(review.port()), "127.0.0.1 and nothing else");
  }

  /**
   * The addresses a port of this computer listens on, as the kernel tells them (proc(5), {@code
   * /proc/net/tcp}: the address in hexadecimal, little endian; state 0A is listening).
   */
  private static List<String> listening(int port) throws IOException {
    List<String> addresses = new ArrayList<>();
    for (String table : List.of("/proc/net/tcp", "/proc/net/tcp6")) {
      assumeTrue(Files.exists(Path.of(table)), "no " + table + ": the kernel is not asked");
      for (String line : Files.readAllLines(Path.of(table))) {
        String[] fields = line.strip().split("\\s+");
        String[] local = fields[1].split(":");
        if (fields[3].equals("0A") && Integer.parseInt(local[1], 16) == port) {
          // an IPv4 address of a socket that can speak both is told as ::ffff:127.0.0.1
          addresses.add(
              local[0].startsWith("0000000000000000FFFF0000") ? local[0].substring(24) : local[0]);
        }
      }
    }
    return addresses;
  }

  @Test
  void withoutTheWordNothingOfThePersonIsShown() throws Exception {
    for (String path :
        new String[] {
          "/api/month", "/picture/p0/0/240", "/picture/p0/0/240?key=", "/api/progress"
        }) {
      HttpRequest request =
          HttpRequest.newBuilder(java.net.URI.create(review.origin() + path)).build();
      assertEquals(403, RunningReview.send(request).statusCode(), path);
    }
    assertEquals(200, review.get("/picture/p0/0/240?key=" + review.token()).statusCode());
  }

  @Test
  void aForeignHostOrOriginIsTurnedAway() throws Exception {
    String word = "X-Review-Token: " + review.token() + "\r\n";
    String mine = "Host: 127.0.0.1:" + review.port() + "\r\n";
    assertEquals(200, status("GET /api/month", mine + word));
    assertEquals(403, status("GET /api/month", "Host: photos.example\r\n" + word));
    assertEquals(403, status("GET /", "Host: photos.example\r\n"));
    assertEquals(403, status("GET /api/month", mine + word + "Origin: http://photos.example\r\n"));
    assertEquals(403, status("GET /api/month", mine + word + "Origin: null\r\n"));
    assertEquals(403, status("GET /api/month", mine + word + "Sec-Fetch-Site: cross-site\r\n"));
    // another server on this computer is the same site, yet not the same origin
    assertEquals(403, status("GET /api/month", mine + word + "Sec-Fetch-Site: same-site\r\n"));
  }

  /** A story of 20,000 letters has some twenty cards: none is drawn before it is seen. */
  @Test
  void cardsAreToldByNumberAndDrawnWhenTheyAreAskedFor() throws Exception {
    String story = "{\"day\":\"2026-06-01\",\"text\":\"" + "words and more ".repeat(1300) + "\"}";
    JsonNode cards = JSON.readTree(review.post("/api/card", story).body()).get("cards");
    assertTrue(cards.size() > 10, cards.size() + " cards");
    JsonNode again = JSON.readTree(review.post("/api/card", story).body()).get("cards");
    assertEquals(cards, again, "the same cards have other numbers");
    String key = "?key=" + review.token();
    String last = "/card/" + cards.get(cards.size() - 1).get("picture").asInt();
    assertEquals(200, review.get(last + key).statusCode());
    assertEquals("image/jpeg", review.get(last + key).headers().firstValue("Content-Type").get());
    assertEquals(403, status("GET " + last, "Host: 127.0.0.1:" + review.port() + "\r\n"));
    assertEquals(404, review.get("/card/99999" + key).statusCode());
  }

  @Test
  void photosAreKnownByNumberAndNoPathLeadsOut() throws Exception {
    String key = "?key=" + review.token();
    for (String path :
        new String[] {
          "/picture/one-a.jpg/0/240",
          "/picture/..%2f..%2fnote.txt/0/240",
          "/picture/p999/0/240",
          "/picture/p0/0/240/../../../etc/passwd",
          "/sheet/0/0",
          "/..%2f..%2fpom.xml",
          "/ReviewServer.class"
        }) {
      assertEquals(404, review.get(path + key).statusCode(), path);
    }
    assertEquals(400, review.get("/picture/p0/0/999" + key).statusCode(), "only some sizes");
  }

  @Test
  void changesAreMadeByPostOnly() throws Exception {
    for (String path : new String[] {"/api/change", "/api/undo", "/api/redo", "/api/make"}) {
      assertEquals(405, review.get(path).statusCode(), path);
    }
    assertEquals(405, review.post("/api/month", "{}").statusCode());
    assertEquals(400, review.post("/api/change", "not json").statusCode());
  }

  @Test
  void aChangeThatCannotBeIsRefusedInWordsNotInNamesOfTheProgram() throws Exception {
    for (String what :
        new String[] {
          "\"what\":\"direction\",\"day\":\"2026-06-01\",\"space\":0,\"direction\":\"up\"",
          "\"what\":\"size\",\"day\":\"2026-06-01\",\"space\":0,\"size\":\"LARGE\"",
          "\"what\":\"PAINT\"",
          "\"what\":\"page\",\"day\":\"2026-06-01\",\"words\":\"zebra\"",
        }) {
      HttpResponse<String> reply =
          review.post("/api/change", "{\"version\":%d,%s}".formatted(version(review), what));
      assertEquals(400, reply.statusCode(), reply.body());
      assertFalse(reply.body().contains("enum") || reply.body().contains("org."), reply.body());
    }
  }

  @Test
  void aChangeMadeOnAnOlderVersionIsRefusedWithAClearMessage() throws Exception {
    long version = version(review);
    assertEquals(200, story(review, version, 3, "first tab").statusCode());
    HttpResponse<String> second = story(review, version, 3, "second tab");
    assertEquals(409, second.statusCode());
    assertTrue(
        JSON.readTree(second.body())
            .get("message")
            .asText()
            .startsWith("This month was changed in another tab meanwhile."));
    assertEquals("first tab", storyIn(out, 3));
  }

  @Test
  void everyStepIsUndoneAndDoneAgain() throws Exception {
    Path own = home.resolve("undo");
    try (RunningReview here = start(own)) {
      for (int i = 0; i < 30; i++) {
        assertEquals(200, story(here, version(here), 3, "story " + i).statusCode());
      }
      for (int i = 0; i < 30; i++) {
        here.post("/api/undo", "{\"version\":" + version(here) + "}");
      }
      assertTrue(month(here).get("undo").isNull());
      assertTrue(month(here).get("days").get(2).get("story").isNull());
      for (int i = 0; i < 30; i++) {
        here.post("/api/redo", "{\"version\":" + version(here) + "}");
      }
      assertEquals("story 29", storyIn(own, 3));
    }
  }

  /** Bytes that were met once do not count as known: the next click must not replace them. */
  @Test
  void noClickReplacesChoicesThatCannotBeRead() throws Exception {
    Path own = home.resolve("damaged");
    try (RunningReview here = start(own)) {
      assertEquals(200, story(here, version(here), 3, "before").statusCode());
      String whole = Files.readString(own.resolve("choices.json"));
      String damaged = whole.substring(0, whole.length() / 2);
      Files.writeString(own.resolve("choices.json"), damaged);
      for (int i = 0; i < 3; i++) {
        assertTrue(month(here).get("message").asText().contains("choices.json.damaged-1"));
        HttpResponse<String> click = story(here, version(here), 3, "after");
        assertEquals(409, click.statusCode());
        assertTrue(click.body().contains("choices.json.damaged-1"), click.body());
        assertEquals(damaged, Files.readString(own.resolve("choices.json")));
      }
      Files.writeString(own.resolve("choices.json"), whole);
      assertEquals(200, story(here, version(here), 3, "after").statusCode());
      assertEquals("after", storyIn(own, 3));
    }
  }

  @Test
  void aServerKilledWhileSavingLosesAtMostTheLastUnsavedKeystroke() throws Exception {
    Path own = home.resolve("killed");
    ProcessBuilder command =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "org.daymount.Main",
                "review",
                "--quiet",
                photos.toString(),
                "--out",
                own.toString(),
                "--days",
                "1-6")
            .redirectError(home.resolve("killed.err").toFile());
    // not by -cp: ONNX Runtime 1.29 reads /proc/self/cmdline when it is loaded, and overflows its
    // stack (a crash of the whole process) where the command line is several thousand letters long
    command
        .environment()
        .put(
            "CLASSPATH",
            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    Process process = command.start();
    try {
      String address = address(process);
      String origin = address.substring(0, address.indexOf("/#"));
      String word = address.substring(address.indexOf('#') + 1);
      HttpRequest look =
          HttpRequest.newBuilder(java.net.URI.create(origin + "/api/month"))
              .header("X-Review-Token", word)
              .build();
      while (RunningReview.send(look).statusCode() == 503) {
        Thread.sleep(50); // the pictures are still being looked at
      }
      int acknowledged = 0;
      long version = 1;
      for (int typed = 1; typed <= 40; typed++) {
        HttpResponse<String> reply =
            RunningReview.send(
                HttpRequest.newBuilder(java.net.URI.create(origin + "/api/change"))
                    .header("X-Review-Token", word)
                    .POST(HttpRequest.BodyPublishers.ofString(typed(version++, typed)))
                    .build());
        assertEquals(200, reply.statusCode());
        acknowledged = typed;
      }
      // one more is on its way when the process is killed
      byte[] body = typed(version, 41).getBytes(StandardCharsets.UTF_8);
      try (Socket socket = new Socket("127.0.0.1", java.net.URI.create(origin).getPort())) {
        OutputStream sending = socket.getOutputStream();
        sending.write(
            ("POST /api/change HTTP/1.1\r\nHost: "
                    + origin.substring("http://".length())
                    + "\r\nX-Review-Token: "
                    + word
                    + "\r\nContent-Length: "
                    + body.length
                    + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII));
        sending.write(body);
        sending.flush();
        process.destroyForcibly().waitFor();
      }
      int found = storyIn(own, 3).length();
      assertTrue(
          found == acknowledged || found == acknowledged + 1,
          found + " letters of " + acknowledged);
    } finally {
      process.destroyForcibly();
    }
  }

  @Test
  void choicesMeetAChangedFolderAndAnEditedNoteInTheOpen() throws Exception {
    Path folder = SmallMonth.paint(home.resolve("moving"));
    Path own = home.resolve("moved-out");
    String[] arguments = {folder.toString(), "--out", own.toString(), "--days", "1-6"};
    try (RunningReview here = RunningReview.start(arguments)) {
      choose(here, 1, "one-a.jpg");
      choose(here, 3, "three.jpg");
      choose(here, 5, "five.jpg");
      change(
          here,
          "\"what\":\"crop\",\"day\":\"2026-06-05\",\"space\":0,"
              + "\"crop\":{\"x\":90,\"y\":60,\"width\":900,\"height\":600}");
      change(here, "\"what\":\"size\",\"day\":\"2026-06-02\",\"space\":0,\"size\":\"5x7\"");
      assertEquals(200, story(here, version(here), 1, "mine").statusCode());
      // edited while the review is open: the newer words of the note hold, and that is said
      Files.writeString(
          folder.resolve("note.txt"), SmallMonth.NOTE.replace("The note's own words", "Newer"));
      JsonNode now = month(here);
      assertEquals("Newer.", now.get("days").get(0).get("story").asText());
      assertEquals(
          "story differs from note", now.get("days").get(0).get("attention").get(0).asText());
      assertTrue(now.get("days").get(0).get("remarks").get(0).asText().contains("'mine'"));
      // written again with the newer words in sight: the review holds
      assertEquals(200, story(here, version(here), 1, "mine again").statusCode());
      assertEquals("mine again", month(here).get("days").get(0).get("story").asText());
    }
    Path elsewhere = Files.createDirectories(folder.resolve("from the phone"));
    Files.move(folder.resolve("one-a.jpg"), elsewhere.resolve("renamed.jpg"));
    Path aside = home.resolve("three.jpg");
    Files.move(folder.resolve("three.jpg"), aside);
    Files.copy(folder.resolve("two-b.jpg"), folder.resolve("five.jpg"), REPLACE_EXISTING);
    Files.delete(folder.resolve("two-b.jpg")); // five.jpg now shows what two-b.jpg did
    try (RunningReview here = RunningReview.start(arguments)) {
      JsonNode first = month(here).get("days").get(0);
      assertEquals("from the phone/renamed.jpg", first.at("/spaces/0/name").asText());
      assertEquals("person", first.at("/spaces/0/chosenBy").asText());
      assertTrue(first.get("attention").toString().contains("file renamed"), first.toString());
      JsonNode third = month(here).get("days").get(2);
      assertTrue(third.at("/spaces/0/photo").isNull(), "its place is kept");
      assertEquals("file missing", third.at("/attention/0").asText());
      assertEquals(
          "the picture you chose, three.jpg, is not among the photos any more; put it back or"
              + " choose another",
          third.at("/spaces/0/reasons/0").asText());
      JsonNode fifth = month(here).get("days").get(4);
      assertEquals(
          "five.jpg", fifth.at("/spaces/0/name").asText(), "edited in place: still chosen");
      assertFalse(
          fifth.at("/spaces/0/cropIsYours").asBoolean(), "its crop was for another picture");
      assertTrue(fifth.get("attention").toString().contains("file changed"), fifth.toString());
      // the page, changed in the review and then in the note: the note holds, and that is said
      assertEquals("5x7", month(here).at("/days/1/spaces/0/size").asText());
      Files.writeString(
          folder.resolve("note.txt"), SmallMonth.NOTE.replace("two 3x4", "4x6 portrait"));
      JsonNode second = month(here).get("days").get(1);
      assertEquals("4x6", second.at("/spaces/0/size").asText());
      assertTrue(second.get("attention").toString().contains("page differs from note"));
      assertTrue(second.at("/remarks").toString().contains("from 3x4, 3x4"), second.toString());
    }
    Files.move(aside, folder.resolve("three.jpg"));
    try (RunningReview here = RunningReview.start(arguments)) {
      JsonNode third = month(here).get("days").get(2);
      assertEquals("three.jpg", third.at("/spaces/0/name").asText(), "back, and so is the choice");
      assertEquals("person", third.at("/spaces/0/chosenBy").asText());
    }
  }

  private static void change(RunningReview here, String what) throws Exception {
    HttpResponse<String> reply =
        here.post("/api/change", "{\"version\":%d,%s}".formatted(version(here), what));
    assertEquals(200, reply.statusCode(), reply.body());
  }

  private static void choose(RunningReview here, int day, String file) throws Exception {
    JsonNode photos = JSON.readTree(here.get("/api/day/2026-06-0" + day).body()).get("photos");
    for (JsonNode photo : photos) {
      if (photo.get("name").asText().equals(file)) {
        String change =
            "{\"version\":%d,\"what\":\"photo\",\"day\":\"2026-06-0%d\",\"space\":0,\"photo\":\"%s\"}"
                .formatted(version(here), day, photo.get("photo").asText());
        assertEquals(200, here.post("/api/change", change).statusCode());
        return;
      }
    }
    throw new AssertionError("no " + file);
  }

  private static String typed(long version, int letters) {
    return "{\"version\":%d,\"what\":\"story\",\"day\":\"2026-06-03\",\"session\":\"s\",\"text\":\"%s\"}"
        .formatted(version, "a".repeat(letters));
  }

  private static HttpResponse<String> story(RunningReview here, long version, int day, String text)
      throws Exception {
    return here.post(
        "/api/change",
        "{\"version\":%d,\"what\":\"story\",\"day\":\"2026-06-0%d\",\"text\":\"%s\"}"
            .formatted(version, day, text));
  }

  private static JsonNode month(RunningReview here) throws Exception {
    return JSON.readTree(here.get("/api/month").body());
  }

  private static long version(RunningReview here) throws Exception {
    return month(here).get("version").asLong();
  }

  private static String storyIn(Path out, int day) throws IOException {
    for (JsonNode each : JSON.readTree(out.resolve("choices.json").toFile()).get("days")) {
      if (each.get("day").asText().equals("2026-06-0" + day)) {
        return each.get("story").get("text").asText();
      }
    }
    throw new AssertionError("no story");
  }

  private static String address(Process process) throws Exception {
    InputStream out = process.getInputStream();
    StringBuilder said = new StringBuilder();
    for (int c = out.read(); c >= 0; c = out.read()) {
      said.append((char) c);
      if (c == '\n' && said.indexOf("/#") > 0) {
        return said.substring(said.indexOf("http://"), said.length() - 1).strip();
      }
    }
    throw new AssertionError(
        "the review ended with "
            + process.waitFor()
            + ": "
            + said
            + Files.readString(home.resolve("killed.err")));
  }

  /** A request as bytes, since Java's own client sets Host itself. */
  private static int status(String line, String headers) throws IOException {
    try (Socket socket = new Socket("127.0.0.1", review.port())) {
      socket
          .getOutputStream()
          .write(
              (line + " HTTP/1.1\r\n" + headers + "Connection: close\r\n\r\n")
                  .getBytes(StandardCharsets.US_ASCII));
      String reply = new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      return Integer.parseInt(reply.split(" ")[1]);
    }
  }
}
