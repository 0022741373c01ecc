package org.daymount.ingest;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * By how much the clocks of some cameras were wrong: what is added to the times of each model. Case
 * does not matter in a model's name.
 */
public final class ClockCorrections {
  public static final ClockCorrections NONE = new ClockCorrections(new TreeMap<>());

  private static final Pattern CHANGE =
      Pattern.compile("([+-])(?:(\\d{1,5})d)?(?:(\\d{1,5})h)?(?:(\\d{1,5})m)?(?:(\\d{1,5})s)?");

  private final SortedMap<String, Duration> byModel;

  private ClockCorrections(SortedMap<String, Duration> byModel) {
    this.byModel = byModel;
  }

  /**
   * @param texts each {@code MODEL=+1h}, {@code MODEL=-25m}, {@code MODEL=+1h30m} or {@code
   *     MODEL=+1d}; days, hours, minutes and seconds in this order, any of them left out
   * @throws IllegalArgumentException with a sentence for the person when one is none of these or a
   *     model comes twice
   */
  public static ClockCorrections parse(List<String> texts) {
    SortedMap<String, Duration> byModel = new TreeMap<>();
    for (String text : texts) {
      int equals = text.lastIndexOf('=');
      String model = equals < 0 ? "" : text.substring(0, equals).strip();
      Matcher change = CHANGE.matcher(equals < 0 ? "" : text.substring(equals + 1).strip());
      if (model.isEmpty() || !change.matches() || change.end() < 3) {
        throw new IllegalArgumentException(
            "\"" + text + "\" is not MODEL=+1h, MODEL=-25m, MODEL=+1h30m or MODEL=+1d");
      }
      if (byModel.put(key(model), duration(change)) != null) {
        throw new IllegalArgumentException("the clock of \"" + model + "\" is given twice");
      }
    }
    return new ClockCorrections(byModel);
  }

  private static Duration duration(Matcher change) {
    Duration sum =
        Duration.ofDays(number(change.group(2)))
            .plusHours(number(change.group(3)))
            .plusMinutes(number(change.group(4)))
            .plusSeconds(number(change.group(5)));
    return change.group(1).equals("-") ? sum.negated() : sum;
  }

  private static long number(String digits) {
    return digits == null ? 0 : Long.parseLong(digits);
  }

  private static String key(String model) {
    return model.strip().toLowerCase(Locale.ROOT);
  }

  public Optional<Duration> correctionFor(String model) {
    return Optional.ofNullable(byModel.get(key(model)));
  }

  /**
   * The models named here that none of the photos has, in lower case: a warning each, most likely
   * misspelled.
   */
  public List<String> unmatched(Set<String> modelsSeen) {
    Set<String> seen =
        modelsSeen.stream().map(ClockCorrections::key).collect(Collectors.toUnmodifiableSet());
    return byModel.keySet().stream().filter(model -> !seen.contains(model)).toList();
  }

  /** Each model, in lower case, and what is added to its times. */
  public Map<String, Duration> byModel() {
    return Map.copyOf(byModel);
  }
}
