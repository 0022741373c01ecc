package org.daymount.image.jpeg;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Whether a JPEG's coded data are in order, whoever decodes them. All of them are gone through:
 * codes that are none, numbers that cannot be, data that end early or are left over, restart
 * markers out of step, scans that do not go on from each other, and headers that contradict
 * themselves. Huffman and arithmetic coding, sequential and progressive, of 8 bits and up to four
 * colours.
 *
 * <p>What is flipped without breaking any of these rules (a bit in a table of steps, a value in a
 * block that keeps its length) is not noticed; nothing in the file could tell.
 */
public final class JpegCheck {
  private JpegCheck() {}

  /**
   * @param from where in the file the JPEG begins, and its length
   * @return what is wrong, as the end of "is damaged: "; empty also for kinds that are not checked:
   *     lossless, hierarchical, 12 bits
   * @throws IOException when the file cannot be read
   */
  public static Optional<String> damage(Path file, long from, long length) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return damage(CodedFile.of(channel, from, length));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  static Optional<String> damage(CodedFile file) {
    try {
      ReducedDecoder.check(file);
      return Optional.empty();
    } catch (JpegDamaged e) {
      return Optional.of(e.getMessage());
    } catch (JpegRefused e) {
      return Optional.empty();
    }
  }
}
