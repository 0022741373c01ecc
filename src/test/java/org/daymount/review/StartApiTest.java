package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.start.MonthText;
import org.daymount.start.SampleMonth;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who may have folders listed, and what is shown of them. */
@Tag("slow")
class StartApiTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path home;

  @Test
  void foldersAreShownByNameAndCountAndHiddenOnesNever() throws Exception {
    Path pictures = Files.createDirectories(home.resolve("Pictures/June"));
    Files.writeString(pictures.resolve("a.jpg"), "no picture, and not opened to find out");
    Files.writeString(pictures.resolve("secret diary.txt"), "words");
    Path hidden = Files.createDirectories(home.resolve(".hidden/below"));
    Files.createSymbolicLink(home.resolve("Pictures/to-hidden"), hidden);
    Path elsewhere = Files.createDirectories(home.resolve("Elsewhere"));
    Files.createSymbolicLink(home.resolve("Pictures/linked"), elsewhere);
    try (RunningReview start = RunningReview.startPage(home)) {
      String id = "";
      for (JsonNode place : JSON.readTree(start.get("/api/start").body()).path("places")) {
        if (place.path("name").asText().equals("Pictures")) {
          id = place.path("id").asText();
        }
      }
      HttpResponse<String> found = start.post("/api/start/folder", "{\"in\":\"" + id + "\"}");
      List<String> names = new ArrayList<>();
      for (JsonNode folder : JSON.readTree(found.body()).path("folders")) {
        names.add(folder.path("name").asText() + " " + folder.path("pictures").asInt());
      }
      assertEquals(List.of("June 1", "linked 0"), names);
      assertTrue(found.body().contains("Elsewhere"), "where the link leads is shown");
      assertFalse(found.body().contains("diary"), "no file's name is shown");
      String typed = JSON.createObjectNode().put("typed", hidden.toString()).toString();
      assertEquals(
          400, start.post("/api/start/folder", typed).statusCode(), "hidden, though typed");
    }
  }

  @Test
  void strangersForeignOriginsAndLinksGetNothing() throws Exception {
    try (RunningReview start = RunningReview.startPage(home)) {
      for (String what :
          List.of("start", "start/folder", "start/dates", "start/open", "start/quit")) {
        String path = "/api/" + what;
        URI address = URI.create(start.origin() + path);
        HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofString("{\"sure\":true}");
        assertEquals(
            403,
            RunningReview.send(HttpRequest.newBuilder(address).POST(body).build()).statusCode(),
            "without the token: " + what);
        assertEquals(
            403,
            RunningReview.send(
                    start.request(path).header("Origin", "http://127.0.0.1:1").POST(body).build())
                .statusCode(),
            "another origin: " + what);
        assertEquals(
            403,
            RunningReview.send(
                    start.request(path).header("Sec-Fetch-Site", "cross-site").POST(body).build())
                .statusCode(),
            "another site: " + what);
        if (!what.equals("start")) {
          assertEquals(404, start.get(path).statusCode(), "by a link: " + what);
        }
      }
      assertEquals(200, start.get("/api/start").statusCode(), "it still runs");
    }
  }

  @Test
  void noSpellingOfAPathOpensAFolderThatWasNotListed() throws Exception {
    List<String> dots =
        List.of("..", "../..", "%2e%2e", "..%2f", "..\\\\", "%252e%252e", "....//", "\u2025");
    List<String> ends = List.of("", "/etc", "/etc/passwd", "%00", "/.", "/f0", "\\\\etc", "?f0");
    try (RunningReview start = RunningReview.startPage(home)) {
      int tried = 0;
      for (String dot : dots) {
        for (String end : ends) {
          String body = JSON.createObjectNode().put("in", dot + end).toString();
          assertEquals(404, start.post("/api/start/folder", body).statusCode(), body);
          tried++;
        }
      }
      for (String id : List.of("f999999", "f-1", "f", "0", "F0", "f0/..", "f00000000")) {
        String body = JSON.createObjectNode().put("in", id).toString();
        assertEquals(404, start.post("/api/start/folder", body).statusCode(), body);
      }
      assertTrue(tried >= 60, "sixty spellings");
      for (String path :
          List.of("/earlier/0", "/earlier/..%2f", "/api/start/show", "/api/start/x")) {
        assertTrue(start.get(path).statusCode() >= 400, path);
      }
      String show = JSON.createObjectNode().put("file", "../../.bashrc").toString();
      assertEquals(404, start.post("/api/start/show", show).statusCode());
    }
  }

  @Test
  void aSecondStartFindsTheRunningOne() throws Exception {
    try (RunningReview first = RunningReview.startPage(home);
        RunningReview second = RunningReview.startPage(home)) {
      assertEquals(first.address(), second.address());
      assertTrue(second.hasEnded());
    }
  }

  @Test
  void aWrongSettingIsToldInTheProgramsOwnWordsAndNothingIsWritten() throws Exception {
    Files.createDirectories(home.resolve("Pictures"));
    try (RunningReview start = RunningReview.startPage(home)) {
      String id = JSON.readTree(start.get("/api/start").body()).at("/places/0/id").asText();
      HttpResponse<String> wrong =
          start.post(
              "/api/start/open",
              "{\"folders\":[\""
                  + id
                  + "\"],\"month\":\"2026-06\",\"note\":\"3 4x6\","
                  + "\"album\":{\"sheet\":\"as big as a barn\"}}");
      assertEquals(400, wrong.statusCode());
      assertTrue(wrong.body().contains("barn"), wrong.body());
      assertFalse(Files.exists(home.resolve("Daymount")));
    }
  }

  @Test
  void aNotePastedAnewKeepsTheOneBefore() throws Exception {
    MonthText.NOTE.write(home, "3 4x6\n");
    MonthText.NOTE.write(home, "3 4x6\n");
    MonthText.NOTE.write(home, "4 5x7\n");
    assertEquals("4 5x7\n", Files.readString(home.resolve("note.txt")));
    assertEquals("3 4x6\n", Files.readString(home.resolve("note-1.txt")));
    assertFalse(Files.exists(home.resolve("note-2.txt")));
  }

  @Test
  void theInventedJuneInTheProgramIsTheOneOfTheProject() throws Exception {
    Path photos = SampleMonth.unpack(home).folders().get(0);
    try (Stream<Path> files = Files.list(Path.of("sample-photos"))) {
      for (Path file : files.filter(f -> !f.endsWith("README.md")).toList()) {
        assertEquals(-1, Files.mismatch(file, photos.resolve(file.getFileName())), file.toString());
      }
    }
  }
}
