package org.daymount.note;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** All the ways in which a line may start a day; {@link DayOrder} chooses among them. */
final class DayLineReader {
  private static final Pattern CHAT =
      Pattern.compile(
          " *\\[?(?:(\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}),? +\\d{1,2}[:.]\\d{2}(?::\\d{2})?(?: ?[ap]\\.?m\\.?)?"
              + "|\\d{1,2}:\\d{2}(?::\\d{2})?(?: ?[ap]m)?, +(\\d{1,4}[/.-]\\d{1,2}[/.-]\\d{2,4}))\\]?"
              + " *-? *[^:]{1,40}: ");
  private static final Pattern LEAD =
      Pattern.compile("(?:\\[[ x]?\\] *|[^\\p{L}\\p{N}\\s\"'+$€£~.,:;?!%&]+? *| )*+");
  private static final Pattern ARTICLE =
      Pattern.compile("(?:(?:on )?(?:the|am|der|den|le|el|il|o|de) +)?(?=\\d|\\p{L})");

  /** Words before the number, as they are spoken. */
  private static final Pattern FILLER =
      Pattern.compile(
          "(?:so|ok(?:ay)?|and|then|well|um+|oh|right|now|anyway|also|und|dann|et|puis|luego|poi|dan"
              + "|toen|och|sedan)[ ,]+(?:the +)?(?=\\d)");

  private final DayNameReader names;
  private final DayRangeReader ranges;
  private final DayWeigher weigher;

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
    this.weigher = new DayWeigher(names, bases);
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
    List<DayName> found = possible(line, at);
    DayWeigher.Lead before = minus ? DayWeigher.Lead.MINUS : DayWeigher.Lead.PLAIN;
    int filled = DayNameReader.end(FILLER, line, at);
    if (found.isEmpty() && filled > at) {
      found = possible(line, filled);
      before = DayWeigher.Lead.WORD;
    }
    List<DayCandidate> candidates = new ArrayList<>();
    for (DayName name : found) {
      List<List<DayName>> readings = new ArrayList<>();
      ranges.from(line, name).ifPresent(readings::add);
      readings.add(List.of(name)); // of two as good the first is taken
      for (List<DayName> reading : readings) {
        weigher.weigh(line, reading, before, chat, -1).ifPresent(candidates::add);
      }
    }
    if (found.stream().allMatch(name -> name.weekdayIsWrong(names.month()))) {
      candidates.addAll(weekdayAlone(line, at, chat));
    }
    return candidates;
  }

  /** The day of a chat's stamp, where the message itself names none. */
  private List<DayCandidate> stamped(String line, int from, int restFrom) {
    List<DayCandidate> candidates = new ArrayList<>();
    for (DayName name : possible(line, from)) {
      if (name.month().isEmpty()) {
        continue;
      }
      weigher
          .weigh(line, List.of(name), DayWeigher.Lead.PLAIN, "stamp ", restFrom)
          .ifPresent(candidates::add);
    }
    return candidates;
  }

  private List<DayName> possible(String line, int at) {
    return names.at(line, at).stream().filter(DayName::isPossible).toList();
  }

  /** {@code Monday - we arrived}: any Monday of the month. */
  private List<DayCandidate> weekdayAlone(String line, int from, String chat) {
    Optional<CalendarNames.Found<DayOfWeek>> weekday = names.weekdayAt(line, from);
    List<DayCandidate> candidates = new ArrayList<>();
    if (weekday.isEmpty() || names.month().isEmpty() || weekday.get().end() - from < 3) {
      return candidates;
    }
    YearMonth month = names.month().get();
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      if (month.atDay(day).getDayOfWeek() == weekday.get().value()) {
        DayName name =
            new DayName(
                day,
                Optional.empty(),
                OptionalInt.empty(),
                Optional.of(weekday.get().value()),
                weekday.get().end(),
                "weekday-alone",
                false);
        weigher
            .weigh(line, List.of(name), DayWeigher.Lead.PLAIN, chat, -1)
            .ifPresent(candidates::add);
      }
    }
    return candidates;
  }
}
