package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.album.Space;
import org.daymount.album.WantedSpace;
import org.daymount.choices.SpaceChoice;
import org.daymount.crop.Crop;
import org.daymount.day.PhotoDay;
import org.daymount.look.Face;
import org.daymount.photo.Photo;
import org.daymount.pick.DayPick;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.pipeline.NoteInUse;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.Selected;
import org.daymount.pipeline.Survey;
import org.daymount.problem.Warning;
import org.daymount.unit.Orientation;

/**
 * The month as data for the page. Lengths are inches; boxes are pixels of the picture as it is
 * shown (upright, and turned if the person turned it).
 */
final class MonthView {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final DateTimeFormatter TITLE =
      DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEEE", Locale.ENGLISH);

  /** Of the piece; a picture that covers less is one to look at. */
  private static final double PRINTED_SMALL = 0.4;

  private final Request request;
  private final Survey surveyed;
  private final ThumbnailCache thumbnails;
  private final PagesView pages;

  MonthView(Request request, Survey surveyed, ThumbnailCache thumbnails, CardView cards) {
    this.request = request;
    this.surveyed = surveyed;
    this.thumbnails = thumbnails;
    this.pages = new PagesView(thumbnails, cards);
  }

  ObjectNode of(Editing.Now now) {
    Selected picked = now.picked();
    ObjectNode root = NODES.objectNode();
    root.put("version", now.version());
    root.put("title", TITLE.format(surveyed.month()));
    root.put("out", request.out().name(surveyed.month()).toString());
    root.putPOJO("undo", now.undo().map(MonthView::step));
    root.putPOJO("redo", now.redo().map(MonthView::step));
    root.put("message", now.message().orElse(null));
    root.put("ppi", request.crop().wanted().value());
    root.put("minPpi", request.crop().minimum().value());
    root.put("safeEdge", request.crop().safeEdge().inInches());
    root.put("sheet", request.settings().sheet().toString());
    root.put("units", request.pages().units().word());
    root.put("hasNote", NoteInUse.of(request, surveyed.month()).isPresent());
    root.put(
        "cards",
        request.cardStyle().fitted() ? "auto" : request.cards().map(Object::toString).orElse(null));
    root.put("photos", surveyed.photos().size());
    root.put("undated", picked.undated().size());
    root.put("elsewhere", picked.elsewhere().size());
    root.put("dayStarts", request.daySettings().dayStarts().at().toString());
    Map<LocalDate, Integer> counts = new HashMap<>();
    for (PhotoDay day : picked.photosByDay()) {
      counts.put(day.day(), day.photos().size());
    }
    ArrayNode days = root.putArray("days");
    for (DayPick pick : picked.picks()) {
      days.add(day(now, pick, counts.getOrDefault(pick.page().day(), 0)));
    }
    root.putPOJO("album", pages.of(now));
    root.putPOJO(
        "remarks",
        picked.pageWarnings().stream()
            .filter(warning -> warning.day().isEmpty())
            .map(Warning::text)
            .toList());
    return root;
  }

  /** What can be undone, and where it is seen. */
  private record Step(String words, Optional<LocalDate> day, String part) {}

  private static Step step(Editing.Step step) {
    return new Step(step.words(), step.where().day(), step.where().part());
  }

  private ObjectNode day(Editing.Now now, DayPick pick, int photos) {
    LocalDate date = pick.page().day();
    ObjectNode node = NODES.objectNode();
    node.put("day", date.toString());
    node.put("number", date.getDayOfMonth());
    node.put("weekday", WEEKDAY.format(date));
    node.put("kind", pick.page().kind().name().toLowerCase(Locale.ROOT));
    node.put("photos", photos);
    node.put("story", pick.page().story().orElse(null));
    node.put("notedStory", now.picked().noted(date).flatMap(DayPage::story).orElse(null));
    node.put("storyIsYours", now.choices().day(date).story().isPresent());
    LocalDate pageOf = now.choices().pageOf(date);
    node.put("pageOf", pageOf.equals(date) ? null : pageOf.toString());
    node.put("page", words(pick.page()));
    node.put("pageIsYours", now.choices().day(date).changesPage());
    node.put("outside", !request.daySettings().days().contains(date.getDayOfMonth()));
    ArrayNode spaces = node.putArray("spaces");
    List<String> attention = new ArrayList<>();
    for (int i = 0; i < pick.spaces().size(); i++) {
      spaces.add(space(now, date, i, pick.spaces().get(i), attention));
    }
    ArrayNode remarks = node.putArray("remarks");
    for (Warning warning : now.picked().pageWarnings()) {
      if (warning.day().filter(date::equals).isPresent()) {
        remarks.add(warning.text());
        attention.add(word(warning.kind().code()));
      }
    }
    String misfit = now.pages().misfits().get(date);
    if (misfit != null) {
      remarks.add(misfit);
      attention.add("does not fit");
    }
    node.putPOJO("attention", attention.stream().distinct().toList());
    return node;
  }

