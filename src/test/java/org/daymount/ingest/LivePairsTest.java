package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.daymount.image.Tool;
import org.daymount.photo.PhotoFile;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Photos with a maker's note as BurstTagTest writes it, and clips by ffmpeg with QuickTime's
 * metadata keys. That both hold a content identifier, exiftool says of them.
 */
@Tag("slow")
class LivePairsTest {
  private static final String ONE = "8F4C1A52-0D3B-4E0F-9C77-1B2A3C4D5E6F";
  private static final String OTHER = "00000000-0D3B-4E0F-9C77-1B2A3C4D5E6F";
  private static final String NONE = "";

  @TempDir Path folder;
  private Tool ffmpeg;

  @BeforeEach
  void ffmpegIsThere() {
    ffmpeg = Tool.orSkip("ffmpeg", "-version");
  }

  private Path photo(String name, String identifier) throws IOException {
    ExifPhoto photo = ExifPhoto.painted().original("2026:06:03 14:25:30");
    return (identifier.isEmpty() ? photo : photo.makerNote(note(identifier)))
        .write(folder.resolve(name));
  }

  /** A header of 14 bytes, big-endian, and a directory of one field whose text lies behind it. */
  private static byte[] note(String identifier) {
    byte[] text = (identifier + "\0").getBytes(StandardCharsets.US_ASCII);
    ByteBuffer note = ByteBuffer.allocate(32 + text.length);
    note.put("Apple iOS\0\0\1MM".getBytes(StandardCharsets.US_ASCII));
    note.putShort((short) 1);
    note.putShort((short) 0x0011).putShort((short) 2).putInt(text.length).putInt(32);
    note.putInt(0); // no further directory
    return note.put(text).array();
  }

  private Path clip(String name, String identifier, int seconds) throws IOException {
    Path file = folder.resolve(name);
    List<String> command = new ArrayList<>(List.of("-y", "-v", "error", "-f", "lavfi", "-i"));
    command.add("testsrc2=size=160x90:rate=2:duration=" + seconds);
    command.addAll(List.of("-c:v", "libx264", "-g", "2", "-pix_fmt", "yuv420p"));
    command.addAll(List.of("-movflags", "use_metadata_tags"));
    command.addAll(
        List.of("-metadata", "com.apple.quicktime.creationdate=2026-06-03T14:25:29+0200"));
    if (!identifier.isEmpty()) {
      command.addAll(List.of("-metadata", "com.apple.quicktime.content.identifier=" + identifier));
    }
    command.add(file.toString());
    ffmpeg.run(command.toArray(String[]::new));
    return file;
  }

  private List<String> movingParts() {
    Ingested read = Reading.all(folder);
    assertEquals(List.of(), read.problems());
    return read.movingParts().stream().map(PhotoFile::name).toList();
  }

  private static boolean takesPart(Ingested read, String clip) {
    return read.photos().stream().anyMatch(photo -> photo.file().name().startsWith(clip + " at "));
  }

  @Test
  void theIdentifierPairsWhateverTheFilesAreCalledAndWhereverTheyLie() throws IOException {
    Files.createDirectories(folder.resolve("clips"));
    Path photo = photo("renamed.jpg", ONE);
    Path clip = clip("clips/IMG_0007.MOV", ONE, 3);
    clip("IMG_0008.MOV", OTHER, 3);
    Tool exiftool = Tool.orSkip("exiftool", "-ver");
    for (Path file : List.of(photo, clip)) { // the photo's has both names, by exiftool's version
      assertEquals(
          ONE,
          exiftool.run("-s3", "-ContentIdentifier", "-MediaGroupUUID", file.toString()).strip());
    }
    assertEquals(List.of("clips/IMG_0007.MOV"), movingParts());
    assertTrue(takesPart(Reading.all(folder), "IMG_0008.MOV"));
  }

  @Test
  void oneNameWithTwoIdentifiersIsNoPair() throws IOException {
    photo("IMG_0001.JPG", ONE);
    clip("IMG_0001.MOV", OTHER, 3);
    assertEquals(List.of(), movingParts());
    assertTrue(takesPart(Reading.all(folder), "IMG_0001.MOV"));
  }

  @Test
  void oneNameIsAPairWhereNotBothHaveAnIdentifierAndTheClipIsShort() throws IOException {
    photo("a.jpg", ONE);
    clip("a.mov", NONE, 3);
    photo("b.jpg", NONE);
    clip("b.mov", OTHER, 3);
    photo("c.jpg", NONE);
    clip("c.mp4", NONE, 3);
    photo("long.jpg", NONE);
    clip("long.mp4", NONE, 30);
    assertEquals(List.of("a.mov", "b.mov", "c.mp4"), movingParts());
    assertTrue(takesPart(Reading.all(folder), "long.mp4"));
  }

  @Test
  void theClipOfAPhotoThatCannotBeUsedTakesPart() throws IOException {
    Path photo = photo("IMG_0001.JPG", ONE);
    byte[] whole = Files.readAllBytes(photo);
    Files.write(photo, Arrays.copyOf(whole, whole.length - 200));
    clip("IMG_0001.MOV", ONE, 3);
    Ingested read = Reading.all(folder);
    assertEquals(List.of(), read.movingParts());
    assertEquals(1, read.problems().size());
    assertTrue(takesPart(read, "IMG_0001.MOV"));
  }

  /** What a phone wrote is not kept in the memory of earlier runs. */
  @Test
  void onlyADigestOfTheIdentifierIsHandedOn() {
    String digest = PairTag.digest(ONE).orElseThrow();
    assertTrue(digest.matches("[0-9a-f]{16}"), digest);
    assertEquals(PairTag.digest(" "), Optional.empty());
  }
}
