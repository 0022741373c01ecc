package org.daymount.trust;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** choices.json changed with an editor: everything in it is obeyed, or named. */
@Tag("slow")
class HandMadeChoicesTest {
  @TempDir Path folder;
  private Path photos;
  private Path out;
  private String sum;

  @BeforeEach
  void takePhotos() throws Exception {
    photos = Runs.photos(folder.resolve("photos"));
    out = Files.createDirectories(folder.resolve("out"));
    byte[] bytes = Files.readAllBytes(photos.resolve("IMG_0000.jpg"));
    sum = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  private Runs.Ended run(String choices) throws IOException {
    Files.writeString(out.resolve("choices.json"), choices.replace("SUM", sum));
    return Runs.here(Runs.arguments(photos, out, "--dry-run"));
  }

  /** The pictures are 900 x 600, two of 3 and two of 4 June 2026. */
  @Test
  void whatIsNotObeyedIsNamed() throws IOException {
    String gone = "a".repeat(64);
    Runs.Ended ended =
        run(
            """
            {"schema":1,"dayz":[{"day":"2026-06-03"}],
             "days":[
              {"day":"2026-06-03","spacez":[],"spaces":[
               {"space":0,"file":"IMG_0000.jpg","sha256":"SUM",
                "crop":{"x":800,"y":0,"width":600,"height":400,"sha256":"SUM"}},
               {"space":4,"quarterTurns":1}]},
              {"day":"2026-06-04","spaces":[{"space":0,"quarterTurn":1,"direction":"square"}]},
              {"day":"2026-06-05","spaces":[{"space":0,"quarterTurns":1}]},
              {"day":"2026-07-09"}],
             "photos":[
              {"file":"gone.jpg","sha256":"GONE","used":true},
              {"file":"IMG_0000.jpg","sha256":"SUM","day":"2026-05-09"}]}
            """
                .replace("GONE", gone));
    assertEquals(0, ended.code(), ended.text());
    for (String named :
        List.of(
            "choices.json has a field 'dayz' that is not known here",
            "what choices.json says of this day has a field 'spacez'",
            "space 1 in choices.json has a field 'quarterTurn'",
            "speaks of 2026-07-09, which is not in 2026-06",
            "for space 5, but its page has only 1",
            "has a crop or a turn without a picture",
            "space 1 is to lie square, but is not",
            "gone.jpg, of which choices.json speaks, is not among the photos",
            "another day than the camera or your table of dates, and it is used: IMG_0000.jpg",
            "IMG_0000.jpg was given 2026-05-09, which is not in 2026-06",
            "reaches beyond the picture (900 x 600)")) {
      assertTrue(ended.text().contains(named), named + " in " + ended.text());
    }
  }

  @Test
  void aCropBelowTheLeastResolutionIsPrintedAndNamed() throws IOException {
    Runs.Ended ended =
        run(
            """
            {"schema":1,"days":[
             {"day":"2026-06-03","spaces":[{"space":0,"file":"IMG_0000.jpg","sha256":"SUM",
              "crop":{"x":0,"y":0,"width":60,"height":40,"sha256":"SUM"}}]},
             {"day":"2026-06-04","spaces":[{"space":0,"file":"IMG_0000.jpg","sha256":"SUM",
              "crop":{"x":0,"y":0,"width":600,"height":400,"sha256":"other"}}]}]}
            """);
    assertEquals(0, ended.code(), ended.text());
    for (String named :
        List.of(
            "IMG_0000.jpg is too small to print well (10 ppi, below 80 ppi) in its 4x6 space",
            "was drawn on another picture")) {
      assertTrue(ended.text().contains(named), named + " in " + ended.text());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`'days':null`|line 1, column 13: days: it is null",
        "`'days':[{'day':'2026-05-03'}]`|holds the choices of May 2026, and the album is for June"
            + " 2026",
      })
  void whatCannotBeMeantStopsTheRunWithTheLineAndTheField(String fields, String named)
      throws IOException {
    Runs.Ended ended = run(("{'schema':1," + fields + "}").replace('\'', '"'));
    assertEquals(1, ended.code(), ended.text());
    assertTrue(ended.text().contains(named), ended.text());
  }

  @Test
  void aHugeSpaceIsRefusedOnTheCommandLineInASentence() {
    Runs.Ended ended = Runs.here(Runs.arguments(photos, out, "--space", "two 60x60"));
    assertEquals(2, ended.code(), ended.text());
    assertTrue(ended.text().contains("'60x60' is larger than any page"), ended.text());
  }
}
