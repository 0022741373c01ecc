package org.daymount.note;

import java.util.Comparator;
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
 * @param cuts what of that is for the page, or ends the note, and is not printed
 */
public record NoteDay(
    PartialDate name,
    List<PartialDate> more,
    PageSpec words,
    int line,
    String heading,
    String storyText,
    List<Cut> cuts) {
  /** At the start of a line as {@link NoteLine} has them, or of words that could be a page's. */
  private static final Pattern SAID_TO_BE_STORY =
      Pattern.compile(
          "(?<![^\\r\\n])\\\\(?!o/)(?=[\\p{L}\\p{N}*#\\[-])|(?<=[ (\\[])\\\\(?=\\p{L}{2}|\\d)");

  /**
   * A part of the story's text that is not printed.
   *
   * @param from index in it
   * @param to index behind it
   */
  public record Cut(int from, int to) {
    public Cut {
      if (from < 0 || to < from) {
        throw new IllegalArgumentException("a cut from " + from + " to " + to);
      }
    }
  }

  public NoteDay {
    more = List.copyOf(more);
    cuts = cuts.stream().sorted(Comparator.comparingInt(Cut::from)).toList();
  }

  /** What is not printed, as typed. */
  public List<String> taken() {
    return cuts.stream()
        .map(cut -> storyText.substring(cut.from(), cut.to()).strip())
        .filter(text -> !text.isEmpty())
        .toList();
  }

  private String printed() {
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (Cut cut : cuts) {
      text.append(storyText, Math.min(from, cut.from()), cut.from());
      from = Math.max(from, cut.to());
    }
    return text.append(storyText.substring(from)).toString();
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
            .matcher(printed())
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
