package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.testphoto.ExifPhoto;
import org.daymount.testphoto.PngPhoto;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FolderReaderTest {
  private static final byte[] FILM = {
    0, 0, 0, 16, 'f', 't', 'y', 'p', 'q', 't', ' ', ' ', 0, 0, 2, 0
  };

  @TempDir Path folder;

  private final ExifPhoto photo = ExifPhoto.painted().original("2026:06:03 14:25:30");

  private Path write(String name) throws IOException {
    return photo.write(folder.resolve(name));
  }

  private Path write(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.write(file, bytes);
  }

  private Listing list(Path... arguments) {
    return new FolderReader().list(List.of(arguments));
  }

  private static List<String> names(List<PhotoFile> files) {
    return files.stream().map(PhotoFile::name).toList();
  }

  private static List<String> kinds(List<Problem> problems) {
    return problems.stream().map(p -> p.file() + " " + p.kind().code()).toList();
  }

  @Test
  void foldersAreReadToTheBottomAndInOrder() throws IOException {
    write("b/2.jpg");
    write("b/deep/er/1.jpg");
    write("a.jpg");
    assertEquals(List.of("a.jpg", "b/2.jpg", "b/deep/er/1.jpg"), names(list(folder).pictures()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"two words.jpg", "🌊 Île d'été.jpg", "line\nbreak.jpg", "-rf.jpg", "a%b\".jpg"})
  void anyNameIsFine(String name) throws IOException {
    assumeTrue(canSpell(name), "this system's language setting cannot spell " + name);
    write(name);
    Ingested ingested = Reading.all(folder);
    assertEquals(List.of(), ingested.problems());
    assertEquals(name, ingested.photos().get(0).file().name());
  }

  private static boolean canSpell(String name) {
    try {
      return Path.of(name).toString().equals(name);
    } catch (InvalidPathException e) {
      return false;
    }
  }

  @Test
  void aFileIsCountedOnceHoweverItIsReached() throws IOException {
    Path file = write("sub/a.jpg");
    Files.createSymbolicLink(folder.resolve("aaa-link.jpg"), file);
    Files.createSymbolicLink(folder.resolve("aaa"), folder.resolve("sub"));
    assertEquals(
        List.of("sub/a.jpg"), names(list(folder, folder.resolve("sub"), file, folder).pictures()));
  }

  @Test
  void linksAreFollowedAndLoopsEnd(@TempDir Path elsewhere) throws IOException {
    photo.write(elsewhere.resolve("b.jpg"));
    Files.createSymbolicLink(folder.resolve("there"), elsewhere);
    Files.createSymbolicLink(elsewhere.resolve("back"), folder);
    Files.createSymbolicLink(folder.resolve("self"), folder.resolve("self"));
    Files.createSymbolicLink(folder.resolve("gone.jpg"), folder.resolve("nowhere"));
    Listing listing = list(folder);
    assertEquals(List.of("there/b.jpg"), names(listing.pictures()));
    assertEquals(List.of("gone.jpg unreadable", "self unreadable"), kinds(listing.problems()));
  }

  @Test
  void aSingleFileHasItsOwnFolder() throws IOException {
    Path file = write("sub/a.jpg");
    assertEquals(List.of(new PhotoFile(folder.resolve("sub"), "a.jpg")), list(file).pictures());
  }

  @Test
  void whatIsNotThereIsNamed() {
    Listing listing = list(folder.resolve("nowhere"));
    assertEquals(List.of("nowhere folder-unreadable"), kinds(listing.problems()));
    assertTrue(listing.problems().get(0).text().contains("is not there"));
  }

  @Test
  void aFolderThatMayNotBeOpenedIsNamedAndTheRestIsRead() throws IOException {
    write("a.jpg");
    write("locked/b.jpg");
    Path locked = folder.resolve("locked");
    assumeTrue(locked.toFile().setReadable(false), "this system cannot lock a folder");
    try {
      assumeFalse(Files.isReadable(locked), "this user may read everything (root)");
      Listing listing = list(folder);
      assertEquals(List.of("a.jpg"), names(listing.pictures()));
      assertEquals(List.of("locked folder-unreadable"), kinds(listing.problems()));
    } finally {
      assertTrue(locked.toFile().setReadable(true));
    }
  }

  @Test
  void theProgramsOwnOutputIsNotWalkedInto() throws IOException {
    write("a.jpg");
    write("out/sheets/sheet-01.jpg");
    Listing listing = new FolderReader().list(List.of(folder), List.of(folder.resolve("out")));
    assertEquals(List.of("a.jpg"), names(listing.pictures()));
  }

  @Test
  void systemFilesAreSkippedAndOthersCounted() throws IOException {
    write("a.jpg");
    for (String hidden :
        List.of(".DS_Store", "._a.jpg", "Thumbs.db", "desktop.ini", ".thumbnails/a.jpg")) {
      write(hidden);
    }
    write("note.txt", "3 June: rain".getBytes(StandardCharsets.UTF_8));
    write("more.TXT", "more".getBytes(StandardCharsets.UTF_8));
    write("a.aae", "edit".getBytes(StandardCharsets.UTF_8));
    write("README", "read".getBytes(StandardCharsets.UTF_8));
    Listing listing = list(folder);
    assertEquals(List.of("a.jpg"), names(listing.pictures()));
    assertEquals(Map.of("txt", 2, "aae", 1, "", 1), listing.others());
    assertEquals(List.of(), listing.problems());
  }

  @Test
  void aFilmIsNamedUnlessItIsTheMovingPartOfAStillBesideIt() throws IOException {
    write("IMG_1.HEIC.jpg");
    write("IMG_2.jpg");
    write("img_2.MOV", FILM);
    write("elsewhere/IMG_2.MOV", FILM);
    write("VID_3.mp4", FILM);
    write("PXL_4.MP.jpg");
    write("PXL_4.MP", FILM);
    write("film called.jpg", FILM);
    Ingested ingested = Reading.all(folder);
    assertEquals(List.of("PXL_4.MP", "img_2.MOV"), names(ingested.movingParts()));
    assertEquals(
        List.of(
            "VID_3.mp4 unreadable", "elsewhere/IMG_2.MOV unreadable", "film called.jpg unreadable"),
        kinds(ingested.problems()));
    assertEquals(3, ingested.photos().size());
  }

  @Test
  void theFormatIsToldByTheBytesAndNotByTheName() throws IOException {
    write("really-png.jpg", PngPhoto.painted().bytes());
    write("no ending", photo.bytes());
    write("report.txt", photo.bytes());
    assertEquals(
        List.of(PhotoFormat.JPEG, PhotoFormat.PNG, PhotoFormat.JPEG),
        Reading.all(folder).photos().stream().map(Photo::format).toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void theSizeIsUpright(int orientation) throws IOException {
    Path file = photo.size(64, 48).orientation(orientation).write(folder.resolve("a.jpg"));
    Photo read = Reading.one(file);
    assertEquals(ExifOrientation.ofExif(orientation), read.orientation());
    assertTrue(read.orientationTagged());
    assertEquals(orientation >= 5 ? new PixelSize(48, 64) : new PixelSize(64, 48), read.size());
  }

  @Test
  void theThumbnailsTagsAreNotThePhotos() throws IOException {
    Path file = photo.thumbnail(ExifPhoto.plain(16, 12)).write(folder.resolve("a.jpg"));
    Photo read = Reading.one(file);
    assertEquals(new PixelSize(64, 48), read.size());
    assertEquals(false, read.orientationTagged());
  }

  @Test
  void theHashIsThatOfTheWholeFile() throws Exception {
    Path file = photo.trailing(new byte[200_000]).write(folder.resolve("a.jpg"));
    byte[] expected = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
    assertEquals(HexFormat.of().formatHex(expected), Reading.one(file).sha256());
  }

  @Test
  void whatIsKnownOfACutOffPhotoIsKept() throws IOException {
    byte[] whole = photo.size(400, 300).bytes();
    write("a.jpg", Arrays.copyOf(whole, whole.length - 10));
    Ingested ingested = Reading.all(folder);
    assertEquals(List.of(), ingested.photos());
    assertEquals(
        "2026-06-03T14:25:30", ingested.unusable().get(0).taken().local().get().toString());
    assertEquals(List.of("a.jpg cut-off"), kinds(ingested.problems()));
    assertEquals(
        "is cut off after "
            + Math.round((whole.length - 10) / 1e3)
            + " kB; copy it again from the phone",
        ingested.problems().get(0).text());
  }

  @Test
  void theOrderDoesNotDependOnTheThreads() throws IOException {
    for (int i = 0; i < 40; i++) {
      ExifPhoto.painted().size(8 + i * 20, 8).write(folder.resolve("p" + i * 37 % 40 + ".jpg"));
    }
    AtomicInteger done = new AtomicInteger();
    FolderReader reader = new FolderReader();
    Listing listing = reader.list(List.of(folder));
    Ingested four = reader.read(listing, Reading.SETTINGS, 4, done::incrementAndGet);
    assertEquals(40, done.get());
    assertEquals(Reading.all(Reading.SETTINGS, 1, folder), four);
  }

  @Test
  void readingChangesNothing() throws IOException {
    Path file = write("a.jpg");
    FileTime before = FileTime.from(Instant.parse("2026-06-20T10:11:12Z"));
    Files.setLastModifiedTime(file, before);
    byte[] bytes = Files.readAllBytes(file);
    Reading.all(folder);
    assertEquals(before, Files.getLastModifiedTime(file));
    assertTrue(Arrays.equals(bytes, Files.readAllBytes(file)));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  /** Of another run's output, below the photos or beside them, only what it made is left out. */
  @Test
  void whatAnotherRunMadeIsNoPhoto(@TempDir Path home) throws IOException {
    Path made = Files.createDirectories(home.resolve("June/album/sheets"));
    byte[] jpeg = ExifPhoto.painted().bytes();
    for (String name : List.of("sheets/sheet-01.jpg", "sheets/mine.jpg", "pier.jpg")) {
      Files.write(home.resolve("June/album").resolve(name), jpeg);
    }
    Files.createDirectories(home.resolve("June/album/set-aside"));
    Files.write(home.resolve("June/album/set-aside/sheet-01-1.jpg"), jpeg);
    Files.writeString(
        made.resolveSibling(".daymount-made"), "a".repeat(64) + "  sheets/sheet-01.jpg\n");
    Listing listing = new FolderReader().list(List.of(home.resolve("June")));
    assertEquals(
        List.of("album/pier.jpg", "album/sheets/mine.jpg"),
        listing.pictures().stream().map(PhotoFile::name).toList());
  }
}
