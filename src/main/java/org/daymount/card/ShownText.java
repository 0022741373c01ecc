package org.daymount.card;

import java.util.List;
import java.util.Locale;

/**
 * A text as it can be printed with the typefaces at hand. Emoji they lack are named in square
 * brackets; letters they lack leave a gap of the same length to be filled in by hand. There are
 * never boxes.
 *
 * @param text only characters that can be shown, and '\n'
 * @param missing the letters that became gaps, each once, in the order of the text
 */
public record ShownText(String text, List<String> missing) {
  public ShownText {
    missing = List.copyOf(missing);
  }

  /** For texts in the given typefaces; a character is shown if any of them has it. */
  public static ShownText of(String text, Typeface... typefaces) {
    return new ShowableText(codePoint -> canShow(codePoint, typefaces)).of(text);
  }

  private static boolean canShow(int codePoint, Typeface... typefaces) {
    for (Typeface typeface : typefaces) {
      if (typeface.canShow(codePoint)) {
        return true;
      }
    }
    return false;
  }

  public boolean isWhole() {
    return missing.isEmpty();
  }

  /** What is missing, for a warning: {@code "3 characters the typeface lacks (Han: 日, 本, 語)"}. */
  public String missingInWords() {
    String script =
        Character.UnicodeScript.of(missing.get(0).codePointAt(0))
            .name()
            .toLowerCase(Locale.ROOT)
            .replace('_', ' ');
    List<String> some = missing.subList(0, Math.min(8, missing.size()));
    return missing.size()
        + (missing.size() == 1 ? " character" : " different characters")
        + " the typeface lacks ("
        + script
        + ": "
        + String.join(", ", some)
        + (some.size() < missing.size() ? ", …" : "")
        + ")";
  }
}
