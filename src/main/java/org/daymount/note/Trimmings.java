package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What stands among a story's lines and is no story: the stamps of a chat, empty boxes to tick, and
 * at the note's end that it ends or who sent it.
 */
final class Trimmings {
  private static final Pattern EMPTY_BOX = Pattern.compile("[ *•-]*\\[[ x]?\\] *");

  private static final Pattern TICKED = Pattern.compile("[ *•-]*\\[[ x]?\\] +");

  /** What a chat puts in the place of a picture. Common practice, no source. */
  private static final Pattern MEDIA =
      Pattern.compile(
          " *(?:<[^<>]{2,24}>|<?(?:media|image|photo|video|sticker|gif|audio|bild|imagen|foto)s?"
              + " (?:omitted|weggelassen|omitid[oa]|omess[oi]|weggelaten)>?) *");

  /** A heading above the next day, or a line drawn. */
  private static final Pattern HEADING =
      Pattern.compile(
          "[ #*=_-]*(?:(?:week|wk|woche|kw|semaine|semana|settimana|tydzien|vecka)(?: (?:of"
              + "|vom|du|van|del))?[ .#]{0,3}(?:\\d|\\p{L}{3,9}\\.? \\d|one|two|three|four"
              + "|five).{0,24}?(?: *\\([^)]*\\))?)|[ #*=_~.-]{3,}");

  /** Before each story of a note that is a form filled in. */
  private static final Pattern STORY_LABEL =
      Pattern.compile(
          "[ >*_#•-]*(?:story|stories|text|words|journal|diary|what happened|geschichte|tagebuch|histoire"
              + "|texte|historia|texto|storia|testo|verhaal|tekst|opis|berattelse)[*_ ]*[:=][*_ ]*");

  private static final Pattern NO_PAGE =
      Pattern.compile(
          "[ >*_#•-]*(?:page|photos?|pics?|seite|pagina|strona|sida)[*_ ]*[:=][ *_?/-]*");
  private static final int FORM = 3; // labels that make a note a form

  private final List<NoteLine> lines;
  private final Map<Integer, Integer> firstDays; // by the line they start on
  private final List<Integer> lists;
  private final Optional<String> author;
  private final boolean form;

  /**
   * @param lists lines that are a list to oneself
   * @param days where they start; when all are one person's in a chat, the others' lines are none
   */
  Trimmings(List<NoteLine> lines, List<DayEntry> days, List<Integer> lists) {
    this.lines = lines;
    this.lists = lists;
    this.firstDays =
        days.stream().collect(Collectors.toMap(DayEntry::index, day -> day.day().first()));
    List<Optional<String>> senders =
        days.stream()
            .map(day -> DayLineReader.sender(lines.get(day.index()).text()))
            .distinct()
            .toList();
    this.author = senders.size() == 1 ? senders.get(0) : Optional.empty();
    long labels =
        lines.stream().filter(line -> STORY_LABEL.matcher(line.text()).lookingAt()).count();
    this.form = labels >= FORM;
  }

  /**
   * @param next index behind the day's last line
   * @param below for the note's last day, where below it begins what belongs to none
   */
  DayEntry off(DayEntry day, int next, OptionalInt below) {
    List<DayEntry.LineCut> cuts = new ArrayList<>(form ? labels(day, next) : List.of());
    NoteLine heading = lines.get(day.headingEnds());
    if (MEDIA.matcher(heading.text()).region(day.storyFrom(), heading.text().length()).matches()) {
      int from = heading.folded().rawIndex(day.storyFrom());
      cuts.add(new DayEntry.LineCut(day.headingEnds(), from, heading.raw().length()));
    }
    for (int i = day.headingEnds() + 1; i < next; i++) {
      NoteLine line = lines.get(i);
      int chat = DayLineReader.chatEnd(line.text());
      boolean other =
          author.isPresent() && chat > 0 && !author.equals(DayLineReader.sender(line.text()));
      if (other
          || lists.contains(i)
          || EMPTY_BOX.matcher(line.text()).matches()
          || MEDIA.matcher(line.text()).region(chat, line.text().length()).matches()) {
        cuts.add(whole(i));
      } else if (TICKED.matcher(line.text()).lookingAt()) {
        int end = DayNameReader.end(TICKED, line.text(), 0);
        cuts.add(new DayEntry.LineCut(i, 0, line.folded().rawIndex(end)));
      } else if (chat > 0) {
        cuts.add(new DayEntry.LineCut(i, 0, line.folded().rawIndex(chat)));
      }
    }
    int end = below.orElse(next);
    IntStream.range(end, next).mapToObj(this::whole).forEach(cuts::add);
    if (end == next) {
      int last = below.isPresent() ? atEnd(day, next, NoteEnd::isNoStory, cuts) : next;
      boolean isBack = firstDays.getOrDefault(next, Integer.MAX_VALUE) < day.day().first();
      atEnd(
          day,
          last,
          line ->
              HEADING.matcher(line.text()).matches() || isBack && Afterthought.isAlone(line.text()),
          cuts);
    }
    closingBracket(day, next).ifPresent(cuts::add);
    return day.without(cuts);
  }

  /** {@code (forgot the 21st: rain)}. */
  private Optional<DayEntry.LineCut> closingBracket(DayEntry day, int next) {
    NoteLine line = lines.get(day.index());
    String text = line.text().stripTrailing();
    boolean whole =
        day.day().isAfterthought()
            && next - 1 == day.headingEnds()
            && day.headingEnds() == day.index()
            && line.text().strip().startsWith("(")
            && text.endsWith(")")
            && text.indexOf(')') == text.length() - 1;
    return whole
        ? Optional.of(
            new DayEntry.LineCut(
                day.index(),
                line.folded().rawIndex(text.length() - 1),
                line.folded().rawIndex(text.length())))
        : Optional.empty();
  }

  private DayEntry.LineCut whole(int line) {
    return new DayEntry.LineCut(line, 0, lines.get(line).raw().length());
  }

  /** The labels of a form; what stands behind them is as it was. */
  private List<DayEntry.LineCut> labels(DayEntry day, int next) {
    List<DayEntry.LineCut> cuts = new ArrayList<>();
    for (int i = day.headingEnds(); i < next; i++) {
      NoteLine line = lines.get(i);
      int from = i == day.headingEnds() ? day.storyFrom() : 0;
      int end = DayNameReader.end(STORY_LABEL, line.text(), from);
      boolean noPage = NO_PAGE.matcher(line.text()).region(from, line.text().length()).matches();
      boolean whole = noPage || end == line.text().length();
      if (noPage || end > from) {
        int to = whole ? line.raw().length() : line.folded().rawIndex(end);
        cuts.add(new DayEntry.LineCut(i, line.folded().rawIndex(from), to));
      }
    }
    return cuts;
  }

  /** The last lines as far as all of them that are not blank are such; where the rest ends. */
  private int atEnd(
      DayEntry day, int next, Predicate<NoteLine> isNoStory, List<DayEntry.LineCut> cuts) {
    int end = next;
    for (int i = next - 1; i > day.headingEnds(); i--) {
      NoteLine line = lines.get(i);
      if (isNoStory.test(line)) {
        cuts.add(whole(i));
        end = i;
      } else if (!line.text().isBlank()) {
        return end;
      }
    }
    return end;
  }
}
