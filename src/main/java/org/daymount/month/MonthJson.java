package org.daymount.month;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.page.AlbumPage;
import org.daymount.page.Leaf;
import org.daymount.page.PageSettings;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Warning;
import org.daymount.sheet.Cut;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * month.json: the whole decision as data. UTF-8, two-space indent, fields always in the same order,
 * '\n' line ends, so that the same month gives the same bytes. Fields are added, never renamed.
 */
public final class MonthJson {
  private static final int SCHEMA = 1;

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

  /** The whole file; what is null is not in it. Lengths on pages are inches from the top left. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  private record Document(
      int schema,
      String tool,
      Optional<String> month,
      SettingsJson settings,
      List<PhotoJson> photos,
      List<DayJson> days,
      List<SheetJson> sheets,
      List<AlbumPage> pages,
      List<Leaf> leaves,
      List<Warning> warnings) {}

  private record SettingsJson(
      @JsonUnwrapped Settings settings, PaperSize page, String units, PageSettings.Start start) {}

  /** A day; without its spaces where none were filled yet. */
  private record DayJson(
      LocalDate day,
      MonthDay.State state,
      Optional<String> story,
      @JsonInclude(JsonInclude.Include.NON_NULL) List<SpaceJson> spaces) {}

  private record SheetJson(
      String file, Length width, Length height, List<PieceJson> pieces, List<Cut> cuts) {
    static SheetJson of(MonthSheet sheet) {
      return new SheetJson(
          sheet.file(),
          sheet.sheet().size().width(),
          sheet.sheet().size().height(),
          sheet.sheet().pieces().stream().map(placed -> PieceJson.of(placed, sheet)).toList(),
          sheet.sheet().cuts());
    }
  }

  private record PieceJson(
      String piece,
      Optional<LocalDate> day,
      String shows,
      @JsonUnwrapped PaperBox box,
      boolean turned) {
    static PieceJson of(PlacedPiece placed, MonthSheet sheet) {
      String label = placed.piece().label();
      Optional<PieceContent> content = Optional.ofNullable(sheet.content().get(label));
      return new PieceJson(
          label,
          content.map(PieceContent::day),
          content.flatMap(PieceContent::card).isPresent() ? "card" : "picture",
          placed.box(),
          placed.turned());
    }
  }

  public byte[] write(Month month) {
    PageSettings album = month.album().settings();
    FolderNames folders = folders(month.photos());
    Map<PhotoFile, ExifOrientation> asTagged = orientations(month.photos());
    return bytes(
        new Document(
            SCHEMA,
            tool,
            Optional.of(month.month().toString()),
            new SettingsJson(month.settings(), album.page(), month.units().word(), album.start()),
            photos(month.photos()),
            month.days().stream()
                .map(
                    day ->
                        new DayJson(
                            day.day(),
                            day.state(),
                            day.story(),
                            day.spaces().stream()
                                .map(space -> SpaceJson.of(space, asTagged, folders))
                                .toList()))
                .toList(),
            month.sheets().stream().map(SheetJson::of).toList(),
            month.album().pages(),
            month.album().leaves(),
            month.warnings()));
  }

  /** For {@code look --json}: the photos alone, with everything measured. */
  public byte[] writePhotos(List<MonthPhoto> photos) {
    return bytes(
        new Document(SCHEMA, tool, null, null, photos(photos), null, null, null, null, null));
  }

  /** For {@code days --json}: photos and days, without spaces. */
  public byte[] writeDays(
      String month, List<MonthPhoto> photos, List<MonthDay> days, List<Warning> warnings) {
    List<DayJson> told =
        days.stream().map(day -> new DayJson(day.day(), day.state(), day.story(), null)).toList();
    return bytes(
        new Document(
            SCHEMA,
            tool,
            Optional.ofNullable(month),
            null,
            photos(photos),
            told,
            null,
            null,
            null,
            warnings));
  }

  private static byte[] bytes(Document document) {
    String text = RecordJson.text(MonthMapper.WRITER, document);
    return (text.replace("\r\n", "\n") + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private FolderNames folders(List<MonthPhoto> photos) {
    return new FolderNames(photos.stream().map(MonthPhoto::file).toList(), cameras);
  }

  private List<PhotoJson> photos(List<MonthPhoto> photos) {
    FolderNames folders = folders(photos);
    return photos.stream().map(photo -> PhotoJson.of(photo, folders, cameras)).toList();
  }

  /** How each photo lies by its own tag: a hero that lies otherwise was turned by the person. */
  private static Map<PhotoFile, ExifOrientation> orientations(List<MonthPhoto> photos) {
    Map<PhotoFile, ExifOrientation> asTagged = new HashMap<>();
    for (MonthPhoto photo : photos) {
      photo.photo().ifPresent(known -> asTagged.put(photo.file(), known.orientation()));
    }
    return asTagged;
  }
}
