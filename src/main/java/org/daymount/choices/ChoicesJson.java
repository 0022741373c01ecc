package org.daymount.choices;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.daymount.album.PageSpec;

/**
 * choices.json as it is written, field by field in this order. A record is checked when it is made,
 * so that what is wrong is found where it stands in the file. What is null is not in the file.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ChoicesJson(
    Integer schema,
    List<Day> days,
    List<Photo> photos,
    @JsonAnyGetter @JsonAnySetter Map<String, JsonNode> other) {
  static final int SCHEMA = 1;

  ChoicesJson {
    need("schema", schema);
    if (schema != SCHEMA) {
      throw new IllegalArgumentException("schema " + schema + " is not a version");
    }
    days = days == null ? List.of() : List.copyOf(days);
    photos = photos == null ? List.of() : List.copyOf(photos);
    other = kept(other);
    choices(days, photos, other);
  }

  static ChoicesJson of(Choices choices) {
    return new ChoicesJson(
        SCHEMA,
        choices.days().entrySet().stream().map(e -> Day.of(e.getKey(), e.getValue())).toList(),
        choices.photos().values().stream()
            .sorted((one, two) -> one.photo().compareTo(two.photo()))
            .map(Photo::of)
            .toList(),
        choices.other().fields());
  }

  Choices choices() {
    return choices(days, photos, other);
  }

  private static Choices choices(List<Day> days, List<Photo> photos, Map<String, JsonNode> other) {
    return new Choices(
        byKey(days, Day::day, Day::choice),
        byKey(photos, Photo::sha256, Photo::choice),
        new UnknownFields(other));
  }

  private static <T, K, V> Map<K, V> byKey(List<T> list, Function<T, K> key, Function<T, V> value) {
    Map<K, V> map = new LinkedHashMap<>();
    for (T each : list) {
      if (map.put(key.apply(each), value.apply(each)) != null) {
        throw new IllegalArgumentException(key.apply(each) + " is there twice");
      }
    }
    return map;
  }

  static void need(String name, Object value) {
    if (value == null) {
      throw new IllegalArgumentException(name + " is missing");
    }
  }

  static Map<String, JsonNode> kept(Map<String, JsonNode> other) {
    return other == null ? Map.of() : new TreeMap<>(other);
  }

  static <T> T orNull(Optional<T> value) {
    return value.orElse(null);
  }

  static Optional<PhotoKey> key(String file, String sha256) {
    return Optional.ofNullable(sha256).map(sum -> new PhotoKey(sum, file == null ? "" : file));
  }

  /** A day, and what was changed on it. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Day(
      LocalDate day,
      LocalDate pageOf,
      PageSpec page,
      String pageReplaced,
      Story story,
      List<ChoicesJsonSpace> spaces,
      @JsonAnyGetter @JsonAnySetter Map<String, JsonNode> other) {
    Day {
      need("day", day);
      other = kept(other);
      choice(pageOf, page, pageReplaced, story, spaces, other);
    }

    static Day of(LocalDate date, DayChoice day) {
      return new Day(
          date,
          orNull(day.pageOf()),
          orNull(day.page()),
          orNull(day.pageReplaced()),
          orNull(day.story().map(Story::of)),
          day.spaces().isEmpty()
              ? null
              : day.spaces().entrySet().stream()
                  .map(e -> ChoicesJsonSpace.of(e.getKey(), e.getValue()))
                  .toList(),
          day.other().fields());
    }

    DayChoice choice() {
      return choice(pageOf, page, pageReplaced, story, spaces, other);
    }

    private static DayChoice choice(
        LocalDate pageOf,
        PageSpec page,
        String pageReplaced,
        Story story,
        List<ChoicesJsonSpace> spaces,
        Map<String, JsonNode> other) {
      return new DayChoice(
          byKey(
              spaces == null ? List.of() : spaces,
              ChoicesJsonSpace::space,
              ChoicesJsonSpace::choice),
          Optional.ofNullable(story).map(Story::choice),
          Optional.ofNullable(pageOf),
          Optional.ofNullable(page),
          Optional.ofNullable(pageReplaced),
          new UnknownFields(other));
    }
  }

  /** A story, and the note's at that time. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Story(
      String text, String replaced, @JsonAnyGetter @JsonAnySetter Map<String, JsonNode> other) {
    Story {
      need("text", text);
      other = kept(other);
    }

    static Story of(StoryChoice story) {
      return new Story(story.text(), orNull(story.replaced()), story.other().fields());
    }

    StoryChoice choice() {
      return new StoryChoice(text, Optional.ofNullable(replaced), new UnknownFields(other));
    }
  }

  /** What was said of a photo, wherever it ends up. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Photo(
      String file,
      String sha256,
      Boolean used,
      LocalDate day,
      LocalTime time,
      @JsonAnyGetter @JsonAnySetter Map<String, JsonNode> other) {
    Photo {
      need("sha256", sha256);
      other = kept(other);
      choice(file, sha256, used, day, time, other);
    }

    static Photo of(PhotoChoice photo) {
      return new Photo(
          photo.photo().file(),
          photo.photo().sha256(),
          orNull(photo.used()),
          orNull(photo.day()),
          orNull(photo.time()),
          photo.other().fields());
    }

    PhotoChoice choice() {
      return choice(file, sha256, used, day, time, other);
    }

    private static PhotoChoice choice(
        String file,
        String sha256,
        Boolean used,
        LocalDate day,
        LocalTime time,
        Map<String, JsonNode> other) {
      return new PhotoChoice(
          key(file, sha256).orElseThrow(),
          Optional.ofNullable(used),
          Optional.ofNullable(day),
          Optional.ofNullable(time),
          new UnknownFields(other));
    }
  }
}
