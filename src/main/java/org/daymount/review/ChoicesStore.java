package org.daymount.review;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Optional;
import org.daymount.choices.Choices;
import org.daymount.choices.ChoicesFile;
import org.daymount.file.SmallFile;
import org.daymount.file.WholeFile;
import org.daymount.note.NoteParser;
import org.daymount.output.FolderLock;
import org.daymount.output.OutputException;
import org.daymount.output.OutputFolder;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.UserFiles;

/**
 * choices.json on the disk, while a review has it to itself. It is written beside its place and
 * moved there, so that whoever reads it, or finds it after the power failed, has either all of the
 * old or all of the new. The version before the last is kept beside it. What was written by
 * something else is never replaced unread, and what cannot be read is never replaced.
 */
final class ChoicesStore implements AutoCloseable {
  private static final String LOCK = ".daymount-review";
  private static final byte[] NOTHING = {};

  private final Path file;
  private final YearMonth month;
  private final FolderLock lock;
  private Optional<FolderLock> lockBehindLink = Optional.empty();
  private byte[] known = NOTHING;
  private volatile boolean closed;

  private ChoicesStore(Path file, YearMonth month, FolderLock lock) {
    this.file = file;
    this.month = month;
    this.lock = lock;
  }

  /**
   * @param file need not be there yet, nor its folder
   * @param address where this review is found, without its token: for whoever comes second
   * @throws RunFailed when another review has it, or nothing can be written there
   */
  static ChoicesStore open(Path file, YearMonth month, String address) {
    Path folder = file.toAbsolutePath().getParent();
    try {
      OutputFolder.make(folder);
      FolderLock lock =
          FolderLock.take(folder, LOCK, address)
              .orElseThrow(() -> taken(Optional.of(month), folder));
      ChoicesStore store = new ChoicesStore(file, month, lock);
      try {
        store.lockBehindLink(address);
        store.clearParts();
        return store;
      } catch (IOException | RunFailed e) {
        store.close();
        throw e;
      }
    } catch (IOException e) {
      throw new RunFailed(
          "cannot write to "
              + folder
              + ", where choices are saved ("
              + OutputFolder.reason(e)
              + "); choose another folder with --out");
    }
  }

  /**
   * Reviews of several folders may have links to one file. It is locked as the file of the folder
   * that it lies in, or by its name where that is another: choices of several months may lie there.
   */
  private void lockBehindLink(String address) throws IOException {
    if (!Files.isSymbolicLink(file) || !Files.exists(file)) {
      return;
    }
    Path target = file.toRealPath();
    boolean usual = target.getFileName().equals(file.getFileName());
    String name = usual ? LOCK : LOCK + "-" + target.getFileName();
    lockBehindLink = FolderLock.take(target.getParent(), name, address);
    if (lockBehindLink.isEmpty()) {
      String other = FolderLock.text(target.getParent(), name);
      throw new RunFailed(
          "a review whose choices are the same file, "
              + target
              + ", is open already"
              + (other.isEmpty() ? "" : " at " + other)
              + "; end it first, or remove the link "
              + file);
    }
  }

  /**
   * For whoever is about to look at a month's pictures, which takes long.
   *
   * @param month when it is known
   * @throws RunFailed when another review has the folder; nothing is written there
   */
  static void refuseSecond(Path folder, Optional<YearMonth> month) {
    if (FolderLock.isTaken(folder, LOCK)) {
      throw taken(month, folder);
    }
  }

  private static RunFailed taken(Optional<YearMonth> month, Path folder) {
    String address = FolderLock.text(folder, LOCK);
    return new RunFailed(
        month.map(m -> "a review of " + NoteParser.name(m)).orElse("a review with the same --out")
            + " is open already"
            + (address.isEmpty() ? "" : " at " + address)
            + "; go on in its page, or end it first (by its button End Daymount, or Ctrl-C where it was"
            + " started)");
  }

  /**
   * @throws RunFailed when it is there and cannot be read; nothing is saved until it can be
   */
  Choices read() throws IOException {
    Optional<byte[]> bytes = Optional.empty();
    try {
      bytes = Optional.of(UserFiles.bytes(file));
      Choices choices = UserFiles.choices(file, bytes.get(), month);
      known = bytes.get();
      return choices;
    } catch (RunFailed unreadable) {
      throw new RunFailed(
          unreadable.getMessage()
              + ". Until it can be read nothing is saved"
              + (bytes.isEmpty()
                  ? ""
                  : "; what it holds now is kept as " + copy(bytes.get()).getFileName()));
    }
  }

  /** Whether something else has written the file since it was last read or written here. */
  boolean isChangedByOthers() {
    try {
      return !Arrays.equals(known, UserFiles.bytes(file));
    } catch (RunFailed unreadable) {
      return true;
    }
  }

  /**
   * @throws OutputException when it cannot be written; the file is then as it was
   */
  void write(Choices choices) throws OutputException {
    byte[] bytes = ChoicesFile.write(choices);
    if (Arrays.equals(bytes, known)) {
      return;
    }
    if (closed) {
      throw new OutputException("not saved: this review has ended");
    }
    try {
      OutputFolder.make(file.toAbsolutePath().getParent());
      Path target = target();
      Path part = WholeFile.part(target, bytes);
      try {
        if (known.length > 0) {
          WholeFile.write(target.resolveSibling(target.getFileName() + ".bak"), known);
        }
        if (isChangedByOthers()) { // asked last: nothing but the move is left to do
          throw new OutputException("not saved: something else has just written " + file);
        }
        WholeFile.replace(part, target);
      } finally {
        Files.deleteIfExists(part);
      }
      known = bytes;
    } catch (OutputException e) {
      throw e;
    } catch (IOException e) {
      throw new OutputException(
          "not saved: cannot write " + file + " (" + OutputFolder.reason(e) + ")");
    }
  }

  /** Where a link leads: the person put it there to have the file elsewhere. */
  private Path target() throws IOException {
    return Files.isSymbolicLink(file) ? file.toRealPath() : file;
  }

  /** What killed reviews left, where a link leads too; they may lie in a folder of several. */
  private void clearParts() throws IOException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS) || Files.exists(file)) {
      Path target = target();
      WholeFile.clearParts(target);
      WholeFile.clearParts(target.resolveSibling(target.getFileName() + ".bak"));
    }
  }

  /** The bytes under a name of their own, once. */
  private Path copy(byte[] bytes) throws IOException {
    for (int number = 1; ; number++) {
      Path copy = file.resolveSibling(file.getFileName() + ".damaged-" + number);
      if (!Files.exists(copy, LinkOption.NOFOLLOW_LINKS)) {
        return Files.write(copy, bytes, CREATE_NEW, WRITE);
      }
      if (SmallFile.holds(copy, bytes)) {
        return copy;
      }
    }
  }

  @Override
  public void close() {
    closed = true;
    lockBehindLink.ifPresent(FolderLock::close);
    lock.close();
  }
}
