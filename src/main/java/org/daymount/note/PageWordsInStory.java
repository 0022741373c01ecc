package org.daymount.note;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.note.PhraseCut.Joint;

/**
 * Words for the page that do not stand at the start of their day: behind its story ({@code painted
 * the hall (two photos)}), in the middle of it, or on a line of their own below it. A phrase counts
 * when all of it is words for a page and it is set off from the story; without a mark it counts
 * where it can hardly be part of a sentence, or where the note does so again and again.
 */
final class PageWordsInStory {
  private static final String MARK =
      "[!?;,|()\\[\\]\"]|\\.(?!\\d)|:(?!\\d)|(?<= |^)[-/]+(?= )|--+"
          + "|[•·→*]+|#+(?=\\p{L})|[^\\p{L}\\p{M}\\p{N}\\p{Z}\\p{P}$€£+<>=^`~|]+";

  /** Where a phrase may begin: behind a mark, or at any word. */
  private static final Pattern START =
      Pattern.compile("(?<mark>" + MARK + ")[ -]*|(?<=\\S)(?<gap> +)(?=[\\p{L}\\p{N}+&])");

  /** What may stand at the start of a line below the day. */
  private static final Pattern LINE_LEAD = Pattern.compile("(?:[ #>*•·_-]|\\[[ x]?\\]){0,12}+");

  private static final Pattern AND =
      Pattern.compile(", (?:and )?| (?:and|und|et|y|e|en|i|och) |[.!?;]");

  private static final int LONGEST_LINE = 2_000; // characters; longer ones are a story
  private static final int LONGEST = 60; // characters of a phrase without a mark

  /**
   * @param words for the page
   * @param from folded index at which they begin
   * @param cutFrom where to begin to take them off the card; at {@code cutTo} when they stay
   * @param cutTo where to end
   * @param sure whether they count whatever the rest of the note is like
   */
  record Found(PageSpec words, int from, int cutFrom, int cutTo, boolean sure) {
    boolean isCut() {
      return cutTo > cutFrom;
    }
  }

  /**
   * What is looked for.
   *
   * @param bases names of ready-made pages
   * @param habit whether this note says its pages behind the stories
   * @param wanted which words count
   */
  record Search(Set<String> bases, boolean habit, Predicate<PageSpec> wanted) {}

  private final String line;
  private final int storyFrom;
  private final Search search;
  private final PhraseCut cut;

  private PageWordsInStory(String line, int storyFrom, Search search) {
    this.line = line;
    this.storyFrom = storyFrom;
    this.search = search;
    this.cut = new PhraseCut(line, storyFrom);
  }

  /**
   * The first words for the page that stand on a day's own line, behind the start of its story.
   *
   * @param line folded
   * @param storyFrom where its story begins
   */
  static Optional<Found> onDayLine(String line, int storyFrom, Search search) {
    return new PageWordsInStory(line, storyFrom, search).found(false);
  }

  /** The same on a line of the story below. */
  static Optional<Found> onLineBelow(String line, Search search) {
    int lead = DayNameReader.end(LINE_LEAD, line, DayLineReader.chatEnd(line));
    return new PageWordsInStory(line, lead, search).found(true);
  }

  /** Whether all of a line below a day is taken off the card. */
  static boolean isWholeLine(String line, Found found) {
    return found.cutTo() == line.length()
        && found.cutFrom() <= DayNameReader.end(LINE_LEAD, line, DayLineReader.chatEnd(line));
  }

  private Optional<Found> found(boolean below) {
    if (line.length() > LONGEST_LINE || storyFrom >= line.length()) {
      return Optional.empty();
    }
    Optional<Found> best = below ? at(storyFrom, Joint.LINE, storyFrom) : Optional.empty();
    Matcher start = START.matcher(line).region(storyFrom, line.length());
    start.useTransparentBounds(true);
    int story = line.indexOf('\\', storyFrom); // what is behind a backslash is said to be story
    if (story >= 0) {
      start.region(storyFrom, story);
    }
    while (start.find() && best.filter(Found::sure).isEmpty()) {
      boolean gap = start.group("gap") != null;
      int from = start.end();
      if (from > storyFrom && from < line.length() && !(gap && line.length() - from > LONGEST)) {
        Joint joint = gap ? Joint.NONE : Joint.at(start.group("mark").charAt(0));
        Optional<Found> next = at(from, joint, start.start());
        best = best.isEmpty() || next.filter(Found::sure).isPresent() ? next : best;
      }
    }
    return best;
  }

