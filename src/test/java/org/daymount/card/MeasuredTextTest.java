package org.daymount.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.text.AttributedString;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuredTextTest {
  private static final float EM = 512;

  private final TextShaper shaper = new TextShaper(Typeface.SANS);

  /** The reference: Java's own line breaker, which measures anew for every width. */
  private static List<String> byJava(String text, double width) {
    AttributedString styled = new AttributedString(text);
    styled.addAttribute(TextAttribute.FONT, Typeface.SANS.font().deriveFont(EM));
    LineBreakMeasurer measurer =
        new LineBreakMeasurer(
            styled.getIterator(),
            BreakIterator.getLineInstance(Locale.ROOT),
            new FontRenderContext(null, true, true));
    List<String> lines = new ArrayList<>();
    while (measurer.getPosition() < text.length()) {
      int start = measurer.getPosition();
      measurer.setPosition(measurer.nextOffset((float) (width * EM)));
      lines.add(text.substring(start, measurer.getPosition()).strip());
    }
    return lines;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "The quick brown fox (again) jumps over the lazy dog's back; home-ward, e.g. at 10:30.",
        "Wir fuhren zum Gezeitenweg \u2014 na\u00efve caf\u00e9s, re\u0301sume\u0301, office waffles.",
        "\u041f\u0440\u0438\u0432\u0435\u0442 \u043c\u0438\u0440, \u043a\u0430\u043a \u0434\u0435\u043b\u0430 \u0441\u0435\u0433\u043e\u0434\u043d\u044f",
        "\u0645\u0631\u062d\u0628\u0627 \u0628\u0627\u0644\u0639\u0627\u0644\u0645 \u0647\u0630\u0627 \u0646\u0635 \u0637\u0648\u064a\u0644",
        "averyveryverylongwordthatdoesnotfitonasinglelineatallbecauseithasnospaces and then some"
      })
  void linesBreakWhereJavaBreaksThemAtAnyWidth(String text) {
    MeasuredText measured = shaper.measure(text);
    for (double width = 7; width < 40; width += .31) {
      List<String> lines =
          measured.lines(width).stream()
              .map(line -> line.replace("\u200F", ""))
              .collect(Collectors.toList());
      assertEquals(byJava(text, width), lines, width + " ems");
    }
  }

  @Test
  void emptyLinesStayAndNothingIsLost() {
    assertEquals(
        List.of("one", "", "two", "three"), shaper.measure("one\n\n two three ").lines(4.5));
    String word = "w".repeat(2_000);
    List<String> lines = shaper.measure(word).lines(10);
    assertEquals(word, String.join("", lines));
    assertTrue(lines.stream().allMatch(line -> shaper.width(line) <= 10 + 1e-6));
  }
}
