package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/**
 * A page that is asked for by another one: {@code same as yesterday}, {@code like the 3rd}, {@code
 * the usual}. It counts where that other page was said, or the note says above its first day what
 * is usual; otherwise the words are a story's.
 */
final class SamePage {
  private static final String ENDS = "(?= *(?:$|[.,;:!)|]|-+ ))";
  private static final String YESTERDAY =
      "yesterday|(?:the )?day before|above|before|last time|gestern|oben|hier|ci-dessus|ayer|arriba"
          + "|ieri|sopra|gisteren|hierboven|ontem|acima|wczoraj|wyzej|igar|ovan";
  private static final String AS =
      "as|like|wie|comme|igual que|como|come|zoals|als|igual a|jak|som";
  private static final Pattern SAME =
      Pattern.compile(
          "(?:(?:the )?same(?: (?:pages?|layout|photos?|pics?|sizes?|thing))?|dasselbe|gleiche seite"
              + "|(?:la )?meme(?: page| chose)?|lo mismo|(?:la )?misma(?: pagina)?|stesso|uguale"
              + "|(?:het)?zelfde|o mesmo|to samo|samma)?"
              + "(?: ?(?:"
              + AS
              + ") (?:"
              + YESTERDAY
              + "|(?:day |the |am |den |le |el |il |op )?(?:day )?(\\d{1,2})(?:st|nd|rd|th|\\.)?)| again)"
              + ENDS);
  private static final Pattern USUAL =
      Pattern.compile(
          "(?:the usual|usual (?:page|photo|layout)|wie (?:immer|ublich)|das ubliche|comme d'hab(?:itude)?"
              + "|lo de siempre|il solito|zoals altijd|o de sempre|o costume|jak zwykle|som vanligt)"
              + ENDS);
  private static final Pattern USUAL_IS =
      Pattern.compile(
          "[ #*-]*(?:my |the )?usual(?: page| photo| layout)? *(?:=|:|is|means)+ *(?=.)");
  private static final Pattern USUAL_BEHIND =
      Pattern.compile("(?<=[.,;!?]) *(?:the usual|usual page)[ .]*$");
  private static final Pattern MARKS = Pattern.compile("[ .,;:!)|-]*");

  private final List<NoteLine> lines;
  private final NoteRemarks remarks;
  private final Optional<PageSpec> usual;

  /**
   * @param firstDay index of the line with the first day; what is usual stands above it
   */
  SamePage(List<NoteLine> lines, int firstDay, Set<String> bases, NoteRemarks remarks) {
    this.lines = lines;
    this.remarks = remarks;
    this.usual =
        lines.subList(0, firstDay).stream()
            .map(NoteLine::text)
            .filter(text -> DayNameReader.end(USUAL_IS, text, 0) > 0)
            .map(text -> PageSpecParser.read(text, DayNameReader.end(USUAL_IS, text, 0), bases))
            .filter(PageSpecParser.Read::any)
            .map(PageSpecParser.Read::words)
            .findFirst();
  }

  /** The days with the pages they ask for in this way. */
  List<DayEntry> complete(List<DayEntry> days) {
    List<DayEntry> complete = new ArrayList<>();
    for (DayEntry day : days) {
      complete.add(day.words().saysNothing() ? with(day, complete) : day);
    }
    return complete;
  }

  private DayEntry with(DayEntry day, List<DayEntry> above) {
    NoteLine line = lines.get(day.headingEnds());
    Matcher same = at(SAME, line, day);
    if (same.lookingAt() && same.end() > day.storyFrom()) {
      return other(above, same.group(1))
          .filter(other -> !other.words().saysNothing())
          .map(other -> taken(day, line, same.end(), other.words()))
          .orElse(day);
    }
    if (usual.isEmpty()) {
      return day;
    }
    Matcher asUsual = at(USUAL, line, day);
    if (asUsual.lookingAt()) {
      return taken(day, line, asUsual.end(), usual.get());
    }
    Matcher behind = at(USUAL_BEHIND, line, day);
    return behind.find()
        ? day.with(usual.get())
            .without(
                day.headingEnds(),
                line.folded().rawIndex(behind.start()),
                line.folded().rawIndex(behind.end()))
        : day;
  }

  private static Matcher at(Pattern pattern, NoteLine line, DayEntry day) {
    return pattern
        .matcher(line.text())
        .region(day.storyFrom(), line.text().length())
        .useTransparentBounds(true);
  }

  private static Optional<DayEntry> other(List<DayEntry> above, String number) {
    return above.stream()
        .filter(day -> number == null || day.day().first() == Integer.parseInt(number))
        .reduce((before, last) -> last);
  }

  private DayEntry taken(DayEntry day, NoteLine line, int end, PageSpec words) {
    remarks.onSamePage(line, line.text().substring(day.storyFrom(), end), day.day(), words);
    return day.with(words, day.headingEnds(), DayNameReader.end(MARKS, line.text(), end));
  }
}
