package org.daymount.image;

import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.InflaterInputStream;

/**
 * The colour profile of a PNG (iCCP chunk; W3C PNG Specification, Third Edition, 11.3.2.3), which
 * the JDK's reader does not use. A profile that is broken or does not fit the picture's colours is
 * ignored. The gAMA and cHRM chunks are not used.
 */
final class PngProfile {
  private static final int SIGNATURE_BYTES = 8;
  private static final int CHECKSUM_BYTES = 4;
  private static final int PROFILE_CHUNK = 0x69434350; // iCCP
  private static final int FIRST_PIXELS = 0x49444154; // IDAT
  private static final int MOST_NAME_BYTES = 80; // with its closing zero
  private static final int MOST_BYTES = 16_000_000; // a small chunk may inflate to anything

  private PngProfile() {}

  /** The same pixels, known to be in the file's own profile; the picture itself without one. */
  static BufferedImage applied(BufferedImage decoded, Path file) {
    return profile(file).map(profile -> Profiles.applied(decoded, profile)).orElse(decoded);
  }

  private static Optional<ICC_Profile> profile(Path file) {
    return bytes(file).flatMap(Profiles::read);
  }

  /** Nothing at all when it cannot be inflated; empty when the file has none. */
  static Optional<byte[]> bytes(Path file) {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      in.skipNBytes(SIGNATURE_BYTES);
      while (true) {
        long length = Integer.toUnsignedLong(in.readInt());
        int chunk = in.readInt();
        if (chunk == PROFILE_CHUNK) {
          return Optional.of(inflated(in));
        }
        if (chunk == FIRST_PIXELS) {
          return Optional.empty();
        }
        in.skipNBytes(length + CHECKSUM_BYTES);
      }
    } catch (EOFException e) {
      return Optional.empty(); // no profile, and no pixels
    } catch (IOException e) {
      return Optional.of(new byte[0]);
    }
  }

  /** From a chunk's content: name, zero, compression method, then the profile as a zlib stream. */
  private static byte[] inflated(DataInputStream chunk) throws IOException {
    for (int i = 0; chunk.readByte() != 0; i++) {
      if (i == MOST_NAME_BYTES) {
        throw new IOException("the profile's name does not end");
      }
    }
    chunk.readByte(); // the only method there is
    return new InflaterInputStream(chunk).readNBytes(MOST_BYTES);
  }
}
