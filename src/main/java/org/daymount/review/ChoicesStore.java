package org.daymount.review;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.TRUNCATE_EXISTING;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesFile;
import org.daymount.pipeline.PersonsFiles;

/**
 * choices.json on the disk. It is written beside its place and moved there, so that whoever reads
 * it, or finds it after the power failed, has either all of the old or all of the new.
 */
final class ChoicesStore {
  private static final byte[] NOTHING = {};

  private final Path file;
  private byte[] known;

  /**
   * @param file need not be there yet, nor its folder
   */
  ChoicesStore(Path file) {
    this.file = file;
  }

  Choices read() throws IOException {
    known = bytes();
    return PersonsFiles.choices(file);
  }

  /** Whether something else has written the file since it was last read or written here. */
  boolean isChangedByOthers() throws IOException {
    return !Arrays.equals(known, bytes());
  }

  void write(Choices choices) throws IOException {
    byte[] bytes = ChoicesFile.write(choices);
    if (Arrays.equals(bytes, known)) {
      return;
    }
    Files.createDirectories(file.toAbsolutePath().getParent());
    Path part = file.resolveSibling(file.getFileName() + ".part");
    try (FileChannel channel = FileChannel.open(part, CREATE, WRITE, TRUNCATE_EXISTING)) {
      for (ByteBuffer left = ByteBuffer.wrap(bytes); left.hasRemaining(); ) {
        channel.write(left);
      }
      channel.force(true); // on the disk before it takes the place of the old one
    }
    try {
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }
    known = bytes;
  }

  private byte[] bytes() throws IOException {
    return Files.exists(file) ? Files.readAllBytes(file) : NOTHING;
  }
}
