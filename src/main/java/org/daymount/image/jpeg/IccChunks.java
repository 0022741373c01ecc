package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.file.FileBytes;

/**
 * The colour profile of a JPEG file, which may be spread over several segments, numbered from 1
 * (ICC.1:2022, B.4). At most 255 of 64 KiB.
 */
public final class IccChunks {
  private static final String HEADING = "ICC_PROFILE\0";
  private static final int NUMBERS = 2; // the chunk's own, and how many there are

  private final TreeMap<Integer, byte[]> chunks = new TreeMap<>();
  private int promised;

  /** Takes the segment if it is a part of the profile. */
  public void read(FileBytes file, MarkerReader segment) throws IOException {
    int length = segment.left() - HEADING.length() - NUMBERS;
    if (segment.marker() == MarkerReader.APP2
        && length >= 0
        && file.has(segment.position(), HEADING)) {
      long at = segment.position() + HEADING.length();
      promised = file.u8(at + 1);
      chunks.putIfAbsent(file.u8(at), file.copy(at + NUMBERS, length));
    }
  }

  /** Empty when there is none; no bytes when parts of it are missing or left over. */
  public Optional<byte[]> profile() {
    if (chunks.isEmpty()) {
      return Optional.empty();
    }
    if (chunks.size() != promised && chunks.size() != 1) {
      return Optional.of(new byte[0]);
    }
    byte[] whole = new byte[chunks.values().stream().mapToInt(chunk -> chunk.length).sum()];
    int at = 0;
    for (byte[] chunk : chunks.values()) {
      System.arraycopy(chunk, 0, whole, at, chunk.length);
      at += chunk.length;
    }
    return Optional.of(whole);
  }
}
