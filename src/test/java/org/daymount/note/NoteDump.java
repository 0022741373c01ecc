package org.daymount.note;

import java.util.stream.Collectors;
import org.daymount.album.PageSpecParser;

/** A note as plain readable lines, for comparing with a file. */
final class NoteDump {
  private NoteDump() {}

  static String of(MonthNote note) {
    StringBuilder dump = new StringBuilder();
    dump.append("month: ").append(note.month().map(Object::toString).orElse("-")).append('\n');
    dump.append("preamble: ").append(visible(note.preamble())).append('\n');
    for (NoteDay day : note.days()) {
      String words = PageSpecParser.text(day.words());
      dump.append("day ")
          .append(day.names().stream().map(Object::toString).collect(Collectors.joining(", ")))
          .append(" (line ")
          .append(day.line())
          .append("): ")
          .append(words.isEmpty() ? "as usual" : words)
          .append('\n');
      day.story().ifPresent(story -> dump.append("  ").append(visible(story)).append('\n'));
    }
    note.remarks().forEach(remark -> dump.append(remark).append('\n'));
    return dump.toString();
  }

  /** In quotes, with everything that cannot be seen spelled out. */
  private static String visible(String text) {
    return text.codePoints()
        .mapToObj(
            c ->
                switch (c) {
                  case '\n' -> "\\n";
                  case '\r' -> "\\r";
                  case '\t' -> "\\t";
                  case 0xA0, 0x200B, 0x3000, 0xFEFF -> String.format("\\u%04x", c);
                  default -> Character.toString(c);
                })
        .collect(Collectors.joining("", "\"", "\""));
  }
}
