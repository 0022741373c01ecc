package org.daymount.album;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  private static final Pattern GAP =
      Pattern.compile(
          "[ ,;&+()=*_|\"{}]+|(?:and|plus|und|et|och|oraz|with(?= (?:an? )?(?:journ|story c))"
              + ")(?![\\p{L}\\d])");

  /** Words that add nothing. */
  private static final Pattern FILLER =
      Pattern.compile(
          "(?:please|pls|plz|bitte|graag|alsjeblieft|aub|svp|s'il (?:te|vous) plait|por favor"
              + "|per favore|prosze|tack|thanks|thx|just|only|nur|solo|seulement|alleen|bara|tylko"
              + "|apenas|each|je|chacune?|cada|elk)(?![\\p{L}\\d'])");

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

  /** Sizes that are sold in centimetres and named without them. Common practice, no source. */
  private static final Pattern METRIC =
      Pattern.compile(
          "(9 ?x ?13|10 ?x ?13|10 ?x ?15|11 ?x ?15|13 ?x ?18|15 ?x ?10|13 ?x ?9|18 ?x ?13|15 ?x ?20"
              + "|15 ?x ?21|18 ?x ?24|20 ?x ?30)(?:er)?(?! ?(?:in|\"|'|x|[\\d.,/]\\d))");

  private static final Pattern MARKS = Pattern.compile("[ ,;)]*");
  private static final Pattern SPACES = Pattern.compile(" +");
  private static final Pattern ALL =
      Pattern.compile(
          "(?:both|all|each|beide|alle|tous|toutes|ambas|todas|ambos|todos|entramb[ei]"
              + "|tutt[ei]|allebei|oba|obie|wszystkie|bada|alla|chaque) +(?:of them )?");
  private static final Pattern BEFORE_REVEAL = Pattern.compile(" *(?:with (?:an? )?)?");
  private static final Pattern AFTER_REVEAL = Pattern.compile(" +reveal(?![\\p{L}\\d-])");
  private static final Pattern COUNT_BEFORE =
      Pattern.compile(
          "(?:(\\d{1,2}) *(?:x(?! *-)|(?= |[pl](?![\\p{L}\\d])|[\\x{1F4F7}\\x{1F4F8}])) *"
              + "|([a-z]+) +)(?=.)");
  private static final Pattern COUNT_AFTER =
      Pattern.compile(
          " *x *(\\d{1,2})(?![\\p{L}\\d./])|'?s?,? *\\(?(\\d{1,2}|[a-z]+) of (?:them|those"
              + "|these)\\)?");

  private final String text;
  private final List<Group> groups = new ArrayList<>();
  private Group pending = new Group();
  private int pendingFrom;
  private Optional<DayPage.Kind> kind = Optional.empty();
  private final Set<String> bases;
  private Optional<PageForm> form = Optional.empty();
  private boolean storyCard;
  private boolean any;
  private boolean labelled;

  private PageSpecParser(String folded, Set<String> bases) {
    this.text = folded;
    this.bases = bases;
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
    return read(folded, from, Set.of());
  }

  /**
   * @param bases names of ready-made pages, as {@link NormalizedText} has them
   */
  public static Read read(String folded, int from, Set<String> bases) {
    return new PageSpecParser(folded, bases).read(from);
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

  private Read read(int from) {
    int at = skipGaps(from);
    int understood = from;
    boolean afterGap = true;
    while (at < text.length() && kind.isEmpty()) {
      int filler = match(FILLER, at);
      int next = readKind(at);
      next = next > at ? next : readLabel(at);
      next = next > at ? next : readForm(at);
      next = next > at ? next : readSize(at);
      next = next > at ? next : readModifier(at, afterGap);
      next = next > at ? next : readPhoto(at);
      next = next > at ? next : readCount(at);
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
      afterGap = text.substring(next, at).matches(".*[^ ].*");
      int over = match(OVER_A_MARK, at);
      if (over > at && kind.isEmpty() && isWayAlone(over)) {
        at = over; // "4x6: tall"
      }
    }
    int again =
        kind.equals(Optional.of(DayPage.Kind.LEFT_OUT))
            ? PageVocabulary.end(PageVocabulary.Word.LEAVE_OUT, text, skipGaps(understood))
            : understood;
    if (kind.equals(Optional.of(DayPage.Kind.LEFT_OUT))) { // "nothing, words only"
      int words = PageVocabulary.end(PageVocabulary.Word.NO_PHOTO, text, skipGaps(understood));
      if (words > skipGaps(understood)) {
        kind = Optional.of(DayPage.Kind.NO_PHOTO);
        again = words;
      }
    }
    understood = again > skipGaps(understood) ? again : understood;
    at = Math.max(at, skipGaps(understood));
    int polite = kind.isPresent() ? match(FILLER, skipGaps(understood)) : understood;
    int words = polite > skipGaps(understood) ? polite : understood;
    return finish(at == text.length() ? at : match(MARKS, words));
  }

  private Read finish(int at) {
    int end = at;
    if (pending.count > 0
        && pending.count <= 4
        && (pending.direction.isPresent() || pending.onMat)) {
      closePending();
    }
    refine();
    boolean definite = kind.isPresent() || !groups.isEmpty() || form.isPresent() || storyCard;
    List<WantedSpace> spaces = new ArrayList<>();
    groups.forEach(group -> spaces.addAll(group.spaces()));
    if (pending.saysSomething()) {
      if (pending.count > 0 || !groups.isEmpty()) {
        end = Math.min(end, pendingFrom);
        any = definite;
      } else {
        spaces.addAll(pending.spaces());
      }
    }
    PageSpec words = new PageSpec(kind.orElse(DayPage.Kind.PICTURES), spaces, form, storyCard);
    return new Read(words, end, definite, any);
  }

  /** A direction or a mat with nothing but a mark or the end behind it. */
  private boolean isWayAlone(int at) {
    for (PageVocabulary.Word word :
        List.of(
            PageVocabulary.Word.PORTRAIT,
            PageVocabulary.Word.LANDSCAPE,
            PageVocabulary.Word.MAT,
            PageVocabulary.Word.STORY_CARD)) {
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
    if (groups.isEmpty() && !pending.saysSomething() && count.lookingAt()) {
      int value = Integer.parseInt(count.group(1));
      if (value >= 1 && value <= MOST_SPACES) {
        pending.count = value;
        closePending();
        return count.end();
      }
    }
    if (any || pending.saysSomething()) {
      return at;
    }
    int end = match(LABEL, at);
    labelled = end > at;
    return end;
  }

  /** {@code two photos, one tall, one wide}: the latter say how the former lie. */
  private void refine() {
    if (groups.size() < 2) {
      return;
    }
    Group first = groups.get(0);
    List<Group> rest = groups.subList(1, groups.size());
    int told = rest.stream().mapToInt(group -> group.count).sum();
    boolean describes =
        first.count >= 2
            && first.direction.isEmpty()
            && !first.onMat
            && (first.size.isPresent() ? told == first.count : told <= first.count)
            && rest.stream()
                .allMatch(
                    group ->
                        group.count > 0
                            && group.size.isEmpty()
                            && (group.direction.isPresent() || group.onMat));
    if (!describes) {
      return;
    }
    rest.forEach(group -> group.size = first.size);
    first.count -= told;
    if (first.count == 0) {
      groups.remove(0);
    } else {
      groups.add(groups.remove(0)); // those that were not told of
    }
  }

  private void closePending() {
    groups.add(pending);
    pending = new Group();
  }

  private int readKind(int at) {
    if (!groups.isEmpty() || pending.saysSomething()) {
      return at;
    }
    int end = PageVocabulary.end(PageVocabulary.Word.NO_PHOTO, text, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.NO_PHOTO);
      return end;
    }
    end = PageVocabulary.end(PageVocabulary.Word.LEAVE_OUT, text, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.LEFT_OUT);
    }
    return end;
  }

  private int readForm(int at) {
    int end = PageVocabulary.end(PageVocabulary.Word.STORY_CARD, text, at);
    if (end > at) {
      storyCard = true;
      return end;
    }
    if (form.isPresent() || pending.count > 0) {
      return at;
    }
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
    end = PageVocabulary.end(PageVocabulary.Word.FULL_PAGE, text, at);
    if (end > at) {
      form = Optional.of(PageForm.FULL);
      return end;
    }
    end = PageVocabulary.end(PageVocabulary.Word.POCKET_PAGE, text, at);
    if (end > at) {
      form = Optional.of(PageForm.POCKET);
    }
    return end;
  }

  /** Photos by number alone: {@code two photos}, {@code landscape photo}. */
  private int readPhoto(int at) {
    int end = PageVocabulary.end(PageVocabulary.Word.PHOTO, text, at);
    if (end == at) {
      return at;
    }
    boolean several = text.charAt(end - 1) == 's' && pending.count == 0;
    Group last = groups.isEmpty() ? null : groups.get(groups.size() - 1);
    boolean namesLast = last != null && last.size.isPresent() && !pending.saysSomething();
    if (several || namesLast) {
      return namesLast ? at : end;
    }
    if (Math.max(1, pending.count)
            + groups.stream().mapToInt(group -> Math.max(1, group.count)).sum()
        > MOST_SPACES) {
      return at;
    }
    closePending();
    return end;
  }

  private int readSize(int at) {
    Optional<SizeText.Found<PaperSize>> found = sizeAt(at);
    if (found.isEmpty() || !SpaceSizes.isPossible(found.get().value())) {
      return at;
    }
    int end = found.get().end();
    Group photos = groups.isEmpty() ? null : groups.get(groups.size() - 1);
    if (photos != null && photos.size.isEmpty() && !pending.saysSomething()) {
      photos.size = Optional.of(found.get().value()); // "three pics (3x4)"
      return end;
    }
    if (pending.count > 0 && pending.direction.isPresent() && text.startsWith("1 ", at)) {
      return at;
    }
    int count = Math.max(1, pending.count);
    Matcher after = COUNT_AFTER.matcher(text).region(end, text.length());
    if (pending.count == 0 && after.lookingAt()) {
      String said = after.group(1) != null ? after.group(1) : after.group(2);
      int times = said.matches("\\d+") ? Integer.parseInt(said) : PageVocabulary.count(said);
      count = Math.max(1, times);
      end = times > 0 ? after.end() : end;
    }
    if (count + groups.stream().mapToInt(group -> Math.max(1, group.count)).sum() > MOST_SPACES) {
      return at;
    }
    pending.size = Optional.of(found.get().value());
    pending.count = count;
    groups.add(pending);
    pending = new Group();
    return end;
  }

  private Optional<SizeText.Found<PaperSize>> sizeAt(int at) {
    Matcher metric = METRIC.matcher(text).region(at, text.length());
    Optional<SizeText.Found<PaperSize>> inches = SizeText.sizeAt(text, at);
    boolean saidItself =
        metric.lookingAt() && (inches.isEmpty() || inches.get().end() <= metric.end());
    return saidItself
        ? SizeText.sizeAt(metric.group(1) + "cm", 0)
            .map(size -> new SizeText.Found<>(size.value(), metric.end()))
        : inches;
  }

  private int readModifier(int at, boolean afterGap) {
    int either = PageVocabulary.end(PageVocabulary.Word.EITHER_WAY, text, at);
    if (either > at) {
      return either;
    }
    int all = match(ALL, at);
    int start = all > at && !groups.isEmpty() ? all : at;
    int side = endOfSide(start, afterGap);
    if (side > start) {
      return apply(at, side, start > at, afterGap, group -> group.onSide = true) ? side : at;
    }
    Optional<Orientation> way = Optional.empty();
    int end = PageVocabulary.end(PageVocabulary.Word.PORTRAIT, text, start);
    if (end > start) {
      way = Optional.of(Orientation.PORTRAIT);
    } else {
      end = PageVocabulary.end(PageVocabulary.Word.LANDSCAPE, text, start);
      way = end > start ? Optional.of(Orientation.LANDSCAPE) : way;
    }
    if (way.isPresent()) {
      Optional<Orientation> said = way;
      return apply(at, end, start > at, afterGap, group -> group.direction = said) ? end : at;
    }
    end = PageVocabulary.end(PageVocabulary.Word.MAT, text, start);
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

  /** {@code sideways} says so too behind a direction; without one it is the direction. */
  private int endOfSide(int start, boolean afterGap) {
    int end = PageVocabulary.end(PageVocabulary.Word.ON_SIDE, text, start);
    Group last = groups.isEmpty() ? pending : groups.get(groups.size() - 1);
    boolean directed = pending.direction.isPresent() || last.direction.isPresent() && !afterGap;
    return end > start || !directed
        ? end
        : PageVocabulary.end(PageVocabulary.Word.SIDEWAYS, text, start);
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
    if (!count.lookingAt()) {
      return at;
    }
    int value =
        count.group(1) != null
            ? Integer.parseInt(count.group(1))
            : PageVocabulary.count(count.group(2));
    if (value < 1 || value > MOST_SPACES) {
      return at;
    }
    if (pending.count > 0) {
      if (pending.direction.isEmpty() && !pending.onMat) {
        return at;
      }
      closePending(); // "1 tall 1 wide"
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
    private boolean onSide;

    private boolean saysSomething() {
      return count > 0 || direction.isPresent() || onMat || onSide;
    }

    private boolean contradicts(Group other) {
      return (direction.isPresent() && other.direction.isPresent()) || (onMat && other.onMat);
    }

    private List<WantedSpace> spaces() {
      WantedSpace space = new WantedSpace(size, direction, onMat, reveal, onSide);
      return Collections.nCopies(Math.max(1, count), space);
    }
  }
}
