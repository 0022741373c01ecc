package org.daymount.album;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;

/**
 * A line made plain for reading: lower case, no accents, ASCII digits, spaces and signs, nothing
 * invisible. Remembers where each character came from, so that the line itself stays as typed.
 */
public final class NormalizedText {
  private final String text;
  private final int[] origin; // index in the raw line of each character, and of the end

  private NormalizedText(String text, int[] origin) {
    this.text = text;
    this.origin = origin;
  }

  public static NormalizedText of(String raw) {
    StringBuilder text = new StringBuilder(raw.length());
    int[] origin = new int[raw.length() + 1];
    int i = 0;
    while (i < raw.length()) {
      int codePoint = raw.codePointAt(i);
      String plain = plain(codePoint);
      for (int k = 0; k < plain.length(); k++) {
        if (text.length() + 1 >= origin.length) {
          origin = Arrays.copyOf(origin, origin.length * 2);
        }
        origin[text.length()] = i;
        text.append(plain.charAt(k));
      }
      i += Character.charCount(codePoint);
    }
    origin[text.length()] = raw.length();
    return new NormalizedText(text.toString(), Arrays.copyOf(origin, text.length() + 1));
  }

  public static String fold(String raw) {
    return of(raw).text;
  }

  public String text() {
    return text;
  }

  /** Index in the raw line of the character at a folded index; the raw length for the end. */
  public int rawIndex(int index) {
    return origin[index];
  }

  private static String plain(int c) {
    if (c > ' ' && c < 0x7F) { // most of most notes
      return String.valueOf((char) (c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c));
    }
    if (Character.isDigit(c)) {
      return String.valueOf((char) ('0' + Character.digit(c, 10)));
    }
    if (c >= 0x2460 && c <= 0x249B) { // numbers in circles, brackets and with full stops
      return Integer.toString((c - 0x2460) % 20 + 1);
    }
    if (c >= 0xFF01 && c <= 0xFF5E) { // full-width forms of ASCII, Unicode block FF00
      return plain(c - 0xFEE0);
    }
    if (c == 0x1F51F) { // the keycap of ten
      return "10";
    }
    switch (c) {
      case '×', '✕', '✖', '⨯':
        return "x";
      case '“', '”', '„', '″':
        return "\"";
      case '‘', '’', '′':
        return "'";
      case '⁄', '∕':
        return "/";
      case '‐', '‑', '–', '—', '−', '―':
        return "-";
      case '：':
        return ":";
      case '،', '、':
        return ",";
      case '؛':
        return ";";
      case '؟':
        return "?";
      case 'ł', 'Ł':
        return "l";
      case 'ø', 'Ø':
        return "o";
      case 'æ', 'Æ':
        return "ae";
      case 'ß', 'ẞ':
        return "ss";
      case 'ı': // Turkish dotless i: its capital is the I that English has
        return "i";
      default:
        break;
    }
    if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
      return " ";
    }
    int type = Character.getType(c);
    if (type == Character.FORMAT
        || type == Character.CONTROL
        || type == Character.ENCLOSING_MARK) { // the box of a keycap
      return "";
    }
    String letters = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFD);
    StringBuilder bare = new StringBuilder();
    letters
        .codePoints()
        .filter(part -> Character.getType(part) != Character.NON_SPACING_MARK)
        .forEach(bare::appendCodePoint);
    return bare.toString().toLowerCase(Locale.ROOT);
  }
}
