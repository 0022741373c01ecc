package org.daymount.image;

import java.util.Locale;

/** Bytes as people say them: 1.2 MB is 1,200,000 bytes (SI, as phones and cameras count). */
final class ByteCount {
  private ByteCount() {}

  static String of(long bytes) {
    if (bytes < 1_000) {
      return bytes + " bytes";
    }
    return bytes < 999_500
        ? String.format(Locale.ROOT, "%.0f kB", bytes / 1e3)
        : String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
  }
}
