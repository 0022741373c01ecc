package org.daymount.file;

import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;

/** Files that stand under their name whole, or as they were. */
public final class WholeFile {
  private static final int MOST_PARTS = 100;

  /** Between the system's account of a process and a disk elsewhere. */
  private static final Duration CLOCKS_APART = Duration.ofMinutes(10);

  private static volatile Runnable beforeMove = () -> {};

  private WholeFile() {}

  /**
   * Writes to a new name beside it, which nobody else's file has, and puts that in its place when
   * it is on the disk.
   *
   * @param file replaced if it is there; its folder must be there
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path part = part(file, bytes);
    try {
      replace(part, file);
    } catch (IOException e) {
      Files.deleteIfExists(part);
      throw e;
    }
  }

  /** Told before each step that changes what stands under a name: a test ends the process there. */
  static void beforeEachMove(Runnable step) {
    beforeMove = step;
  }

  /** Takes the place of whatever is there, at once where the file system can. */
  public static void replace(Path from, Path to) throws IOException {
    beforeMove.run();
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /**
   * Gives a file that must not be lost a name that is free.
   *
   * @param like how it is to be called: {@code note.txt} makes it {@code note-1.txt}, or the next
   *     number that is free
   * @return where it is now
   */
  public static Path setAside(Path file, Path like) throws IOException {
    String name = like.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = dot < 0 ? name : name.substring(0, dot);
    Path free;
    int number = 0;
    do {
      free = like.resolveSibling(stem + "-" + ++number + name.substring(stem.length()));
    } while (Files.exists(free, LinkOption.NOFOLLOW_LINKS));
    beforeMove.run();
    return Files.move(file, free);
  }

  public static void delete(Path file) throws IOException {
    beforeMove.run();
    Files.delete(file);
  }

  /**
   * An empty new file beside another, under a name that no other run is writing to at this moment.
   * What runs that died left of the same file is taken away.
   */
  public static Path part(Path file) throws IOException {
    clearParts(file);
    String stem = stem(file);
    for (int n = 1; n < MOST_PARTS; n++) {
      Path part = file.resolveSibling(stem + ProcessHandle.current().pid() + "-" + n);
      try {
        return Files.createFile(part);
      } catch (FileAlreadyExistsException e) {
        // another thread's
      }
    }
    throw new IOException("too many unfinished files beside " + file);
  }

  /**
   * As {@link #part(Path)}, with the bytes in it and on the disk, ready to {@link #replace} what is
   * there.
   */
  public static Path part(Path file, byte[] bytes) throws IOException {
    Path part = part(file);
    try (FileChannel channel = FileChannel.open(part, WRITE)) {
      for (ByteBuffer left = ByteBuffer.wrap(bytes); left.hasRemaining(); ) {
        channel.write(left);
      }
      channel.force(true);
      return part;
    } catch (IOException e) {
      Files.deleteIfExists(part);
      throw e;
    }
  }

  /** Takes away the unfinished files that runs that died left beside a file. */
  public static void clearParts(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder)) {
      return;
    }
    String stem = stem(file);
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(folder, one -> one.getFileName().toString().startsWith(stem))) {
      for (Path part : all) {
        String[] numbers = part.getFileName().toString().substring(stem.length()).split("-");
        boolean ours = numbers.length == 2 && numbers[0].matches("\\d{1,18}");
        if (ours && !isBeingWritten(part, Long.parseLong(numbers[0]))) {
          Files.deleteIfExists(part);
        }
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
  }

  /**
   * A process that began after the file was last written has only the number of the one that died.
   */
  private static boolean isBeingWritten(Path part, long process) {
    Instant written = Instant.ofEpochMilli(part.toFile().lastModified()); // 1970 when it is gone
    return ProcessHandle.of(process)
        .map(ProcessHandle::info)
        .filter(
            alive ->
                alive
                    .startInstant()
                    .map(start -> start.isBefore(written.plus(CLOCKS_APART)))
                    .orElse(true))
        .isPresent();
  }

  private static String stem(Path file) {
    return "." + file.getFileName() + ".daymount-part-";
  }
}
