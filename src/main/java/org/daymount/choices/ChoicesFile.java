package org.daymount.choices;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.unit.Orientation;
import org.daymount.unit.PixelBox;
import org.daymount.unit.SizeText;

/**
 * Choices as the bytes of choices.json and back. Same choices, same bytes: days by date, spaces by
 * place, photos by file. Fields it does not know are kept, so that an older version does not undo
 * what a newer one wrote.
 */
public final class ChoicesFile {
  private static final int SCHEMA = 1;
  private static final String REMEDY =
      "; put back a copy of choices.json, or move it away to start without choices";
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private ChoicesFile() {}

  /** UTF-8, two blanks of indent, '\n' at line ends on every system. */
  public static byte[] write(Choices choices) {
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", SCHEMA);
    ArrayNode days = root.putArray("days");
    choices.days().forEach((date, day) -> days.add(day(date, day)));
    ArrayNode photos = root.putArray("photos");
    choices.photos().values().stream()
        .sorted((one, two) -> one.photo().compareTo(two.photo()))
        .forEach(photo -> photos.add(photo(photo)));
    keep(root, choices.other());
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    try {
      byte[] json = JSON.writer(printer).writeValueAsBytes(root);
      byte[] line = Arrays.copyOf(json, json.length + 1);
      line[json.length] = '\n';
      return line;
    } catch (JsonProcessingException cannotHappen) {
      throw new IllegalStateException("a tree of values could not be written", cannotHappen);
    }
  }

  private static ObjectNode day(LocalDate date, DayChoice day) {
    ObjectNode node = JSON.createObjectNode();
    node.put("day", date.toString());
    day.pageOf().ifPresent(from -> node.put("pageOf", from.toString()));
    day.page().ifPresent(words -> node.put("page", PageSpecParser.text(words)));
    day.pageReplaced().ifPresent(words -> node.put("pageReplaced", words));
    day.story()
        .ifPresent(
            story -> {
              ObjectNode told = node.putObject("story");
              told.put("text", story.text());
              story.replaced().ifPresent(before -> told.put("replaced", before));
              keep(told, story.other());
            });
    if (!day.spaces().isEmpty()) {
      ArrayNode spaces = node.putArray("spaces");
      day.spaces().forEach((place, space) -> spaces.add(space(place, space)));
    }
    keep(node, day.other());
    return node;
  }

  private static ObjectNode space(int place, SpaceChoice space) {
    ObjectNode node = JSON.createObjectNode();
    node.put("space", place);
    space
        .photo()
        .ifPresent(
            photo -> {
              node.put("file", photo.file());
              node.put("sha256", photo.sha256());
            });
    space
        .crop()
        .ifPresent(
            crop -> {
              ObjectNode box = node.putObject("crop");
              box.put("x", crop.window().x());
              box.put("y", crop.window().y());
              box.put("width", crop.window().width());
              box.put("height", crop.window().height());
              box.put("sha256", crop.sha256());
              keep(box, crop.other());
            });
    space.direction().ifPresent(way -> node.put("direction", way.word()));
    space.size().ifPresent(size -> node.put("size", SizeText.text(size)));
    if (space.quarterTurns() != 0) {
      node.put("quarterTurns", space.quarterTurns());
    }
    keep(node, space.other());
    return node;
  }

  private static ObjectNode photo(PhotoChoice photo) {
    ObjectNode node = JSON.createObjectNode();
    node.put("file", photo.photo().file());
    node.put("sha256", photo.photo().sha256());
    photo.used().ifPresent(used -> node.put("used", used));
    photo.day().ifPresent(day -> node.put("day", day.toString()));
    keep(node, photo.other());
    return node;
  }

  private static void keep(ObjectNode node, UnknownFields other) {
    other
        .json()
        .forEach(
            (name, json) -> {
              try {
                node.set(name, JSON.readTree(json));
              } catch (JsonProcessingException notJson) {
                throw new IllegalArgumentException("field " + name + " is not JSON: " + json);
              }
            });
  }

