package org.daymount.month;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.photo.Shape;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;

/** One entry of photos[]. No place, and no camera unless asked for: those stay in the photo. */
record PhotoJson(
    String file,
    String folder,
    Optional<String> sha256,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<String> clip,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Double> frameAt,
    Optional<LocalDate> day,
    Optional<String> takenAt,
    TakenFrom takenFrom,
    Optional<PhotoFormat> format,
    @JsonInclude(JsonInclude.Include.NON_NULL) Optional<String> camera,
    Optional<Integer> width,
    Optional<Integer> height,
    Optional<Integer> exifOrientation,
    Optional<Shape> shape,
    Optional<String> group,
    Optional<String> copyOf,
    Optional<MeasuresJson> measures,
    List<Face> faces,
    List<Subject> subjects,
    boolean used,
    Optional<String> problem) {

  /** What was measured in it. */
  record MeasuresJson(
      double sharpness,
      double clarity,
      double exposure,
      String fingerprint,
      boolean lookedClosely,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Double> sharpnessOfSubject) {
    static MeasuresJson of(Measures measures) {
      return new MeasuresJson(
          measures.sharpness(),
          measures.clarity(),
          measures.exposure(),
          String.format(
              "%016x%016x", measures.fingerprint().horizontal(), measures.fingerprint().vertical()),
          measures.close().isPresent(),
          measures.close().map(Measures.CloseLook::sharpnessThere));
    }
  }

  /**
   * @param cameras whether the model of the camera is told
   */
  static PhotoJson of(MonthPhoto found, FolderNames folders, boolean cameras) {
    Optional<Photo> photo = found.photo();
    Taken taken = photo.map(Photo::taken).orElse(Taken.UNKNOWN);
    return new PhotoJson(
        found.file().name(),
        folders.of(found.file()),
        photo.map(Photo::sha256),
        found.file().frame().map(PhotoFile.Frame::clip),
        found.file().frame().map(frame -> frame.at().toMillis() / 1000.0),
        found.day(),
        takenAt(taken),
        taken.from(),
        photo.map(Photo::format),
        cameras ? photo.flatMap(Photo::model) : null,
        photo.map(known -> known.size().width()),
        photo.map(known -> known.size().height()),
        photo.map(Photo::orientation).map(ExifOrientation::exif),
        photo.map(Photo::shape),
        found.group(),
        found.copyOf().map(PhotoFile::toString),
        found.measures().map(MeasuresJson::of),
        found.measures().map(Measures::faces).orElse(List.of()),
        found.measures().map(Measures::subjects).orElse(List.of()),
        found.used(),
        found.problem());
  }

  private static Optional<String> takenAt(Taken taken) {
    return taken
        .local()
        .map(
            local ->
                DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(local)
                    + taken.offset().map(Object::toString).orElse(""));
  }
}
