package org.daymount.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoryTypesetterTest {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);
  private static final PaperSize SMALL = PaperSize.inches(3, 4);
  private static final PaperSize LARGE = PaperSize.inches(4, 6);
  private static final String SENTENCE = "The ferry was late and the dog was early. ";

  private final StoryTypesetter setter = new StoryTypesetter();

  @Test
  void aDayWithoutAStoryGetsOneRuledCard() {
    for (Optional<String> none : List.of(Optional.<String>empty(), Optional.of(" \n\n "))) {
      TypesetStory set = setter.set(DAY, none, SMALL);
      assertEquals(
          List.of(new StoryCard(DAY, SMALL, Length.ZERO, List.of(), 1, 1, CardStyle.USUAL)),
          set.cards());
      assertTrue(set.cards().get(0).isRuled());
      assertEquals(List.of(), set.notes());
    }
  }

  @Test
  void aShortStoryIsSetInTheLargestType() {
    StoryCard card = only(setter.set(DAY, Optional.of(SENTENCE), SMALL));
    assertEquals(CardLayout.LARGEST_TYPE, CardLayout.typeSize(card.textSize()), 1e-6);
  }

  @Test
  void aFewWordsOnALargeCardAreSetLargerAndLeaveHalfOfItFree() {
    StoryCard card = only(setter.set(DAY, Optional.of("The kite is up there."), LARGE));
    double size = CardLayout.typeSize(card.textSize());
    assertTrue(size > CardLayout.LARGEST_TYPE, "" + size);
    CardLayout layout = new CardLayout(LARGE);
    assertTrue(2 * card.lines().size() <= layout.linesOf(size), card.lines().toString());
    StoryCard longer = only(setter.set(DAY, Optional.of(SENTENCE.repeat(12)), LARGE));
    assertTrue(CardLayout.typeSize(longer.textSize()) <= CardLayout.LARGEST_TYPE + 1e-6);
  }

  @Test
  void aLowCardHasItsHeadingBesideTheStoryAndSoHoldsMore() {
    PaperSize low = PaperSize.inches(5, 1.25);
    CardLayout layout = new CardLayout(low);
    assertTrue(layout.isHeadedBeside());
    assertTrue(layout.textLeft() > layout.headingRight());
    assertTrue(layout.linesOf(CardLayout.SMALLEST_TYPE) >= 6, "and not two below a heading");
    assertFalse(new CardLayout(SMALL).isHeadedBeside());
    assertFalse(new CardLayout(low, CardStyle.Heading.NONE).isHeadedBeside());
  }

  /** The painted ink: the heading stays left of the story, and nothing touches the card's edge. */
  @Test
  void theHeadingOfALowCardIsPaintedLeftOfItsStory() {
    PaperSize low = PaperSize.inches(5, 1.25);
    CardLayout layout = new CardLayout(low);
    LocalDate widest = LocalDate.of(2026, 9, 30); // Wednesday, 30 September 2026
    StoryCard card = only(setter.set(widest, Optional.of(SENTENCE), low));
    BufferedImage image = new BufferedImage(5 * 72, 90, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    new CardPainter().paint(card, pen);
    pen.dispose();
    int rule = (int) ((layout.headingRight() + layout.textLeft()) / 2);
    for (int y = 0; y < 90; y++) {
      for (int x = 0; x < 5 * 72; x++) {
        boolean ink = (image.getRGB(x, y) & 0xFF) < 0xC0;
        boolean gap = x > layout.headingRight() + 1 && x < layout.textLeft() - 1;
        boolean rim = x < 10 || x > 350 || y < 8 || y > 82;
        assertFalse(ink && (rim || gap && Math.abs(x - rule) > 1), "ink at " + x + ", " + y);
      }
    }
  }

  @Test
  void aFewLinesAreMadeEquallyLong() {
    TextShaper setting = new TextShaper(Typeface.SERIF, Typeface.SANS);
    List<String> lines =
        only(setter.set(
                DAY, Optional.of("Nobody said anything for nine minutes. I timed it."), LARGE))
            .lines();
    double shortest = lines.stream().mapToDouble(setting::width).min().orElseThrow();
    double longest = lines.stream().mapToDouble(setting::width).max().orElseThrow();
    assertTrue(lines.size() > 1 && shortest > longest * 0.6, lines.toString());
  }

  @Test
  void withoutAHeadingThereIsRoomForMore() {
    CardStyle bare = new CardStyle(false, CardStyle.Heading.NONE, false);
    String story = SENTENCE.repeat(20);
    double size = only(setter.set(DAY, Optional.of(story), SMALL)).textSize().inPoints();
    StoryCard card = only(setter.set(DAY, Optional.of(story), SMALL, bare));
    assertTrue(card.textSize().inPoints() > size, size + " with a heading");
  }

  @Test
  void aLongerStoryIsSetSmallerBeforeItTakesASecondCard() {
    TypesetStory set = setter.set(DAY, Optional.of(SENTENCE.repeat(15)), SMALL);
    double size = CardLayout.typeSize(only(set).textSize());
    assertTrue(size < CardLayout.LARGEST_TYPE && size >= CardLayout.SMALLEST_TYPE, "" + size);
    assertEquals(List.of(), set.notes());
  }

  @Test
  void theNextLargerTypeWouldNotHaveFitted() {
    String story = SENTENCE.repeat(15);
    StoryCard card = only(setter.set(DAY, Optional.of(story), SMALL));
    double larger = CardLayout.typeSize(card.textSize()) + CardLayout.TYPE_STEP;
    CardLayout layout = new CardLayout(SMALL);
    int lines =
        new TextShaper(Typeface.SERIF, Typeface.SANS)
            .measure(story.strip())
            .lines(layout.textWidth() / larger)
            .size();
    assertTrue(lines > layout.linesOf(larger), lines + " lines");
  }

  @Test
  void aStoryTooLongForOneCardRunsOverAndSaysSo() {
    TypesetStory set = setter.set(DAY, Optional.of(SENTENCE.repeat(40)), SMALL);
    assertEquals(2, set.cards().size());
    assertEquals(1, set.cards().get(0).number());
    assertEquals(2, set.cards().get(1).number());
    assertTrue(set.cards().stream().allMatch(card -> card.count() == 2));
    assertEquals(
        List.of("the story runs over 2 cards; shorten it, or take larger cards"), set.notes());
    assertEquals(1, setter.set(DAY, Optional.of(SENTENCE.repeat(40)), LARGE).cards().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "The ferry was late and the dog was early; nobody minded.",
        "Το πλοίο άργησε και ο σκύλος ήρθε νωρίς.",
        "Паром опоздал, а собака пришла рано.",
        "המעבורת איחרה והכלב הקדים.",
        "تأخرت العبارة وجاء الكلب مبكرا.",
        "Żółw już czekał; œuvre, ßs, İstanbul, Đắk Lắk"
      })
  void wordsOfManyScriptsAreShownWholeAndInOrder(String sentence) {
    String story = (sentence + " ").repeat(6).strip();
    TypesetStory set = setter.set(DAY, Optional.of(story), SMALL);
    assertEquals(List.of(), set.notes());
    String joined = String.join(" ", only(set).lines()).replace("\u200F", "");
    assertEquals(story, joined);
  }

  @Test
  void noLineIsWiderThanTheCardsText() {
    String story = SENTENCE.repeat(9) + "Donaudampfschifffahrtsgesellschaft".repeat(5);
    StoryCard card = only(setter.set(DAY, Optional.of(story), SMALL));
    TextShaper setting = new TextShaper(Typeface.SERIF, Typeface.SANS);
    double size = CardLayout.typeSize(card.textSize());
    for (String line : card.lines()) {
      assertTrue(setting.width(line) * size <= new CardLayout(SMALL).textWidth() + 0.01, line);
    }
  }

  @Test
  void linesThePersonBrokeStayBroken() {
    StoryCard card = only(setter.set(DAY, Optional.of("rope\nboat\n\nmussels"), SMALL));
    assertEquals(List.of("rope", "boat", "", "mussels"), card.lines());
  }

  @Test
  void aLatinWordAtTheStartOfALineDoesNotTurnAHebrewParagraphRound() {
    String story = "שלום ".repeat(7) + "Biscuit ".repeat(9);
    StoryCard card = only(setter.set(DAY, Optional.of(story), SMALL));
    TextShaper setting = new TextShaper(Typeface.SERIF, Typeface.SANS);
    assertTrue(card.lines().size() > 2);
    assertTrue(card.lines().stream().noneMatch(l -> setting.layout(l).isLeftToRight()));
  }

  @Test
  void lettersTheTypefaceLacksLeaveAGapAndAreNamed() {
    TypesetStory set = setter.set(DAY, Optional.of("Lunch at 海の家 again"), SMALL);
    assertEquals(List.of("Lunch at ___ again"), only(set).lines());
    assertEquals(
        List.of(
            "the story has 3 different characters the typeface lacks (han: 海, の, 家);"
                + " the card leaves gaps to write them in by hand"),
        set.notes());
  }

  @Test
  void aCardTooSmallForTextIsRefusedWithTheReason() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class,
            () -> setter.set(DAY, Optional.empty(), PaperSize.inches(1, 1)));
    assertTrue(thrown.getMessage().contains("too small for text"));
  }

  @Test
  void settingTwiceGivesTheSameCards() {
    String story = SENTENCE.repeat(50);
    assertEquals(
        setter.set(DAY, Optional.of(story), SMALL),
        new StoryTypesetter().set(DAY, Optional.of(story), SMALL));
  }

  @Test
  void aCardNeitherStartsNorEndsWithAnEmptyLine() {
    TypesetStory set = setter.set(DAY, Optional.of((SENTENCE + "\n\n").repeat(40)), SMALL);
    assertTrue(set.cards().size() > 1);
    for (StoryCard card : set.cards()) {
      assertFalse(card.lines().get(0).isEmpty());
      assertFalse(card.lines().get(card.lines().size() - 1).isEmpty());
    }
  }

  private static StoryCard only(TypesetStory set) {
    assertEquals(1, set.cards().size());
    return set.cards().get(0);
  }
}
