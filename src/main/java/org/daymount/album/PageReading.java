package org.daymount.album;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageVocabulary.Word;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * Words for a page, read one after the other in whatever order they come: numbers, sizes, ways to
 * lie, mats, photos, and what kind of page it is.
 */
final class PageReading {
  private static final Pattern GAP =
      Pattern.compile(
          "[ ,;&+()=*_|\"{}]+|(?:and|plus|und|et|och|oraz|y|e|i|en|with(?= (?:an? )?(?:journ|story c))"
              + "|(?:with|in|at|of|a|de|zu|mit|con|avec|met|med|z)(?= (?:\\d|two|three|four|one photo|one pic)))(?![\\p{L}\\d])");

  /** Words that add nothing. */
  private static final Pattern FILLER =
      Pattern.compile(
          "(?:please|pls|plz|bitte|graag|alsjeblieft|aub|svp|s'il (?:te|vous) plait|por favor"
              + "|per favore|prosze|tack|thanks|thx|just|only|nur|solo|seulement|alleen|bara|tylko"
              + "|apenas|each|je|chacune?|cada|elk|maybe|perhaps|max(?=\\.? \\d)|about(?= \\d)"
              + "|(?:up to|at least)(?= (?:\\d|two|three|four)))(?![\\p{L}\\d'])");

  /** What may follow where no photo or no page is asked for. */
  private static final Pattern AFTER_KIND =
      Pattern.compile(
          " *(?:(?:needed|necessary|taken|wanted|required|at all|here|tho|though"
              + "|for (?:today|this|(?:this|the|that) (?:one|day))|this time|again|i'?m afraid|sorry)"
              + "(?![\\p{L}\\d']) *)+(?=$|[-.,;:!()\\[\\]|*_/])");

  private static final Pattern LABEL =
      Pattern.compile(
          "(?:(?:page|size|format|layout|orientation|photos?|pics?|pictures?|fotos?|bilder"
              + "|seite|grosse|(?:i )?needs?|(?:i )?want|album|prints?|for the (?:page"
              + "|album)) *[:=](?! *$)|(?:(?:and|so|for) ){0,2}(?:that|this|it"
              + "|i)?(?: day)? ?(?:needs|wants|gets|should (?:get|have)|deserves|i need"
              + "|i want)(?= )) *");
  private static final Pattern LABELLED_COUNT =
      Pattern.compile(
          "(?:photos?|pics?|pictures?|fotos?|bilder) *[:=] *(\\d{1,2})(?= *(?:$|[-.,;|]))");
  private static final Pattern OVER_A_MARK = Pattern.compile(" *[-.:/>] *");
  private static final Pattern MARKS = Pattern.compile("[ ,;)]*");
  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Pattern ALL =
      Pattern.compile(
          "(?:both|all|each|beide|alle|tous|toutes|ambas|todas|ambos|todos|entramb[ei]"
              + "|tutt[ei]|allebei|oba|obie|wszystkie|bada|alla|chaque) +(?:of them )?");
  private static final Pattern BOTH =
      Pattern.compile(
          "(?:both|beide|ambas|ambos|entramb[ei]|allebei|oba|obie|bada|(?:les|tous|toutes) (?:les )?deux) +");
  private static final Pattern COUNT_BEFORE =
      Pattern.compile(
          "(?:(\\d{1,2}) *(?:x(?! *-)|(?= |[pl](?![\\p{L}\\d])|[\\x{1F4F7}\\x{1F4F8}])) *"
              + "|x ?(\\d{1,2}) +|(?:an? )?(pair|couple) (?:of )?|([a-z]+) +)(?=.)");
  private static final Pattern TIMES =
      Pattern.compile(
          "x *(\\d{1,2})(?![\\p{L}\\d./])|(\\d{1,2}|[a-z]+) of (?:them|those" + "|these)\\)?");
  private static final Pattern TIMES_ALONE =
      Pattern.compile("(?:x *(\\d{1,2})|(\\d{1,2}) ?x)(?= *$)");

  /** Stands for a photo behind what was said of it. */
  private static final Pattern ONE = Pattern.compile("ones?(?= *(?:$|[^ \\p{L}\\d])| (?:and|on) )");

  private static final Pattern ADDS = Pattern.compile("[+&]|\\p{L}");
  private static final Pattern NOT_ONLY_BLANK = Pattern.compile("[^ ]");

  private final String text;
  private final Set<String> bases;
  private final PageGroups groups = new PageGroups();
  private Optional<DayPage.Kind> kind = Optional.empty();
  private Optional<PageForm> form = Optional.empty();
  private boolean storyCard;
  private boolean any;
  private boolean labelled;
  private boolean afterGap = true;

  PageReading(String folded, Set<String> bases) {
    this.text = folded;
    this.bases = bases;
  }

