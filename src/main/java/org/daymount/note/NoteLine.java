package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.daymount.album.NormalizedText;

/**
 * A line of a note, or the part of one that may be a day of its own.
 *
 * @param number of the line, from 1
 * @param before what stands on the line before this part, as typed
 * @param raw as typed, with the line's ending
 * @param content without it
 * @param folded made plain for reading
 */
record NoteLine(int number, String before, String raw, String content, NormalizedText folded) {
  private static final Pattern LINE = Pattern.compile("[^\\r\\n]*(?:\\r\\n|\\r|\\n|$)");
  private static final Pattern ENDING = Pattern.compile("[\\r\\n]+$");

  private NoteLine(int number, String before, String raw) {
    this(number, before, raw, ENDING.matcher(raw).replaceFirst(""));
  }

  private NoteLine(int number, String before, String raw, String content) {
    this(number, before, raw, content, NormalizedText.of(content));
  }

  static List<NoteLine> of(String text) {
    List<NoteLine> lines = new ArrayList<>();
    Matcher matcher = LINE.matcher(text);
    while (matcher.find() && matcher.start() < text.length()) {
      lines.add(new NoteLine(lines.size() + 1, "", matcher.group()));
    }
    return lines;
  }

  /** Several lines as typed. */
  static String raw(List<NoteLine> lines, int from, int to) {
    return lines.subList(from, to).stream().map(NoteLine::raw).collect(Collectors.joining());
  }

  /** The line as it is read: plain. */
  String text() {
    return folded.text();
  }

  /**
   * The line in parts.
   *
   * @param at where each but the first begins, in the plain text, rising
   */
  List<NoteLine> parts(List<Integer> at) {
    List<NoteLine> parts = new ArrayList<>();
    int from = 0;
    for (int each : at) {
      int to = folded.rawIndex(each);
      parts.add(new NoteLine(number, before + raw.substring(0, from), raw.substring(from, to)));
      from = to;
    }
    parts.add(new NoteLine(number, before + raw.substring(0, from), raw.substring(from)));
    return parts;
  }

  /** About the line, pointing at its first word. */
  NoteRemark remark(String words) {
    int at = 0;
    while (at < text().length() && text().charAt(at) == ' ') {
      at++;
    }
    String seen = (before + raw.substring(0, folded.rawIndex(at))).replace("\uFEFF", "");
    return new NoteRemark(number, seen.codePointCount(0, seen.length()) + 1, words);
  }

  /** Its first words, for a message. */
  String start() {
    String text = content.strip().replace('\t', ' ');
    return text.codePointCount(0, text.length()) <= 30
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 30)) + "…";
  }
}
