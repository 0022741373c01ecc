package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.daymount.file.FileBytes;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures whose decoder comes to its end in the middle of them. */
@Tag("slow")
@Isolated // all pictures of a process share the readers
class TileReadersTest {
  @TempDir Path folder;

  @AfterEach
  void asUsual() {
    TileReaders.startBy(TileProcessCommand.usual());
  }

  private static Photo photo(Path file) throws IOException {
    PictureHeader header = new PictureHeaders().read(file);
    return TestPhotos.photo(
        file, header.format(), header.stored(), header.turned().orElse(ExifOrientation.TOP_LEFT));
  }

  private static BufferedImage small(Path file) throws IOException {
    Photo photo = photo(file);
    return new Pictures().part(photo, photo.size().whole(), photo.size().within(400));
  }

  /** A phone's, of 48 tiles. */
  private Path ofTiles() {
    return TestPhotos.fromJar("test-documents/IMG_1034.heic", folder);
  }

  private Path another() {
    return TestPhotos.fromJar("test-documents/testHEIF.heic", folder);
  }

  /** The coded length of the thirtieth tile, which no other has. */
  private static int oneLength(Path file) throws IOException {
    try (FileBytes bytes = FileBytes.open(file)) {
      HeifItems items = HeifItems.read(bytes);
      int[] lengths =
          HeifPicture.primary(bytes, items).tiles().stream()
              .mapToInt(tile -> length(items, tile))
              .toArray();
      assertEquals(1, Arrays.stream(lengths).filter(length -> length == lengths[30]).count());
      return lengths[30];
    }
  }

  private static int length(HeifItems items, HeifItems.Item tile) {
    try {
      return items.data(tile, 1 << 24).length;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static TileProcessCommand deadly(int length, String signal, Duration patience) {
    return new TileProcessCommand(
        DeadlyTileServer.class,
        List.of(
            "-D" + DeadlyTileServer.LENGTH + "=" + length,
            "-D" + DeadlyTileServer.SIGNAL + "=" + signal),
        patience);
  }

  @Test
  void theyAreDecodedInAProcessOfTheirOwn() throws IOException {
    small(another());
    assertTrue(TileReaders.inOwnProcess());
    assertTrue(
        ProcessHandle.current().children().anyMatch(TileReadersTest::isTileServer),
        "no such process among the children");
  }

  /** In the memory of a month with two HEIC among a thousand they would lie all the time. */
  @Test
  void oneThatNobodyNeedsForAWhileIsEndedAndTheNextPictureHasANewOne() throws Exception {
    small(another());
    for (int i = 0; i < 300 && servers() > 0; i++) {
      Thread.sleep(100);
    }
    assertEquals(0, servers(), "still there after half a minute");
    small(another());
    assertTrue(servers() > 0 && TileReaders.inOwnProcess());
  }

  private static long servers() {
    return ProcessHandle.current().children().filter(TileReadersTest::isTileServer).count();
  }

  private static boolean isTileServer(ProcessHandle process) {
    return process.info().commandLine().orElse("").contains(TileServer.class.getName());
  }

  /** SEGV is what a fault in native code does; KILL is what a system short of memory does. */
  @ParameterizedTest
  @ValueSource(strings = {"SEGV", "KILL"})
  void theOneThatEndsItIsNamedAndTheNextIsDecoded(String signal) throws IOException {
    Path file = ofTiles();
    BufferedImage expected = small(another());
    TileReaders.startBy(deadly(oneLength(file), signal, Duration.ofSeconds(60)));
    UnusablePicture unusable = assertThrows(UnusablePicture.class, () -> small(file));
    assertEquals(Problem.Kind.UNREADABLE, unusable.kind());
    assertEquals(
        "cannot be decoded (it ended the reader of HEIC pictures); open it in a viewer, or copy it"
            + " again",
        unusable.getMessage());
    TestPhotos.assertSamePixels(expected, small(another()), 0);
    assertTrue(Files.list(Path.of("")).noneMatch(f -> f.toString().startsWith("hs_err")));
  }

  @Test
  void oneThatTakesTooLongIsNamedAndTheNextIsDecoded() throws IOException {
    Path file = ofTiles();
    TileReaders.startBy(deadly(oneLength(file), "CONT", Duration.ofSeconds(20)));
    UnusablePicture unusable = assertThrows(UnusablePicture.class, () -> small(file));
    assertTrue(
        unusable.getMessage().contains("(takes longer than 20 s to decode)"),
        unusable.getMessage());
    small(another());
  }

  /** Whatever ended it meanwhile, the picture is not to blame. */
  @Test
  void aProcessThatIsEndedBetweenPicturesIsStartedAgain() throws IOException {
    BufferedImage expected = small(another());
    ProcessHandle.current()
        .children()
        .filter(TileReadersTest::isTileServer)
        .forEach(
            process -> {
              process.destroyForcibly();
              process.onExit().join();
            });
    TestPhotos.assertSamePixels(expected, small(another()), 0);
  }

  @Test
  void samplesAreTheSameInThisProcess() throws IOException {
    Path file = another();
    try (FileBytes bytes = FileBytes.open(file);
        TileReader there = TileReaders.open();
        TileReader here = TileReader.here()) {
      HeifItems items = HeifItems.read(bytes);
      HeifPicture picture = HeifPicture.primary(bytes, items);
      HeifItems.Item tile = picture.tiles().get(0);
      IsoBoxes.Box hvcC = tile.property("hvcC").orElseThrow();
      TileCoding coding =
          new TileCoding(tile.type(), bytes.copy(hvcC.body(), (int) hvcC.length()), picture.tile());
      byte[] coded = items.data(tile, 1 << 24);
      YuvFrame one = there.decode(coding, coded);
      YuvFrame other = here.decode(coding, coded);
      assertEquals(
          new PixelSize(other.width(), other.height()), new PixelSize(one.width(), one.height()));
      assertEquals(other.colour(), one.colour());
      int[] expected = new int[other.width()];
      int[] actual = new int[other.width()];
      for (int plane = 0; plane < 3; plane++) {
        for (int y = 0; y < (plane == 0 ? other.height() : other.chromaHeight()); y++) {
          other.row(plane, y, expected);
          one.row(plane, y, actual);
          assertTrue(Arrays.equals(expected, actual), "plane " + plane + ", row " + y);
        }
      }
    }
  }
}