  private Optional<Found> at(int from, Joint joint, int markFrom) {
    PageSpecParser.Read read = PageSpecParser.read(line, from, search.bases());
    if (!read.any() || read.words().saysNothing() || !search.wanted().test(read.words())) {
      return Optional.empty();
    }
    int end = read.end();
    while (end > from && " ,;)|*_\"".indexOf(line.charAt(end - 1)) >= 0) {
      end--;
    }
    PagePhrase phrase = PagePhrase.of(line.substring(from, end), read.words());
    if (line.substring(from, end).matches("\\d+ ?x ?\\(.*")) {
      return Optional.empty(); // "she bowed 3x (tall)"
    }
    boolean ends =
        DayNameReader.end(
                BehindPhrase.CLOSING, line, DayNameReader.end(BehindPhrase.POLITE, line, end))
            == line.length();
    if (joint == Joint.NONE) {
      return ends
          ? unmarked(from, end, read.words(), phrase)
          : wished(from, end, read.words(), phrase);
    }
    boolean whole = ends || follows(BehindPhrase.MARK_BEHIND, end);
    PageSpec words = read.words();
    boolean counts =
        switch (phrase) {
          case STRONG -> whole || joint == Joint.BRACKET || goesOn(joint, words, end);
          case WEAK ->
              whole
                  && counts(joint, ends)
                  && (ends || joint == Joint.BRACKET || !words.storyCard()); // "Cards, wine"
          case OPEN ->
              whole && (joint == Joint.BRACKET || joint == Joint.DASH && ends && search.habit());
        };
    if (!counts) {
      return Optional.empty();
    }
    int bracket = line.startsWith("(", from) ? from : markFrom;
    if (phrase == PagePhrase.STRONG
        && line.startsWith("(", bracket)
        && follows(BehindPhrase.ASIDE, end)) {
      return Optional.of(new Found(words, from, cut.withoutBlanks(bracket), line.length(), true));
    }
    if (phrase == PagePhrase.STRONG
        && (joint == Joint.LINE && follows(BehindPhrase.WHICH_OF_IT, end)
            || (joint == Joint.LINE || joint == Joint.STOP) && follows(BehindPhrase.WHICH, end))) {
      return Optional.of(
          new Found(
              words, from, cut.toTheEnd(from, joint, markFrom).cutFrom(), line.length(), true));
    }
    if (!whole) {
      return Optional.of(new Found(withRestOfSentence(read.words(), from, end), from, 0, 0, true));
    }
    Found found =
        ends ? cut.toTheEnd(from, joint, markFrom) : cut.within(from, end, joint, markFrom);
    return Optional.of(
        cut.withoutLabel(new Found(read.words(), from, found.cutFrom, found.cutTo, true)));
  }

  /** {@code One 4x6 of the cake and two 3x4 portrait}: what follows is for the page too. */
  private PageSpec withRestOfSentence(PageSpec words, int from, int end) {
    Matcher and = AND.matcher(line).region(end, line.length());
    while (and.find() && !and.group().matches("[.!?;]")) {
      PageSpecParser.Read rest = PageSpecParser.read(line, and.end(), search.bases());
      int to = DayNameReader.end(BehindPhrase.CLOSING, line, rest.end());
      if (rest.any() && rest.definite() && (to > rest.end() || to == line.length())) {
        String said = line.substring(from, end) + ", " + line.substring(and.end(), rest.end());
        return PageSpecParser.read(said, 0, search.bases()).words();
      }
    }
    return words;
  }

  /** {@code One photo of the letter}; "No photos from the museum" may be a sentence. */
  private boolean goesOn(Joint joint, PageSpec words, int end) {
    return (words.kind() == DayPage.Kind.PICTURES || words.storyCard())
        && (joint != Joint.LINE || search.habit())
        && follows(BehindPhrase.GOES_ON, end);
  }

  private boolean counts(Joint joint, boolean ends) {
    return switch (joint) {
      case BRACKET, DASH -> true;
      case LINE -> ends;
      default -> search.habit();
    };
  }

  private boolean follows(Pattern pattern, int at) {
    return pattern.matcher(line).region(at, line.length()).lookingAt();
  }

  private Optional<Found> unmarked(int from, int end, PageSpec words, PagePhrase phrase) {
    String said = line.substring(from, end);
    if (phrase == PagePhrase.OPEN
        || PagePhrase.goesOn(line.substring(storyFrom, from).strip(), said)) {
      return Optional.empty();
    }
    boolean sure = phrase == PagePhrase.STRONG && (PagePhrase.isNoSentence(said) || isWished(from));
    int cutFrom = search.habit() ? cut.withoutBlanks(from) : line.length();
    boolean counts = sure || search.habit() && isBehindWords(phrase, from);
    return Optional.of(new Found(words, from, cutFrom, line.length(), counts));
  }

  /** {@code Feet up} is a story, whatever the note's habit. */
  private boolean isBehindWords(PagePhrase phrase, int from) {
    return phrase == PagePhrase.STRONG || line.substring(storyFrom, from).strip().contains(" ");
  }

  /** {@code I'd like a tall photo here}, in the middle of a sentence. */
  private Optional<Found> wished(int from, int end, PageSpec words, PagePhrase phrase) {
    boolean usual =
        search.habit()
            && PagePhrase.isNoSentence(line.substring(from, end))
            && !PagePhrase.goesOn(
                line.substring(storyFrom, from).strip(), line.substring(from, end))
            && (follows(BehindPhrase.MARK_BEHIND, end) || follows(BehindPhrase.GOES_ON, end));
    return phrase == PagePhrase.STRONG
            && (usual || isWished(from) && follows(BehindPhrase.HERE, end))
        ? Optional.of(new Found(words, from, 0, 0, true))
        : Optional.empty();
  }

  private boolean isWished(int from) {
    return PagePhrase.isWished(line.substring(storyFrom, from).strip());
  }
}
