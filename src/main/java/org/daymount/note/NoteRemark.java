package org.daymount.note;

import java.util.OptionalInt;

/**
 * Something in a month note that was not understood, or was understood in a way the person should
 * know of.
 *
 * @param line from 1
 * @param column from 1, in characters (Unicode code points) of the line
 * @param text the fact and the next step
 * @param couldBe the day that the line might start, where it was kept as story
 */
public record NoteRemark(int line, int column, String text, OptionalInt couldBe)
    implements Comparable<NoteRemark> {
  public NoteRemark(int line, int column, String text) {
    this(line, column, text, OptionalInt.empty());
  }

  @Override
  public int compareTo(NoteRemark other) {
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }

  /** As an editor shows it: {@code line 4, column 12: …}. */
  @Override
  public String toString() {
    return "line " + line + ", column " + column + ": " + text;
  }
}
