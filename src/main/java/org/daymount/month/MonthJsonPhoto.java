package org.daymount.month;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;

/** One entry of photos[]. No place, and no camera unless asked for: those stay in the photo. */
final class MonthJsonPhoto {
  private MonthJsonPhoto() {}

  static ObjectNode node(MonthPhoto found, FolderNames folders, boolean cameras) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("file", found.file().name());
    node.put("folder", folders.of(found.file()));
    node.put("sha256", found.photo().map(Photo::sha256).orElse(null));
    found
        .file()
        .frame()
        .ifPresent(
            frame -> node.put("clip", frame.clip()).put("frameAt", frame.at().toMillis() / 1000.0));
    node.put("day", found.day().map(Object::toString).orElse(null));
    Taken taken = found.photo().map(Photo::taken).orElse(Taken.UNKNOWN);
    node.put("takenAt", takenAt(taken));
    node.put("takenFrom", taken.from().word());
    node.put(
        "format", found.photo().map(p -> p.format().name().toLowerCase(Locale.ROOT)).orElse(null));
    if (cameras) {
      node.put("camera", found.photo().flatMap(Photo::model).orElse(null));
    }
    node.put("width", found.photo().map(p -> p.size().width()).orElse(null));
    node.put("height", found.photo().map(p -> p.size().height()).orElse(null));
    node.put("exifOrientation", found.photo().map(p -> p.orientation().exif()).orElse(null));
    node.put("shape", found.photo().map(p -> p.shape().word()).orElse(null));
    node.put("group", found.group().orElse(null));
    node.put("copyOf", found.copyOf().map(Object::toString).orElse(null));
    found
        .measures()
        .ifPresentOrElse(m -> node.set("measures", measures(m)), () -> node.putNull("measures"));
    node.set("faces", faces(found.measures().map(Measures::faces).orElse(List.of())));
    node.set("subjects", subjects(found.measures().map(Measures::subjects).orElse(List.of())));
    node.put("used", found.used());
    node.put("problem", found.problem().orElse(null));
    return node;
  }

  private static String takenAt(Taken taken) {
    return taken
        .local()
        .map(
            local ->
                DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(local)
                    + taken.offset().map(Object::toString).orElse(""))
        .orElse(null);
  }

  private static ObjectNode measures(Measures measures) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("sharpness", MonthJson.rounded(measures.sharpness()));
    node.put("clarity", MonthJson.rounded(measures.clarity()));
    node.put("exposure", MonthJson.rounded(measures.exposure()));
    node.put(
        "fingerprint",
        String.format(
            "%016x%016x", measures.fingerprint().horizontal(), measures.fingerprint().vertical()));
    node.put("lookedClosely", measures.close().isPresent());
    measures
        .close()
        .ifPresent(
            close -> node.put("sharpnessOfSubject", MonthJson.rounded(close.sharpnessThere())));
    return node;
  }

  private static ArrayNode faces(List<Face> faces) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (Face face : faces) {
      ObjectNode node = MonthJson.box(face.box());
      node.put("confidence", MonthJson.rounded(face.confidence()));
      list.add(node);
    }
    return list;
  }

  private static ArrayNode subjects(List<Subject> subjects) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (Subject subject : subjects) {
      ObjectNode node = MonthJson.box(subject.box());
      node.put("confidence", MonthJson.rounded(subject.confidence()));
      node.put("what", subject.what());
      list.add(node);
    }
    return list;
  }
}
