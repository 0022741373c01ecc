package org.daymount.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpecParser;
import org.daymount.album.Space;
import org.daymount.album.WantedSpace;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Test;

class PageEditsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 12);
  private static final CropChoice CROP = new CropChoice(new PixelBox(1, 2, 30, 40), "a".repeat(64));
  private static final DayPage NOTED = page(PaperSize.inches(4, 6), PaperSize.inches(3, 4));

  private static DayPage page(PaperSize... sizes) {
    return new DayPage(
        DAY,
        DayPage.Kind.PICTURES,
        Arrays.stream(sizes).map(Space::free).toList(),
        Optional.of("the ferry"));
  }

  private static PageEdits edits(Choices choices) {
    return new PageEdits(choices, DAY, NOTED, Optional.of(NOTED));
  }

  /** A crop in each of the two spaces. */
  private static Choices cropped() {
    SpaceChoice space = SpaceChoice.NONE.withCrop(Optional.of(CROP));
    return Choices.NONE.withDay(DAY, DayChoice.NONE.withSpace(0, space).withSpace(1, space));
  }

  private static List<Boolean> crops(Choices choices) {
    DayChoice day = choices.day(DAY);
    return List.of(day.space(0).crop().isPresent(), day.space(1).crop().isPresent());
  }

  private static Optional<String> words(Choices choices) {
    return choices.day(DAY).page().map(PageSpecParser::text);
  }

  @Test
  void aCropStaysWhereItsSpaceKeepsItsShape() {
    assertEquals(List.of(true, false), crops(edits(cropped()).words(Optional.of("4x6, 3x3"))));
    assertEquals(List.of(true, true), crops(edits(cropped()).withSpaceAdded()));
    assertEquals(List.of(false, true), crops(edits(cropped()).onMat(0, true)));
    assertEquals(
        List.of(true, false),
        crops(edits(cropped()).direction(1, Optional.of(Orientation.PORTRAIT))));
  }

  @Test
  void whatLayBehindASpaceThatIsTakenMovesUp() {
    Choices taken =
        edits(cropped().withDay(DAY, cropped().day(DAY).withSpace(0, SpaceChoice.NONE)))
            .withoutSpace(0);
    assertEquals(List.of(true, false), crops(taken));
    assertEquals(Optional.of("3x4"), words(taken));
    Choices none =
        new PageEdits(taken, DAY, page(PaperSize.inches(3, 4)), Optional.of(NOTED)).withoutSpace(0);
    assertEquals(Optional.of("no photo"), words(none));
  }

  @Test
  void thePageAsTheNoteHasItIsNoChange() {
    Choices changed = edits(Choices.NONE).words(Optional.of("5x7"));
    assertEquals(Optional.of("5x7"), words(changed));
    assertEquals(Choices.NONE, edits(changed).words(Optional.empty()));
    assertEquals(Choices.NONE, edits(changed).words(Optional.of(PageSpecParser.text(NOTED))));
    Choices matted = edits(Choices.NONE).onMat(1, true);
    DayPage shown =
        new DayPage(
            DAY,
            DayPage.Kind.PICTURES,
            List.of(
                NOTED.spaces().get(0),
                new Space(
                    PaperSize.inches(3, 4), Optional.empty(), Optional.of(Length.inches(.125)))),
            Optional.empty());
    assertEquals(
        Choices.NONE, new PageEdits(matted, DAY, shown, Optional.of(NOTED)).onMat(1, false));
  }

  @Test
  void changesMadeBeforeTheNoteWasEditedHoldNoMore() {
    Choices changed = edits(Choices.NONE).size(0, Optional.of(PaperSize.inches(5, 7)));
    DayPage edited = page(PaperSize.inches(4, 4), PaperSize.inches(3, 4));
    Choices later =
        new PageEdits(changed, DAY, edited, Optional.of(edited))
            .size(1, Optional.of(PaperSize.inches(3, 3)));
    assertEquals(Optional.empty(), later.day(DAY).space(0).size());
    assertEquals(Optional.of(PaperSize.inches(3, 3)), later.day(DAY).space(1).size());
    assertEquals(Optional.of(PageSpecParser.text(edited)), later.day(DAY).pageReplaced());
  }

  @Test
  void aPageHasOnlySoManySpaces() {
    PaperSize[] all = new PaperSize[PageSpecParser.MOST_SPACES];
    Arrays.fill(all, PaperSize.inches(1, 1));
    PageEdits full = new PageEdits(Choices.NONE, DAY, page(all), Optional.of(NOTED));
    assertThrows(IllegalArgumentException.class, full::withSpaceAdded);
    assertEquals(
        WantedSpace.of(PaperSize.inches(3, 4)),
        edits(Choices.NONE).withSpaceAdded().day(DAY).page().orElseThrow().spaces().get(2));
  }

  @Test
  void theNotesOwnStoryIsNoChange() {
    Choices told = Choices.NONE.withStory(DAY, Optional.of("the boat"), NOTED.story());
    assertEquals(Optional.of(new StoryChoice("the boat", NOTED.story())), told.day(DAY).story());
    assertEquals(Choices.NONE, told.withStory(DAY, Optional.of("the ferry"), NOTED.story()));
    assertEquals(Choices.NONE, told.withStory(DAY, Optional.empty(), NOTED.story()));
    assertEquals(Choices.NONE, Choices.NONE.withStory(DAY, Optional.of(""), Optional.empty()));
  }
}
