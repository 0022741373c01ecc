package org.daymount.output;

import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryTypesetter;
import org.daymount.crop.Crop;
import org.daymount.image.Lightening;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Fingerprint;
import org.daymount.look.Measures;
import org.daymount.look.SaliencyMap;
import org.daymount.month.Month;
import org.daymount.month.MonthDay;
import org.daymount.month.MonthSheet;
import org.daymount.month.MonthSpace;
import org.daymount.month.Settings;
import org.daymount.page.AlbumLayout;
import org.daymount.page.DayContents;
import org.daymount.page.PagePlanner;
import org.daymount.page.PageSettings;
import org.daymount.photo.Photo;
import org.daymount.pick.Score;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.sheet.Cut;
import org.daymount.sheet.Piece;
import org.daymount.sheet.PieceContent;
import org.daymount.sheet.PlacedPiece;
import org.daymount.sheet.Sheet;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/** A month made up for the tests of the outputs: one of everything a sheet can hold. */
final class TestMonths {
  static final Ppi PRINT = Ppi.ppi(300);
  static final PaperSize SIX_BY_FOUR = PaperSize.inches(6, 4);
  static final PaperSize FOUR_BY_SIX = PaperSize.inches(4, 6);
  private static final PixelSize PHOTO = new PixelSize(4032, 3024);

  private TestMonths() {}

