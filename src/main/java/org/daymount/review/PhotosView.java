package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.daymount.choices.Choices;
import org.daymount.day.PhotoDay;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Subject;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;
import org.daymount.pipeline.Picked;
import org.daymount.problem.Problem;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Photos with what became of each, in words. */
final class PhotosView {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private final ThumbnailCache shelf;

  PhotosView(ThumbnailCache shelf) {
    this.shelf = shelf;
  }

  /** A day's photos in order of time. */
  ObjectNode day(Editing.Now now, LocalDate date) throws HttpException {
    PhotoDay day =
        now.picked().photosByDay().stream()
            .filter(each -> each.day().equals(date))
            .findFirst()
            .orElseThrow(
                () -> new HttpException(HttpException.NOT_FOUND, date + " is not in this month"));
    return list(now, day.photos());
  }

  /** Photos whose day nobody knows. */
  ObjectNode undated(Editing.Now now) {
    return list(now, now.picked().undated());
  }

  private ObjectNode list(Editing.Now now, List<Photo> photos) {
    Map<PhotoFile, ArrayNode> places = places(now.picked());
    Map<PhotoFile, Optional<String>> groups = now.picked().groups();
    Map<PhotoFile, Problem> problems = now.picked().problems();
    ObjectNode root = NODES.objectNode();
    root.put("version", now.version());
    ArrayNode list = root.putArray("photos");
    for (Photo photo : photos) {
      PhotoFile file = photo.file();
      ObjectNode node = list.addObject();
      node.put("photo", shelf.id(file));
      node.put("name", file.name());
      node.put("time", time(photo.taken()));
      node.put("width", photo.size().width());
      node.put("height", photo.size().height());
      node.put("group", groups.getOrDefault(file, Optional.empty()).orElse(null));
      AnalysedPhoto looked = now.picked().looked().get(file);
      node.put("readable", looked != null || now.picked().isToBeSeenYet(photo));
      if (looked != null) {
        focus(looked).ifPresent(box -> point(node.putObject("focus"), box, photo.size()));
      }
      node.set("places", places.getOrDefault(file, NODES.arrayNode()));
      node.put("problem", Optional.ofNullable(problems.get(file)).map(Problem::text).orElse(null));
      Choices choices = now.choices();
      node.put("used", choices.used(photo.sha256()).orElse(null));
      node.put("given", choices.dayOf(photo.sha256()).map(Object::toString).orElse(null));
    }
    return root;
  }

  /** Where to look first when it is looked at closely: the surest face, or what it is about. */
  private static Optional<PixelBox> focus(AnalysedPhoto looked) {
    return looked.measures().faces().stream()
        .findFirst()
        .map(Face::box)
        .or(() -> looked.measures().subjects().stream().findFirst().map(PhotosView::head));
  }

  /** Of whoever stands or sits, and of most things, the upper part tells most. */
  private static PixelBox head(Subject subject) {
    PixelBox box = subject.box();
    return new PixelBox(box.x(), box.y(), box.width(), Math.max(1, box.height() / 2));
  }

  private static void point(ObjectNode node, PixelBox box, PixelSize whole) {
    node.put("x", box.centreX() / whole.width());
    node.put("y", box.centreY() / whole.height());
  }

  /** Where each photo is printed, or nearly: day, space, and whether it is the one or the next. */
  private static Map<PhotoFile, ArrayNode> places(Picked picked) {
    Map<PhotoFile, ArrayNode> places = new HashMap<>();
    for (DayPick day : picked.picks()) {
      for (int i = 0; i < day.spaces().size(); i++) {
        SpacePick space = day.spaces().get(i);
        int place = i;
        boolean person = space.chosenBy() == SpacePick.ChosenBy.PERSON;
        space
            .hero()
            .ifPresent(
                hero ->
                    add(
                        places,
                        hero.looked().photo().file(),
                        day.page().day(),
                        place,
                        person ? "chosen" : "proposed"));
        space
            .runnersUp()
            .forEach(
                other ->
                    add(places, other.looked().photo().file(), day.page().day(), place, "next"));
      }
    }
    return places;
  }

  private static void add(
      Map<PhotoFile, ArrayNode> places, PhotoFile file, LocalDate day, int space, String how) {
    ObjectNode node = places.computeIfAbsent(file, any -> NODES.arrayNode()).addObject();
    node.put("day", day.toString());
    node.put("space", space);
    node.put("how", how);
  }

  private static String time(Taken taken) {
    return taken.hourKnown() && taken.from().isTrusted()
        ? TIME.format(taken.local().orElseThrow())
        : null;
  }
}
