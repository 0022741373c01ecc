package org.daymount.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.day.PhotoDay;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Subject;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.Taken;
import org.daymount.pick.DayPick;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.pipeline.Selected;
import org.daymount.problem.Problem;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** Photos with what became of each, in words. */
final class PhotosView {
  /** A whole camera roll would be too long to look through. */
  private static final int MOST_ELSEWHERE = 400;

  /** What is not decoded unless it is chosen. */
  private static final Set<Problem.Kind> NOT_LOOKED_AT =
      EnumSet.of(Problem.Kind.OTHER_MONTH, Problem.Kind.OTHER_DAYS);

  private final ThumbnailCache thumbnails;

  PhotosView(ThumbnailCache thumbnails) {
    this.thumbnails = thumbnails;
  }

  /**
   * Photos of one version of the month.
   *
   * @param more how many there are beside these
   */
  record Photos(long version, List<ShownPhoto> photos, int more) {}

  /**
   * A photo.
   *
   * @param photo what its pictures are asked for by
   * @param readable whether it could be looked at, or nobody has tried
   * @param focus where to look first; not there when nobody knows
   * @param used whether the person said that it is to be
   * @param given the day that the person gave it
   */
  record ShownPhoto(
      String photo,
      String name,
      Optional<String> time,
      int width,
      int height,
      Optional<String> group,
      boolean readable,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Point> focus,
      List<Printed> places,
      Optional<String> problem,
      Optional<Boolean> used,
      Optional<LocalDate> given,
      DateWords dated) {}

  /** A point, as fractions of the picture's width and height. */
  record Point(double x, double y) {}

  /**
   * Where a photo is printed, or nearly.
   *
   * @param how chosen, proposed or next
   */
  record Printed(LocalDate day, int space, String how) {}

  /** A day's photos in order of time. */
  Photos day(Editing.Now now, LocalDate date) throws HttpException {
    PhotoDay day =
        now.picked().photosByDay().stream()
            .filter(each -> each.day().equals(date))
            .findFirst()
            .orElseThrow(
                () -> new HttpException(HttpException.NOT_FOUND, date + " is not in this month"));
    return list(now, day.photos(), 0);
  }

  /** Photos whose day nobody knows. */
  Photos undated(Editing.Now now) {
    return list(now, now.picked().undated(), 0);
  }

  /** Photos of other months and of days not asked for, those first whose date is least sure. */
  Photos elsewhere(Editing.Now now) {
    LocalDate month = now.picked().photosByDay().get(0).day();
    List<Photo> all = new ArrayList<>(now.picked().elsewhere());
    all.sort(
        Comparator.comparing((Photo photo) -> photo.taken().from().isCameras())
            .thenComparing(
                photo ->
                    Math.abs(
                        ChronoUnit.DAYS.between(
                            month, photo.taken().local().orElseThrow().toLocalDate())))
            .thenComparing(Photo::file));
    int shown = Math.min(MOST_ELSEWHERE, all.size());
    return list(now, all.subList(0, shown), all.size() - shown);
  }

  private Photos list(Editing.Now now, List<Photo> photos, int more) {
    Map<PhotoFile, List<Printed>> places = places(now.picked());
    Map<PhotoFile, Problem> problems = now.picked().problems();
    Map<PhotoFile, Optional<String>> groups = now.picked().groups();
    return new Photos(
        now.version(),
        photos.stream()
            .map(
                photo ->
                    shown(
                        photo,
                        now,
                        places,
                        Optional.ofNullable(problems.get(photo.file())),
                        groups.getOrDefault(photo.file(), Optional.empty())))
            .toList(),
        more);
  }

  private ShownPhoto shown(
      Photo photo,
      Editing.Now now,
      Map<PhotoFile, List<Printed>> places,
      Optional<Problem> problem,
      Optional<String> group) {
    PhotoFile file = photo.file();
    Selected picked = now.picked();
    Optional<AnalysedPhoto> looked = Optional.ofNullable(picked.looked().get(file));
    Optional<Taken> said = now.choices().takenOf(photo.sha256());
    Photo asFound = thumbnails.photo(thumbnails.id(file)).orElse(photo);
    return new ShownPhoto(
        thumbnails.id(file),
        file.name(),
        DateWords.time(photo.taken()),
        photo.size().width(),
        photo.size().height(),
        group,
        looked.isPresent()
            || picked.isToBeSeenYet(photo)
            || problem.filter(p -> NOT_LOOKED_AT.contains(p.kind())).isPresent(),
        looked.flatMap(PhotosView::focus).map(box -> point(box, photo.size())),
        places.getOrDefault(file, List.of()),
        problem.map(Problem::text),
        now.choices().used(photo.sha256()),
        said.flatMap(Taken::local).map(LocalDateTime::toLocalDate),
        DateWords.of(asFound.taken(), said));
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

  private static Point point(PixelBox box, PixelSize whole) {
    return new Point(box.centreX() / whole.width(), box.centreY() / whole.height());
  }

  private static Map<PhotoFile, List<Printed>> places(Selected picked) {
    Map<PhotoFile, List<Printed>> places = new HashMap<>();
    for (DayPick day : picked.picks()) {
      for (int i = 0; i < day.spaces().size(); i++) {
        SpacePick space = day.spaces().get(i);
        boolean person = space.chosenBy() == SpacePick.ChosenBy.PERSON;
        Printed printed = new Printed(day.page().day(), i, person ? "chosen" : "proposed");
        Printed next = new Printed(day.page().day(), i, "next");
        space.hero().ifPresent(hero -> add(places, hero, printed));
        space.runnersUp().forEach(other -> add(places, other, next));
      }
    }
    return places;
  }

  private static void add(
      Map<PhotoFile, List<Printed>> places, ScoredCandidate candidate, Printed printed) {
    places.computeIfAbsent(candidate.photo().file(), any -> new ArrayList<>()).add(printed);
  }
}
