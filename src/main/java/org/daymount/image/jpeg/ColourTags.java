package org.daymount.image.jpeg;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.daymount.file.FileBytes;

/**
 * What application segments say about colours: whether the components are a brightness and two
 * colour differences (ITU-T T.871, JFIF) or something else (T.872, 6.5.3, Adobe), and the ICC
 * profile, which may be spread over several segments (ICC.1:2022, B.4).
 */
final class ColourTags {
  private static final byte[] JFIF = "JFIF\0".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] ADOBE = "Adobe".getBytes(StandardCharsets.US_ASCII);
  private static final int JFIF_LENGTH = 14; // T.871, 10.1, without the segment's own length
  private static final int ADOBE_TRANSFORM = 11;
  private static final int BRIGHTNESS_AND_DIFFERENCES = 1;

  private final IccChunks profile = new IccChunks();
  private boolean jfif;
  private boolean otherVersion;
  private Optional<Integer> adobe = Optional.empty();

  void read(FileBytes file, MarkerReader in) throws IOException {
    profile.read(file, in);
    byte[] content = in.bytes(in.left());
    switch (in.marker()) {
      case MarkerReader.APP0 -> {
        if (begins(content, JFIF) && content.length >= JFIF_LENGTH) {
          jfif = true;
          otherVersion |= content[JFIF.length] != 1;
        }
      }
      case MarkerReader.APP14 -> {
        if (begins(content, ADOBE) && content.length > ADOBE_TRANSFORM) {
          adobe = Optional.of(content[ADOBE_TRANSFORM] & 0xff);
        }
      }
      default -> {}
    }
  }

  private static boolean begins(byte[] content, byte[] with) {
    if (content.length < with.length) {
      return false;
    }
    for (int i = 0; i < with.length; i++) {
      if (content[i] != with[i]) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether it says a kind of colours that there is: 0 to 2 in an Adobe segment, and major version
   * 1 in a JFIF one.
   */
  boolean areKnown(Frame frame) {
    int count = frame.components().size();
    boolean known =
        jfif
            || count < 3
            || adobe.isEmpty()
            || adobe.get() == 0
            || adobe.get() == (count == 3 ? 1 : 2);
    return known && !otherVersion;
  }

  /** Red, green and blue themselves are left to others. */
  void refuseOtherColours(Frame frame) throws JpegRefused {
    if (frame.components().size() == 1) {
      return;
    }
    boolean other;
    if (adobe.isPresent()) {
      other = adobe.get() != BRIGHTNESS_AND_DIFFERENCES;
    } else {
      other = !jfif && frame.components().get(0).id == 'R';
    }
    if (other) {
      throw new JpegRefused("its colours are not stored as brightness and differences");
    }
  }

  /**
   * Empty when there is none.
   *
   * @throws JpegRefused when parts of it are missing
   */
  Optional<byte[]> profile() throws JpegRefused {
    Optional<byte[]> whole = profile.profile();
    if (whole.isPresent() && whole.get().length == 0) {
      throw new JpegRefused("parts of its colour profile are missing");
    }
    return whole;
  }
}
