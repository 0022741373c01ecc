package org.daymount.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names are Unicode character names; sequences follow Unicode UTS #51. */
class ShownTextTest {
  @ParameterizedTest
  @CsvSource({
    "\uD83E\uDD9E, [lobster]",
    "a\uD83E\uDD9E, a [lobster]",
    // a face the typeface has is drawn
    "\uD83D\uDE00, \uD83D\uDE00",
    // thumbs up with a skin tone: the tone is dropped
    "\uD83D\uDC4D\uD83C\uDFFD, [thumbs up sign]",
    // man, joiner, girl: a sequence of two
    "\uD83D\uDC68\u200D\uD83D\uDC67, [man] [girl]",
    // regional indicators P and T
    "\uD83C\uDDF5\uD83C\uDDF9, [flag of Portugal]",
    // a heart with the selector for the coloured form
    "\u2764\uFE0F, \u2764"
  })
  void emojiAreDrawnOrNamed(String typed, String shown) {
    ShownText text = ShownText.of(typed, Typeface.SERIF, Typeface.SANS);
    assertEquals(shown, text.text());
    assertTrue(text.isWhole());
  }

  @Test
  void whatIsLeftCanAlwaysBeShown() {
    for (String typed :
        List.of(
            "日本",
            "नमस्ते",
            "a\u0000b\u0007c\tD",
            "\uD83D\uDE80\uD83C\uDFD6\uFE0F",
            "x\uFFFFy\uD800z")) {
      ShownText.of(typed, Typeface.SERIF, Typeface.SANS)
          .text()
          .codePoints()
          .forEach(
              c ->
                  assertTrue(
                      Typeface.SERIF.canShow(c) || Typeface.SANS.canShow(c),
                      () -> Character.getName(c)));
    }
  }

  @Test
  void aMissingLetterIsNamedOnceHoweverOftenItComes() {
    ShownText text = ShownText.of("海海海", Typeface.SERIF, Typeface.SANS);
    assertEquals("___", text.text());
    assertEquals("1 character the typeface lacks (han: 海)", text.missingInWords());
  }

  @Test
  void lineEndsOfAnySystemAreLineEnds() {
    assertEquals("a\nb\nc", ShownText.of("a\r\nb\rc", Typeface.SANS).text());
  }
}
