package org.daymount.note;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.daymount.album.NormalizedText;
import org.daymount.album.PageSpecParser;

/**
 * Notes in many hands, our own, each with what its writer means, written down before the parser was
 * run on it: {@code day | page | first words of the story | its last words}, the last where they
 * matter. The first line may give the month the photos are of: {@code month | 2026-03}.
 */
final class FreelyTypedNotes {
  static final YearMonth MONTH = YearMonth.of(2026, 6);
  private static final int LONG_ENOUGH = 12; // characters

  /**
   * How many days were read as meant, and what was not.
   *
   * @param misplaced days whose words stand on another day's card: a day that was not seen, so that
   *     its line went to the day above; a line of story that was taken for a day; or a story that
   *     is found with another day
   */
  record Score(int right, int all, List<String> wrong, List<String> misplaced) {
    static final Score NONE = new Score(0, 0, List.of(), List.of());

    double share() {
      return (double) right / all;
    }

    Score plus(Score other) {
      return new Score(
          right + other.right,
          all + other.all,
          both(wrong, other.wrong),
          both(misplaced, other.misplaced));
    }

    private static List<String> both(List<String> first, List<String> second) {
      return Stream.concat(first.stream(), second.stream()).toList();
    }

    /** For the record. */
    String text() {
      return String.format(
          Locale.ROOT,
          "%d of %d days (%.1f %%), words on the wrong card: %d%n%s",
          right,
          all,
          100 * share(),
          misplaced.size(),
          Stream.concat(wrong.stream(), misplaced.stream().map(each -> "MISPLACED " + each))
              .map(each -> "  " + each + "\n")
              .collect(Collectors.joining()));
    }
  }

  private record Meant(String page, String story, String end) {
    static Meant of(String[] parts) {
      return new Meant(
          parts[1].strip(), parts[2].strip(), parts.length > 3 ? parts[3].strip() : "");
    }
  }

  /** The month of the photos, and what is meant for each day. */
  private record Expected(YearMonth month, Map<Integer, Meant> days) {
    static Expected of(Path note) throws IOException {
      YearMonth month = MONTH;
      Map<Integer, Meant> days = new TreeMap<>();
      for (String line :
          Files.readAllLines(Path.of(note.toString().replace(".txt", ".expected")))) {
        String[] parts = line.split("\\|", -1);
        if (parts[0].strip().equals("month")) {
          month = YearMonth.parse(parts[1].strip());
        } else {
          days.put(Integer.parseInt(parts[0].strip()), Meant.of(parts));
        }
      }
      return new Expected(month, days);
    }
  }

  private FreelyTypedNotes() {}

  /** Of the notes in a folder that are odd (1) or even (0) in their order. */
  static Score score(Path folder, int remainder) throws IOException {
    List<Path> files = in(folder);
    Score score = Score.NONE;
    for (int i = 0; i < files.size(); i++) {
      if ((i + 1) % 2 == remainder) {
        score = score.plus(score(files.get(i)));
      }
    }
    return score;
  }

  static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".txt")).sorted().toList();
    }
  }

  static Score score(Path file) throws IOException {
    YearMonth month = Expected.of(file).month();
    MonthNote note =
        NoteParser.parse(Files.readString(file), Set.of(), Optional.of(month), Locale.ENGLISH);
    return score(file, note);
  }

  static Score score(Path file, MonthNote note) throws IOException {
    Expected expected = Expected.of(file);
    YearMonth month = expected.month();
    Map<Integer, Meant> meant = expected.days();
    int right = 0;
    List<String> wrong = new ArrayList<>();
    List<String> misplaced = new ArrayList<>();
    for (int day = 1; day <= month.lengthOfMonth(); day++) {
      Optional<MonthNote.Joined> read = note.on(month.atDay(day), month);
      Meant wanted = meant.get(day);
      if (wanted == null) {
        if (read.isPresent()) {
          misplaced.add(file.getFileName() + " day " + day + " is no day of the note");
        }
        continue;
      }
      if (read.isEmpty()) {
        misplaced.add(file.getFileName() + " day " + day + " was not seen");
      }
      String page = read.map(joined -> PageSpecParser.text(joined.words())).orElse("(no day)");
      String story = read.flatMap(MonthNote.Joined::story).orElse("");
      boolean storyRight =
          wanted.story().isEmpty()
              ? story.isEmpty()
                  || !wanted.page().isEmpty() && page.equals(wanted.page()) && isShort(story)
              : plain(story).startsWith(plain(wanted.story()));
      boolean endRight = plain(story).endsWith(plain(wanted.end()));
      boolean pageRight =
          onePhoto(page).equals(onePhoto(wanted.page()))
              || story.isEmpty() && isBlank(page) && isBlank(wanted.page());
      if (pageRight && storyRight && endRight) {
        right++;
      } else {
        wrong.add(
            file.getFileName()
                + " day "
                + day
                + ": "
                + page
                + " | "
                + story
                + "\n    meant: "
                + String.join(" | ", wanted.page(), wanted.story(), wanted.end()));
      }
      int own = day;
      meant.forEach(
          (other, words) -> {
            boolean shared =
                plain(wanted.story()).startsWith(plain(words.story()))
                    || plain(words.story()).startsWith(plain(wanted.story()))
                        && !wanted.story().isEmpty();
            if (!words.story().isEmpty() && !shared && has(story, words.story())) {
              misplaced.add(file.getFileName() + " day " + own + " has the words of " + other);
            }
          });
    }
    Map<Object, Integer> seen = new TreeMap<>();
    for (NoteDay day : note.days()) {
      day.names().forEach(name -> seen.merge(name.day(), 1, Integer::sum));
    }
    boolean twice = file.getFileName().toString().matches(".*(chat|repeats).*");
    seen.values().stream()
        .filter(times -> times > 1 && !twice)
        .forEach(times -> misplaced.add(file.getFileName() + " has a day " + times + " times"));
    return new Score(right, meant.size(), wrong, misplaced);
  }

  /** Without a story nothing is printed for either. */
  private static boolean isBlank(String page) {
    return page.equals("no photo") || page.equals("leave out");
  }

  /**
   * "one photo, upright" and "upright" make the same page, and a writer's "journaling card" with no
   * photo beside it is one without a photo.
   */
  private static String onePhoto(String page) {
    String plain =
        page.replaceAll("(?<=^|, )photo(?= (?:portrait|landscape)| on mat) ?", "")
            .replace("photo, full page", "full page");
    return plain.equals("journaling card") ? "no photo, journaling card" : plain;
  }

  /** "of the ferry", left over from "two photos of the ferry", is no harm; other lines would be. */
  private static boolean isShort(String story) {
    return story.isEmpty()
        || !story.contains("\n") && story.matches("(?:of the|van de|vom|de la|du|del|av) .*");
  }

  /** At the start of a line, or anywhere if it is too long for that to be chance. */
  private static boolean has(String story, String start) {
    return story.lines().anyMatch(line -> plain(line).startsWith(plain(start)))
        || start.length() >= LONG_ENOUGH && plain(story).contains(plain(start));
  }

  /** Letters and digits alone: its writers were told that marks and case do not matter. */
  private static String plain(String text) {
    return NormalizedText.fold(text)
        .replaceAll("[^\\p{L}\\p{M}\\p{N}\\s]+", " ")
        .replaceAll("\\s+", " ")
        .strip();
  }
}
