package org.daymount.image;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.photo.PhotoFormat;

/** The colour profile of a file, cut out but not understood; at most 16 MiB. */
final class ProfileBytes {
  private static final int MOST_BYTES = 1 << 24;
  private static final int APP2 = 0xe2;
  private static final String HEADING = "ICC_PROFILE\0";
  private static final int CHUNK_HEAD = HEADING.length() + 2;

  private ProfileBytes() {}

  /** Empty when there is none; no bytes when there is one that cannot be put together. */
  static Optional<byte[]> read(FileBytes bytes, Path file, PhotoFormat format) throws IOException {
    return switch (format) {
      case JPEG -> jpeg(bytes);
      case PNG -> PngProfile.bytes(file);
      case WEBP -> webp(bytes);
      case TIFF -> tiff(bytes);
      case HEIF, AVIF -> heif(bytes);
      case GIF, BMP, RAW, CLIP -> Optional.empty();
    };
  }

  /** Colours of a pixel, without alpha, where a header says so in one place; else 0. */
  static int colours(FileBytes bytes, PhotoFormat format) throws IOException {
    if (format == PhotoFormat.JPEG) {
      JpegMarkers markers = new JpegMarkers(bytes);
      while (markers.next()) {
        if (markers.isFrame()) {
          return bytes.u8(markers.body() + 5);
        }
      }
    }
    if (format == PhotoFormat.PNG) {
      return (bytes.u8(25) & 2) == 0 ? 1 : 3;
    }
    return 0;
  }

  /** Chunks numbered from 1 (ICC.1:2010, annex B.4). */
  private static Optional<byte[]> jpeg(FileBytes bytes) throws IOException {
    TreeMap<Integer, byte[]> chunks = new TreeMap<>();
    int promised = 0;
    int total = 0;
    JpegMarkers markers = new JpegMarkers(bytes);
    while (markers.next() && !markers.isScan()) {
      int length = markers.bodyLength() - CHUNK_HEAD;
      if (markers.marker() == APP2 && length >= 0 && bytes.has(markers.body(), HEADING)) {
        long at = markers.body() + HEADING.length();
        promised = bytes.u8(at + 1);
        total += length;
        if (total > MOST_BYTES) {
          return Optional.of(new byte[0]);
        }
        chunks.putIfAbsent(bytes.u8(at), bytes.copy(at + 2, length));
      }
    }
    if (chunks.isEmpty()) {
      return Optional.empty();
    }
    byte[] whole = new byte[total];
    int filled = 0;
    for (byte[] chunk : chunks.values()) {
      System.arraycopy(chunk, 0, whole, filled, chunk.length);
      filled += chunk.length;
    }
    boolean complete = filled == total && (chunks.size() == promised || chunks.size() == 1);
    return Optional.of(complete ? whole : new byte[0]);
  }

  private static Optional<byte[]> webp(FileBytes bytes) throws IOException {
    long at = 12;
    while (at + 8 <= bytes.size()) {
      long length = bytes.u32(at + 4, false);
      if (bytes.name(at).equals("ICCP")) {
        return Optional.of(bounded(bytes, at + 8, length));
      }
      at += 8 + length + length % 2;
    }
    return Optional.empty();
  }

  private static Optional<byte[]> tiff(FileBytes bytes) throws IOException {
    TiffDirectory.Field field = TiffDirectory.all(bytes).get(0).field(TiffDirectory.PROFILE);
    return field == null
        ? Optional.empty()
        : Optional.of(bounded(bytes, field.position(), field.count() * field.width()));
  }

  private static Optional<byte[]> heif(FileBytes bytes) throws IOException {
    Optional<IsoBoxes.Box> box = HeifPicture.primary(bytes, HeifItems.read(bytes)).profile();
    return box.isEmpty()
        ? Optional.empty()
        : Optional.of(bounded(bytes, box.get().body(), box.get().length()));
  }

  private static byte[] bounded(FileBytes bytes, long from, long length) throws IOException {
    return length > MOST_BYTES || from + length > bytes.size()
        ? new byte[0]
        : bytes.copy(from, (int) length);
  }
}
