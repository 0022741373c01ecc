package org.daymount.note;

import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.daymount.album.NormalizedText;

/**
 * Names of months and weekdays, full and short, in English and in the locales given, as the JVM
 * knows them (Unicode CLDR). A given locale's meaning goes before the English one.
 */
final class CalendarNames {
  /** A name found at the start of a text, and where it ends. */
  record Found<T>(T value, int end) {}

  private static final List<TextStyle> STYLES =
      List.of(
          TextStyle.FULL, TextStyle.FULL_STANDALONE, TextStyle.SHORT, TextStyle.SHORT_STANDALONE);

  private static final List<String> LANGUAGES =
      List.of("de", "fr", "es", "it", "nl", "pt", "pl", "sv", "he", "ar");

  private final Map<String, Month> months = new LinkedHashMap<>();
  private final Map<String, DayOfWeek> weekdays = new LinkedHashMap<>();

  private static final CalendarNames USUAL = new CalendarNames();

  private final Map<Character, List<Map.Entry<String, Month>>> monthsByStart;
  private final Map<Character, List<Map.Entry<String, DayOfWeek>>> weekdaysByStart;

  private CalendarNames() {
    add(Locale.ENGLISH);
    LANGUAGES.forEach(language -> add(Locale.forLanguageTag(language)));
    addWaysOfShortening();
    monthsByStart = index(months);
    weekdaysByStart = index(weekdays);
  }

  CalendarNames(List<Locale> extra) {
    for (Locale locale : extra) {
      add(locale);
    }
    USUAL.months.forEach(months::putIfAbsent);
    USUAL.weekdays.forEach(weekdays::putIfAbsent);
    monthsByStart = index(months);
    weekdaysByStart = index(weekdays);
  }

  private void addWaysOfShortening() {
    months.putIfAbsent("sept", Month.SEPTEMBER);
    weekdays.putIfAbsent("tues", DayOfWeek.TUESDAY);
    weekdays.putIfAbsent("weds", DayOfWeek.WEDNESDAY);
    weekdays.putIfAbsent("thur", DayOfWeek.THURSDAY);
    weekdays.putIfAbsent("thurs", DayOfWeek.THURSDAY);
    weekdays.putIfAbsent("pn", DayOfWeek.MONDAY);
    weekdays.putIfAbsent("cz", DayOfWeek.THURSDAY);
    weekdays.putIfAbsent("sb", DayOfWeek.SATURDAY);
    weekdays.putIfAbsent("nd", DayOfWeek.SUNDAY);
  }

  private void add(Locale locale) {
    for (TextStyle style : STYLES) {
      for (Month month : Month.values()) {
        add(months, month.getDisplayName(style, locale), month);
      }
      for (DayOfWeek day : DayOfWeek.values()) {
        add(weekdays, day.getDisplayName(style, locale), day);
      }
    }
  }

  private static <T> void add(Map<String, T> names, String name, T value) {
    String folded = NormalizedText.fold(name).strip().replaceAll("\\.$", "");
    // Some locales have a bare number where others have a name; a number says nothing here.
    boolean tooShort = folded.length() == 1 && !Character.isIdeographic(folded.charAt(0));
    if (!folded.isEmpty() && !tooShort && !folded.matches("\\d+")) {
      names.putIfAbsent(folded, value);
    }
  }

  /** Whether a name of the weekday, in any of the languages, begins with the letters. */
  boolean begins(String letters, DayOfWeek weekday) {
    return weekdays.entrySet().stream()
        .anyMatch(name -> name.getValue() == weekday && name.getKey().startsWith(letters));
  }

  Optional<Found<Month>> monthAt(String folded, int at) {
    return longest(monthsByStart, folded, at);
  }

  Optional<Found<DayOfWeek>> weekdayAt(String folded, int at) {
    return longest(weekdaysByStart, folded, at);
  }

  private static <T> Optional<Found<T>> longest(
      Map<Character, List<Map.Entry<String, T>>> names, String folded, int at) {
    if (at >= folded.length()) {
      return Optional.empty();
    }
    return names.getOrDefault(folded.charAt(at), List.of()).stream()
        .filter(name -> folded.startsWith(name.getKey(), at))
        .filter(name -> endsThere(folded, at + name.getKey().length()))
        .findFirst()
        .map(name -> new Found<>(name.getValue(), withDot(folded, at + name.getKey().length())));
  }

  /** The names by their first character, so that few are tried; of those the longest first. */
  private static <T> Map<Character, List<Map.Entry<String, T>>> index(Map<String, T> names) {
    return names.entrySet().stream()
        .sorted(Comparator.comparingInt(name -> -name.getKey().length()))
        .collect(Collectors.groupingBy(name -> name.getKey().charAt(0)));
  }

  /** A name must not go on, unless it is written in a script that sets no gaps. */
  private static boolean endsThere(String folded, int end) {
    return end >= folded.length()
        || !Character.isLetter(folded.charAt(end))
        || Character.isIdeographic(folded.codePointBefore(end));
  }

  private static int withDot(String folded, int end) {
    return end < folded.length() && folded.charAt(end) == '.' ? end + 1 : end;
  }
}
