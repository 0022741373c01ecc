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
      List.of("de", "fr", "es", "it", "nl", "pt", "pl", "sv");

  private final Map<String, Month> months = new LinkedHashMap<>();
  private final Map<String, DayOfWeek> weekdays = new LinkedHashMap<>();

  CalendarNames(Locale... extra) {
    for (Locale locale : extra) {
      add(locale);
    }
    add(Locale.ENGLISH);
    for (String language : LANGUAGES) {
      add(Locale.forLanguageTag(language));
    }
    months.putIfAbsent("sept", Month.SEPTEMBER);
    weekdays.putIfAbsent("tues", DayOfWeek.TUESDAY);
    weekdays.putIfAbsent("weds", DayOfWeek.WEDNESDAY);
    weekdays.putIfAbsent("thur", DayOfWeek.THURSDAY);
    weekdays.putIfAbsent("thurs", DayOfWeek.THURSDAY);
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

  Optional<Found<Month>> monthAt(String folded, int at) {
    return longest(months, folded, at);
  }

  Optional<Found<DayOfWeek>> weekdayAt(String folded, int at) {
    return longest(weekdays, folded, at);
  }

  private static <T> Optional<Found<T>> longest(Map<String, T> names, String folded, int at) {
    return names.entrySet().stream()
        .filter(name -> folded.startsWith(name.getKey(), at))
        .filter(name -> endsThere(folded, at + name.getKey().length()))
        .max(Comparator.comparingInt(name -> name.getKey().length()))
        .map(name -> new Found<>(name.getValue(), withDot(folded, at + name.getKey().length())));
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
