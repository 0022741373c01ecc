package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/**
 * Finds the words for each day's page where they do not stand right behind the day: on the line
 * below a bare day, in a column of a table, behind the story or in it. What is found there counts
 * for the page; where it is set off from the story it is not printed either.
 */
final class DayPages {
  static final Pattern AFTER_WORDS = Pattern.compile("[ .:;,)!*-]*");
  private static final Pattern GOES_ON =
      Pattern.compile(
          " *(?:of|and|as|enough|open|awake|order|tale|story|range|area|\\p{L}{3,}s)(?!\\p{L})");
  private static final int FEWEST_BEGIN = 4; // days that begin with their page
  private static final int HABIT = 2; // days whose page surely stands behind the story
  private static final int LIKELY_HABIT = 3; // or with those that may

  private final List<NoteLine> lines;
  private final Set<String> bases;
  private final NoteRemarks remarks;
  private final Optional<NoteColumns> columns;

  DayPages(
      List<NoteLine> lines, Set<String> bases, NoteRemarks remarks, Optional<NoteColumns> columns) {
    this.lines = lines;
    this.bases = bases;
    this.remarks = remarks;
    this.columns = columns;
  }

  /** Where words for a page were found below or behind the start of a story. */
  private record Place(int line, PageWordsInStory.Found found) {}

  /**
   * @param days as they were decided
   * @param end behind the last line that belongs to one
   */
  List<DayEntry> complete(List<DayEntry> days, int end) {
    int first = days.isEmpty() ? 0 : days.get(0).index();
    PageKey key = new PageKey(lines.subList(0, first), bases);
    WordsBelow below = new WordsBelow(lines, bases, remarks);
    List<DayEntry> headed = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      DayEntry day = key.with(days.get(i), lines.get(days.get(i).index()));
      headed.add(withColumns(day).orElse(below.with(day, next(days, i, end))));
    }
    beginWithPages(headed);
    List<Optional<Place>> places = places(headed, end, anything(false));
    long likely = places.stream().flatMap(Optional::stream).count();
    long sure =
        places.stream().flatMap(Optional::stream).filter(each -> each.found().sure()).count();
    boolean habit = sure >= HABIT || likely >= LIKELY_HABIT;
    if (habit) {
      places = places(headed, end, anything(true));
    }
    List<DayEntry> complete = new ArrayList<>();
    for (int i = 0; i < headed.size(); i++) {
      DayEntry day = headed.get(i);
      DayEntry with =
          places
              .get(i)
              .filter(each -> each.found().sure())
              .map(each -> with(day, each))
              .orElse(day);
      complete.add(withOtherHalf(with, next(headed, i, end), habit));
    }
    return new SamePage(lines, first, bases, remarks).complete(complete);
  }

  /** Where most days begin with their page, a single word for it will do: {@code wide}. */
  private void beginWithPages(List<DayEntry> days) {
    long begin =
        days.stream()
            .filter(day -> !day.day().words().saysNothing() && day.headingEnds() == day.index())
            .count();
    for (int i = 0; begin >= FEWEST_BEGIN && begin * 2 >= days.size() && i < days.size(); i++) {
      DayEntry day = days.get(i);
      NoteLine line = lines.get(day.headingEnds());
      PageSpecParser.Read read = PageSpecParser.read(line.text(), day.storyFrom(), bases);
      boolean goesOn =
          DayNameReader.end(GOES_ON, line.text(), read.end()) > read.end(); // "wide open"
      if (day.words().saysNothing() && read.any() && !read.words().saysNothing() && !goesOn) {
        days.set(
            i,
            day.with(
                read.words(),
                day.headingEnds(),
                DayNameReader.end(AFTER_WORDS, line.text(), read.end())));
        remarks.onPageFirst(line, day.day(), read.words());
      }
    }
  }

  private PageWordsInStory.Search anything(boolean habit) {
    return new PageWordsInStory.Search(bases, habit, words -> true);
  }

  /** Photos at the start of a day, and behind its story the card for it, or the other way round. */
  private DayEntry withOtherHalf(DayEntry day, int next, boolean habit) {
    if (!day.words().isHalf()) {
      return day;
    }
    return place(day, next, new PageWordsInStory.Search(bases, habit, day.words()::lacks))
        .filter(place -> place.found().sure() && place.found().isCut())
        .filter(place -> !isCut(day, place))
        .map(place -> with(day, place))
        .orElse(day);
  }

  private boolean isCut(DayEntry day, Place place) {
    int from = raw(lines.get(place.line()), place.found().from());
    return day.cuts().stream()
        .anyMatch(cut -> cut.line() == place.line() && cut.from() <= from && from < cut.to());
  }

  private List<Optional<Place>> places(
      List<DayEntry> days, int end, PageWordsInStory.Search search) {
    List<Optional<Place>> places = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      DayEntry day = days.get(i);
      places.add(
          day.words().saysNothing() ? place(day, next(days, i, end), search) : Optional.empty());
    }
    return places;
  }

  private static int next(List<DayEntry> days, int i, int end) {
    return i + 1 < days.size() ? days.get(i + 1).index() : end;
  }

  private Optional<DayEntry> withColumns(DayEntry day) {
    return columns.flatMap(
        table -> table.row(lines.get(day.index()), day.day().nameEnd(), bases).map(day::with));
  }

  private Optional<Place> place(DayEntry day, int next, PageWordsInStory.Search search) {
    NoteLine own = lines.get(day.headingEnds());
    Optional<Place> best =
        PageWordsInStory.onDayLine(own.text(), day.storyFrom(), search)
            .map(found -> new Place(day.headingEnds(), found));
    for (int i = day.headingEnds() + 1; i < next; i++) {
      if (best.filter(place -> place.found().sure() && isWhole(place)).isPresent()) {
        break;
      }
      int line = i;
      Optional<Place> below =
          PageWordsInStory.onLineBelow(lines.get(i).text(), search)
              .filter(PageWordsInStory.Found::sure)
              .map(found -> new Place(line, found));
      boolean better =
          below.isPresent()
              && (best.filter(place -> place.found().sure()).isEmpty() || isWhole(below.get()));
      best = better ? below : best;
    }
    return best;
  }

  private boolean isWhole(Place place) {
    return PageWordsInStory.isWholeLine(lines.get(place.line()).text(), place.found());
  }

  private DayEntry with(DayEntry day, Place place) {
    NoteLine line = lines.get(place.line());
    PageWordsInStory.Found found = place.found();
    PageSpec words = found.words();
    int end = found.isCut() ? found.cutTo() : line.text().length();
    String said = line.content().substring(raw(line, found.from()), raw(line, end)).strip();
    if (words.kind() == DayPage.Kind.LEFT_OUT) {
      remarks.onLeftOutBehind(line, said, day.day());
    } else if (!found.isCut()) {
      remarks.onWordsBehind(line, said, day.day());
    }
    if (PageSpecParser.read(line.text(), found.from(), bases).sizeGuessed()) {
      remarks.onNamedSizes(line);
    }
    DayEntry with = day.with(day.words().isHalf() ? day.words().plus(words) : words);
    boolean whole = place.line() > day.headingEnds() && isWhole(place);
    return !found.isCut()
        ? with
        : with.without(
            place.line(),
            whole ? 0 : raw(line, found.cutFrom()),
            whole ? line.raw().length() : raw(line, found.cutTo()));
  }

  private static int raw(NoteLine line, int folded) {
    return line.folded().rawIndex(folded);
  }
}
