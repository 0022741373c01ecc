package org.daymount.output;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.file.SmallFile;

/**
 * Keeps others from doing the same in one folder at the same time, by a lock of the system on a
 * file there. The system gives it up when the process ends, however it ends, so there are no stale
 * locks; the file stays, and may be deleted when nothing runs.
 */
public final class FolderLock implements AutoCloseable {
  /** Far behind the text: where locks are mandatory (Windows), others can still read that. */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  private static final int MOST_TEXT = 1000; // bytes: an address

  /**
   * Held in this process, by file, with the text. Asked before the file is opened: closing any
   * channel on a file gives up all locks the process has on it (POSIX.1-2017, fcntl).
   */
  private static final Map<Path, String> HELD = new ConcurrentHashMap<>();

  private final Path key;
  private final FileChannel channel;
  private final FileLock lock;

  private FolderLock(Path key, FileChannel channel, FileLock lock) {
    this.key = key;
    this.channel = channel;
    this.lock = lock;
  }

  /**
   * @param folder is there
   * @param name of the lock's file
   * @param text for those who find it taken
   * @return empty when somebody else has it
   */
  public static Optional<FolderLock> take(Path folder, String name, String text)
      throws IOException {
    Path key = folder.toRealPath().resolve(name);
    if (HELD.putIfAbsent(key, text) != null) {
      return Optional.empty();
    }
    FileChannel channel = null;
    FileLock lock = null;
    try {
      channel =
          FileChannel.open(
              key,
              StandardOpenOption.CREATE,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
      lock = channel.tryLock(LOCKED_BYTE, 1, false);
      if (lock == null) {
        return Optional.empty();
      }
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)), 0);
      return Optional.of(new FolderLock(key, channel, lock));
    } finally {
      if (lock == null) {
        HELD.remove(key);
        closeQuietly(channel);
      }
    }
  }

  /** Whether somebody has it now; nothing is made that is not there. */
  public static boolean isTaken(Path folder, String name) {
    try {
      if (!Files.isRegularFile(folder.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
        return false;
      }
      Optional<FolderLock> lock = take(folder, name, "");
      lock.ifPresent(FolderLock::close);
      return lock.isEmpty();
    } catch (IOException e) {
      return false; // whoever takes it will say so
    }
  }

  /** What whoever has the lock wrote there; empty when it cannot be read. */
  public static String text(Path folder, String name) {
    try {
      Path key = folder.toRealPath().resolve(name);
      String held = HELD.get(key);
      return held != null ? held : SmallFile.text(key, MOST_TEXT).strip();
    } catch (IOException e) {
      return "";
    }
  }

  @Override
  public void close() {
    try {
      channel.truncate(0);
      lock.release();
    } catch (IOException e) {
      // closing the channel releases it as well
    }
    closeQuietly(channel);
    HELD.remove(key);
  }

  private static void closeQuietly(FileChannel channel) {
    if (channel != null) {
      try {
        channel.close();
      } catch (IOException e) {
        // nothing more can be done about it
      }
    }
  }
}
