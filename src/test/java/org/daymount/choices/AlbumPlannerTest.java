package org.daymount.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpecParser;
import org.daymount.note.NoteParser;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;

class AlbumPlannerTest {
  private static final YearMonth JUNE = YearMonth.of(2026, 6);

  private static AlbumPlan plan(String note, Choices choices) {
    return AlbumPlanner.plan(
        JUNE, day -> true, Optional.of(NoteParser.parse(note)), AlbumDefaults.STANDARD, choices);
  }

  private static AlbumPlan plan(String note) {
    return plan(note, Choices.NONE);
  }

  private static DayPage day(AlbumPlan plan, int day) {
    return plan.pages().get(day - 1);
  }

  private static LocalDate june(int day) {
    return JUNE.atDay(day);
  }

  private static List<String> codes(AlbumPlan plan) {
    return plan.remarks().stream().map(remark -> remark.kind().code()).toList();
  }

  @Test
  void withoutANoteEveryDayHasTheDefaultSpaces() {
    AlbumPlan plan = AlbumPlanner.plan(JUNE, day -> true, Optional.empty(), AlbumDefaults.STANDARD);
    assertEquals(30, plan.pages().size());
    assertEquals(june(30), day(plan, 30).day());
    assertTrue(
        plan.pages().stream()
            .allMatch(page -> page.spaces().equals(AlbumDefaults.STANDARD.spaces())));
  }

  @Test
  void theNoteSaysWhatAPageHolds() {
    AlbumPlan plan =
        plan(
            "June 2026\n3 4x6 landscape and 3x4 tall\nA story.\n4 no photo\n5 leave out\n6 tall\n");
    assertEquals("4x6 landscape, 3x4 portrait", PageSpecParser.text(day(plan, 3)));
    assertEquals(Optional.of("A story."), day(plan, 3).story());
    assertEquals(DayPage.Kind.NO_PHOTO, day(plan, 4).kind());
    assertEquals(DayPage.Kind.LEFT_OUT, day(plan, 5).kind());
    assertEquals("4x6 portrait", PageSpecParser.text(day(plan, 6)));
    assertEquals("4x6", PageSpecParser.text(day(plan, 7)));
    assertEquals(List.of(), plan.remarks());
  }

  @Test
  void daysThatAreNotWantedAreLeftOutAndKeepTheirStory() {
    AlbumPlan plan =
        AlbumPlanner.plan(
            JUNE,
            day -> day.getDayOfMonth() <= 20,
            Optional.of(NoteParser.parse("June 2026\n25: the last evening")),
            AlbumDefaults.STANDARD);
    assertEquals(DayPage.Kind.PICTURES, day(plan, 20).kind());
    assertEquals(DayPage.Kind.LEFT_OUT, day(plan, 21).kind());
    assertEquals(Optional.of("the last evening"), day(plan, 25).story());
    assertEquals(List.of("outside-days"), codes(plan));
  }

  @Test
  void aDayTypedTwiceIsJoined() {
    DayPage page = day(plan("June 2026\n4 4x6\nmorning\n4 3x4 tall\nevening"), 4);
    assertEquals("4x6, 3x4 portrait", PageSpecParser.text(page));
    assertEquals(Optional.of("morning\nevening"), page.story());
  }

  @Test
  void aNoteForAnotherMonthIsNotUsedAndThatIsSaid() {
    AlbumPlan plan = plan("May 2026\n3: in May\nJune 4: but this is June");
    assertEquals(Optional.empty(), day(plan, 3).story());
    assertEquals(Optional.of("but this is June"), day(plan, 4).story());
    assertEquals(List.of("note-month"), codes(plan));
  }

  @Test
  void withoutAMonthTheWeekdaysAreCheckedAgainstThePlannedMonth() {
    AlbumPlan plan = plan("Tue 3: was a Wednesday");
    assertEquals(Optional.of("was a Wednesday"), day(plan, 3).story());
    assertTrue(plan.remarks().get(0).text().contains("is a Wednesday, not a Tuesday"));
  }

  @Test
  void aRevealThatLeavesNothingIsDroppedAndNamed() {
    AlbumPlan plan = plan("June 2026\n2 4x6 on mat 2in\n3 three 4x6");
    assertEquals("4x6", PageSpecParser.text(day(plan, 2)));
    assertEquals(List.of("reveal"), codes(plan)); // what a page holds is judged when it is laid out
  }

  @Test
  void theReviewsStoryHoldsWhileTheNoteIsAsItWas() {
    Choices choices =
        Choices.NONE.withDay(
            june(3),
            DayChoice.NONE.withStory(
                Optional.of(new StoryChoice("From the review.", Optional.of("As typed.")))));
    AlbumPlan plan = plan("June 2026\n3:\nAs typed.\n", choices);
    assertEquals(Optional.of("From the review."), day(plan, 3).story());
    assertEquals(List.of(), plan.remarks());
  }

  @Test
  void aNoteEditedAfterTheReviewHoldsAndBothStoriesAreNamed() {
    Choices choices =
        Choices.NONE.withDay(
            june(3),
            DayChoice.NONE.withStory(
                Optional.of(new StoryChoice("From the review.", Optional.of("As typed.")))));
    AlbumPlan plan = plan("June 2026\n3:\nTyped anew.\n", choices);
    assertEquals(Optional.of("Typed anew."), day(plan, 3).story());
    assertEquals(List.of("story-conflict"), codes(plan));
    String text = plan.remarks().get(0).text();
    assertTrue(text.contains("'From the review.'") && text.contains("'Typed anew.'"), text);
  }

