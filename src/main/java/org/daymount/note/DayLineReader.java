package org.daymount.note;

import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.album.PageSpecParser;

/** All the ways in which a line may start a day; {@link DayOrder} chooses among them. */
final class DayLineReader {
  private static final Pattern CHAT =
      Pattern.compile(
          " *\\[?(?:(\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}),? +\\d{1,2}[:.]\\d{2}(?::\\d{2})?(?:"
              + " ?[ap]\\.?m\\.?)?|\\d{1,2}:\\d{2}(?::\\d{2})?(?: ?[ap]m)?,"
              + " +(\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}))\\]? *-? *(?<sender>[^:]{1,40}): ");
  private static final Pattern LEAD =
      Pattern.compile("(?:\\[[ x]?\\] *|[^\\p{L}\\p{N}\\s\"'+$€£~.,:;?!%&]+? *| )*+");
  private static final Pattern ARTICLE =
      Pattern.compile(
          "(?:(?:yesterday|gestern|hier|ayer|ieri|gisteren|ontem|wczoraj|igar)[ ,(:-]{1,3}(?=\\p{L}))?"
              + "(?:week-?ends? (?:of )?(?:the )?(?=\\d))?(?:(?:on )?(?:the|am|der|den|le|el|il|o"
              + "|de|(?:del|dal|du|vom|von|from(?: the)?|van|od|fran)(?= (?:\\p{L}{3,10} )?\\d{1,2}\\D{1,24}\\d)) +)?(?=\\d|\\p{L})");

  /** Words before the number, as they are spoken. */
  private static final Pattern FILLER =
      Pattern.compile(
          "(?:(?:so|ok(?:ay)?|and|then|well|um+|uh|oh|right|now|anyway|also|album|diary|entry|und|dann|et"
              + "|puis|luego|poi|dan|toen|och|sedan)[ ,]+){1,6}(?:(?:on )?the +)?(?=\\d|\\p{L})");

  /** {@code two photos - 1st - leaves}: the page first, then the day. */
  private static final Pattern MARK_BETWEEN =
      Pattern.compile(" *(?:[-:|,;>→)\\]]+|\\.(?= )) *(?=.)");

  private static final Pattern MARK_BEHIND = Pattern.compile(" *(?:$|[-:|,;>→)]|\\.(?= |$))");

  private final DayNameReader names;
  private final DayRangeReader ranges;
  private final DayWeigher weigher;
  private final UnnumberedDays unnumbered;
  private final Set<String> bases;

  /**
   * @param month as the note's top says
   * @param assumed the month that most of the note's dates lie in, when the top does not say
   */
  DayLineReader(
      CalendarNames calendar,
      Optional<YearMonth> month,
      Optional<Month> assumed,
      Set<String> bases) {
    this.names = new DayNameReader(calendar, month, assumed);
    this.ranges = new DayRangeReader(names);
    this.bases = bases;
    this.weigher = new DayWeigher(names, bases);
    this.unnumbered = new UnnumberedDays(names, ranges, weigher);
  }

  /**
   * @param line as {@link org.daymount.album.NormalizedText} has it
   */
  List<DayCandidate> read(String line) {
    if (line.startsWith("\\")) {
      return List.of(); // the person says that it is story
    }
    Matcher chat = CHAT.matcher(line);
    if (!chat.lookingAt()) {
      return read(line, 0, "");
    }
    List<DayCandidate> spoken = read(line, chat.end(), "chat ");
    return spoken.isEmpty()
        ? stamped(line, chat.start(chat.group(1) != null ? 1 : 2), chat.end())
        : spoken;
  }

