package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The layout of the maker's note and both tags are from memory, as their readers know them. */
class BurstTagTest {
  private static final String ONE = "8F4C1A52-0D3B-4E0F-9C77-1B2A3C4D5E6F";
  private static final String OTHER = "00000000-0D3B-4E0F-9C77-1B2A3C4D5E6F";

  @TempDir Path folder;

  @Test
  void framesOfOneBurstCarryOneMarkThatShowsNothingOfTheIdentifier() throws IOException {
    Optional<String> first = burst("a.jpg", ExifPhoto.painted().makerNote(note(ONE)));
    Optional<String> second = burst("b.jpg", ExifPhoto.painted().size(80, 60).makerNote(note(ONE)));
    Optional<String> other = burst("c.jpg", ExifPhoto.painted().makerNote(note(OTHER)));
    assertTrue(first.orElseThrow().matches("[0-9a-f]{16}"), first.toString());
    assertEquals(first, second);
    assertNotEquals(first, other);
  }

  @Test
  void theIdentifierMayStandInXmp() throws IOException {
    String xmp =
        "xmlns:GCamera='http://ns.google.com/photos/1.0/camera/' GCamera:BurstID='" + ONE + "'";
    assertTrue(burst("a.jpg", ExifPhoto.painted().xmp(xmp)).isPresent());
  }

  @Test
  void aPhotoOrABrokenNoteWithoutOneCarriesNoMark() throws IOException {
    assertEquals(Optional.empty(), burst("a.jpg", ExifPhoto.painted()));
    assertEquals(Optional.empty(), burst("b.jpg", ExifPhoto.painted().makerNote(note(" "))));
    byte[] cut = Arrays.copyOf(note(ONE), 20);
    assertEquals(Optional.empty(), burst("c.jpg", ExifPhoto.painted().makerNote(cut)));
  }

  private Optional<String> burst(String name, ExifPhoto photo) throws IOException {
    Path file = folder.resolve(name);
    Files.write(file, photo.bytes());
    return Reading.one(file).burst();
  }

  /** A header of 14 bytes, big-endian, and a directory of one field whose text lies behind it. */
  private static byte[] note(String identifier) {
    byte[] text = (identifier + "\0").getBytes(StandardCharsets.US_ASCII);
    ByteBuffer note = ByteBuffer.allocate(32 + text.length);
    note.put("Apple iOS\0\0\1MM".getBytes(StandardCharsets.US_ASCII));
    note.putShort((short) 1);
    note.putShort((short) 0x000b).putShort((short) 2).putInt(text.length).putInt(32);
    note.putInt(0); // no further directory
    return note.put(text).array();
  }
}
