package org.daymount.choices;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Optional;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;

/** A space by its place on the page, and what was changed in it. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ChoicesJsonSpace(
    Integer space,
    String file,
    String sha256,
    Crop crop,
    Orientation direction,
    PaperSize size,
    Integer quarterTurns,
    @JsonAnyGetter @JsonAnySetter Map<String, JsonNode> other) {
  ChoicesJsonSpace {
    ChoicesJson.need("space", space);
    if (space < 0) {
      throw new IllegalArgumentException("spaces are counted from 0, was " + space);
    }
    other = ChoicesJson.kept(other);
    choice(file, sha256, crop, direction, size, quarterTurns, other);
  }

  static ChoicesJsonSpace of(int place, SpaceChoice space) {
    return new ChoicesJsonSpace(
        place,
        ChoicesJson.orNull(space.photo().map(PhotoKey::file)),
        ChoicesJson.orNull(space.photo().map(PhotoKey::sha256)),
        ChoicesJson.orNull(space.crop().map(Crop::of)),
        ChoicesJson.orNull(space.direction()),
        ChoicesJson.orNull(space.size()),
        space.quarterTurns() == 0 ? null : space.quarterTurns(),
        space.other().fields());
  }

  SpaceChoice choice() {
    return choice(file, sha256, crop, direction, size, quarterTurns, other);
  }

  private static SpaceChoice choice(
      String file,
      String sha256,
      Crop crop,
      Orientation direction,
      PaperSize size,
      Integer quarterTurns,
      Map<String, JsonNode> other) {
    return new SpaceChoice(
        ChoicesJson.key(file, sha256),
        Optional.ofNullable(crop).map(Crop::choice),
        Optional.ofNullable(direction),
        Optional.ofNullable(size),
        quarterTurns == null ? 0 : quarterTurns,
        new UnknownFields(other));
  }

  /** A crop, in upright pixels of the whole picture that has this content. */
  record Crop(
      Integer x,
      Integer y,
      Integer width,
      Integer height,
      String sha256,
      @JsonAnyGetter @JsonAnySetter Map<String, JsonNode> other) {
    Crop {
      ChoicesJson.need("x", x);
      ChoicesJson.need("y", y);
      ChoicesJson.need("width", width);
      ChoicesJson.need("height", height);
      ChoicesJson.need("sha256", sha256);
      other = ChoicesJson.kept(other);
      if (x < 0 || y < 0) {
        throw new IllegalArgumentException("the crop begins outside of its picture");
      }
      choice(x, y, width, height, sha256, other);
    }

    static Crop of(CropChoice crop) {
      PixelBox box = crop.window();
      return new Crop(
          box.x(), box.y(), box.width(), box.height(), crop.sha256(), crop.other().fields());
    }

    CropChoice choice() {
      return choice(x, y, width, height, sha256, other);
    }

    private static CropChoice choice(
        int x, int y, int width, int height, String sha256, Map<String, JsonNode> other) {
      return new CropChoice(new PixelBox(x, y, width, height), sha256, new UnknownFields(other));
    }
  }
}