  /** Pictures without files: the colour of a pixel follows from where it lies in the photo. */
  static BufferedImage scene(Photo photo, PixelBox window, PixelSize target) {
    BufferedImage image =
        new BufferedImage(target.width(), target.height(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < target.height(); y++) {
      for (int x = 0; x < target.width(); x++) {
        double px = window.x() + (x + 0.5) * window.width() / target.width();
        double py = window.y() + (y + 0.5) * window.height() / target.height();
        image.setRGB(x, y, colour(px / photo.size().width(), py / photo.size().height()));
      }
    }
    return image;
  }

  /** Reddish to the right, greenish to the bottom, with dark rings; never white. */
  private static int colour(double across, double down) {
    double ring = Math.sin(40 * Math.hypot(across - 0.4, down - 0.5));
    int blue = (int) (110 + 60 * ring);
    return ((int) (40 + 180 * across) << 16) | ((int) (40 + 180 * down) << 8) | blue;
  }

  static Photo photo(String name) {
    return PhotoBuilder.named(name).bytes(3_000_000).size(PHOTO).photo();
  }

  /** The largest centred window of the piece's shape. */
  static Crop fill(PaperSize piece) {
    double scale =
        Math.min(
            PHOTO.width() / piece.width().inInches(), PHOTO.height() / piece.height().inInches());
    int width = (int) (piece.width().inInches() * scale);
    int height = (int) (piece.height().inInches() * scale);
    PixelBox window =
        new PixelBox((PHOTO.width() - width) / 2, (PHOTO.height() - height) / 2, width, height);
    return new Crop(
        window, piece, piece, Crop.Fit.FILL, Ppi.of(width, piece.width()), 1, List.of());
  }

  static Crop border(PaperSize piece, PaperSize picture) {
    return new Crop(
        PHOTO.whole(),
        piece,
        picture,
        Crop.Fit.BORDER,
        Ppi.of(PHOTO.width(), picture.width()),
        1,
        List.of());
  }

  static PieceContent picture(LocalDate day, int space, String file, Crop crop, PaperBox part) {
    return new PieceContent(
        day,
        space,
        Optional.of(new PieceContent.Picture(photo(file), crop, part)),
        Optional.empty());
  }

  static PieceContent picture(LocalDate day, int space, String file, Crop crop) {
    return picture(day, space, file, crop, PaperBox.at(Length.ZERO, Length.ZERO, crop.piece()));
  }

  static PieceContent card(int space, StoryCard card) {
    return new PieceContent(card.day(), space, Optional.empty(), Optional.of(card));
  }

  static LocalDate june(int day) {
    return LocalDate.of(2026, 6, day);
  }

  static PlacedPiece placed(String label, PaperSize size, double x, double y, boolean turned) {
    PaperSize lying = turned ? size.turned() : size;
    return new PlacedPiece(
        new Piece(label, size, 0), PaperBox.at(Length.inches(x), Length.inches(y), lying), turned);
  }

  static Cut upDown(double at, double from, double to) {
    return new Cut(Cut.Axis.X, Length.inches(at), Length.inches(from), Length.inches(to));
  }

  static Cut across(double at, double from, double to) {
    return new Cut(Cut.Axis.Y, Length.inches(at), Length.inches(from), Length.inches(to));
  }

  static MonthSheet sheet(
      int number,
      PaperSize size,
      List<PlacedPiece> pieces,
      List<Cut> cuts,
      Map<String, PieceContent> content) {
    return new MonthSheet(
        String.format("sheets/sheet-%02d.jpg", number), new Sheet(size, pieces, cuts), content);
  }

  /** Two small portrait pictures side by side. */
  static MonthSheet twoSmall() {
    PaperSize size = PaperSize.inches(3, 4);
    return sheet(
        1,
        SIX_BY_FOUR,
        List.of(placed("02a", size, 0, 0, false), placed("02b", size, 3, 0, false)),
        List.of(upDown(3, 0, 4)),
        Map.of(
            "02a", picture(june(2), 0, "IMG_0201.jpg", fill(size)),
            "02b", picture(june(2), 1, "IMG_0202.jpg", fill(size))));
  }

  /** A picture for a mat with a reveal of 1/8 in: waste on two sides. */
  static MonthSheet onMat() {
    PaperSize size = PaperSize.inches(3.75, 5.75);
    return sheet(
        2,
        FOUR_BY_SIX,
        List.of(placed("03a", size, 0, 0, false)),
        List.of(upDown(3.75, 0, 6), across(5.75, 0, 3.75)),
        Map.of("03a", picture(june(3), 0, "IMG_0301.jpg", fill(size))));
  }

  /** The upper half of a 6 x 8, then the lower half. */
  static MonthSheet half(int number, String label, int half) {
    PaperBox part = PaperBox.at(Length.ZERO, Length.inches(4).times(half), SIX_BY_FOUR);
    return sheet(
        number,
        SIX_BY_FOUR,
        List.of(placed(label, SIX_BY_FOUR, 0, 0, false)),
        List.of(),
        Map.of(label, picture(june(4), 0, "IMG_0401.jpg", fill(PaperSize.inches(6, 8)), part)));
  }

  static MonthSheet bordered() {
    return sheet(
        5,
        SIX_BY_FOUR,
        List.of(placed("05a", SIX_BY_FOUR, 0, 0, false)),
        List.of(),
        Map.of(
            "05a",
            picture(june(5), 0, "IMG_0501.jpg", border(SIX_BY_FOUR, PaperSize.inches(4, 3)))));
  }

  /** A story card and a picture, both turned, on an upright sheet. */
  static MonthSheet turned() {
    PaperSize size = PaperSize.inches(3, 4);
    StoryCard card = new StoryTypesetter().set(june(2), Optional.of(STORY), size).cards().get(0);
    return sheet(
        6,
        FOUR_BY_SIX,
        List.of(placed("06a", size, 0, 0, true), placed("02c", size, 0, 3, true)),
        List.of(across(3, 0, 4)),
        Map.of("06a", picture(june(6), 0, "IMG_0601.jpg", fill(size)), "02c", card(2, card)));
  }

  static final String STORY =
      "Biscuit found the rope before we found the boat. The tide was out, so we walked the whole"
          + " way round the point and came home with wet shoes and two mussels each.\n\n"
          + "Mira says it was the best day so far \uD83D\uDE00\uD83E\uDD9E.";

  static SpacePick pick(Space space, Orientation way, Optional<Crop> crop, String file) {
    return new SpacePick(
        space,
        way,
        crop.map(
            c ->
                new ScoredCandidate(
                    looked(file), c, new Score(List.of()), List.of("sharpest of 3"))),
        SpacePick.ChosenBy.TOOL,
        List.of(),
        crop.isPresent() ? List.of() : List.of("no landscape picture was taken that day"));
  }

  private static AnalysedPhoto looked(String file) {
    return new AnalysedPhoto(
        photo(file),
        new Measures(
            1,
            1,
            1,
            new Fingerprint(0, 0, Collections.nCopies(81, 0f)),
            SaliencyMap.even(2, 2),
            Optional.empty()));
  }

  static MonthDay day(int day, MonthDay.State state, String story, MonthSpace... spaces) {
    return new MonthDay(june(day), state, Optional.ofNullable(story), List.of(spaces));
  }

  static Month month(Settings.Paper paper) {
    Space small = Space.free(PaperSize.inches(3, 4));
    Space pocket = Space.free(FOUR_BY_SIX);
    Space mat = new Space(FOUR_BY_SIX, Optional.empty(), Optional.of(Length.inchFraction(1, 8)));
    Space page = Space.free(PaperSize.inches(6, 8));
    Crop smallCrop = fill(PaperSize.inches(3, 4));
    MonthDay second =
        day(
            2,
            MonthDay.State.FILLED,
            STORY,
            space(small, Orientation.PORTRAIT, smallCrop, "IMG_0201.jpg", "02a"),
            space(small, Orientation.PORTRAIT, smallCrop, "IMG_0202.jpg", "02b"));
    MonthDay third =
        day(
            3,
            MonthDay.State.FILLED,
            null,
            space(
                mat,
                Orientation.PORTRAIT,
                fill(PaperSize.inches(3.75, 5.75)),
                "IMG_0301.jpg",
                "03a"));
    MonthDay fourth =
        day(
            4,
            MonthDay.State.FILLED,
            null,
            space(
                page,
                Orientation.PORTRAIT,
                fill(PaperSize.inches(6, 8)),
                "IMG_0401.jpg",
                "04a",
                "04b"));
    MonthDay fifth =
        day(
            5,
            MonthDay.State.PARTLY,
            null,
            space(
                pocket,
                Orientation.LANDSCAPE,
                border(SIX_BY_FOUR, PaperSize.inches(4, 3)),
                "IMG_0501.jpg",
                "05a"),
            new MonthSpace(
                pick(
                    new Space(SIX_BY_FOUR, Optional.of(Orientation.LANDSCAPE), Optional.empty()),
                    Orientation.LANDSCAPE,
                    Optional.empty(),
                    ""),
                List.of()));
    MonthDay sixth =
        day(
            6,
            MonthDay.State.FILLED,
            null,
            space(small, Orientation.PORTRAIT, smallCrop, "IMG_0601.jpg", "06a"));
    List<MonthDay> days = List.of(second, third, fourth, fifth, sixth);
    return new Month(
        YearMonth.of(2026, 6),
        new Settings(
            LocalTime.of(4, 0),
            "4x6",
            Length.inchFraction(1, 8),
            PRINT,
            Ppi.ppi(200),
            FOUR_BY_SIX,
            Length.ZERO,
            paper,
            Length.ZERO,
            Lightening.NONE),
        List.of(),
        days,
        List.of(twoSmall(), onMat(), half(3, "04a", 0), half(4, "04b", 1), bordered(), turned()),
        album(days),
        List.of());
  }

  /** A story card of 3 x 4 on the 2nd. */
  private static AlbumLayout album(List<MonthDay> days) {
    return new PagePlanner(PageSettings.STANDARD)
        .plan(
            days.stream()
                .map(
                    day ->
                        new DayContents(
                            day.day(),
                            day.spaces().stream().map(space -> space.pick().space()).toList(),
                            day.spaces().stream().map(space -> space.pick().direction()).toList(),
                            day.story().stream().map(story -> PaperSize.inches(3, 4)).toList()))
                .toList())
        .layout();
  }

  private static MonthSpace space(
      Space space, Orientation way, Crop crop, String file, String... labels) {
    return new MonthSpace(pick(space, way, Optional.of(crop), file), List.of(labels));
  }

  /** All sheets painted and encoded as a run would. */
  static Map<String, byte[]> jpegs(Month month, Ppi ppi) throws java.io.IOException {
    SheetPainter painter = new SheetPainter(TestMonths::scene);
    Map<String, byte[]> jpegs = new LinkedHashMap<>();
    for (MonthSheet sheet : month.sheets()) {
      jpegs.put(
          sheet.file(),
          org.daymount.image.PrintJpegEncoder.encode(painter.paint(sheet, Length.ZERO, ppi), ppi));
    }
    return jpegs;
  }
}
