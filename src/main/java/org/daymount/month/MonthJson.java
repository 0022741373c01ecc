package org.daymount.month;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.crop.Crop;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Candidate;
import org.daymount.pick.Score;
import org.daymount.pick.SpacePick;
import org.daymount.problem.Warning;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PixelBox;

/**
 * month.json: the whole decision as data. UTF-8, two-space indent, fields always in the same order,
 * '\n' line ends, so that the same month gives the same bytes. Fields are added, never renamed.
 */
public final class MonthJson {
  private static final int SCHEMA = 1;
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final String tool;
  private final boolean cameras;

  /**
   * Without the cameras' models and the folders' places.
   *
   * @param tool name and version, as in {@code daymount 0.1.0}
   */
  public MonthJson(String tool) {
    this(tool, false);
  }

  /**
   * @param cameras whether the model of a photo's camera, and the whole way to its folder, are
   *     written down with it
   */
  public MonthJson(String tool, boolean cameras) {
    this.tool = tool;
    this.cameras = cameras;
  }

  public byte[] write(Month month) {
    ObjectNode root = head();
    root.put("month", month.month().toString());
    ObjectNode told = settings(month.settings());
    told.put("page", month.album().settings().page().toString());
    told.put("units", month.units().word());
    told.put("start", month.album().settings().start().name().toLowerCase(java.util.Locale.ROOT));
    root.set("settings", told);
    root.set("photos", photos(month.photos()));
    root.set(
        "days", days(month.days(), orientations(month.photos()), folders(month.photos()), true));
    root.set("sheets", sheets(month.sheets()));
    root.set("pages", MonthJsonPages.pages(month.album()));
    root.set("leaves", MonthJsonPages.leaves(month.album()));
    root.set("warnings", warnings(month.warnings()));
    return bytes(root);
  }

  /** For {@code look --json}: the photos alone, with everything measured. */
  public byte[] writePhotos(List<MonthPhoto> photos) {
    ObjectNode root = head();
    root.set("photos", photos(photos));
    return bytes(root);
  }

  /** For {@code days --json}: photos and days, without spaces. */
  public byte[] writeDays(
      String month, List<MonthPhoto> photos, List<MonthDay> days, List<Warning> warnings) {
    ObjectNode root = head();
    root.put("month", month);
    root.set("photos", photos(photos));
    root.set("days", days(days, Map.of(), folders(photos), false));
    root.set("warnings", warnings(warnings));
    return bytes(root);
  }

  private ObjectNode head() {
    ObjectNode root = NODES.objectNode();
    root.put("schema", SCHEMA);
    root.put("tool", tool);
    return root;
  }

  private static byte[] bytes(ObjectNode root) {
    try {
      String text =
          new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(root);
      return (text.replace("\r\n", "\n") + "\n").getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain nodes can always be written", e);
    }
  }

  private static ObjectNode settings(Settings settings) {
    ObjectNode node = NODES.objectNode();
    node.put("dayStarts", settings.dayStarts().toString());
    node.put("space", settings.space());
    node.put("reveal", inches(settings.reveal()));
    node.put("ppi", settings.ppi().value());
    node.put("minPpi", settings.minPpi().value());
    node.put("sheet", settings.sheet().toString());
    node.put("labTrim", inches(settings.labTrim()));
    node.put("margin", inches(settings.margin()));
    node.put("lighter", rounded(settings.lighter().stops()));
    node.put("paper", settings.paper().name().toLowerCase(java.util.Locale.ROOT));
    return node;
  }

  private FolderNames folders(List<MonthPhoto> photos) {
    return new FolderNames(photos.stream().map(MonthPhoto::file).toList(), cameras);
  }

  private ArrayNode photos(List<MonthPhoto> photos) {
    ArrayNode list = NODES.arrayNode();
    FolderNames folders = folders(photos);
    photos.forEach(photo -> list.add(MonthJsonPhoto.node(photo, folders, cameras)));
    return list;
  }

  private static ArrayNode days(
      List<MonthDay> days,
      Map<PhotoFile, ExifOrientation> asTagged,
      FolderNames folders,
      boolean withSpaces) {
    ArrayNode list = NODES.arrayNode();
    for (MonthDay day : days) {
      ObjectNode node = list.addObject();
      node.put("day", day.day().toString());
      node.put("state", day.state().word());
      node.put("story", day.story().orElse(null));
      if (withSpaces) {
        ArrayNode spaces = node.putArray("spaces");
        day.spaces().forEach(space -> spaces.add(space(space, asTagged, folders)));
      }
    }
    return list;
  }

