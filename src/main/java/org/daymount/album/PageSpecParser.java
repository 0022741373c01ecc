package org.daymount.album;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.daymount.unit.Orientation;
import org.daymount.unit.SizeText;

/**
 * The words for a page, in the month note and on the command line alike: sizes with counts ({@code
 * 4x6}, {@code two 3x4}, {@code 2 x 3x4}, {@code 3x4 x2}), {@code portrait|tall}, {@code
 * landscape|wide}, {@code on mat} (with a reveal: {@code on mat 1/4in}), {@code no photo}, {@code
 * leave out}.
 */
public final class PageSpecParser {
  /**
   * How far words for a page were understood.
   *
   * @param end folded index of the first thing that was not understood; the text's length if none
   * @param definite whether a size, {@code no photo} or {@code leave out} was among them
   * @param any whether there was any word at all
   * @param sizeGuessed whether a size was only named, like {@code small}
   */
  public record Read(PageSpec words, int end, boolean definite, boolean any, boolean sizeGuessed) {}

  /** On one page, that can be said in words. */
  public static final int MOST_SPACES = 24;

  private PageSpecParser() {}

  /**
   * Reads words for a page and nothing else.
   *
   * @throws IllegalArgumentException whose message names the first words not understood
   */
  public static PageSpec parse(String text) {
    NormalizedText folded = NormalizedText.of(text);
    Read read = read(folded.text(), 0);
    if (!read.any() && read.end() == folded.text().length()) {
      throw new IllegalArgumentException("words for a page are missing; say a size, like 4x6");
    }
    if (read.end() < folded.text().length()) {
      checkSizes(folded.text(), read.end());
      String unknown = text.substring(folded.rawIndex(read.end())).strip();
      throw new IllegalArgumentException(
          "'"
              + unknown
              + (unknown.equals(text.strip()) ? "" : "' in '" + text.strip())
              + "' is not understood; write sizes like 4x6 or two 3x4, then portrait or landscape,"
              + " and on mat");
    }
    return read.words();
  }

  /** A size that no space can have is called that, not a word that is not understood. */
  private static void checkSizes(String folded, int from) {
    for (int at = from; at < folded.length(); at++) {
      boolean starts = at == 0 || folded.charAt(at - 1) == ' ';
      if (starts) {
        SizeText.sizeAt(folded, at).map(SizeText.Found::value).ifPresent(SpaceSizes::checked);
      }
    }
  }

  /** Reads as far as the words go. {@code folded} is the text of a {@link NormalizedText}. */
  public static Read read(String folded, int from) {
    return read(folded, from, Set.of());
  }

  /**
   * @param bases names of ready-made pages, as {@link NormalizedText} has them
   */
  public static Read read(String folded, int from, Set<String> bases) {
    return new PageReading(folded, bases).read(from);
  }

  /** So that {@link #parse} gives the same words back; empty for {@link PageSpec#NONE}. */
  public static String text(PageSpec words) {
    List<String> parts = new ArrayList<>();
    switch (words.kind()) {
      case NO_PHOTO -> parts.add("no photo");
      case LEFT_OUT -> parts.add("leave out");
      case PICTURES -> words.spaces().forEach(space -> parts.add(text(space, words.dividesPage())));
    }
    words.form().map(PageForm::text).ifPresent(parts::add);
    if (words.storyCard()) {
      parts.add("journaling card");
    }
    return String.join(", ", parts);
  }

  /** A finished page in the same words, every reveal said. */
  public static String text(DayPage page) {
    return text(words(page));
  }

  /** A finished page as if a person had asked for each of its spaces, every reveal said. */
  public static PageSpec words(DayPage page) {
    return new PageSpec(
        page.kind(),
        page.spaces().stream()
            .map(
                space ->
                    new WantedSpace(
                        Optional.of(space.size()),
                        space.direction().filter(way -> way != Orientation.SQUARE),
                        space.onMat(),
                        space.reveal(),
                        space.onSide()))
            .toList());
  }

  private static String text(WantedSpace space, boolean dividesPage) {
    List<String> words = new ArrayList<>();
    if (space.size().isEmpty() && dividesPage) {
      words.add("photo");
    }
    space.size().map(SizeText::text).ifPresent(words::add);
    space.direction().map(Orientation::word).ifPresent(words::add);
    if (space.onMat()) {
      words.add("on mat");
      space.reveal().map(SizeText::text).ifPresent(words::add);
    }
    if (space.onSide()) {
      words.add("on its side");
    }
    return String.join(" ", words);
  }
}