  /**
   * @throws UnreadableChoices when the bytes are not choices, or those of a newer version
   */
  public static Choices read(byte[] bytes) throws UnreadableChoices {
    JsonNode root;
    try {
      root = JSON.readTree(bytes);
    } catch (JsonProcessingException damaged) {
      String where =
          damaged.getLocation() == null
              ? ""
              : " at line "
                  + damaged.getLocation().getLineNr()
                  + ", column "
                  + damaged.getLocation().getColumnNr();
      throw new UnreadableChoices("choices.json is damaged" + where + REMEDY);
    } catch (IOException damaged) {
      throw new UnreadableChoices("choices.json is damaged" + REMEDY);
    }
    if (!root.isObject()) {
      throw new UnreadableChoices("choices.json is empty or holds something else" + REMEDY);
    }
    Fields fields = new Fields("at its top", root);
    int schema = fields.whole("schema");
    if (schema > SCHEMA) {
      throw new UnreadableChoices(
          "choices.json was written by a newer Daymount (schema "
              + schema
              + ", this one knows "
              + SCHEMA
              + "); use that one, or move the file away to start without choices");
    }
    if (schema < SCHEMA) {
      throw fields.wrong("schema", "is not a version");
    }
    Map<LocalDate, DayChoice> days = new HashMap<>();
    for (JsonNode node : fields.list("days")) {
      Fields day = new Fields("in a day", node);
      LocalDate date = day.date("day").orElseThrow(() -> day.wrong("day", "is missing"));
      if (days.put(date, day(new Fields("on " + date, node))) != null) {
        throw day.wrong("day", "is there twice");
      }
    }
    Map<String, PhotoChoice> photos = new HashMap<>();
    for (JsonNode node : fields.list("photos")) {
      Fields photo = new Fields("in a photo", node);
      PhotoKey key = photo.photo().orElseThrow(() -> photo.wrong("sha256", "is missing"));
      PhotoChoice choice =
          new PhotoChoice(
              key,
              photo.flag("used"),
              photo.date("day"),
              photo.others(Set.of("file", "sha256", "used", "day")));
      if (photos.put(key.sha256(), choice) != null) {
        throw photo.wrong("sha256", "is there twice");
      }
    }
    try {
      return new Choices(days, photos, fields.others(Set.of("schema", "days", "photos")));
    } catch (IllegalArgumentException contradictory) {
      throw new UnreadableChoices(
          "choices.json contradicts itself: " + contradictory.getMessage() + REMEDY);
    }
  }

  private static DayChoice day(Fields day) throws UnreadableChoices {
    Map<Integer, SpaceChoice> spaces = new HashMap<>();
    for (JsonNode node : day.list("spaces")) {
      Fields space = new Fields(day.where + ", in a space", node);
      int place = space.whole("space");
      if (place < 0 || spaces.put(place, space(space)) != null) {
        throw space.wrong("space", place < 0 ? "is below 0" : "is there twice");
      }
    }
    Optional<StoryChoice> story = Optional.empty();
    Optional<Fields> told = day.object("story");
    if (told.isPresent()) {
      Fields fields = told.get();
      String text = fields.text("text").orElseThrow(() -> fields.wrong("text", "is missing"));
      story =
          Optional.of(
              new StoryChoice(
                  text, fields.text("replaced"), fields.others(Set.of("text", "replaced"))));
    }
    return new DayChoice(
        spaces,
        story,
        day.date("pageOf"),
        page(day),
        day.text("pageReplaced"),
        day.others(Set.of("day", "spaces", "story", "pageOf", "page", "pageReplaced")));
  }

  private static Optional<PageSpec> page(Fields day) throws UnreadableChoices {
    try {
      return day.text("page").map(PageSpecParser::parse);
    } catch (IllegalArgumentException notWords) {
      throw day.wrong("page", "is not understood: " + notWords.getMessage());
    }
  }

