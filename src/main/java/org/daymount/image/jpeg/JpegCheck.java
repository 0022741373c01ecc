package org.daymount.image.jpeg;

import java.io.IOException;
import java.util.Optional;
import org.daymount.file.FileBytes;

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
   * @return what is wrong, as the end of "is damaged: "; empty also for kinds that are not checked:
   *     lossless, hierarchical, 12 bits
   * @throws IOException when the file cannot be read
   */
  public static Optional<String> damage(FileBytes jpeg) throws IOException {
    try {
      ReducedDecoder.check(jpeg);
      return Optional.empty();
    } catch (JpegDamaged e) {
      return Optional.of(e.getMessage());
    } catch (JpegRefused e) {
      return Optional.empty();
    }
  }
}
