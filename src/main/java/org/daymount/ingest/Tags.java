package org.daymount.ingest;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;

/**
 * What one file's tags say, as text where nothing has judged it yet.
 *
 * @param original DateTimeOriginal with its fraction and offset
 * @param digitized DateTimeDigitized with its fraction and offset
 * @param xmp the XMP dates, best first
 * @param pngCreation the text a PNG has under "Creation Time"
 * @param pngModified a PNG's tIME: UTC, and when the file was last changed
 * @param gpsUtc date and time of the satellites
 * @param offsets every offset from UTC the file names, best first
 * @param burst a digest of the phone's identifier of the burst the picture is a frame of
 * @param pair a digest of the phone's identifier of the photo and its moving part
 * @param cameraSettings whether there is an exposure time, aperture, sensitivity or focal length
 */
record Tags(
    Optional<ExifOrientation> orientation,
    DateTag original,
    DateTag digitized,
    List<String> xmp,
    Optional<String> pngCreation,
    Optional<LocalDateTime> pngModified,
    Optional<LocalDateTime> gpsUtc,
    List<String> offsets,
    Optional<String> model,
    Optional<String> userComment,
    Optional<String> burst,
    Optional<String> pair,
    boolean cameraSettings) {
  /** In place of the model of a camera. */
  static final String UNNAMED = "";

  static final Tags NONE =
      new Tags(
          Optional.empty(),
          DateTag.NONE,
          DateTag.NONE,
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          false);

  /** An EXIF date with the two tags that go with it; null where a tag is missing. */
  record DateTag(String dateTime, String subSeconds, String offset) {
    static final DateTag NONE = new DateTag(null, null, null);

    Optional<WallTime> wallTime() {
      return WallTime.parse(dateTime)
          .map(time -> time.withFraction(subSeconds).withOffset(WallTime.offset(offset)));
    }
  }
}