  /** The page in the words of the note; a reveal only where it is not the usual one. */
  private String words(DayPage page) {
    PageSpec all = PageSpecParser.words(page);
    List<WantedSpace> spaces = new ArrayList<>();
    for (WantedSpace space : all.spaces()) {
      spaces.add(
          new WantedSpace(
              space.size(),
              space.direction(),
              space.onMat(),
              space.reveal().filter(reveal -> !reveal.equals(request.defaults().reveal())),
              space.onSide()));
    }
    return PageSpecParser.text(new PageSpec(all.kind(), spaces));
  }

  private static String word(String code) {
    return switch (code) {
      case "story-conflict" -> "story differs from note";
      case "page-conflict" -> "page differs from note";
      case "photo-renamed" -> "file renamed";
      case "photo-changed" -> "file changed";
      case "photo-missing" -> "file missing";
      default -> "see remark";
    };
  }

  private ObjectNode space(
      Editing.Now now, LocalDate date, int place, SpacePick pick, List<String> attention) {
    Space space = pick.space();
    SpaceChoice choice = now.choices().space(date, place);
    ObjectNode node = NODES.objectNode();
    node.put("space", place);
    node.put("size", space.name());
    node.put("direction", pick.direction().word());
    node.put("directionFixed", space.direction().map(Orientation::word).orElse(null));
    node.put("sizeIsYours", choice.size().isPresent());
    node.put("directionIsYours", choice.direction().isPresent());
    node.put("onSide", space.onSide());
    node.put("reveal", space.reveal().map(reveal -> reveal.inInches()).orElse(0.0));
    node.putPOJO("whole", space.size(pick.direction()));
    node.putPOJO("piece", space.pieceSize(pick.direction()));
    boolean chosen = pick.chosenBy() == SpacePick.ChosenBy.PERSON;
    node.put("chosenBy", pick.chosenBy().word());
    boolean drawn = now.picked().obeyed().space(date, place).crop().isPresent();
    node.put("cropIsYours", chosen && drawn);
    node.putPOJO("reasons", pick.reasons());
    if (pick.hero().isPresent()) {
      hero(node, now.picked(), pick.hero().get());
      Crop crop = pick.hero().get().crop();
      if (crop.picture().squareInches() < PRINTED_SMALL * crop.piece().squareInches()) {
        attention.add("printed small");
      }
      if (crop.ppi().isBelow(request.crop().minimum())) {
        attention.add("small print");
      }
    } else {
      node.putNull("photo");
      attention.add(chosen ? "file missing" : "picture missing");
    }
    ArrayNode others = node.putArray("next");
    for (ScoredCandidate candidate : pick.runnersUp()) {
      ObjectNode other = others.addObject();
      other.put("photo", thumbnails.id(candidate.photo().file()));
      other.putPOJO("reasons", candidate.reasons());
    }
    return node;
  }

  private void hero(ObjectNode node, Selected picked, ScoredCandidate hero) {
    Photo shown = hero.photo();
    Crop crop = hero.crop();
    node.put("photo", thumbnails.id(shown.file()));
    node.put("name", shown.file().name());
    node.put("turns", thumbnails.turns(shown));
    node.putPOJO("picture", shown.size());
    node.putPOJO("crop", crop.window());
    node.putPOJO("printed", crop.picture());
    node.put("fit", crop.fit().word());
    node.put("ppi", crop.ppi().value());
    node.putPOJO(
        "faces",
        hero.looked().measures().faces().stream()
            .filter(Face::isProtected)
            .map(face -> face.box().within(shown.size()))
            .toList());
  }
}