  /** As far as the words go. */
  PageSpecParser.Read read(int from) {
    int at = skipGaps(from);
    int understood = from;
    while (at < text.length() && kind.isEmpty()) {
      int filler = match(FILLER, at);
      int next = word(at);
      if (next == at && filler > at) {
        understood = any ? filler : understood;
        at = skipGaps(filler);
        continue;
      }
      if (next == at) {
        break;
      }
      any = any || !labelled;
      labelled = false;
      understood = next;
      at = skipGaps(next);
      String gap = text.substring(next, at);
      afterGap = NOT_ONLY_BLANK.matcher(gap).find();
      if (afterGap && ADDS.matcher(gap).find() && wayAt(at).isPresent()) {
        groups.closeWay(); // "tall + wide"
      }
      int over = match(OVER_A_MARK, at);
      if (over > at && kind.isEmpty() && goesOnAt(over)) {
        at = over; // "4x6: tall"
      }
    }
    understood = behindKind(understood);
    at = Math.max(at, skipGaps(understood));
    return finish(at == text.length() ? at : match(MARKS, understood));
  }

  /** Behind the word there; where it began if it is none. */
  private int word(int at) {
    int next = readKind(at);
    next = next > at ? next : readLabel(at);
    next = next > at ? next : readForm(at);
    next = next > at ? next : readSize(at);
    next = next > at ? next : readTimes(at);
    next = next > at ? next : readModifier(at);
    next = next > at ? next : readPhoto(at);
    return next > at ? next : readCount(at);
  }

  /** {@code skip, skip}, {@code nothing, words only}, {@code no photo today}. */
  private int behindKind(int understood) {
    if (kind.isEmpty()) {
      return understood;
    }
    int end = understood;
    int at = skipGaps(understood);
    if (kind.get() == DayPage.Kind.LEFT_OUT) {
      int again = PageVocabulary.end(Word.LEAVE_OUT, text, at);
      end = again > at ? again : end;
      at = skipGaps(end);
    }
    int words = PageVocabulary.end(Word.NO_PHOTO, text, at);
    if (words > at) {
      kind = Optional.of(DayPage.Kind.NO_PHOTO);
      end = words;
    }
    end = match(AFTER_KIND, end);
    int polite = match(FILLER, skipGaps(end));
    return polite > skipGaps(end) ? polite : end;
  }

  private PageSpecParser.Read finish(int at) {
    int end = at;
    groups.closeFew();
    if (form.isPresent()) {
      groups.closeCount(); // "a full page"
    }
    groups.refine();
    boolean definite = kind.isPresent() || !groups.isEmpty() || form.isPresent() || storyCard;
    List<WantedSpace> spaces = groups.spaces();
    if (groups.isPending()) {
      if (groups.isCounting() || !groups.isEmpty()) {
        end = Math.min(end, groups.pendingFrom());
        any = definite;
      } else {
        spaces.addAll(groups.pendingSpaces());
      }
    }
    PageSpec words = new PageSpec(kind.orElse(DayPage.Kind.PICTURES), spaces, form, storyCard);
    return new PageSpecParser.Read(words, end, definite, any);
  }

  /** A direction or a mat with nothing but a mark or the end behind it. */
  private boolean goesOnAt(int at) {
    Matcher count = COUNT_BEFORE.matcher(text).region(at, text.length());
    if ((groups.endsWithPhotos() || groups.isCounting())
        && count.lookingAt()
        && countOf(count) > 0) {
      int way = count.end();
      return PageVocabulary.end(Word.PORTRAIT, text, way) > way
          || PageVocabulary.end(Word.LANDSCAPE, text, way) > way;
    }
    for (Word word : List.of(Word.PORTRAIT, Word.LANDSCAPE, Word.MAT, Word.STORY_CARD)) {
      int end = PageVocabulary.end(word, text, at);
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
      int value = Integer.parseInt(count.group(1));
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

  private int readKind(int at) {
    if (!groups.isEmpty() || groups.isPending()) {
      return at;
    }
    int end = PageVocabulary.end(Word.NO_PHOTO, text, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.NO_PHOTO);
      return end;
    }
    end = PageVocabulary.end(Word.LEAVE_OUT, text, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.LEFT_OUT);
    }
    return end;
  }

  private int readForm(int at) {
    int end = PageVocabulary.end(Word.STORY_CARD, text, at);
    if (end > at) {
      storyCard = true;
      return end;
    }
    if (form.isPresent()) {
      return at;
    }
    if (!groups.isCounting()) {
      for (String base : bases) {
        int baseEnd = at + base.length();
        boolean whole =
            baseEnd >= text.length()
                || (text.startsWith(base, at) && !Character.isLetterOrDigit(text.charAt(baseEnd)));
        if (text.startsWith(base, at) && whole) {
          form = Optional.of(PageForm.base(base));
          return baseEnd;
        }
      }
    }
    end = PageVocabulary.end(Word.FULL_PAGE, text, at);
    if (end > at) {
      form = Optional.of(PageForm.FULL);
      return end;
    }
    end = groups.isCounting() ? at : PageVocabulary.end(Word.POCKET_PAGE, text, at);
    if (end > at) {
      form = Optional.of(PageForm.POCKET);
    }
    return end;
  }

