package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.daymount.image.PictureHeader;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;

class FileFactsCodecTest {
  private static final FileFacts FULL =
      new FileFacts(
          new PictureHeader(
              PhotoFormat.HEIF, new PixelSize(4032, 3024), Optional.of(ExifOrientation.RIGHT_TOP)),
          new Tags(
              Optional.of(ExifOrientation.BOTTOM_RIGHT),
              new Tags.DateTag("2026:06:03 10:00:00", null, "+02:00"),
              new Tags.DateTag("", "123", null),
              List.of("2026-06-03T10:00:00", ""),
              Optional.of("a\nb \u00e9 \ud83d\udc15"),
              Optional.of(LocalDateTime.of(2026, 6, 3, 8, 0)),
              Optional.of(LocalDateTime.of(2026, 6, 3, 8, 0, 1, 5)),
              List.of("+02:00"),
              Optional.of(FileFactsCodec.UNNAMED),
              Optional.of("Screenshot"),
              Optional.of("0123456789abcdef"),
              Optional.of("fedcba9876543210"),
              true),
          "x".repeat(70_000),
          Optional.of(Problem.Kind.CUT_OFF),
          "is cut\noff",
          Optional.of("pale"));

  private static final FileFacts EMPTY =
      new FileFacts(
          new PictureHeader(PhotoFormat.PNG, new PixelSize(1, 1)),
          Tags.NONE,
          "",
          Optional.empty(),
          "",
          Optional.empty());

  @Test
  void factsComeBackAsTheyWere() throws IOException {
    for (FileFacts facts : List.of(FULL, EMPTY)) {
      assertEquals(Optional.of(facts), FileFactsCodec.facts(FileFactsCodec.bytes(facts)));
    }
  }

  @Test
  void whatCouldTellOfThePersonIsNotKept() throws IOException {
    FileFacts personal = FULL.with(tags("Tarn T4", "tea with the ferryman"));
    byte[] kept = FileFactsCodec.bytes(personal);
    Tags back = FileFactsCodec.facts(kept).orElseThrow().tags();
    assertEquals(Optional.of(FileFactsCodec.UNNAMED), back.model());
    assertEquals(Optional.empty(), back.userComment());
    String text = new String(kept, StandardCharsets.UTF_8);
    assertFalse(text.contains("Tarn") || text.contains("ferryman"));
  }

  private static Tags tags(String model, String comment) {
    Tags none = Tags.NONE;
    return new Tags(
        none.orientation(),
        none.original(),
        none.digitized(),
        none.xmp(),
        none.pngCreation(),
        none.pngModified(),
        none.gpsUtc(),
        none.offsets(),
        Optional.of(model),
        Optional.of(comment),
        none.burst(),
        none.pair(),
        true);
  }

  @Test
  void bytesThatAreNoneOfOursAreNothingWhateverTheyHold() throws IOException {
    byte[] whole = FileFactsCodec.bytes(FULL);
    for (int length = 0; length < 400; length++) {
      assertTrue(FileFactsCodec.facts(Arrays.copyOf(whole, length)).isEmpty(), "first " + length);
    }
    assertTrue(FileFactsCodec.facts(Arrays.copyOf(whole, whole.length + 1)).isEmpty());
  }
}
