package org.daymount.album;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.daymount.album.PageVocabulary.Word;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/** Words for the spaces of a page: numbers, sizes, ways to lie, mats, photos. */
final class PageSpaces {
  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Pattern ALL =
      Pattern.compile(
          "(?:both|all|each|beide|alle|tous|toutes|ambas|todas|ambos|todos|entramb[ei]"
              + "|tutt[ei]|allebei|oba|obie|wszystkie|bada|alla|chaque) +(?:of them )?");
  private static final Pattern BOTH =
      Pattern.compile(
          "(?:both|beide|ambas|ambos|entramb[ei]|allebei|oba|obie|bada|(?:les|tous|toutes) (?:les )?deux) +");

  /** Stands for a photo behind what was said of it. */
  static final Pattern ONE =
      Pattern.compile("ones?(?= *(?:$|[^ \\p{L}\\d])| (?:and|on|please|pls|plz|for|of|with) ?)");

  private static final Pattern LINE_ENDS = Pattern.compile(" *(?:$|\\))");

  /** More photos without a size are a story's sooner, such as "14 photos of chickens". */
  private static final int MOST_SPOKEN = 9;

  private static final Pattern ADDS = Pattern.compile("[+&]|\\p{L}");
  private static final Pattern NOT_ONLY_BLANK = Pattern.compile("[^ ]");

  private final PageCursor cursor;
  private final String text;
  private final PageGroups groups = new PageGroups();
  private final NamedSizes named;
  private boolean afterGap = true;
  private boolean afterComma;
  private boolean isSized; // "one small" was read last

  PageSpaces(PageCursor cursor) {
    this.cursor = cursor;
    this.text = cursor.text();
    this.named = new NamedSizes(cursor, groups);
  }

  PageGroups groups() {
    return groups;
  }

  /** Behind the word there; where it began if it is none. */
  int read(int at) {
    int next = readSize(at);
    next = next > at ? next : readTimes(at);
    next = next > at ? next : readModifier(at);
    next = next > at ? next : readPhoto(at);
    next = next > at ? next : readCount(at);
    if (next > at) {
      isSized = false;
      return next;
    }
    next = named.read(at);
    isSized = named.expectsPhoto();
    return next;
  }

  /** What stands between the words that were read and the next. */
  void gap(String gap, int next) {
    afterGap = NOT_ONLY_BLANK.matcher(gap).find();
    afterComma = gap.contains(",");
    if (afterGap && ADDS.matcher(gap).find() && cursor.wayAt(next).isPresent()) {
      groups.closeWay(cursor.wayAt(next).get().value()); // "tall + wide"
    }
    if (gap.contains("#") && cursor.wayAt(next).isPresent()) {
      groups.hash();
    }
  }

  /** Photos by number alone: {@code two photos}, {@code landscape photo}, {@code a tall one}. */
  private int readPhoto(int at) {
    int end = cursor.end(Word.PHOTO, at);
    if (end == at && (groups.pends(SpaceGroup::isDescribed) || isSized)) {
      end = cursor.end(ONE, at);
    }
    if (end == at) {
      return at;
    }
    if (!groups.isCounting() && text.startsWith("صورت", at)) {
      groups.count(2, at); // the dual says how many
    }
    boolean several = text.charAt(end - 1) == 's' && !groups.isCounting();
    if (groups.end(group -> group.size.isPresent())) {
      return afterGap ? at : end; // "two 3x4 photos"
    }
    if (several) {
      return end;
    }
    boolean tooMany =
        groups.pendingCount() > MOST_SPOKEN && !cursor.matcher(LINE_ENDS, end).lookingAt();
    if (tooMany || !groups.hasRoomFor(groups.pendingCount())) {
      return at;
    }
    if (groups.repeatsLast()) {
      groups.forgetPending();
    } else {
      groups.close();
    }
    return end;
  }