  private static SpaceChoice space(Fields space) throws UnreadableChoices {
    Optional<CropChoice> crop = Optional.empty();
    Optional<Fields> drawn = space.object("crop");
    if (drawn.isPresent()) {
      Fields box = drawn.get();
      PixelBox window;
      try {
        window =
            new PixelBox(box.whole("x"), box.whole("y"), box.whole("width"), box.whole("height"));
      } catch (IllegalArgumentException empty) {
        throw box.wrong("width", "or height is not above 0");
      }
      String sum = box.text("sha256").orElseThrow(() -> box.wrong("sha256", "is missing"));
      crop =
          Optional.of(
              new CropChoice(
                  window, sum, box.others(Set.of("x", "y", "width", "height", "sha256"))));
    }
    Optional<Orientation> direction = Optional.empty();
    Optional<String> way = space.text("direction");
    if (way.isPresent()) {
      try {
        direction = Optional.of(Orientation.valueOf(way.get().toUpperCase(Locale.ROOT)));
      } catch (IllegalArgumentException unknown) {
        throw space.wrong("direction", "is not landscape, portrait or square");
      }
    }
    int turns = space.has("quarterTurns") ? space.whole("quarterTurns") : 0;
    Optional<String> size = space.text("size");
    try {
      return new SpaceChoice(
          space.photo(),
          crop,
          direction,
          size.map(SizeText::parseSize),
          turns,
          space.others(
              Set.of("space", "file", "sha256", "crop", "direction", "size", "quarterTurns")));
    } catch (IllegalArgumentException outOfRange) {
      throw new UnreadableChoices(
          "choices.json is damaged " + space.where + ": " + outOfRange.getMessage() + REMEDY);
    }
  }

  /** The fields of one JSON object, each read as what it has to be, or complained about. */
  private static final class Fields {
    private final String where;
    private final JsonNode node;

    private Fields(String where, JsonNode node) throws UnreadableChoices {
      this.where = where;
      this.node = node;
      if (!node.isObject()) {
        throw new UnreadableChoices(
            "choices.json is damaged " + where + ": it holds no fields" + REMEDY);
      }
    }

    private UnreadableChoices wrong(String name, String what) {
      JsonNode value = node.get(name);
      String shown = value == null ? "" : " (" + value + ")";
      return new UnreadableChoices(
          "choices.json is damaged " + where + ": " + name + shown + " " + what + REMEDY);
    }

    private boolean has(String name) {
      return node.hasNonNull(name);
    }

    private int whole(String name) throws UnreadableChoices {
      JsonNode value = node.get(name);
      if (value == null || !value.isIntegralNumber() || !value.canConvertToInt()) {
        throw wrong(name, value == null ? "is missing" : "is not a whole number");
      }
      return value.intValue();
    }

    private Optional<String> text(String name) throws UnreadableChoices {
      if (!has(name)) {
        return Optional.empty();
      }
      if (!node.get(name).isTextual()) {
        throw wrong(name, "is not a text");
      }
      return Optional.of(node.get(name).textValue());
    }

    private Optional<Boolean> flag(String name) throws UnreadableChoices {
      if (!has(name)) {
        return Optional.empty();
      }
      if (!node.get(name).isBoolean()) {
        throw wrong(name, "is not true or false");
      }
      return Optional.of(node.get(name).booleanValue());
    }

    private Optional<LocalDate> date(String name) throws UnreadableChoices {
      Optional<String> text = text(name);
      try {
        return text.map(LocalDate::parse);
      } catch (DateTimeParseException notADate) {
        throw wrong(name, "is not a date like 2026-06-03");
      }
    }

    private Optional<PhotoKey> photo() throws UnreadableChoices {
      Optional<String> sum = text("sha256");
      String file = text("file").orElse("");
      try {
        return sum.map(given -> new PhotoKey(given, file));
      } catch (IllegalArgumentException notASum) {
        throw wrong("sha256", "is not a SHA-256 sum");
      }
    }

    private Optional<Fields> object(String name) throws UnreadableChoices {
      return has(name)
          ? Optional.of(new Fields(where + ", in its " + name, node.get(name)))
          : Optional.empty();
    }

    private Iterable<JsonNode> list(String name) throws UnreadableChoices {
      if (has(name) && !node.get(name).isArray()) {
        throw wrong(name, "is not a list");
      }
      return has(name) ? node.get(name) : JSON.createArrayNode();
    }

    private UnknownFields others(Set<String> known) {
      Map<String, String> others = new HashMap<>();
      for (Iterator<Map.Entry<String, JsonNode>> each = node.properties().iterator();
          each.hasNext(); ) {
        Map.Entry<String, JsonNode> field = each.next();
        if (!known.contains(field.getKey())) {
          others.put(field.getKey(), field.getValue().toString());
        }
      }
      return others.isEmpty() ? UnknownFields.NONE : new UnknownFields(others);
    }
  }
}
