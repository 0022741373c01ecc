package org.daymount.album;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
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
   */
  public record Read(PageSpec words, int end, boolean definite, boolean any) {}

  /** On one page, that can be said in words. */
  public static final int MOST_SPACES = 24;

  private static final Map<String, Integer> COUNTS =
      Map.ofEntries(
          Map.entry("a", 1),
          Map.entry("an", 1),
          Map.entry("one", 1),
          Map.entry("two", 2),
          Map.entry("three", 3),
          Map.entry("four", 4),
          Map.entry("five", 5),
          Map.entry("six", 6),
          Map.entry("seven", 7),
          Map.entry("eight", 8),
          Map.entry("nine", 9),
          Map.entry("ten", 10),
          Map.entry("eleven", 11),
          Map.entry("twelve", 12));

  private static final Pattern GAP = Pattern.compile("[ ,;&+]+|(?:and|plus)(?![\\p{L}\\d])");
  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Pattern NO_PHOTO = Pattern.compile("no (?:photo|picture)s?(?![\\p{L}\\d-])");
  private static final Pattern LEAVE_OUT = Pattern.compile("(?:leave|left) out(?![\\p{L}\\d-])");
  private static final Pattern PORTRAIT = Pattern.compile("(?:portrait|tall)(?![\\p{L}\\d-])");
  private static final Pattern LANDSCAPE = Pattern.compile("(?:landscape|wide)(?![\\p{L}\\d-])");
  private static final Pattern ALL = Pattern.compile("(?:both|all|each) +");
  private static final Pattern MAT =
      Pattern.compile("(?:on|with)(?: an?)? mats?(?![\\p{L}\\d-])|matted(?![\\p{L}\\d-])");
  private static final Pattern BEFORE_REVEAL = Pattern.compile(" *(?:with (?:an? )?)?");
  private static final Pattern AFTER_REVEAL = Pattern.compile(" +reveal(?![\\p{L}\\d-])");
  private static final Pattern COUNT_BEFORE =
      Pattern.compile("(?:(\\d{1,2}) *(?:x(?! *-)|(?= )) *|([a-z]+) +)(?=.)");
  private static final Pattern COUNT_AFTER = Pattern.compile(" *x *(\\d{1,2})(?![\\p{L}\\d./])");

  private final String text;
  private final List<Group> groups = new ArrayList<>();
  private Group pending = new Group();
  private int pendingFrom;
  private Optional<DayPage.Kind> kind = Optional.empty();
  private boolean any;

  private PageSpecParser(String folded) {
    this.text = folded;
  }

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
      throw new IllegalArgumentException(
          "'"
              + text.substring(folded.rawIndex(read.end())).strip()
              + "' in '"
              + text.strip()
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
    return new PageSpecParser(folded).read(from);
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
                        space.reveal()))
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
    return String.join(" ", words);
  }

  private Read read(int from) {
    int at = skipGaps(from);
    boolean afterGap = true;
    while (at < text.length() && kind.isEmpty()) {
      int next = readKind(at);
      next = next > at ? next : readSize(at);
      next = next > at ? next : readModifier(at, afterGap);
      next = next > at ? next : readCount(at);
      if (next == at) {
        break;
      }
      any = true;
      at = skipGaps(next);
      afterGap = text.substring(next, at).matches(".*[^ ].*");
    }
    return finish(at);
  }

  private Read finish(int at) {
    int end = at;
    boolean definite = kind.isPresent() || !groups.isEmpty();
    List<WantedSpace> spaces = new ArrayList<>();
    groups.forEach(group -> spaces.addAll(group.spaces()));
    if (pending.saysSomething()) {
      if (pending.count > 0 || definite) {
        end = Math.min(end, pendingFrom);
        any = definite;
      } else {
        spaces.addAll(pending.spaces());
      }
    }
    PageSpec words = new PageSpec(kind.orElse(DayPage.Kind.PICTURES), spaces);
    return new Read(words, end, definite, any && (definite || !spaces.isEmpty()));
  }

  private int readKind(int at) {
    if (!groups.isEmpty() || pending.saysSomething()) {
      return at;
    }
    for (DayPage.Kind each : List.of(DayPage.Kind.NO_PHOTO, DayPage.Kind.LEFT_OUT)) {
      int end = match(each == DayPage.Kind.NO_PHOTO ? NO_PHOTO : LEAVE_OUT, at);
      if (end > at) {
        kind = Optional.of(each);
        return end;
      }
    }
    return at;
  }

  private int readSize(int at) {
    Optional<SizeText.Found<PaperSize>> found = SizeText.sizeAt(text, at);
    if (found.isEmpty() || !SpaceSizes.isPossible(found.get().value())) {
      return at;
    }
    int end = found.get().end();
    int count = Math.max(1, pending.count);
    Matcher after = COUNT_AFTER.matcher(text).region(end, text.length());
    if (pending.count == 0 && after.lookingAt() && Integer.parseInt(after.group(1)) > 0) {
      count = Integer.parseInt(after.group(1));
      end = after.end();
    }
    if (count + groups.stream().mapToInt(group -> group.count).sum() > MOST_SPACES) {
      return at;
    }
    pending.size = Optional.of(found.get().value());
    pending.count = count;
    groups.add(pending);
    pending = new Group();
    return end;
  }

  private int readModifier(int at, boolean afterGap) {
    int all = match(ALL, at);
    int start = all > at && !groups.isEmpty() ? all : at;
    Optional<Orientation> way = Optional.empty();
    int end = match(PORTRAIT, start);
    if (end > start) {
      way = Optional.of(Orientation.PORTRAIT);
    } else {
      end = match(LANDSCAPE, start);
      way = end > start ? Optional.of(Orientation.LANDSCAPE) : way;
    }
    if (way.isPresent()) {
      Optional<Orientation> said = way;
      return apply(at, end, start > at, afterGap, group -> group.direction = said) ? end : at;
    }
    end = match(MAT, start);
    if (end == start) {
      return at;
    }
    Optional<SizeText.Found<Length>> reveal = reveal(end);
    int matEnd = reveal.map(SizeText.Found::end).orElse(end);
    boolean applied =
        apply(
            at,
            matEnd,
            start > at,
            afterGap,
            group -> {
              group.onMat = true;
              group.reveal = reveal.map(SizeText.Found::value);
            });
    return applied ? matEnd : at;
  }

  /** A reveal must carry a unit or be a fraction, or it could be the count of the next spaces. */
  private Optional<SizeText.Found<Length>> reveal(int from) {
    int at = match(BEFORE_REVEAL, from);
    if (SizeText.sizeAt(text, at).isPresent()) {
      return Optional.empty();
    }
    return SizeText.lengthAt(text, at)
        .filter(found -> text.substring(at, found.end()).matches(".*[^\\d., ].*"))
        .map(found -> new SizeText.Found<>(found.value(), match(AFTER_REVEAL, found.end())));
  }

  private boolean apply(int from, int end, boolean all, boolean afterGap, Consumer<Group> change) {
    if (all) {
      groups.forEach(change);
      return true;
    }
    Group last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
    Group probe = new Group();
    change.accept(probe);
    boolean startsNext =
        last == null
            || pending.saysSomething()
            || last.contradicts(probe)
            || (afterGap && sizeFollows(end));
    if (startsNext && pending.contradicts(probe)) {
      return false;
    }
    if (startsNext) {
      pendingFrom = pending.saysSomething() ? pendingFrom : from;
      change.accept(pending);
    } else {
      change.accept(last);
    }
    return true;
  }

  private boolean sizeFollows(int end) {
    int at = match(SPACES, end);
    return SizeText.sizeAt(text, at).isPresent();
  }

  private int readCount(int at) {
    Matcher count = COUNT_BEFORE.matcher(text).region(at, text.length());
    if (pending.count > 0 || !count.lookingAt()) {
      return at;
    }
    int value =
        count.group(1) != null
            ? Integer.parseInt(count.group(1))
            : COUNTS.getOrDefault(count.group(2), 0);
    if (value < 1 || value > MOST_SPACES) {
      return at;
    }
    pendingFrom = pending.saysSomething() ? pendingFrom : at;
    pending.count = value;
    return count.end();
  }

  private int match(Pattern pattern, int at) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    return matcher.lookingAt() ? matcher.end() : at;
  }

  private int skipGaps(int from) {
    int at = from;
    for (int next = match(GAP, at); next > at; next = match(GAP, at)) {
      at = next;
    }
    return at;
  }

  /** Spaces of one kind while they are being read. */
  private static final class Group {
    private int count;
    private Optional<PaperSize> size = Optional.empty();
    private Optional<Orientation> direction = Optional.empty();
    private boolean onMat;
    private Optional<Length> reveal = Optional.empty();

    private boolean saysSomething() {
      return count > 0 || direction.isPresent() || onMat;
    }

    private boolean contradicts(Group other) {
      return (direction.isPresent() && other.direction.isPresent()) || (onMat && other.onMat);
    }

    private List<WantedSpace> spaces() {
      WantedSpace space = new WantedSpace(size, direction, onMat, reveal);
      return Collections.nCopies(Math.max(1, count), space);
    }
  }
}
