package org.daymount.image;

import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import org.daymount.file.FileBytes;
import org.daymount.photo.PhotoFormat;

/** The first bytes that give a format away. */
final class Signature {
  /** Brands of ISO/IEC 23008-12 (HEIF); AVIF adds its own. */
  private static final Set<String> HEIF_BRANDS =
      Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "mif2", "msf1", "miaf");

  private static final Set<String> AVIF_BRANDS = Set.of("avif", "avis");
  private static final int MOST_BRANDS = 64;

  private Signature() {}

  static Optional<PhotoFormat> format(FileBytes bytes) throws IOException {
    if (bytes.has(0, 0xff, 0xd8)) { // stray bytes may follow; the walk over the markers decides
      return Optional.of(PhotoFormat.JPEG);
    }
    if (bytes.has(0, 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a)) {
      return Optional.of(PhotoFormat.PNG);
    }
    if (bytes.has(0, "RIFF") && bytes.has(8, "WEBP")) {
      return Optional.of(PhotoFormat.WEBP);
    }
    if (bytes.has(0, "GIF87a") || bytes.has(0, "GIF89a")) {
      return Optional.of(PhotoFormat.GIF);
    }
    if (bytes.has(0, "BM") && bytes.has(6, 0, 0, 0, 0) && bytes.has(15, 0, 0, 0)) {
      return Optional.of(PhotoFormat.BMP);
    }
    if (isOwnRaw(bytes)) {
      return Optional.of(PhotoFormat.RAW);
    }
    if (TiffDirectory.begins(bytes)) {
      return Optional.of(TiffDirectory.isRaw(bytes) ? PhotoFormat.RAW : PhotoFormat.TIFF);
    }
    return isoMedia(bytes);
  }

  /** Makers' raw files that are not TIFF to the letter (signatures from memory). */
  private static boolean isOwnRaw(FileBytes bytes) throws IOException {
    return bytes.has(0, "FUJIFILMCCD-RAW")
        || bytes.has(0, "IIRO")
        || bytes.has(0, "IIRS")
        || bytes.has(0, "MMOR")
        || bytes.has(0, 'I', 'I', 'U', 0)
        || bytes.has(4, "ftypcrx ");
  }

  /** By the main brand and then the compatible ones; a film that says so first stays a film. */
  private static Optional<PhotoFormat> isoMedia(FileBytes bytes) throws IOException {
    if (!bytes.has(4, "ftyp") || bytes.size() < 12) {
      return Optional.empty();
    }
    long end = Math.min(bytes.u32(0), Math.min(bytes.size(), 16 + 4L * MOST_BRANDS));
    String main = bytes.name(8);
    if (AVIF_BRANDS.contains(main)) {
      return Optional.of(PhotoFormat.AVIF);
    }
    boolean heif = HEIF_BRANDS.contains(main);
    for (long at = 16; heif && at + 4 <= end; at += 4) {
      if (AVIF_BRANDS.contains(bytes.name(at))) {
        return Optional.of(PhotoFormat.AVIF);
      }
    }
    return heif ? Optional.of(PhotoFormat.HEIF) : Optional.empty();
  }

  /** ISO media and QuickTime, RIFF AVI, and Matroska or WebM. */
  static boolean isFilm(FileBytes bytes) throws IOException {
    boolean isoFilm =
        (bytes.has(4, "ftyp") && !bytes.has(8, "crx ") && isoMedia(bytes).isEmpty())
            || bytes.has(4, "moov")
            || bytes.has(4, "mdat");
    return isoFilm
        || (bytes.has(0, "RIFF") && bytes.has(8, "AVI "))
        || bytes.has(0, 0x1a, 0x45, 0xdf, 0xa3);
  }
}
