package org.daymount.unpack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnpackedTest {
  private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";
  private static final String FILE = "DejaVuSerif.ttf";

  @TempDir Path home;

  private Path ours() {
    return home.resolve(".cache/daymount/unpacked");
  }

  private static void assumePosix() {
    assumeTrue(
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix"),
        "this system has other permissions");
  }

  private static String mode(Path folder) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(folder));
  }

  private static byte[] inTheProgram() throws IOException {
    try (InputStream in = UnpackedTest.class.getResourceAsStream(FOLDER + FILE)) {
      return in.readAllBytes();
    }
  }

  @Test
  void theFolderIsClosedToOthersAndClosedAgainWhenSomebodyOpenedIt() throws IOException {
    assumePosix();
    assertEquals(ours(), UserCache.folder("Linux", home));
    assertEquals("rwx------", mode(ours()));
    Files.setPosixFilePermissions(ours(), PosixFilePermissions.fromString("rwxrwxrwx"));
    assertEquals(ours(), UserCache.folder("Linux", home));
    assertEquals("rwx------", mode(ours()));
  }

  @Test
  void eachSystemKeepsItWhereSuchFoldersAre() throws IOException {
    assertTrue(
        UserCache.folder("Mac OS X", home).startsWith(home.resolve("Library/Caches/Daymount")));
    assertTrue(
        UserCache.folder("Windows 11", home).startsWith(home.resolve("AppData/Local/Daymount")));
  }

  @Test
  void aLinkInItsPlaceIsNotFollowed() throws IOException {
    Path elsewhere = Files.createDirectory(home.resolve("elsewhere"));
    Files.createDirectories(ours().getParent());
    Files.createSymbolicLink(ours(), elsewhere);
    Path taken = UserCache.folder("Linux", home);
    assertFalse(taken.startsWith(home), taken.toString());
    assertEquals(0, elsewhere.toFile().list().length);
  }

  @Test
  void afolderOfAnotherUserIsNotUsed() throws IOException {
    assumePosix();
    Files.createDirectories(ours());
    try {
      Files.setOwner(
          ours().getParent(),
          home.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName("nobody"));
    } catch (IOException e) {
      assumeTrue(false, "only root can give a folder away");
    }
    Path taken = UserCache.folder("Linux", home);
    assertFalse(taken.startsWith(home), taken.toString());
    assertEquals("rwx------", mode(taken));
  }

  @Test
  void withoutAHomeANewFolderIsTakenThatNobodyElseCanEnter() throws IOException {
    assumePosix();
    for (Path none : List.of(Path.of("?"), Path.of(""), home.resolve("none"))) {
      Path taken = UserCache.folder("Linux", none);
      assertTrue(taken.isAbsolute() && !taken.startsWith(home), taken.toString());
      assertEquals("rwx------", mode(taken));
    }
    assertFalse(Files.exists(home.resolve("none")));
  }

  @Test
  void aFileThatWasChangedCutShortOrMadeALinkIsReplaced() throws IOException {
    Unpacked unpacked = new Unpacked(home);
    Path file = unpacked.together("typefaces", List.of(FOLDER + FILE)).resolve(FILE);
    assertArrayEquals(inTheProgram(), Files.readAllBytes(file));

    byte[] changed = inTheProgram();
    changed[changed.length / 2] ^= 1;
    Files.write(file, changed);
    unpacked.together("typefaces", List.of(FOLDER + FILE));
    assertArrayEquals(inTheProgram(), Files.readAllBytes(file), "one bit was another");

    Files.write(file, new byte[10]);
    unpacked.together("typefaces", List.of(FOLDER + FILE));
    assertArrayEquals(inTheProgram(), Files.readAllBytes(file), "cut short");

    Path same = Files.write(home.resolve("same"), inTheProgram());
    Files.delete(file);
    Files.createSymbolicLink(file, same);
    unpacked.together("typefaces", List.of(FOLDER + FILE));
    assertTrue(Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS), "a link");
    assertEquals(1, file.getParent().toFile().list().length, "parts were left");
  }

  /** JavaCPP unpacks to NAME OF THE JAR/NAME OF THE ENTRY, and links names without a version. */
  @Test
  void ofALibraryThatUnpacksByItselfOnlyWhatIsAsInTheProgramStays() throws IOException {
    Unpacked unpacked = new Unpacked(home);
    Path place = home.resolve("library");
    Path folder = place.resolve("some.jar" + FOLDER);
    Files.createDirectories(folder);
    Path sound = Files.write(folder.resolve(FILE), inTheProgram());
    Path link = Files.createSymbolicLink(folder.resolve("link.ttf"), Path.of(FILE));
    Path changed = Files.write(folder.resolve("DejaVuSans.ttf"), inTheProgram());
    Path strange = Files.write(folder.resolve("strange.so"), new byte[3]);
    Path away = Files.createSymbolicLink(folder.resolve("away.so"), home.resolve("x.so"));
    Path lock = Files.write(place.resolve(".lock"), new byte[0]);
    List<Boolean> there =
        unpacked.byItself(
            "library",
            given -> {
              assertEquals(place, given);
              return List.of(sound, link, lock, changed, strange, away).stream()
                  .map(file -> Files.exists(file, LinkOption.NOFOLLOW_LINKS))
                  .toList();
            });
    assertEquals(List.of(true, true, true, false, false, false), there);
  }

  @Test
  void whatIsNotInTheProgramIsNotMadeUp() {
    assertThrows(
        FileNotFoundException.class,
        () -> new Unpacked(home).together("none", List.of("/none.so")));
    assertEquals(0, home.toFile().list().length);
  }

  @Test
  void aFolderThatCannotBeWrittenIsNamed() throws IOException {
    Path inTheWay = Files.write(home.resolve("file"), new byte[0]);
    CannotUnpack e =
        assertThrows(
            CannotUnpack.class,
            () -> new Unpacked(inTheWay).together("typefaces", List.of(FOLDER + FILE)));
    assertTrue(e.getMessage().startsWith("cannot be unpacked to " + inTheWay), e.getMessage());
  }

  /** Another version may be in use: only what was not used for two months goes. */
  @Test
  void oldVersionsThatNobodyUsesAreTakenAway() throws IOException {
    Path old = Files.createDirectory(home.resolve("typefaces-0123456789abcdef"));
    Path young = Files.createDirectory(home.resolve("typefaces-fedcba9876543210"));
    Path strange = Files.createDirectory(home.resolve("typefaces-of-my-own"));
    Path mine = Files.createDirectories(home.resolve("typefaces-0000000000000000/mine/deep"));
    for (Path folder : List.of(old, strange, young)) {
      Files.write(folder.resolve(FILE), new byte[9]);
    }
    for (Path folder : List.of(old, strange, mine.getParent().getParent())) {
      Files.setLastModifiedTime(folder, FileTime.from(Instant.now().minus(Duration.ofDays(61))));
    }
    Path used = new Unpacked(home).together("typefaces", List.of(FOLDER + FILE));
    assertFalse(Files.exists(old), "two months unused");
    assertTrue(Files.exists(young.resolve(FILE)), "in use, it may be");
    assertTrue(Files.exists(strange.resolve(FILE)), "not ours");
    assertTrue(Files.exists(mine), "something else in it");
    Files.setLastModifiedTime(used, FileTime.from(Instant.now().minus(Duration.ofDays(400))));
    assertEquals(used, new Unpacked(home).together("typefaces", List.of(FOLDER + FILE)));
    assertTrue(
        Files.getLastModifiedTime(used).toInstant().isAfter(Instant.now().minusSeconds(600)),
        "the last use is told by the folder's time");
  }
}
