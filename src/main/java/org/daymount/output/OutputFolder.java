package org.daymount.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.file.Sha256;
import org.daymount.file.WholeFile;

/**
 * The folder a run leaves its files in. Everything is first written to a folder of its own and
 * moved to its place at the end, so a run that fails leaves the earlier files whole. A file that is
 * the same already is not touched; a file this program did not make is replaced only by force; one
 * that somebody changed since is set aside first; files of an earlier run that are no longer part
 * of the month are removed. What is made is remembered in a {@link MadeRecord}.
 */
public final class OutputFolder implements AutoCloseable {
  private static final String LOCK = ".daymount-lock";
  private static final String SET_ASIDE = "set-aside";

  private final Path folder;
  private final boolean force;
  private final FolderLock lock;
  private final Staging staging;
  private final MadeRecord before;
  private final MadeRecord made = new MadeRecord();
  private final Map<String, Path> parts = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();

  private OutputFolder(Path folder, boolean force, FolderLock lock) throws IOException {
    this.folder = folder;
    this.force = force;
    this.lock = lock;
    this.staging = Staging.in(folder);
    this.before = MadeRecord.read(folder);
  }

  /**
   * Opens the folder for one run, making it when it is not there.
   *
   * @param force whether files this program did not make may be replaced
   * @throws OutputException when the folder cannot be written, or another run is at work in it
   */
  public static OutputFolder open(Path folder, boolean force) throws OutputException {
    Optional<FolderLock> lock = Optional.empty();
    try {
      make(folder);
      lock = FolderLock.take(folder, LOCK, "");
      return new OutputFolder(
          folder,
          force,
          lock.orElseThrow(
              () ->
                  new OutputException(
                      folder
                          + " is being written by another run; wait for it to end, or choose"
                          + " another folder with --out")));
    } catch (OutputException e) {
      lock.ifPresent(FolderLock::close);
      throw e;
    } catch (IOException e) {
      lock.ifPresent(FolderLock::close);
      throw new OutputException(
          "cannot write to " + folder + ": " + Reason.of(e) + "; choose another folder with --out");
    }
  }

  /** What the file system complained of, in a person's words. */
  public static String reason(IOException e) {
    return Reason.of(e);
  }

  /** Unless it is there; a link to a folder is one. */
  public static void make(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
  }

  /**
   * Whether an earlier run made a file, and nobody has changed it since. May be asked from several
   * threads.
   */
  public boolean isStill(String name, Written written) {
    Path target = folder.resolve(name);
    try {
      return before.holds(name, written.sha256())
          && isFile(target)
          && Written.crc32(Files.readAllBytes(target)) == written.crc32();
    } catch (IOException e) {
      return false;
    }
  }

  /** Leaves a file as an earlier run made it; see {@link #isStill}. */
  public void keep(String name, Written written) {
    made.add(name, written.sha256());
  }

  /** What was staged or kept. */
  public byte[] content(String name) throws IOException {
    return Files.readAllBytes(parts.getOrDefault(name, folder.resolve(name)));
  }

  /**
   * Writes one file beside its place; nothing that was there changes before {@link #finish}.
   *
   * @throws IllegalArgumentException for a name that {@link MadeRecord} does not take for ours
   */
  public Written stage(String name, byte[] content) throws OutputException {
    if (!MadeRecord.isOurs(name)) {
      throw new IllegalArgumentException("the program makes no file of the name " + name);
    }
    Path target = folder.resolve(name);
    String sum = Sha256.hex(content);
    Written written = new Written(sum, Written.crc32(content));
    try {
      checkPlace(target);
      if (isFile(target) && Files.size(target) == content.length && sha256(target).equals(sum)) {
        made.add(name, sum);
        return written;
      }
      if (isThere(target) && !force && !before.holds(name)) {
        throw new OutputException(
            target
                + " is there already and was not made by daymount; move it away, choose another"
                + " folder with --out, or allow it with --force",
            true);
      }
      parts.put(name, staging.write(content));
      made.add(name, sum);
      return written;
    } catch (OutputException e) {
      throw e;
    } catch (IOException e) {
      throw new OutputException(
          "cannot write " + target + ": " + Reason.of(e) + "; earlier files are as they were");
    }
  }

  /** Nothing is written through a link to another folder, nor in place of a folder. */
  private void checkPlace(Path target) throws OutputException {
    Path parent = target.getParent();
    if (!parent.equals(folder) && Files.isSymbolicLink(parent)) {
      throw new OutputException(
          parent
              + " is a link to another folder, and what lies there is not known to be daymount's;"
              + " remove the link, or choose another folder with --out");
    }
    if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
      throw new OutputException(
          target + " is a folder, and a file of that name is to be written; move it away");
    }
  }

  /** Moves everything that was staged into its place and removes what no longer belongs. */
  public Finished finish() throws OutputException {
    try {
      MadeRecord both = new MadeRecord();
      both.addAll(before);
      both.addAll(made);
      writeRecord(both); // before the files: a killed run still knows what it made
      for (Map.Entry<String, Path> part : parts.entrySet()) {
        Path target = folder.resolve(part.getKey());
        setAsideIfChanged(part.getKey(), both, "a new one was made");
        make(target.getParent());
        WholeFile.replace(part.getValue(), target);
      }
      removeStale();
      writeRecord(made);
      return new Finished(List.copyOf(parts.keySet()), notes);
    } catch (IOException e) {
      throw new OutputException("cannot finish " + folder + ": " + Reason.of(e) + "; run it again");
    }
  }

  private void removeStale() throws IOException {
    for (String name : before.names()) {
      Path old = folder.resolve(name);
      if (!made.holds(name) && !Files.isSymbolicLink(old.getParent()) && isThere(old)) {
        setAsideIfChanged(name, before, "it is no longer part of the month");
        if (isFile(old)) {
          WholeFile.delete(old);
        }
      }
    }
  }

  /** Whatever stands under a name of ours with other bytes is a person's. */
  private void setAsideIfChanged(String name, MadeRecord known, String what) throws IOException {
    Path theirs = folder.resolve(name);
    if (!isThere(theirs) || (isFile(theirs) && known.holds(name, sha256(theirs)))) {
      return;
    }
    Path aside = folder.resolve(SET_ASIDE);
    if (Files.isSymbolicLink(aside)) {
      throw new OutputException(aside + " is a link; remove it, and run it again");
    }
    make(aside);
    Path kept = WholeFile.setAside(theirs, aside.resolve(theirs.getFileName()));
    notes.add(
        name
            + " was not as daymount had made it; that one is kept as "
            + SET_ASIDE
            + "/"
            + kept.getFileName()
            + ", and "
            + what);
  }

  /** Ends the run; what was never moved is removed. */
  @Override
  public void close() {
    staging.close();
    lock.close();
  }

  private void writeRecord(MadeRecord record) throws IOException {
    byte[] content = record.bytes();
    Path target = folder.resolve(MadeRecord.FILE);
    if (!isFile(target) || !Arrays.equals(Files.readAllBytes(target), content)) {
      WholeFile.replace(staging.write(content), target);
    }
  }

  /** A link is there, whatever it leads to. */
  private static boolean isThere(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** No link: the program makes none. */
  private static boolean isFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static String sha256(Path file) throws IOException {
    return Sha256.hex(Files.readAllBytes(file));
  }
}