  private int readSize(int at) {
    Optional<SizeText.Found<PaperSize>> found = PageSizes.sizeAt(text, at);
    if (found.isEmpty()) {
      return at;
    }
    if (groups.end(SpaceGroup::isWithoutSize)) {
      groups.sizeOfLast(found.get().value()); // "three pics (3x4)"
      return found.get().end();
    }
    if (groups.isCounting() && groups.pends(SpaceGroup::isDescribed) && text.startsWith("1 ", at)) {
      return at;
    }
    if (!groups.hasRoomFor(groups.pendingCount())) {
      return at;
    }
    groups.close(groups.pendingCount(), found.get().value());
    return found.get().end();
  }

  /** How often what was said is wanted: {@code 3x4 x2}, {@code tall x 2}, {@code x2}. */
  private int readTimes(int at) {
    SpaceCounts.Found times = SpaceCounts.times(text, at);
    if (times.value() > 0 && groups.times(times.value())) {
      return times.end();
    }
    SpaceCounts.Found alone = SpaceCounts.timesAlone(text, at);
    int count = alone.value();
    if (!groups.isEmpty() || groups.isPending()) {
      return at;
    }
    if (count < 1 || count > PageSpecParser.MOST_SPACES) {
      return at;
    }
    groups.count(count, at);
    groups.close();
    return alone.end();
  }

  private int readModifier(int at) {
    int either = cursor.end(Word.EITHER_WAY, at);
    if (either > at) {
      return either;
    }
    int both = cursor.end(BOTH, at);
    if (both > at && groups.isEmpty() && !groups.isPending() && cursor.wayAt(both).isPresent()) {
      groups.count(2, at);
      return both;
    }
    int without = cursor.end(Word.NO_MAT, at);
    if (without > at && (!groups.isEmpty() || groups.isPending())) {
      return without;
    }
    int all = cursor.end(ALL, at);
    int start = all > at && !groups.isEmpty() ? all : at;
    int side = endOfSide(start);
    if (side > start) {
      return apply(at, start, side, SpaceGroup::side);
    }
    Optional<SizeText.Found<Orientation>> way = cursor.wayAt(start);
    if (way.isPresent()) {
      return apply(at, start, way.get().end(), group -> group.way(way.get().value()));
    }
    int end = cursor.end(Word.MAT, start);
    if (end == start) {
      return at;
    }
    Optional<SizeText.Found<Length>> reveal = PageSizes.revealAt(text, end);
    int matEnd = reveal.map(SizeText.Found::end).orElse(end);
    boolean forAll = afterComma && groups.spaces().size() > 1 && !groups.isPending();
    if (forAll && !sizeFollows(matEnd)) {
      groups.matForAll(reveal.map(SizeText.Found::value));
      return matEnd; // "4x6 and two 3x4, on mat"
    }
    return apply(at, start, matEnd, group -> group.mat(reveal.map(SizeText.Found::value)));
  }

  /** {@code sideways} says so too behind a direction; without one it is the direction. */
  private int endOfSide(int start) {
    int end = cursor.end(Word.ON_SIDE, start);
    return end > start || !groups.isDirected(afterGap) ? end : cursor.end(Word.SIDEWAYS, start);
  }

  private int apply(int at, int start, int end, Consumer<SpaceGroup> change) {
    if (start > at) {
      groups.applyToAll(change);
      return end;
    }
    return groups.apply(at, afterGap && sizeFollows(end), change) ? end : at;
  }

  private boolean sizeFollows(int end) {
    return SizeText.sizeAt(text, cursor.end(SPACES, end)).isPresent();
  }

  private int readCount(int at) {
    SpaceCounts.Found count = SpaceCounts.before(text, at);
    int value = count.value();
    if (value < 1 || value > PageSpecParser.MOST_SPACES) {
      return at;
    }
    if (groups.isCounting() && !groups.pends(SpaceGroup::isDescribed)) {
      return at;
    }
    if (groups.isCounting()) {
      groups.close(); // "1 tall 1 wide"
    }
    groups.count(value, at);
    return count.end();
  }

  /** {@code one tall}, {@code 2x 3x4}. */
  boolean isCountedSpace(int at) {
    SpaceCounts.Found count = SpaceCounts.before(text, at);
    return count.value() > 0
        && (cursor.wayAt(count.end()).isPresent()
            || PageSizes.sizeAt(text, count.end()).isPresent());
  }
}
