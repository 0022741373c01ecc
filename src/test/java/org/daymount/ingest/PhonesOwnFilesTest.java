package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.Photo;
import org.daymount.photo.TakenFrom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that a phone named, from Debian's package forensics-samples-files. */
class PhonesOwnFilesTest {
  private static final Path FILES = Path.of("/usr/share/forensics-samples/original-files");

  private static Ingested read(String name) {
    Path file = FILES.resolve(name);
    assumeTrue(Files.isRegularFile(file), "forensics-samples-files is not installed");
    FolderReader reader = new FolderReader();
    IngestSettings settings =
        new IngestSettings(
            ClockCorrections.NONE, LocalDate.of(2026, 7, 4), ZoneId.of("Asia/Tokyo"));
    return reader.read(reader.list(List.of(file), List.of()), settings, 1, () -> {});
  }

  /** The header is the end of a recording of 1.6 s, in UTC; the name is its start, local. */
  @Test
  void aClipsNameAndHeaderTogetherTellItsOffset() {
    Ingested read = read("movie1/VID_20191220_170832.mp4");
    Photo first = read.photos().get(0);
    assertEquals(Optional.of(LocalDateTime.of(2019, 12, 20, 17, 8, 34)), first.taken().local());
    assertEquals(Optional.of(ZoneOffset.ofHours(-3)), first.taken().offset());
    assertEquals(TakenFrom.CLIP, first.taken().from());
    assertEquals(List.of(), read.remarks());
    assertEquals(2, read.photos().size());
  }

  /** The satellites' time is three hours later in all four: the name is no UTC. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "pic1/IMG_20200827_231612.jpg",
        "pic2/IMG_20191224_234846.jpg",
        "pic2/IMG_20200124_231153.jpg",
        "pic2/IMG_20200608_111614.jpg"
      })
  void aPhonesNameIsTheCamerasOwnTimeToASecond(String name) {
    Photo photo = read(name).photos().get(0);
    assertEquals(TakenFrom.ORIGINAL, photo.taken().from());
    LocalDateTime named = NameDate.in(photo.file().lastName()).orElseThrow().time().local();
    Duration off = Duration.between(photo.taken().local().orElseThrow(), named).abs();
    assertTrue(off.compareTo(Duration.ofSeconds(1)) <= 0, off + " apart");
  }
}