  /** Photos by number alone: {@code two photos}, {@code landscape photo}, {@code a tall one}. */
  private int readPhoto(int at) {
    int end = PageVocabulary.end(Word.PHOTO, text, at);
    if (end == at && groups.isPendingHow()) {
      end = match(ONE, at);
    }
    if (end == at) {
      return at;
    }
    boolean several = text.charAt(end - 1) == 's' && !groups.isCounting();
    if (groups.endsWithSize()) {
      return afterGap ? at : end; // "two 3x4 photos"
    }
    if (several) {
      return end;
    }
    if (!groups.hasRoomFor(groups.pendingCount())) {
      return at;
    }
    groups.close();
    return end;
  }

  private int readSize(int at) {
    Optional<SizeText.Found<PaperSize>> found = PageSizes.sizeAt(text, at);
    if (found.isEmpty()) {
      return at;
    }
    if (groups.endsWithPhotos()) {
      groups.sizeOfLast(found.get().value()); // "three pics (3x4)"
      return found.get().end();
    }
    if (groups.isCounting() && groups.isPendingHow() && text.startsWith("1 ", at)) {
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
    Matcher times = TIMES.matcher(text).region(at, text.length());
    if (times.lookingAt()) {
      int count = number(times.group(1) != null ? times.group(1) : times.group(2));
      if (count > 0 && groups.times(count)) {
        return times.end();
      }
    }
    Matcher alone = TIMES_ALONE.matcher(text).region(at, text.length());
    if (!groups.isEmpty() || groups.isPending() || !alone.lookingAt()) {
      return at;
    }
    int count = number(alone.group(1) != null ? alone.group(1) : alone.group(2));
    if (count < 1 || count > PageSpecParser.MOST_SPACES) {
      return at;
    }
    groups.count(count, at);
    groups.close();
    return alone.end();
  }

  private int readModifier(int at) {
    int either = PageVocabulary.end(Word.EITHER_WAY, text, at);
    if (either > at) {
      return either;
    }
    int both = match(BOTH, at);
    if (both > at && groups.isEmpty() && !groups.isPending() && wayAt(both).isPresent()) {
      groups.count(2, at);
      return both;
    }
    int all = match(ALL, at);
    int start = all > at && !groups.isEmpty() ? all : at;
    int side = endOfSide(start);
    if (side > start) {
      return apply(at, start, side, PageGroups.Group::side);
    }
    Optional<SizeText.Found<Orientation>> way = wayAt(start);
    if (way.isPresent()) {
      return apply(at, start, way.get().end(), group -> group.way(way.get().value()));
    }
    int end = PageVocabulary.end(Word.MAT, text, start);
    if (end == start) {
      return at;
    }
    Optional<SizeText.Found<Length>> reveal = PageSizes.revealAt(text, end);
    int matEnd = reveal.map(SizeText.Found::end).orElse(end);
    return apply(at, start, matEnd, group -> group.mat(reveal.map(SizeText.Found::value)));
  }

  private Optional<SizeText.Found<Orientation>> wayAt(int at) {
    int tall = PageVocabulary.end(Word.PORTRAIT, text, at);
    if (tall > at) {
      return Optional.of(new SizeText.Found<>(Orientation.PORTRAIT, tall));
    }
    int wide = PageVocabulary.end(Word.LANDSCAPE, text, at);
    return wide > at
        ? Optional.of(new SizeText.Found<>(Orientation.LANDSCAPE, wide))
        : Optional.empty();
  }

  /** {@code sideways} says so too behind a direction; without one it is the direction. */
  private int endOfSide(int start) {
    int end = PageVocabulary.end(Word.ON_SIDE, text, start);
    return end > start || !groups.isDirected(afterGap)
        ? end
        : PageVocabulary.end(Word.SIDEWAYS, text, start);
  }

  private int apply(int at, int start, int end, Consumer<PageGroups.Group> change) {
    if (start > at) {
      groups.applyToAll(change);
      return end;
    }
    boolean sizeFollows = SizeText.sizeAt(text, match(SPACES, end)).isPresent();
    return groups.apply(at, afterGap && sizeFollows, change) ? end : at;
  }

  private int readCount(int at) {
    Matcher count = COUNT_BEFORE.matcher(text).region(at, text.length());
    if (!count.lookingAt()) {
      return at;
    }
    int value = countOf(count);
    if (value < 1 || value > PageSpecParser.MOST_SPACES) {
      return at;
    }
    if (groups.isCounting() && !groups.isPendingHow()) {
      return at;
    }
    if (groups.isCounting()) {
      groups.close(); // "1 tall 1 wide"
    }
    groups.count(value, at);
    return count.end();
  }

  private static int countOf(Matcher count) {
    if (count.group(3) != null) {
      return 2; // a pair, a couple
    }
    return number(
        count.group(1) != null
            ? count.group(1)
            : count.group(2) != null ? count.group(2) : count.group(4));
  }

  private static int number(String said) {
    return said.matches("\\d+") ? Integer.parseInt(said) : PageCounts.of(said);
  }

  private int match(Pattern pattern, int at) {
    return PageVocabulary.end(pattern, text, at);
  }

  private int skipGaps(int from) {
    int at = from;
    for (int next = match(GAP, at); next > at; next = match(GAP, at)) {
      at = next;
    }
    return at;
  }
}
