package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.testphoto.ExifPhoto;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** XMP files beside photos: ISO 16684-1 and XMP part 3, "External storage of metadata". */
class SidecarTest {
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
    Files.writeString(folder.resolve("IMG_20260610_101010.xmp"), text);
    assertEquals(TakenFrom.NAME, taken(ExifPhoto.painted(), "IMG_20260610_101010.jpg").from());
  }
}
