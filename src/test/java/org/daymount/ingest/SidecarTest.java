package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Problem;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** XMP files beside photos: ISO 16684-1 and XMP part 3, "External storage of metadata". */
class SidecarTest {
  private static final String NAMED = "IMG_20260610_101010";
  private static final Duration SOON =
      Duration.ofMinutes(5); // of a busy machine; a pipe would never end

  @TempDir Path folder;

  private void sidecar(String name, String date) throws IOException {
    Files.writeString(
        folder.resolve(name),
        "<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?><x:xmpmeta xmlns:x='adobe:ns:meta/'>"
            + "<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
            + "<rdf:Description rdf:about='' xmlns:exif='http://ns.adobe.com/exif/1.0/'"
            + " exif:DateTimeOriginal='"
            + date
            + "'/></rdf:RDF></x:xmpmeta><?xpacket end='w'?>");
  }

  private Taken taken(ExifPhoto photo, String name) throws IOException {
    return Reading.one(photo.write(folder.resolve(name))).taken();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.xmp", "a.jpg.xmp", "a.XMP"})
  void aPhotoWithoutATimeTakesThatOfTheFileBeside(String name) throws IOException {
    sidecar(name, "2026-06-03T14:25:30+02:00");
    Taken taken = taken(ExifPhoto.painted(), "a.jpg");
    assertEquals(LocalDateTime.parse("2026-06-03T14:25:30"), taken.local().orElseThrow());
    assertEquals(TakenFrom.SIDECAR, taken.from());
  }

  @Test
  void theCamerasOwnTimeComesFirstAndTheNameLast() throws IOException {
    sidecar("a.xmp", "2026-06-03T14:25:30");
    sidecar("IMG_20260610_101010.xmp", "2026-06-03T14:25:30");
    assertEquals(
        TakenFrom.ORIGINAL,
        taken(ExifPhoto.painted().original("2026:06:05 01:02:03"), "a.jpg").from());
    assertEquals(TakenFrom.SIDECAR, taken(ExifPhoto.painted(), "IMG_20260610_101010.jpg").from());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "no XMP at all", "<x:xmpmeta", "<!DOCTYPE a [<!ENTITY b 'c'>]><a>&b;</a>"})
  void aFileThatIsNoXmpTellsNothing(String text) throws IOException {
    Files.writeString(folder.resolve(NAMED + ".xmp"), text);
    assertEquals(TakenFrom.NAME, taken(ExifPhoto.painted(), NAMED + ".jpg").from());
  }

  private String remark(ExifPhoto photo) throws IOException {
    photo.write(folder.resolve(NAMED + ".jpg"));
    Ingested read = assertTimeoutPreemptively(SOON, () -> Reading.all(folder));
    assertEquals(1, read.photos().size());
    return read.remarks().stream().map(Problem::text).collect(Collectors.joining());
  }

  /** W3C XML 1.0, 4.1: entities made of entities, 10 to the 9th words; and one from elsewhere. */
  private static String entities(String last) {
    StringBuilder text = new StringBuilder("<!DOCTYPE x [<!ENTITY a0 'word'>" + last);
    for (int i = 1; i < 10; i++) {
      text.append("<!ENTITY a" + i + " '" + ("&a" + (i - 1) + ";").repeat(10) + "'>");
    }
    return text + "]><x:xmpmeta xmlns:x='adobe:ns:meta/'>&a9;&e;</x:xmpmeta>";
  }

  @Test
  void oddFilesBesideAPhotoWithoutADateAreNamedAndCostNothing() throws Exception {
    Path file = folder.resolve(NAMED + ".xmp");
    try (ServerSocket elsewhere = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      elsewhere.setSoTimeout(1);
      String address = "http://127.0.0.1:" + elsewhere.getLocalPort() + "/x";
      for (String text :
          List.of(
              entities("<!ENTITY e 'x'>"),
              entities("<!ENTITY e SYSTEM '" + address + "'>"),
              "<!DOCTYPE x SYSTEM '" + address + "'><x:xmpmeta xmlns:x='adobe:ns:meta/'/>",
              "<a>".repeat(200_000),
              "\0".repeat(1000),
              "x".repeat(999_999))) {
        Files.writeString(file, text);
        String said = remark(ExifPhoto.painted());
        assertTrue(said.contains(NAMED + ".xmp, is no XMP that can be read; "), said);
      }
      assertThrows(SocketTimeoutException.class, elsewhere::accept, "nobody asked elsewhere");
    }
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(3L << 30);
    }
    assertTrue(remark(ExifPhoto.painted()).contains("is larger than 1 MB; "));
    Files.delete(file);
    Files.createSymbolicLink(file, folder.resolve("nothing"));
    assertTrue(remark(ExifPhoto.painted()).contains("is a link that leads to nothing; "));
    assertEquals("", remark(ExifPhoto.painted().original("2026:06:05 01:02:03")), "not asked");
  }
}
