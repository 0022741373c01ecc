package org.daymount.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The folder a run leaves its files in. Everything is first written beside its place as {@code
 * .part} and moved there at the end, so a run that fails leaves the earlier files whole. A file
 * that is the same already is not touched; a file this program did not make is never replaced;
 * files of an earlier run that are no longer part of the month are removed, if nobody has changed
 * them.
 *
 * <p>What was made here is remembered in {@code .daymount-made}: a SHA-256 and a name per line.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String RECORD = ".daymount-made";
  private static final String LOCK = ".daymount-lock";
  private static final String PART = ".part";

  private final Path folder;
  private final boolean force;
  private final Map<String, String> madeBefore;
  private final Map<String, String> staged = new LinkedHashMap<>();
  private final List<String> changed = new ArrayList<>();
  private final FileChannel lockChannel;
  private final FileLock lock;

  private OutputFolder(Path folder, boolean force, FileChannel lockChannel, FileLock lock)
      throws IOException {
    this.folder = folder;
    this.force = force;
    this.lockChannel = lockChannel;
    this.lock = lock;
    this.madeBefore = readRecord(folder.resolve(RECORD));
  }

  /**
   * Opens the folder for one run, making it when it is not there.
   *
   * @param force whether files this program did not make may be replaced
   * @throws OutputException when the folder cannot be written, or another run is at work in it
   */
  public static OutputFolder open(Path folder, boolean force) throws OutputException {
    FileChannel channel = null;
    try {
      Files.createDirectories(folder);
      channel =
          FileChannel.open(
              folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = tryLock(channel);
      if (lock == null) {
        throw new OutputException(
            folder
                + " is being written by another run; wait for it to end, or choose another"
                + " folder with --out");
      }
      return new OutputFolder(folder, force, channel, lock);
    } catch (OutputException e) {
      closeQuietly(channel);
      throw e;
    } catch (IOException e) {
      closeQuietly(channel);
      throw new OutputException(
          "cannot write to " + folder + ": " + Reason.of(e) + "; choose another folder with --out");
    }
  }

  /**
   * Whether an earlier run made a file, and nobody has changed it since. May be asked from several
   * threads.
   */
  public boolean isStill(String name, Written written) {
    Path target = folder.resolve(name);
    try {
      return written.sha256().equals(madeBefore.get(name))
          && Files.isRegularFile(target)
          && Written.crc32(Files.readAllBytes(target)) == written.crc32();
    } catch (IOException e) {
      return false;
    }
  }

  /** Leaves a file as an earlier run made it; see {@link #isStill}. */
  public void keep(String name, Written written) {
    staged.put(name, written.sha256());
  }

  /** What was staged or kept. */
  public byte[] content(String name) throws IOException {
    Path target = folder.resolve(name);
    return Files.readAllBytes(changed.contains(name) ? part(target) : target);
  }

  /** Writes one file beside its place; nothing that was there changes before {@link #finish}. */
  public Written stage(String name, byte[] content) throws OutputException {
    Path target = folder.resolve(name);
    String hash = sha256(content);
    Written written = new Written(hash, Written.crc32(content));
    try {
      boolean exists = Files.exists(target);
      if (exists && Files.size(target) == content.length && sha256(target).equals(hash)) {
        staged.put(name, hash);
        return written;
      }
      if (exists && !force && !madeBefore.containsKey(name)) {
        throw new OutputException(
            target
                + " is there already and was not made by daymount; move it away, choose another"
                + " folder with --out, or allow it with --force");
      }
      Files.createDirectories(target.getParent());
      changed.add(name); // before it is there: what a full disk leaves of it goes too
      Files.write(part(target), content);
      staged.put(name, hash);
      return written;
    } catch (OutputException e) {
      throw e;
    } catch (IOException e) {
      throw new OutputException(
          "cannot write " + target + ": " + Reason.of(e) + "; earlier files are as they were");
    }
  }

  /**
   * Moves everything that was staged into its place and removes what no longer belongs.
   *
   * @return the names that are new or changed, in the order they were staged
   */
  public List<String> finish() throws OutputException {
    try {
      Map<String, String> record = new TreeMap<>(madeBefore);
      record.putAll(staged);
      if (!record.equals(madeBefore)) {
        writeRecord(record); // before the files: a killed run still knows what it made
      }
      for (String name : changed) {
        move(part(folder.resolve(name)), folder.resolve(name));
      }
      removeStale();
      writeRecord(new TreeMap<>(staged));
      return List.copyOf(changed);
    } catch (IOException e) {
      throw new OutputException("cannot finish " + folder + ": " + Reason.of(e) + "; run it again");
    }
  }

  private void removeStale() throws IOException {
    for (Map.Entry<String, String> made : madeBefore.entrySet()) {
      Path old = folder.resolve(made.getKey());
      if (!staged.containsKey(made.getKey())
          && Files.isRegularFile(old)
          && sha256(old).equals(made.getValue())) {
        Files.delete(old);
      }
    }
  }

  /** Ends the run; parts that were never moved are removed. */
  @Override
  public void close() {
    for (String name : changed) {
      try {
        Files.deleteIfExists(part(folder.resolve(name)));
      } catch (IOException e) {
        // the next run overwrites it
      }
    }
    try {
      lock.release();
    } catch (IOException e) {
      // closing the channel releases it as well
    }
    closeQuietly(lockChannel);
  }

  private static FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  private static Path part(Path target) {
    return target.resolveSibling(target.getFileName() + PART);
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private void writeRecord(Map<String, String> made) throws IOException {
    StringBuilder text = new StringBuilder();
    made.forEach((name, hash) -> text.append(hash).append("  ").append(name).append('\n'));
    byte[] content = text.toString().getBytes(StandardCharsets.UTF_8);
    Path target = folder.resolve(RECORD);
    if (Files.exists(target) && java.util.Arrays.equals(Files.readAllBytes(target), content)) {
      return;
    }
    Files.write(part(target), content);
    move(part(target), target);
  }

  private static Map<String, String> readRecord(Path file) throws IOException {
    Map<String, String> made = new TreeMap<>();
    if (Files.isRegularFile(file)) {
      for (String line : Files.readString(file).split("\n")) {
        int gap = line.indexOf("  ");
        if (gap == 64) {
          made.put(line.substring(gap + 2), line.substring(0, gap));
        }
      }
    }
    return made;
  }

  private static String sha256(Path file) throws IOException {
    return sha256(Files.readAllBytes(file));
  }

  private static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
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
