package org.daymount.month;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.daymount.image.Lightening;
import org.daymount.look.Face;
import org.daymount.look.Subject;
import org.daymount.page.AlbumPage;
import org.daymount.page.Place;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Warning;
import org.daymount.problem.WarningKind;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Ppi;

/** How records stand in month.json. Other packages' records know nothing of it. */
final class MonthMapper {
  private static final StdSerializer<Double> ROUNDED =
      RecordJson.written((value, to) -> to.writeNumber(rounded(value)));

  /** With two blanks of indent. */
  static final ObjectWriter WRITER =
      RecordJson.mapper(
              new SimpleModule("month")
                  .addSerializer(LocalTime.class, ToStringSerializer.instance)
                  .addSerializer(PaperSize.class, ToStringSerializer.instance)
                  .addSerializer(Double.class, ROUNDED)
                  .addSerializer(double.class, ROUNDED)
                  .addSerializer(
                      Length.class,
                      RecordJson.written((length, to) -> to.writeNumber(inches(length))))
                  .addSerializer(
                      Ppi.class, RecordJson.written((ppi, to) -> to.writeNumber(ppi.value())))
                  .addSerializer(
                      Lightening.class,
                      RecordJson.written((lighter, to) -> to.writeNumber(rounded(lighter.stops()))))
                  .addSerializer(
                      Place.class,
                      RecordJson.written((place, to) -> to.writePOJO(PlaceJson.of(place)))))
          .addMixIn(Warning.class, WarningJson.class)
          .addMixIn(AlbumPage.class, PageJson.class)
          .addMixIn(Face.class, FaceJson.class)
          .addMixIn(Subject.class, SubjectJson.class)
          .addMixIn(Settings.class, SettingsJson.class)
          .build()
          .writerWithDefaultPrettyPrinter();

  private MonthMapper() {}

  /** To a ten-thousandth: enough to compare, short enough to read. */
  private static double rounded(double value) {
    return Math.round(value * 10_000) / 10_000.0;
  }

  private static double inches(Length length) {
    return Math.round(length.inInches() * 1_000_000) / 1_000_000.0;
  }

  /** A place says which of the day's cards or spaces lies there, if one does. */
  private record PlaceJson(
      Place.What what,
      @JsonUnwrapped PaperBox box,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Integer> card,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Integer> space,
      boolean turned) {
    static PlaceJson of(Place place) {
      boolean story = place.what() == Place.What.STORY;
      return new PlaceJson(
          place.what(),
          place.box(),
          place.index().filter(index -> story),
          place.index().filter(index -> !story),
          place.turned());
    }
  }

  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  private abstract static class WarningJson {
    @JsonProperty("code")
    WarningKind kind;

    Optional<PhotoFile> file;
    Optional<LocalDate> day;
  }

  private abstract static class PageJson {
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    Optional<String> base;
  }

  private abstract static class FaceJson {
    @JsonUnwrapped PixelBox box;
    @JsonIgnore double facing;
  }

  @JsonPropertyOrder({"box", "confidence", "what"})
  private abstract static class SubjectJson {
    @JsonUnwrapped PixelBox box;
  }

  @JsonPropertyOrder({
    "dayStarts",
    "space",
    "reveal",
    "ppi",
    "minPpi",
    "sheet",
    "labTrim",
    "margin",
    "lighter"
  })
  private abstract static class SettingsJson {}
}
