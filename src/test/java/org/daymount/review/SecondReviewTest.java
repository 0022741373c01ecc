package org.daymount.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.daymount.cli.CommandLines;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class SecondReviewTest {
  private static final String ADDRESS = "http://127.0.0.1:41234";

  @TempDir Path folder;

  private Path photos() throws IOException {
    Path photos = folder.resolve("photos");
    ExifPhoto.painted().original("2026:06:03 14:20:30").write(photos.resolve("a.jpg"));
    return photos;
  }

  @Test
  void itIsToldBeforeAnythingIsReadWhereTheFolderIsNamed() throws Exception {
    Path out = Files.createDirectory(folder.resolve("out"));
    Process first = LockHolder.start(out.resolve("choices.json"), ADDRESS);
    try {
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      PrintStream print = new PrintStream(text, true, StandardCharsets.UTF_8);
      String[] review = {"review", photos().toString(), "--out", out.toString()};
      assertEquals(1, CommandLines.runHere(print, print, review));
      assertEquals(
          "error: a review with the same --out is open already at "
              + ADDRESS
              + "; go on in its page, or end it first (by its button End Daymount, or Ctrl-C where it"
              + " was started)",
          text.toString(StandardCharsets.UTF_8).strip());
      assertFalse(Files.exists(out.resolve(".daymount-cache")), "something was written");
    } finally {
      first.destroyForcibly().waitFor();
    }
  }

  /** Run in a folder of its own, where the month's folder gets its usual name. */
  @Test
  void itIsToldBeforeAPictureIsLookedAtWhereTheMonthNamesTheFolder() throws Exception {
    Path out = Files.createDirectory(folder.resolve("daymount-2026-06"));
    Process first = LockHolder.start(out.resolve("choices.json"), ADDRESS);
    try {
      ProcessBuilder builder =
          new ProcessBuilder(
                  List.of(
                      Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                      "org.daymount.Main",
                      "review",
                      photos().toString()))
              .directory(folder.toFile())
              .redirectErrorStream(true);
      builder
          .environment()
          .put(
              "CLASSPATH",
              System.getProperty(
                  "surefire.test.class.path", System.getProperty("java.class.path")));
      Process second = builder.start();
      String text = new String(second.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertTrue(second.waitFor(1, TimeUnit.MINUTES));
      assertEquals(1, second.exitValue(), text);
      assertTrue(text.contains("a review of June 2026 is open already at " + ADDRESS), text);
      assertTrue(text.contains("reading dates"), text);
      assertFalse(text.contains("looking"), text);
    } finally {
      first.destroyForcibly().waitFor();
    }
  }
}