  private static ObjectNode space(
      MonthSpace monthSpace, Map<PhotoFile, ExifOrientation> asTagged, FolderNames folders) {
    SpacePick pick = monthSpace.pick();
    Space space = pick.space();
    Optional<Candidate> hero = pick.hero();
    ObjectNode node = NODES.objectNode();
    node.put("space", space.name());
    node.put("direction", pick.direction().word());
    node.put("directionFixed", space.direction().isPresent());
    node.put("onMat", space.onMat());
    node.put("reveal", inches(space.reveal().orElse(Length.ZERO)));
    node.put("photo", hero.map(h -> h.looked().photo().file().name()).orElse(null));
    node.put("folder", hero.map(h -> folders.of(h.looked().photo().file())).orElse(null));
    node.put("chosenBy", pick.chosenBy().word());
    node.put("score", hero.map(h -> rounded(h.score().total())).orElse(null));
    node.set("scoreParts", hero.map(h -> scoreParts(h.score())).orElseGet(NODES::objectNode));
    node.set("reasons", texts(pick.reasons()));
    if (hero.isPresent()) {
      Crop crop = hero.get().crop();
      Photo seen = hero.get().looked().photo();
      int turns =
          seen.orientation()
              .quarterTurnsFrom(asTagged.getOrDefault(seen.file(), seen.orientation()));
      node.set("crop", box(crop.window().turned(seen.size(), -turns)));
      node.put("quarterTurns", turns);
      node.put("ppi", rounded(crop.ppi().value()));
      node.put("fit", crop.fit().word());
      node.put("pieceWidth", inches(crop.piece().width()));
      node.put("pieceHeight", inches(crop.piece().height()));
      node.put("pictureWidth", inches(crop.picture().width()));
      node.put("pictureHeight", inches(crop.picture().height()));
    } else {
      for (String field : List.of("crop", "ppi", "fit")) {
        node.putNull(field);
      }
      node.put("pieceWidth", inches(space.pieceSize(pick.direction()).width()));
      node.put("pieceHeight", inches(space.pieceSize(pick.direction()).height()));
    }
    node.put("piece", monthSpace.pieces().isEmpty() ? null : monthSpace.pieces().get(0));
    node.set("pieces", texts(monthSpace.pieces()));
    ArrayNode others = node.putArray("runnersUp");
    for (Candidate candidate : pick.runnersUp()) {
      ObjectNode other = others.addObject();
      other.put("file", candidate.looked().photo().file().name());
      other.put("score", rounded(candidate.score().total()));
      other.set("reasons", texts(candidate.reasons()));
    }
    return node;
  }

  /** How each photo lies by its own tag: a hero that lies otherwise was turned by the person. */
  private static Map<PhotoFile, ExifOrientation> orientations(List<MonthPhoto> photos) {
    Map<PhotoFile, ExifOrientation> asTagged = new HashMap<>();
    for (MonthPhoto photo : photos) {
      photo.photo().ifPresent(known -> asTagged.put(photo.file(), known.orientation()));
    }
    return asTagged;
  }

  private static ObjectNode scoreParts(Score score) {
    ObjectNode node = NODES.objectNode();
    score.parts().forEach(part -> node.put(part.name(), rounded(part.value())));
    return node;
  }

  private static ArrayNode sheets(List<MonthSheet> sheets) {
    ArrayNode list = NODES.arrayNode();
    for (MonthSheet monthSheet : sheets) {
      ObjectNode node = list.addObject();
      node.put("file", monthSheet.file());
      node.put("width", inches(monthSheet.sheet().size().width()));
      node.put("height", inches(monthSheet.sheet().size().height()));
      ArrayNode pieces = node.putArray("pieces");
      for (PlacedPiece placed : monthSheet.sheet().pieces()) {
        PaperBox box = placed.box();
        ObjectNode piece = pieces.addObject();
        piece.put("piece", placed.piece().label());
        PieceContent content = monthSheet.content().get(placed.piece().label());
        piece.put("day", content == null ? null : content.day().toString());
        piece.put("shows", content != null && content.card().isPresent() ? "card" : "picture");
        piece.put("x", inches(box.x()));
        piece.put("y", inches(box.y()));
        piece.put("width", inches(box.width()));
        piece.put("height", inches(box.height()));
        piece.put("turned", placed.turned());
      }
      ArrayNode cuts = node.putArray("cuts");
      for (Cut cut : monthSheet.sheet().cuts()) {
        ObjectNode line = cuts.addObject();
        line.put("axis", cut.axis().word());
        line.put("at", inches(cut.at()));
        line.put("from", inches(cut.from()));
        line.put("to", inches(cut.to()));
      }
    }
    return list;
  }

  private static ArrayNode warnings(List<Warning> warnings) {
    ArrayNode list = NODES.arrayNode();
    for (Warning warning : warnings) {
      ObjectNode node = list.addObject();
      node.put("code", warning.kind().code());
      warning.file().ifPresent(file -> node.put("file", file.name()));
      warning.day().ifPresent(day -> node.put("day", day.toString()));
      node.put("text", warning.text());
    }
    return list;
  }

  static ObjectNode box(PixelBox box) {
    ObjectNode node = NODES.objectNode();
    node.put("x", box.x());
    node.put("y", box.y());
    node.put("width", box.width());
    node.put("height", box.height());
    return node;
  }

  static ArrayNode texts(List<String> texts) {
    ArrayNode list = NODES.arrayNode();
    texts.forEach(list::add);
    return list;
  }

  /** To a ten-thousandth: enough to compare, short enough to read. */
  static double rounded(double value) {
    return Math.round(value * 10_000) / 10_000.0;
  }

  static double inches(Length length) {
    return Math.round(length.inInches() * 1_000_000) / 1_000_000.0;
  }
}
