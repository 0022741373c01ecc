package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pages that move whole, an album that stops, a mat that is a switch: what becomes of the month.
 */
@Tag("slow")
class PageWaysTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path home;

  @Test
  void aWholePageMovesWithPicturesAndStoryAndOneUndoBringsItBack() throws Exception {
    try (RunningReview review = open("move")) {
      JsonNode before = month(review);
      JsonNode moved = change(review, "{'what':'move','day':'2026-06-02','other':'2026-06-05'}");
      for (int[] pair : new int[][] {{2, 5}, {5, 2}}) {
        JsonNode old = day(before, pair[0]);
        JsonNode now = day(moved, pair[1]);
        assertEquals(old.get("story"), now.get("story"), "the story of " + pair[0]);
        assertEquals(old.get("spaces").size(), now.get("spaces").size());
        for (int i = 0; i < old.get("spaces").size(); i++) {
          JsonNode was = old.get("spaces").get(i);
          JsonNode is = now.get("spaces").get(i);
          for (String what : new String[] {"photo", "size", "direction", "crop", "turns"}) {
            assertEquals(was.get(what), is.get(what), what);
          }
        }
      }
      assertTrue(day(moved, 5).get("spaces").size() == 2, "the two small ones are on the fifth");
      JsonNode back = post(review, "/api/undo", JSON.createObjectNode());
      assertEquals(before.get("days"), back.get("days"));
      assertEquals("2026-06-02", back.at("/redo/day").asText());
    }
  }

  @Test
  void whatUndoWouldTakeBackIsToldWithItsPlace() throws Exception {
    try (RunningReview review = open("undo")) {
      change(review, "{'what':'turn','day':'2026-06-04','space':0,'quarterTurns':1}");
      JsonNode undo = month(review).get("undo");
      assertEquals("turn on 4 June", undo.get("words").asText());
      assertEquals("2026-06-04", undo.get("day").asText());
      assertEquals("space0", undo.get("part").asText());
      JsonNode told =
          change(review, "{'what':'story','day':'2026-06-03','text':'Rain.','session':'s'}");
      assertEquals("story", told.at("/undo/part").asText());
    }
  }

  @Test
  void theAlbumStopsAtADayAndOneUndoGoesOn() throws Exception {
    try (RunningReview review = open("stop")) {
      JsonNode before = month(review);
      JsonNode stopped = change(review, "{'what':'stop','day':'2026-06-03'}");
      for (int day = 1; day <= 30; day++) {
        String kind = day(stopped, day).get("kind").asText();
        assertEquals(day <= 3 ? day(before, day).get("kind").asText() : "left_out", kind, "" + day);
      }
      JsonNode back = post(review, "/api/undo", JSON.createObjectNode());
      assertEquals(before.get("days"), back.get("days"));
    }
  }

  @Test
  void aMatIsLaidUnderAPictureAndTakenAway() throws Exception {
    try (RunningReview review = open("mat")) {
      JsonNode on = change(review, "{'what':'mat','day':'2026-06-01','space':0,'mat':true}");
      JsonNode space = day(on, 1).get("spaces").get(0);
      assertEquals(0.125, space.get("reveal").asDouble(), "the usual reveal");
      assertEquals(5.75, space.at("/piece/width").asDouble(), "a mat shows on both sides");
      assertEquals(3.75, space.at("/piece/height").asDouble());
      JsonNode off = change(review, "{'what':'mat','day':'2026-06-01','space':0,'mat':false}");
      assertEquals(0, day(off, 1).get("spaces").get(0).get("reveal").asDouble());
      assertEquals(false, day(off, 1).get("pageIsYours").asBoolean(), "as the note has it again");
    }
  }

  @Test
  void aPictureLiesOnItsSideInItsPocketAndIsPutUprightAgain() throws Exception {
    try (RunningReview review = open("side")) {
      change(review, "{'what':'direction','day':'2026-06-03','space':0,'direction':'portrait'}");
      JsonNode on = change(review, "{'what':'side','day':'2026-06-03','space':0,'side':true}");
      assertEquals("portrait", day(on, 3).get("spaces").get(0).get("direction").asText());
      assertEquals(true, picture(on, 3).get("turned").asBoolean());
      assertEquals(6, picture(on, 3).get("width").asDouble(), "as wide as its pocket");
      JsonNode off = change(review, "{'what':'side','day':'2026-06-03','space':0,'side':false}");
      assertEquals(false, picture(off, 3).get("turned").asBoolean());
      assertEquals(4, picture(off, 3).get("width").asDouble(), "upright on a full page");
    }
  }

  private static JsonNode picture(JsonNode month, int day) {
    for (JsonNode page : month.at("/album/pages")) {
      for (JsonNode step : page.get("drawing")) {
        if (page.get("day").asText().endsWith("-0" + day)
            && step.get("draw").asText().equals("picture")) {
          return step;
        }
      }
    }
    throw new AssertionError("no picture on day " + day);
  }

  @Test
  void onlyFilesThatChangedAreWrittenAgain() throws Exception {
    try (RunningReview review = open("again")) {
      made(review);
      change(review, "{'what':'turn','day':'2026-06-04','space':0,'quarterTurns':1}");
      String words = made(review).at("/state/words").asText();
      assertTrue(words.matches("[3-7] files new or changed.*"), words);
    }
  }

  private RunningReview open(String name) throws Exception {
    Path photos = SmallMonth.paint(home.resolve(name));
    return RunningReview.start(
        photos.toString(), "--out", home.resolve(name + "-out").toString(), "--jobs", "2");
  }

  private static JsonNode made(RunningReview review) throws Exception {
    post(review, "/api/make", JSON.createObjectNode());
    while (true) {
      JsonNode made = JSON.readTree(review.get("/api/sheets").body());
      String kind = made.at("/state/kind").asText();
      if (!kind.equals("running")) {
        assertEquals("done", kind, made.toString());
        return made;
      }
      Thread.sleep(50);
    }
  }

  private static JsonNode month(RunningReview review) throws Exception {
    return JSON.readTree(review.get("/api/month").body());
  }

  private static JsonNode change(RunningReview review, String what) throws Exception {
    return post(review, "/api/change", (ObjectNode) JSON.readTree(what.replace('\'', '"')));
  }

  private static JsonNode post(RunningReview review, String path, ObjectNode body)
      throws Exception {
    body.put("version", month(review).get("version").asLong());
    var reply = review.post(path, body.toString());
    assertEquals(200, reply.statusCode(), reply.body());
    return JSON.readTree(reply.body());
  }

  private static JsonNode day(JsonNode month, int number) {
    return month.get("days").get(number - 1);
  }
}
