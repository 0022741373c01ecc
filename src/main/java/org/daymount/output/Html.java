package org.daymount.output;

import java.util.Locale;

/** A page under construction. Whatever comes from a file or a person goes through {@link #text}. */
final class Html {
  private final StringBuilder page = new StringBuilder();

  /** Markup of our own; never anything read from a file. */
  Html raw(String markup) {
    page.append(markup);
    return this;
  }

  /** Markup of our own with numbers in it. */
  Html raw(String format, Object... numbers) {
    page.append(String.format(Locale.ROOT, format, numbers));
    return this;
  }

  Html text(String text) {
    page.append(escaped(text));
    return this;
  }

  /** {@code <tag class="kind">text</tag>} */
  Html element(String tag, String kind, String text) {
    return raw("<" + tag + (kind.isEmpty() ? ">" : " class=\"" + kind + "\">"))
        .text(text)
        .raw("</" + tag + ">");
  }

  /**
   * Safe inside an element and inside a quoted attribute. Direction marks that could make a name
   * read backwards are shown as what they are.
   */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                case '\n' -> safe.append("\n");
                default -> {
                  if (Character.isISOControl(c) || isDirectionMark(c)) {
                    safe.append(String.format(Locale.ROOT, "[U+%04X]", c));
                  } else {
                    safe.appendCodePoint(c);
                  }
                }
              }
            });
    return safe.toString();
  }

  private static boolean isDirectionMark(int c) {
    return c >= 0x202A && c <= 0x202E
        || c >= 0x2066 && c <= 0x2069
        || c == 0x200E
        || c == 0x200F
        || c == 0x061C;
  }

  @Override
  public String toString() {
    return page.toString();
  }
}
