package org.daymount.unpack;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A folder of ours among those where a user's programs keep what may be deleted: nobody else may
 * enter it, and it is used only if it is the user's own. Places: XDG Base Directory Specification
 * 0.8 (its default), Apple's File System Programming Guide, Windows' local application data.
 */
final class UserCache {
  private static final boolean POSIX =
      FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
  private static final Set<PosixFilePermission> OWNER_ONLY =
      PosixFilePermissions.fromString("rwx------");

  private UserCache() {}

  /**
   * The user's folder, made where it is missing. Where it cannot be had, or somebody else owns a
   * part of the way to it, a new one in the temporary directory, of a name that nobody can foresee,
   * which is deleted when the program ends.
   *
   * @param system as Java's os.name has it
   */
  static Path folder(String system, Path home) throws IOException {
    try {
      if (home.isAbsolute() && Files.isDirectory(home)) {
        return made(home, names(system.toLowerCase(Locale.ROOT)));
      }
    } catch (IOException e) {
      // a home that is read-only, or a way that is not the user's own
    }
    Path temporary = Files.createTempDirectory("daymount-");
    Runtime.getRuntime().addShutdownHook(new Thread(() -> deleteAll(temporary)));
    return temporary;
  }

  private static List<String> names(String system) {
    if (system.startsWith("windows")) {
      return List.of("AppData", "Local", "Daymount", "Unpacked");
    }
    return system.startsWith("mac")
        ? List.of("Library", "Caches", "Daymount", "Unpacked")
        : List.of(".cache", "daymount", "unpacked");
  }

  private static Path made(Path home, List<String> names) throws IOException {
    Path folder = home;
    for (String name : names) {
      folder = folder.resolve(name);
      makeIfMissing(folder);
    }
    close(folder);
    Path probe = Files.createTempFile(folder, "probe", null);
    try {
      for (Path part = folder; !part.equals(home); part = part.getParent()) {
        if (!Files.getOwner(part).equals(Files.getOwner(probe))) {
          throw new IOException(part + " is another user's");
        }
      }
    } finally {
      Files.delete(probe);
    }
    return folder;
  }

  private static void makeIfMissing(Path folder) throws IOException {
    FileAttribute<?>[] closed =
        POSIX
            ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
            : new FileAttribute<?>[0];
    try {
      Files.createDirectory(folder, closed);
    } catch (FileAlreadyExistsException e) {
      if (!Files.isDirectory(folder)) {
        throw e;
      }
    }
  }

  /** To all others, whatever it was; only its owner can do that. */
  private static void close(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(folder + " is a link");
    }
    if (POSIX && !Files.getPosixFilePermissions(folder).equals(OWNER_ONLY)) {
      Files.setPosixFilePermissions(folder, OWNER_ONLY);
    }
  }

  private static void deleteAll(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      // Windows keeps a library that is loaded; the system clears its temporary directory
    }
  }
}
