package org.daymount.image;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.daymount.file.FileBytes;
import org.daymount.image.jpeg.IccChunks;
import org.daymount.image.jpeg.MarkerReader;
import org.daymount.photo.PhotoFormat;

/** The colour profile of a file, cut out but not understood; at most 16 MiB. */
final class ProfileBytes {
  private static final int MOST_BYTES = 1 << 24;

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
      MarkerReader markers = new MarkerReader(bytes);
      while (markers.advance()) {
        if (markers.isFrame()) {
          return bytes.u8(markers.position() + 5);
        }
      }
    }
    if (format == PhotoFormat.PNG) {
      return (bytes.u8(25) & 2) == 0 ? 1 : 3;
    }
    return 0;
  }

  private static Optional<byte[]> jpeg(FileBytes bytes) throws IOException {
    IccChunks chunks = new IccChunks();
    MarkerReader markers = new MarkerReader(bytes);
    while (markers.advance() && !markers.isScan()) {
      chunks.read(bytes, markers);
    }
    return chunks.profile();
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
