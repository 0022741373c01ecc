package org.daymount.note;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.daymount.album.NormalizedText;
import org.daymount.album.PageSpecParser;

/**
 * Notes in many hands, our own, each with what its writer means, written down before the parser was
 * run on it: {@code day | page | first words of the story}.
 */
final class FreelyTypedNotes {
  static final YearMonth MONTH = YearMonth.of(2026, 6);

  /** How many days were read as meant, and what was not. */
  record Score(int right, int all, List<String> wrong) {
    double share() {
      return (double) right / all;
    }

    Score plus(Score other) {
      List<String> both = new ArrayList<>(wrong);
      both.addAll(other.wrong);
      return new Score(right + other.right, all + other.all, both);
    }
  }

  private record Meant(String page, String story) {}

  private FreelyTypedNotes() {}

  static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".txt")).sorted().toList();
    }
  }

  static Score score(Path file, MonthNote note) throws IOException {
    Map<Integer, Meant> meant = new TreeMap<>();
    for (String line : Files.readAllLines(Path.of(file.toString().replace(".txt", ".expected")))) {
      String[] parts = line.split("\\|", -1);
      meant.put(Integer.parseInt(parts[0].strip()), new Meant(parts[1].strip(), parts[2].strip()));
    }
    int right = 0;
    List<String> wrong = new ArrayList<>();
    for (int day = 1; day <= MONTH.lengthOfMonth(); day++) {
      Optional<MonthNote.Joined> read = note.on(MONTH.atDay(day), MONTH);
      Meant wanted = meant.get(day);
      if (wanted == null) {
        if (read.isPresent()) {
          wrong.add(file.getFileName() + " day " + day + " is no day of the note");
        }
        continue;
      }
      String page = read.map(joined -> PageSpecParser.text(joined.words())).orElse("(no day)");
      String story = read.flatMap(MonthNote.Joined::story).orElse("");
      boolean storyRight =
          wanted.story().isEmpty()
              ? story.isEmpty()
                  || !wanted.page().isEmpty() && page.equals(wanted.page()) && isShort(story)
              : plain(story).startsWith(plain(wanted.story()));
      if (page.equals(wanted.page()) && storyRight) {
        right++;
      } else {
        wrong.add(file.getFileName() + " day " + day + ": " + page + " | " + story);
      }
    }
    return new Score(right, meant.size(), wrong);
  }

  /** "of the ferry", left over from "two photos of the ferry", is no harm; other lines would be. */
  private static boolean isShort(String story) {
    return story.isEmpty() || !story.contains("\n") && story.contains("of the");
  }

  private static String plain(String text) {
    return NormalizedText.fold(text).strip();
  }
}