  private List<DayCandidate> read(String line, int start, String chat) {
    int lead = DayNameReader.end(LEAD, line, start);
    int at = DayNameReader.end(ARTICLE, line, lead);
    boolean minus = lead > 0 && line.charAt(lead - 1) == '-' && at == lead;
    List<DayName> found = names.possibleAt(line, at);
    DayWeigher.Lead before = minus ? DayWeigher.Lead.MINUS : DayWeigher.Lead.PLAIN;
    int filled = DayNameReader.end(FILLER, line, at);
    if (found.isEmpty() && filled > at) {
      found = names.possibleAt(line, filled);
      before = DayWeigher.Lead.WORD;
    }
    List<DayCandidate> candidates = new ArrayList<>();
    int after = Afterthought.end(line, lead);
    if (after > lead) {
      return names.possibleAt(line, after).stream()
          .filter(name -> Afterthought.isOf(name, line, after))
          .limit(1)
          .flatMap(
              name -> weigher.weigh(line, List.of(name), DayWeigher.Lead.PLAIN, chat, -1).stream())
          .map(DayCandidate::asAfterthought)
          .toList();
    }
    for (DayName name : found) {
      int forgotten = Afterthought.endBehind(line, name.end());
      if (forgotten > name.end()) {
        weigher
            .weigh(line, List.of(name.reaching(forgotten)), before, chat, -1)
            .map(DayCandidate::asAfterthought)
            .ifPresent(candidates::add);
        continue;
      }
      List<List<DayName>> readings = new ArrayList<>();
      ranges.from(line, name).ifPresent(readings::add);
      readings.add(List.of(name)); // of two as good the first is taken
      for (List<DayName> reading : readings) {
        weigher.weigh(line, reading, before, chat, -1).ifPresent(candidates::add);
      }
    }
    if (found.stream()
        .allMatch(
            name ->
                name.month().isEmpty()
                    && (name.weekdayIsWrong(names.month())
                        || name.weekday().isPresent()
                            && line.substring(at, name.end()).contains(" - ")))) {
      candidates.addAll(unnumbered.read(line, lead, at, chat));
      candidates.addAll(behindPage(line, lead, chat));
    } else if (found.stream()
        .allMatch(name -> name.month().isEmpty() && name.weekday().isEmpty())) { // "2 pics. 3 June"
      behindPage(line, lead, chat).stream()
          .filter(day -> day.names().get(0).month().isPresent())
          .forEach(candidates::add);
    }
    return candidates;
  }

  /** Whether a day with a month or a weekday may be named there; quicker than to read it. */
  boolean mayName(String line, int from) {
    int at = DayNameReader.end(ARTICLE, line, DayNameReader.end(FILLER, line, from));
    return Character.isDigit(line.charAt(at)) || names.isNamedAt(line, at);
  }

  /** A day that stands behind words for its page, between marks. */
  private List<DayCandidate> behindPage(String line, int from, String chat) {
    PageSpecParser.Read page = PageSpecParser.read(line, from, bases);
    int at = DayNameReader.end(MARK_BETWEEN, line, page.end());
    if (!page.any() || page.words().saysNothing() || at == page.end()) {
      return List.of();
    }
    return names.possibleAt(line, DayNameReader.end(ARTICLE, line, at)).stream()
        .filter(
            name ->
                ranges.from(line, name).isPresent()
                    || line.charAt(name.end() - 1) == '.' // "June 2nd Monday."
                    || DayNameReader.end(MARK_BEHIND, line, name.end()) > name.end()
                    || name.end() == line.length())
        .flatMap(
            name ->
                weigher
                    .weigh(
                        line,
                        ranges.from(line, name).orElse(List.of(name)),
                        DayWeigher.Lead.PLAIN,
                        chat,
                        -1)
                    .stream())
        .map(day -> day.with(page.words()))
        .toList();
  }

  /** Behind the stamp and the name of a chat's line; 0 on any other. */
  static int chatEnd(String line) {
    return DayNameReader.end(CHAT, line, 0);
  }

  /** Who wrote a chat's line. */
  static Optional<String> sender(String line) {
    Matcher chat = CHAT.matcher(line);
    return chat.lookingAt() ? Optional.of(chat.group("sender")) : Optional.empty();
  }

  /** The day of a chat's stamp, where the message itself names none. */
  private List<DayCandidate> stamped(String line, int from, int restFrom) {
    List<DayCandidate> candidates = new ArrayList<>();
    for (DayName name : names.possibleAt(line, from)) {
      if (name.month().isEmpty()) {
        continue;
      }
      weigher
          .weigh(line, List.of(name), DayWeigher.Lead.PLAIN, "stamp ", restFrom)
          .ifPresent(candidates::add);
    }
    return candidates;
  }
}
