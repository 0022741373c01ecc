package org.daymount.unpack;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.daymount.file.Sha256;
import org.daymount.file.WholeFile;

/**
 * Files of the program that libraries can load from a disk only: native code and typefaces. They
 * lie in a folder of the user's own ({@link UserCache}), and each is compared with the program's
 * before a run uses it: one that was changed or cut short is replaced.
 */
public final class Unpacked {
  private static final Duration LONG_UNUSED = Duration.ofDays(60);

  private static final int BLOCK = 1 << 16;

  private static Unpacked ofThisUser;

  private final Path folder;

  Unpacked(Path folder) {
    this.folder = folder;
  }

  /** For the user who runs the program; looked for once. */
  public static synchronized Unpacked ofThisUser() throws IOException {
    if (ofThisUser == null) {
      ofThisUser =
          new Unpacked(
              UserCache.folder(
                  System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ""))));
    }
    return ofThisUser;
  }

  /**
   * Files of the program side by side in one folder, which is theirs alone: its name is made of
   * their sums, so that another version of the program has another.
   *
   * @param resources absolute names; those that are not in the program are passed over
   * @throws FileNotFoundException when none is in the program
   * @throws CannotUnpack when they cannot be written
   */
  public synchronized Path together(String name, List<String> resources) throws IOException {
    Map<String, String> sums = new LinkedHashMap<>();
    for (String resource : resources) {
      if (isInProgram(resource)) {
        sums.put(resource, sum(open(resource)));
      }
    }
    if (sums.isEmpty()) {
      throw new FileNotFoundException(resources + " are not packed with the program");
    }
    byte[] all = sums.toString().getBytes(StandardCharsets.US_ASCII);
    Path place = folder.resolve(name + "-" + Sha256.hex(all).substring(0, 16));
    try {
      Files.createDirectories(place);
      for (Map.Entry<String, String> one : sums.entrySet()) {
        String resource = one.getKey();
        String file = resource.substring(resource.lastIndexOf('/') + 1);
        unpack(resource, place.resolve(file), one.getValue());
      }
      markUse(place);
    } catch (IOException e) {
      throw new CannotUnpack(place, e);
    }
    takeAwayOldVersions(name, place);
    return place;
  }

  /** The folder's time is that of its last use, by the clock of the disk. */
  private static void markUse(Path place) throws IOException {
    Files.delete(Files.createTempFile(place, "used", null));
  }

  /** What other versions of the program have not used for long; they would unpack it anew. */
  private void takeAwayOldVersions(String name, Path used) {
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, name + "-*")) {
      for (Path other : all) {
        if (!other.equals(used)
            && other.getFileName().toString().substring(name.length()).matches("-[0-9a-f]{16}")
            && Files.isDirectory(other, LinkOption.NOFOLLOW_LINKS)
            && isLongUnused(other, used)) {
          deleteFiles(other);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // another time
    }
  }

  private static boolean isLongUnused(Path other, Path used) throws IOException {
    Instant last = Files.getLastModifiedTime(other).toInstant();
    Instant now = Files.getLastModifiedTime(used).toInstant();
    return Duration.between(last, now).compareTo(LONG_UNUSED) > 0;
  }

  private static void deleteFiles(Path folder) {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.delete(file); // refused for a folder that is not empty, which is none of ours
      }
      Files.delete(folder);
    } catch (IOException | DirectoryIteratorException e) {
      // Windows keeps a library that is in use
    }
  }

  private static void unpack(String resource, Path file, String sum) throws IOException {
    if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && sum(file).equals(sum)) {
      return;
    }
    Path part = WholeFile.part(file);
    try (InputStream in = open(resource)) {
      Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
      WholeFile.replace(part, file);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * For a library that unpacks by itself, to {@code folder/name of a jar/name of the entry}: takes
   * away what is not as in the program, and lets the library load. One program at a time, so that
   * none takes away what another is writing.
   *
   * @param load given the folder
   */
  public synchronized <T> T byItself(String name, Loading<T> load) throws IOException {
    Path place = folder.resolve(name);
    Files.createDirectories(place);
    try (FileChannel channel =
        FileChannel.open(
            folder.resolve(name + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.lock(); // until it is closed
      takeAwayWhatIsNotOurs(place);
      return load.from(place);
    }
  }

  /** What a library does with its folder. */
  @FunctionalInterface
  public interface Loading<T> {
    T from(Path folder) throws IOException;
  }

  private static void takeAwayWhatIsNotOurs(Path place) throws IOException {
    List<Path> found;
    try (Stream<Path> all = Files.walk(place)) {
      found = all.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)).toList();
    }
    for (Path file : found) {
      if (!isAsInTheProgram(place, file)) {
        Files.delete(file);
      }
    }
  }

  private static boolean isAsInTheProgram(Path place, Path file) throws IOException {
    if (Files.isSymbolicLink(file)) { // the library's own, from one name of a file to another
      return file.getParent().equals(file.resolveSibling(Files.readSymbolicLink(file)).getParent());
    }
    Path inJar = place.relativize(file);
    if (inJar.getNameCount() < 2) {
      return inJar.toString().equals(".lock");
    }
    String resource = "/" + inJar.subpath(1, inJar.getNameCount()).toString().replace('\\', '/');
    return isInProgram(resource) && isSame(file, resource);
  }

  private static boolean isSame(Path file, String resource) throws IOException {
    try (InputStream found = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS);
        InputStream own = open(resource)) {
      byte[] expected;
      do {
        expected = own.readNBytes(BLOCK);
        if (!Arrays.equals(expected, found.readNBytes(BLOCK))) {
          return false;
        }
      } while (expected.length > 0);
      return true;
    }
  }

  private static boolean isInProgram(String resource) {
    return Unpacked.class.getResource(resource) != null;
  }

  private static InputStream open(String resource) throws IOException {
    InputStream stream = Unpacked.class.getResourceAsStream(resource);
    if (stream == null) {
      throw new FileNotFoundException(resource + " is not packed with the program");
    }
    return stream;
  }

  private static String sum(Path file) throws IOException {
    return sum(Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS));
  }

  private static String sum(InputStream content) throws IOException {
    MessageDigest digest = Sha256.digest();
    try (InputStream all = new DigestInputStream(content, digest)) {
      all.transferTo(OutputStream.nullOutputStream());
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
