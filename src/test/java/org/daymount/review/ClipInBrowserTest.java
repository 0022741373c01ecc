package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.daymount.image.Tool;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** A day with nothing but a clip: its frames are listed, and the one a person takes is printed. */
@Tag("slow")
@Isolated
class ClipInBrowserTest {
  private static final String CLIP = "VID_20260608_101500.mp4";

  @TempDir Path home;

  /** Ten seconds, a key frame a second; the camera moves over a painted scene. */
  static void clip(Path scene, Path file) throws IOException {
    ImageIO.write(SmallMonth.scene(2400, 1200, 9), "png", scene.toFile());
    Tool.orSkip("ffmpeg", "-version")
        .run(
            ("-y -v error -loop 1 -framerate 5 -t 10 -i "
                    + scene
                    + " -vf crop=1920:1080:48*t:60,"
                    + "scale=out_color_matrix=bt709:out_range=tv -colorspace bt709"
                    + " -c:v libx264 -preset veryfast -qp 14 -g 5 -pix_fmt yuv420p "
                    + file)
                .split(" "));
  }

  @Test
  void theFramesOfAClipAreListedAndAnyCanBeChosen() throws Exception {
    Path photos = SmallMonth.paint(home.resolve("pictures"));
    Files.delete(photos.resolve("nodate.jpg"));
    clip(home.resolve("scene.png"), photos.resolve(CLIP));
    Path out = home.resolve("out");
    String[] arguments = {
      photos.toString(), "--out", out.toString(), "--days", "1-8", "--jobs", "2"
    };
    try (Browser browser = Browser.start(1280, 1100);
        RunningReview review = RunningReview.start(arguments)) {
      browser.open(review.address());
      browser.find(".month li");
      browser.go("#/day/2026-06-08");
      browser.waitForText("h1", "Monday 8");
      String proposed = browser.text(".why .file");
      assertTrue(proposed.startsWith(CLIP + " at 0:0"), proposed);
      browser.waitForText(".why", "a still from the clip " + CLIP + ", at 0:0");
      browser.waitForText(".fold", "9 more alike");
      browser.click(".fold");
      browser.waitFor(
          "ten frames", () -> Optional.of(browser.all(".tile")).filter(all -> all.size() == 10));
      browser.checkAccessible("the frames of a clip");
      String other = CLIP + " at 0:0" + second(photos.resolve(CLIP));
      assertNotEquals(other, proposed);
      browser.shootIfAsked("clip.shots", "clip-day.png");
      browser.click("button.put[aria-label*='" + other + "']");
      browser.waitForText(".why .file", other);
      browser.waitForText(".right h2", "your choice");
      browser.saved();
      browser.shootIfAsked("clip.shots", "clip-chosen.png");
      assertEquals(List.of(), browser.errors());

      SheetsMadeHere.of(arguments);
      JsonNode month = new ObjectMapper().readTree(out.resolve("month.json").toFile());
      JsonNode space = month.get("days").get(7).get("spaces").get(0);
      assertEquals(other, space.get("photo").asText());
      assertEquals("person", space.get("chosenBy").asText());
      assertEquals(
          List.of("you chose it", "a still from the clip " + other.replace(" at", ", at")),
          StreamSupport.stream(space.get("reasons").spliterator(), false)
              .map(JsonNode::asText)
              .limit(2)
              .toList());
      Path theirs = home.resolve("theirs.png");
      new Tool("ffmpeg")
          .run(
              ("-y -v error -ss "
                      + other.charAt(other.length() - 1)
                      + " -i "
                      + photos.resolve(CLIP)
                      + " -frames:v 1 "
                      + theirs)
                  .split(" "));
      BufferedImage frame = ImageIO.read(theirs.toFile());
      JsonNode[] placed = SheetPixels.placed(month, space.get("piece").asText());
      BufferedImage sheet = ImageIO.read(out.resolve(placed[0].asText()).toFile());
      double off = SheetPixels.off(placed[1], sheet, frame, space.get("crop"));
      assertTrue(off < 5, "the sheet shows another frame, off by " + off + " of 255");
    }
  }

  /**
   * Of the frame with fewest bytes: beside nine photos every second frame is looked at beforehand,
   * the fuller one of two, so this is not.
   */
  private static int second(Path clip) throws IOException {
    String packets =
        new Tool("ffprobe")
            .run(
                ("-v error -select_streams v -show_entries packet=pts_time,size,flags -of csv=p=0 "
                        + clip)
                    .split(" "));
    String[] fewest =
        packets
            .lines()
            .map(line -> line.split(","))
            .filter(packet -> packet[2].startsWith("K"))
            .min(Comparator.comparingInt(packet -> Integer.parseInt(packet[1])))
            .orElseThrow();
    return (int) Math.round(Double.parseDouble(fewest[0]));
  }
}
