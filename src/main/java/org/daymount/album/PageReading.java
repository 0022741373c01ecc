package org.daymount.album;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageVocabulary.Word;

/**
 * Words for a page, read one after the other in whatever order they come: what kind of page it is,
 * and its spaces.
 */
final class PageReading {
  private static final Pattern LABEL =
      Pattern.compile(
          "(?:(?:page|size|format|layout|orientation|photos?|pics?|pictures?|fotos?|bilder"
              + "|seite|grosse|(?:i )?needs?|(?:i )?want|album|prints?|for the (?:page"
              + "|album)) *[:=](?! *$)|(?:(?:and|so|for) ){0,2}(?:that|this|it"
              + "|i)?(?: day)? ?(?:needs|wants|gets|should (?:get|have)|deserves|i need"
              + "|i want)(?= )) *");
  private static final Pattern LABELLED_COUNT =
      Pattern.compile(
          "(?:photos?|pics?|pictures?|fotos?|bilder) *[:=]? *(\\d{1,2}|one|two|three|four)(?: nos)?(?= *(?:$|[-.,;|)]))");
  private static final Pattern OVER_A_MARK = Pattern.compile(" *[-.:/>] *");
  private static final Pattern MARKS = Pattern.compile("[ ,;)]*");
  private static final Pattern SPACES = Pattern.compile(" +");

  private final PageCursor cursor;
  private final String text;
  private final PageKinds kinds;
  private final PageSpaces spaces;
  private final PageGroups groups;
  private boolean any;
  private boolean labelled;

  PageReading(String folded, Set<String> bases) {
    this.cursor = new PageCursor(folded);
    this.text = folded;
    this.kinds = new PageKinds(cursor, bases);
    this.spaces = new PageSpaces(cursor);
    this.groups = spaces.groups();
  }

  /** As far as the words go. */
  PageSpecParser.Read read(int from) {
    int at = cursor.gaps(from);
    int understood = from;
    while (!cursor.isEnd(at)) {
      int next = word(at);
      int polite = cursor.polite(at);
      int filler = Math.max(polite, cursor.before(at));
      if (next == at && filler > at) {
        understood = any && polite > at ? polite : understood;
        at = cursor.gaps(filler);
        continue;
      }
      if (next == at) {
        break;
      }
      any = any || !labelled;
      labelled = false;
      understood = kinds.kind().isPresent() ? behindKind(next) : next;
      at = cursor.gaps(understood);
      spaces.gap(text.substring(understood, at), at);
      int over = match(OVER_A_MARK, at);
      if (over > at && kinds.kind().isEmpty() && goesOnAt(over)) {
        at = over; // "4x6: tall"
      }
    }
    at = Math.max(at, cursor.gaps(understood));
    return finish(cursor.isEnd(at) ? at : match(MARKS, understood));
  }

  private int behindKind(int at) {
    int close = cursor.afterKind(at);
    int behind = cursor.afterKind(cursor.gaps(close));
    return behind > cursor.gaps(close) ? behind : close;
  }

  /** Behind the word there; where it began if it is none. */
  private int word(int at) {
    int next =
        groups.isEmpty() && !groups.isPending() && !kinds.hasForm() ? kinds.readKind(at) : at;
    next = next > at || kinds.isLeftOut() ? next : kinds.readCard(at);
    if (kinds.kind().isPresent()) {
      return next;
    }
    next = next > at ? next : readLabel(at);
    int form = next > at ? next : kinds.readForm(at, groups.isCounting());
    if (form > next) {
      groups.dropOne(); // "a full page"
      return form;
    }
    return next > at ? next : spaces.read(at);
  }

  private PageSpecParser.Read finish(int at) {
    int end = groups.finish(at);
    boolean definite =
        kinds.any()
            || !groups.isEmpty()
            || groups.pends(group -> group.direction.isPresent() && group.onMat);
    List<WantedSpace> wanted = groups.spaces();
    if (groups.isPending()) {
      if (groups.isCounting() || !groups.isEmpty()) {
        end = Math.min(end, groups.pendingFrom());
        any = definite;
      } else {
        wanted.addAll(groups.pendingSpaces());
      }
    }
    return new PageSpecParser.Read(kinds.page(wanted), end, definite, any, groups.isSizeGuessed());
  }

  /** A direction or a mat with nothing but a mark or the end behind it. */
  private boolean goesOnAt(int at) {
    if (kinds.hasForm() && (spaces.isCountedSpace(at) || PageSizes.sizeAt(text, at).isPresent())) {
      return true; // "pocket page: 4x6"
    }
    if ((groups.end(SpaceGroup::isWithoutSize) || groups.isCounting())
        && spaces.isCountedSpace(at)) {
      return true;
    }
    for (Word word : List.of(Word.PORTRAIT, Word.LANDSCAPE, Word.MAT, Word.STORY_CARD)) {
      int end = cursor.end(word, at);
      if (end > at) {
        return match(SPACES, end) == text.length()
            || ".,;:-|)".indexOf(text.charAt(match(SPACES, end))) >= 0;
      }
    }
    return false;
  }

  /** {@code photos: 2}, and {@code page:} before anything else. */
  private int readLabel(int at) {
    Matcher count = LABELLED_COUNT.matcher(text).region(at, text.length());
    if (groups.isEmpty() && !groups.isPending() && count.lookingAt()) {
      int value = SpaceCounts.number(count.group(1));
      if (value >= 1 && value <= PageSpecParser.MOST_SPACES) {
        groups.count(value, at);
        groups.close();
        return count.end();
      }
    }
    if (any || groups.isPending()) {
      return at;
    }
    int end = match(LABEL, at);
    labelled = end > at;
    return end;
  }

  private int match(Pattern pattern, int at) {
    return cursor.end(pattern, at);
  }
}
