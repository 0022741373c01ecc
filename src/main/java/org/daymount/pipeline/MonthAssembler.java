package org.daymount.pipeline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.album.DayPage;
import org.daymount.choices.UserDays;
import org.daymount.look.AnalysedPhoto;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthPhoto;
import org.daymount.month.MonthSheet;
import org.daymount.month.MonthSpace;
import org.daymount.page.PagePlanner;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.DayPick;
import org.daymount.problem.Problem;
import org.daymount.sheet.Packing;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PieceMaker;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;

/** Puts what the stages found and settled together into the finished month. */
final class MonthAssembler {
  private final Request request;
  private final Survey surveyed;
  private final Selected picked;
  private final Stories stories;
  private final Map<PhotoFile, Problem> problems;

  MonthAssembler(Request request, Survey surveyed, Selected picked, Stories stories) {
    this.request = request;
    this.surveyed = surveyed;
    this.picked = picked;
    this.stories = stories;
    this.problems = picked.problems();
  }

  Month assemble(PieceMaker pieces, Packing packing, PagePlanner.Plan pages) {
    List<MonthDay> days = new ArrayList<>();
    for (DayPick pick : picked.picks()) {
      days.add(day(pick, pieces.labels(pick.page().day())));
    }
    List<MonthSheet> sheets = sheets(packing, pieces.content());
    return new Month(
        surveyed.month(),
        request.settings(),
        photos(picked.usedFiles()),
        days,
        sheets,
        pages.layout(),
        new MonthWarnings(request, surveyed, picked, stories).of(days, packing, pages));
  }

  private static MonthDay day(DayPick pick, List<List<String>> labels) {
    List<MonthSpace> spaces = new ArrayList<>();
    for (int i = 0; i < pick.spaces().size(); i++) {
      spaces.add(new MonthSpace(pick.spaces().get(i), labels.get(i)));
    }
    return new MonthDay(pick.page().day(), state(pick), pick.page().story(), spaces);
  }

  private static MonthDay.State state(DayPick pick) {
    if (pick.page().kind() == DayPage.Kind.LEFT_OUT) {
      return MonthDay.State.LEFT_OUT;
    }
    long filled = pick.spaces().stream().filter(space -> space.hero().isPresent()).count();
    if (filled == pick.spaces().size()) {
      return MonthDay.State.FILLED;
    }
    return filled == 0 ? MonthDay.State.EMPTY : MonthDay.State.PARTLY;
  }

  private static List<MonthSheet> sheets(Packing packing, Map<String, PieceContent> content) {
    List<MonthSheet> sheets = new ArrayList<>();
    int digits = Math.max(2, Integer.toString(packing.sheets().size()).length());
    for (Sheet sheet : packing.sheets()) {
      Map<String, PieceContent> here = new LinkedHashMap<>();
      for (PlacedPiece placed : sheet.pieces()) {
        here.put(placed.piece().label(), content.get(placed.piece().label()));
      }
      String file =
          String.format(Locale.ROOT, "sheets/sheet-%0" + digits + "d.jpg", sheets.size() + 1);
      sheets.add(new MonthSheet(file, sheet, here));
    }
    return sheets;
  }

  private List<MonthPhoto> photos(Set<PhotoFile> used) {
    List<MonthPhoto> photos = new ArrayList<>();
    Map<PhotoFile, Optional<String>> groups = picked.groups();
    Set<PhotoFile> seen = new HashSet<>();
    for (Photo photo : surveyed.found().all()) {
      seen.add(photo.file());
      Photo dated = UserDays.dated(photo, picked.obeyed());
      photos.add(
          new MonthPhoto(
              photo.file(),
              Optional.of(dated),
              MonthPhotos.day(dated, request.daySettings()),
              Optional.ofNullable(picked.looked().get(photo.file())).map(AnalysedPhoto::measures),
              groups.getOrDefault(photo.file(), Optional.empty()),
              surveyed.copies().original(photo.file()),
              used.contains(photo.file()),
              Optional.ofNullable(problems.get(photo.file())).map(Problem::text)));
    }
    for (Problem problem : problems.values()) {
      if (problem.kind().isUnusable() && seen.add(problem.file())) {
        photos.add(MonthPhotos.unreadable(problem));
      }
    }
    photos.sort((a, b) -> a.file().compareTo(b.file()));
    return photos;
  }
}
