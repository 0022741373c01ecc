package org.daymount.choices;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.daymount.album.PageSpecParser;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.problem.Warning;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChoicesFileTest {
  private static final LocalDate THIRD = LocalDate.of(2026, 6, 3);
  private static final String FERRY = "a".repeat(64);
  private static final String DOG = "b".repeat(64);
  private static final String OTHER = "c".repeat(64);

  private static Choices choices() {
    SpaceChoice space =
        new SpaceChoice(
            Optional.of(new PhotoKey(FERRY, "quay/ferry.jpg")),
            Optional.of(new CropChoice(new PixelBox(10, 20, 1800, 1200), FERRY)),
            Optional.of(Orientation.LANDSCAPE),
            Optional.of(PaperSize.millimetres(100, 150)),
            3,
            UnknownFields.NONE);
    DayChoice day =
        DayChoice.NONE
            .withSpace(1, space)
            .withStory(Optional.of(new StoryChoice("Übers \"Watt\"\n🙂", Optional.of("before"))))
            .withPage(Optional.of(PageSpecParser.parse("two 3x4 portrait on mat 1/4in")))
            .withPageReplaced(Optional.of("4x6"));
    return Choices.NONE
        .withDay(THIRD, day)
        .withPhoto(
            new PhotoChoice(
                new PhotoKey(DOG, "dog.jpg"),
                Optional.of(false),
                Optional.of(THIRD),
                Optional.of(LocalTime.of(14, 25)),
                UnknownFields.NONE))
        .withPagesSwapped(THIRD.plusDays(1), THIRD.plusDays(2));
  }

  private static String text(Choices choices) {
    return new String(ChoicesFile.write(choices), StandardCharsets.UTF_8);
  }

  private static Choices read(String json) throws UnreadableChoices {
    return ChoicesFile.read(json.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void choicesAreReadBackAsTheyWere() throws UnreadableChoices {
    assertEquals(choices(), ChoicesFile.read(ChoicesFile.write(choices())));
    assertEquals(Choices.NONE, ChoicesFile.read(ChoicesFile.write(Choices.NONE)));
  }

  @Test
  void theFileIsPlainAndItsOrderStable() {
    String json = text(choices());
    assertTrue(json.startsWith("{\n  \"schema\" : 1,\n  \"days\" : ["), json);
    assertTrue(json.endsWith("}\n"), json);
    assertTrue(json.indexOf("2026-06-03") < json.indexOf("2026-06-04"), json);
    assertArrayEquals(ChoicesFile.write(choices()), ChoicesFile.write(choices()));
  }

  @Property(tries = 200)
  void anyStoryComesBackUnchanged(@ForAll String story, @ForAll String before)
      throws UnreadableChoices {
    // An unpaired surrogate is no text and has no UTF-8 form.
    String told = new String(story.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    String noted = new String(before.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    Choices choices =
        Choices.NONE.withDay(
            THIRD,
            DayChoice.NONE.withStory(Optional.of(new StoryChoice(told, Optional.of(noted)))));
    assertEquals(choices, ChoicesFile.read(ChoicesFile.write(choices)));
  }

  @Test
  void fieldsOfALaterVersionAreKeptOnEveryLevel() throws UnreadableChoices {
    String json =
        """
        {"schema":1,"later":{"deep":[1,2.50]},"days":[{"day":"2026-06-03","mood":"windy",
         "story":{"text":"x","ink":"blue"},
         "spaces":[{"space":0,"glue":true,"crop":{"x":0,"y":0,"width":1,"height":1,
           "sha256":"%s","tilt":0.10}}]}],
         "photos":[{"file":"a.jpg","sha256":"%s","stars":null}]}
        """
            .formatted(FERRY, DOG);
    String again = text(read(json));
    for (String kept :
        List.of(
            "\"deep\" : [",
            "2.50",
            "windy",
            "blue",
            "\"glue\" : true",
            "0.10",
            "\"stars\" : null")) {
      assertTrue(again.contains(kept), kept + " in " + again);
    }
    assertEquals(again, text(read(again)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "``|is empty or holds something else",
        "[]|is empty or holds something else",
        "{\"schema\":1,\"days\":[{|is damaged at line 1",
        "{}|schema is missing",
        "{\"schema\":2}|written by a newer Daymount",
        "{\"schema\":0}|is not a version",
        "{\"schema\":1}{}|is damaged",
        "{\"schema\":1,\"schema\":1}|is damaged",
        "{\"schema\":1,\"days\":{}}|line 1, column 20: days: it is not a list",
        "{\"schema\":1,\"days\":[3]}|days[0]: it holds no fields",
        "{\"schema\":1,\"days\":[{\"day\":\"June\"}]}|days[0].day: 'June' is not a date like 2026-06-03",
        "{\"schema\":1,\"days\":[{}]}|day is missing",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"story\":{}}]}|text is missing",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"direction\":\"up\"}]}]}|days[0].spaces[0].direction: 'up' is not landscape, portrait or square",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"size\":\"big\"}]}]}|'big' is not a size",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"quarterTurns\":7}]}]}|quarter turns are 0 to 3",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0},{\"space\":0}]}]}|is there twice",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"pageOf\":\"2026-06-04\"}]}|swapped pages do not match",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"page\":\"4x6 on a zebra\"}]}|is not understood",
        "{\"schema\":1,\"photos\":[{\"file\":\"a\",\"sha256\":\"zz\"}]}|is not a SHA-256 sum",
        "{\"schema\":1,\"photos\":[{\"file\":\"a\",\"used\":3}]}|photos[0].used: it is not true or false",
        "{\"schema\":1,\"photos\":[{\"sha256\":\"SUM\",\"day\":\"2026-06-03\",\"time\":\"late\"}]}|photos[0].time: 'late' is not a time like 14:25",
        "{\"schema\":1,\"photos\":[{\"sha256\":\"SUM\",\"time\":\"14:25\"}]}|a time needs its day",
        "{\"schema\":1,\"photos\":[{\"file\":7}]}|photos[0].file: it is not a text",
        "{\"schema\":1,\"days\":null}|days: it is null",
        "{\"schema\":1,\"days\":[null]}|days[0]: it is null",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"story\":null}]}|days[0].story: it is null",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":1.0}]}]}|days[0].spaces[0].space: it is not a whole number",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":\"1\"}]}]}|days[0].spaces[0].space: it is not a whole number",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"size\":\".0001x.0001\"}]}]}|smaller than",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"size\":\"60x60\"}]}]}|larger than",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"crop\":{\"x\":-1,\"y\":0,\"width\":9,\"height\":9,\"sha256\":\"a\"}}]}]}|days[0].spaces[0].crop: the crop begins outside",
        "{\"schema\":1,\"days\":[{\"day\":\"2026-06-03\",\"spaces\":[{\"space\":0,\"crop\":{\"x\":2147483647,\"y\":0,\"width\":9,\"height\":9,\"sha256\":\"a\"}}]}]}|no picture is so large",
      })
  void aDamagedFileIsExplainedInWords(String json, String words) {
    String message =
        assertThrows(UnreadableChoices.class, () -> read(json.replace("SUM", DOG))).getMessage();
    assertTrue(message.startsWith("choices.json"), message);
    assertTrue(message.contains(words), message);
    assertTrue(message.contains("; "), message);
  }

  @Test
  void aFileCutOffAnywhereIsExplainedOrWhole() {
    byte[] whole = ChoicesFile.write(choices());
    for (int length = 0; length < whole.length - 2; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertThrows(UnreadableChoices.class, () -> ChoicesFile.read(cut));
    }
  }

  private static Photo photo(String name, String sha256) {
    return PhotoBuilder.named(name).sha256(sha256).photo();
  }

  private static ChoicesMerge merged(List<Photo> photos) {
    return ChoicesMerge.of(choices(), photos, day -> day.getYear() >= 1990);
  }

  private static List<String> codes(ChoicesMerge merge) {
    return merge.remarks().stream().map(remark -> remark.kind().code()).toList();
  }

  @Test
  void aRenamedPhotoIsFoundByItsContent() {
    ChoicesMerge merge = merged(List.of(photo("moved.jpg", FERRY), photo("dog.jpg", DOG)));
    SpaceChoice space = merge.choices().space(THIRD, 1);
    assertEquals("moved.jpg", space.photo().orElseThrow().file());
    assertTrue(space.crop().isPresent());
    assertEquals(List.of("photo-renamed"), codes(merge));
    assertEquals(Set.of(), merge.missing());
  }

  @Test
  void aPhotoEditedInPlaceIsKeptWithoutItsCrop() {
    ChoicesMerge merge = merged(List.of(photo("quay/ferry.jpg", OTHER), photo("dog.jpg", DOG)));
    SpaceChoice space = merge.choices().space(THIRD, 1);
    assertEquals(OTHER, space.photo().orElseThrow().sha256());
    assertEquals(Optional.empty(), space.crop());
    assertEquals(List.of("photo-changed"), codes(merge));
  }

  @Test
  void aPhotoThatIsGoneIsReportedAndRemembered() {
    ChoicesMerge merge = merged(List.of());
    assertEquals(Set.of(FERRY), merge.missing());
    assertEquals(choices(), merge.choices());
    assertEquals(List.of("photo-missing", "photo-missing"), codes(merge), "the ferry and the dog");
  }

  @Test
  void whatWasSaidOfAPhotoFollowsItsContent() {
    Choices merged =
        merged(List.of(photo("x/biscuit.jpg", DOG), photo("dog.jpg", OTHER))).choices();
    assertEquals(Optional.of(false), merged.used(DOG));
    assertEquals(
        Optional.of(THIRD.atTime(14, 25)), merged.takenOf(DOG).orElseThrow().local(), "said of it");
    assertEquals(Optional.empty(), merged.used(OTHER));
    assertEquals(Map.of(), Choices.NONE.photos());
  }

  @Test
  void aDayThatCannotBeIsNotFollowedAndNamed() {
    Choices said =
        Choices.NONE.withPhoto(
            new PhotoChoice(
                new PhotoKey(DOG, "dog.jpg"),
                Optional.of(true),
                Optional.of(LocalDate.of(1950, 6, 3))));
    ChoicesMerge merge =
        ChoicesMerge.of(said, List.of(photo("dog.jpg", DOG)), day -> day.getYear() >= 1990);
    assertEquals(Optional.empty(), merge.choices().takenOf(DOG));
    assertEquals(Optional.of(true), merge.choices().used(DOG));
    assertEquals(
        List.of(
            "choices.json says 1950-06-03 of dog.jpg, which cannot be; it is not followed, put it"
                + " right in the review"),
        merge.remarks().stream().map(Warning::text).toList());
  }

  /** Of what the name or an XMP file says there is nothing to say: that is often wrong. */
  @Test
  void anotherDayThanTheCamerasIsUsedAndNamed() {
    ChoicesMerge merge =
        merged(
            List.of(
                PhotoBuilder.named("dog.jpg")
                    .sha256(DOG)
                    .taken(Taken.at(THIRD.plusDays(2).atTime(10, 0), TakenFrom.ORIGINAL))
                    .photo(),
                photo("quay/ferry.jpg", FERRY)));
    assertEquals(
        List.of(
            "you gave another day than the camera or your table of dates, and it is used: dog.jpg"
                + " (2026-06-03 for 2026-06-05)"),
        merge.remarks().stream().map(Warning::text).toList());
  }
}
