package org.daymount.cli;

/** File names may hold anything; at a terminal they stay on one line and steer nothing. */
final class TerminalEscaper {
  private TerminalEscaper() {}

  static String of(String text) {
    StringBuilder line = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              boolean steers =
                  Character.isISOControl(c) || Character.getType(c) == Character.FORMAT;
              if (steers && c != 0x200D) { // joins the parts of one emoji
                line.append(String.format("\\u%04x", c));
              } else {
                line.appendCodePoint(c);
              }
            });
    return line.toString();
  }
}
