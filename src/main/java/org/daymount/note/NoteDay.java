package org.daymount.note;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.daymount.album.PageSpec;

/**
 * One day line of a note and the story below it.
 *
 * @param more the other days of a line for several days, which share its page and story
 * @param line of the day line, from 1
 * @param heading the day line exactly as typed, up to where the story starts
 * @param storyText everything from there to the next day, exactly as typed
 */
public record NoteDay(
    PartialDate name,
    List<PartialDate> more,
    PageSpec words,
    int line,
    String heading,
    String storyText) {
  private static final Pattern SAID_TO_BE_STORY =
      Pattern.compile("^\\\\(?!o/)(?=[\\p{L}\\p{N}*#\\[-])", Pattern.MULTILINE);

  public NoteDay {
    more = List.copyOf(more);
  }

  /** All the days that the line is for, in its order. */
  public List<PartialDate> names() {
    return Stream.concat(Stream.of(name), more.stream()).toList();
  }

  /**
   * The story as it is printed and compared: lines joined by '\n', no blank lines around it, no
   * blanks before its first word on the day line, no backslash that says that a line is story;
   * empty when nothing is left.
   */
  public Optional<String> story() {
    String story =
        SAID_TO_BE_STORY
            .matcher(storyText)
            .replaceAll("")
            .replace("\uFEFF", "")
            .replace("\r\n", "\n")
            .replace('\r', '\n');
    int start = 0;
    int contentStart = 0;
    while (start < story.length() && isBlank(story.charAt(start))) {
      start++;
      if (story.charAt(start - 1) == '\n') {
        contentStart = start;
      }
    }
    if (start == story.length()) {
      return Optional.empty();
    }
    boolean onDayLine = contentStart == 0;
    int end = story.length();
    int contentEnd = end;
    while (isBlank(story.charAt(end - 1))) {
      end--;
      if (story.charAt(end) == '\n') {
        contentEnd = end;
      }
    }
    return Optional.of(story.substring(onDayLine ? start : contentStart, contentEnd));
  }

  private static boolean isBlank(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }
}