  @Test
  void aStoryTakenAwayInTheReviewStaysAway() {
    Choices choices =
        Choices.NONE.withDay(
            june(3),
            DayChoice.NONE.withStory(Optional.of(new StoryChoice("", Optional.of("As typed.")))));
    assertEquals(Optional.empty(), day(plan("June 2026\n3: As typed.", choices), 3).story());
  }

  @Test
  void aSpaceChangedInTheReviewHoldsUntilTheNoteSaysSomethingElse() {
    DayChoice turned =
        DayChoice.NONE
            .withSpace(
                0,
                SpaceChoice.NONE
                    .withDirection(Optional.of(Orientation.PORTRAIT))
                    .withSize(Optional.of(PaperSize.inches(3, 4))))
            .withPageReplaced(Optional.of("4x6 landscape"));
    Choices choices = Choices.NONE.withDay(june(3), turned);
    AlbumPlan same = plan("June 2026\n3 4x6 wide", choices);
    assertEquals("3x4 portrait", PageSpecParser.text(day(same, 3)));
    AlbumPlan edited = plan("June 2026\n3 6x8", choices);
    assertEquals("6x8", PageSpecParser.text(day(edited, 3)));
    assertEquals(List.of("page-conflict"), codes(edited));
  }

  @Test
  void aPageWrittenInTheReviewStandsInPlaceOfTheNotesUntilThatIsEdited() {
    DayChoice page =
        DayChoice.NONE
            .withPage(Optional.of(PageSpecParser.parse("4x6, 3x4 on mat")))
            .withSpace(1, SpaceChoice.NONE.withSize(Optional.of(PaperSize.inches(4, 4))))
            .withPageReplaced(Optional.of("6x8"));
    Choices choices = Choices.NONE.withDay(june(3), page);
    AlbumPlan same = plan("June 2026\n3 6x8\nits story", choices);
    assertEquals("4x6, 4x4 on mat 0.125in", PageSpecParser.text(day(same, 3)));
    assertEquals(Optional.of("its story"), day(same, 3).story());
    assertEquals(List.of(), codes(same));
    AlbumPlan edited = plan("June 2026\n3 5x7", choices);
    assertEquals("5x7", PageSpecParser.text(day(edited, 3)));
    assertEquals(List.of("page-conflict"), codes(edited));
  }

  @Test
  void aDayIsLeftOutOrBroughtBackInTheReview() {
    Choices out =
        Choices.NONE.withDay(
            june(3), DayChoice.NONE.withPage(Optional.of(PageSpecParser.parse("leave out"))));
    assertEquals(DayPage.Kind.LEFT_OUT, day(plan("June 2026", out), 3).kind());
    Choices back =
        Choices.NONE.withDay(
            june(3), DayChoice.NONE.withPage(Optional.of(PageSpecParser.parse("4x6"))));
    assertEquals("4x6", PageSpecParser.text(day(plan("June 2026\n3 leave out", back), 3)));
  }

  @Test
  void aPageWrittenInTheReviewGoesWithASwap() {
    Choices written =
        Choices.NONE.withDay(
            june(3), DayChoice.NONE.withPage(Optional.of(PageSpecParser.parse("two 3x4"))));
    AlbumPlan plan = plan("June 2026", written.withPagesSwapped(june(3), june(5)));
    assertEquals("3x4, 3x4", PageSpecParser.text(day(plan, 5)));
    assertEquals("4x6", PageSpecParser.text(day(plan, 3)));
  }

  @Test
  void aSpaceTakenAwayLetsThoseBehindItMoveUp() {
    SpaceChoice turned = SpaceChoice.NONE.withQuarterTurns(1);
    DayChoice day = DayChoice.NONE.withSpace(0, SpaceChoice.NONE).withSpace(2, turned);
    assertEquals(turned, day.withSpaceTaken(0).space(1));
    assertEquals(DayChoice.NONE, day.withSpaceTaken(2));
  }

  @Test
  void aSpaceThatIsGoneFromThePageIsNamed() {
    Choices choices =
        Choices.NONE.withDay(
            june(3),
            DayChoice.NONE.withSpace(
                4, SpaceChoice.NONE.withDirection(Optional.of(Orientation.PORTRAIT))));
    assertEquals(List.of("no-such-space"), codes(plan("June 2026", choices)));
  }

  @Test
  void swappedPagesLeaveStoriesWithTheirDays() {
    String note = "June 2026\n3 6x8\nof the third\n5 no photo\nof the fifth";
    Choices swapped = Choices.NONE.withPagesSwapped(june(3), june(5));
    AlbumPlan plan = plan(note, swapped);
    assertEquals(DayPage.Kind.NO_PHOTO, day(plan, 3).kind());
    assertEquals("6x8", PageSpecParser.text(day(plan, 5)));
    assertEquals(Optional.of("of the third"), day(plan, 3).story());
    assertEquals(Choices.NONE, swapped.withPagesSwapped(june(5), june(3)));
  }

  @Test
  void threeDaysSwappedInTurnStillUseEachPageOnce() {
    Choices choices =
        Choices.NONE.withPagesSwapped(june(1), june(2)).withPagesSwapped(june(2), june(3));
    assertEquals(june(2), choices.pageOf(june(1)));
    assertEquals(june(3), choices.pageOf(june(2)));
    assertEquals(june(1), choices.pageOf(june(3)));
  }
}
