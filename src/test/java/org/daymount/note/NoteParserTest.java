package org.daymount.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The golden notes are our own, typed in the ways people type; the scenario is invented. */
class NoteParserTest {
  private static final Path NOTES = Path.of("src/test/resources/notes");
  private static final Pattern EXAMPLE =
      Pattern.compile("```(note|broken-note)\n(.*?)```", Pattern.DOTALL);

  static Stream<String> goldenNotes() throws IOException {
    try (Stream<Path> files = Files.list(NOTES)) {
      List<String> names =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".txt") && !name.endsWith(".expected.txt"))
              .sorted()
              .toList();
      assertTrue(names.size() >= 20, "golden notes are missing: " + names);
      return names.stream();
    }
  }

  private static MonthNote parseGolden(String name) throws IOException {
    String text = Files.readString(NOTES.resolve(name));
    if (name.contains("german")) {
      return NoteParser.parse(text, Locale.GERMAN);
    }
    return name.contains("french") ? NoteParser.parse(text, Locale.FRENCH) : NoteParser.parse(text);
  }

  @ParameterizedTest
  @MethodSource("goldenNotes")
  void aNoteAsPeopleTypeItIsReadAsExpected(String name) throws IOException {
    String expected = Files.readString(NOTES.resolve(name.replace(".txt", ".expected.txt")));
    assertEquals(expected, NoteDump.of(parseGolden(name)));
  }

  @ParameterizedTest
  @MethodSource("goldenNotes")
  void aNoteIsWrittenBackByteForByte(String name) throws IOException {
    assertEquals(Files.readString(NOTES.resolve(name)), NoteWriter.write(parseGolden(name)));
  }

  @Provide
  Arbitrary<String> notes() {
    Arbitrary<String> pieces =
        Arbitraries.of(
            "June 2026",
            "3",
            "4.",
            "Day 5",
            "June 6",
            "Wed 3:",
            "4x6",
            "two 3x4",
            "on mat",
            "no photo",
            "tall",
            ": ",
            " ",
            "\t",
            "\n",
            "\r\n",
            "\r",
            "\n\n",
            "\u00a0",
            "\ufeff",
            "３",
            "03/06",
            "3 eggs",
            "12:30",
            "—",
            "“so”",
            "é",
            "e\u0301",
            "🙂",
            "İ",
            "x",
            "and",
            "#",
            "1-3");
    Arbitrary<String> anything = Arbitraries.strings().ofMaxLength(6);
    return Arbitraries.frequencyOf(Tuple.of(8, pieces), Tuple.of(1, anything))
        .list()
        .ofMaxSize(40)
        .map(parts -> String.join("", parts));
  }

  @Property
  void fromNoteToRecordsAndBackEveryByteIsKept(@ForAll("notes") String text) {
    MonthNote note = NoteParser.parse(text, Locale.GERMAN);
    assertEquals(text, NoteWriter.write(note));
    assertEquals(note, NoteParser.parse(NoteWriter.write(note), Locale.GERMAN));
  }

  @Property
  void everyRemarkPointsIntoTheNote(@ForAll("notes") String text) {
    List<String> lines = List.of(text.split("\r\n|\r|\n", -1));
    for (NoteRemark remark : NoteParser.parse(text).remarks()) {
      assertTrue(remark.line() >= 1 && remark.line() <= lines.size(), remark.toString());
      String line = lines.get(remark.line() - 1);
      assertTrue(
          remark.column() >= 1 && remark.column() <= line.codePointCount(0, line.length()) + 1,
          remark + " in '" + line + "'");
    }
  }

  @Property
  void everyLetterOfAStoryIsKept(@ForAll("notes") String text) {
    for (NoteDay day : NoteParser.parse(text).days()) {
      String printed = letters(day.story().orElse(""));
      String taken = letters(String.join("", day.taken()));
      assertEquals(sorted(letters(day.storyText())), sorted(printed + taken));
    }
  }

  /** Without backslashes: one at a line's start says that it is story, and is not printed. */
  private static String letters(String text) {
    return text.replaceAll("[\\s\\p{Z}\\p{Cntrl}\ufeff\\\\]", "");
  }

  private static String sorted(String text) {
    return text.codePoints()
        .sorted()
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  @Property
  void noWordOfADayLineLandsOnAnotherDay(@ForAll("days") List<String> rest) {
    StringBuilder text = new StringBuilder("June 2026\n");
    for (int day = 1; day <= rest.size(); day++) {
      text.append(day).append(rest.get(day - 1)).append(" word").append(day).append('\n');
    }
    MonthNote note = NoteParser.parse(text.toString());
    assertEquals(rest.size(), note.days().size(), text.toString());
    for (int day = 1; day <= rest.size(); day++) {
      NoteDay read = note.days().get(day - 1);
      assertEquals(day, read.name().day(), text.toString());
      String own = read.heading() + read.storyText();
      assertTrue(own.matches("(?s).*\\bword" + day + "\\s*"), own);
      assertEquals(own.indexOf("word"), own.lastIndexOf("word"), own);
    }
  }

  @Provide
  Arbitrary<List<String>> days() {
    return Arbitraries.of(
            "",
            ".",
            ")",
            " -",
            " –",
            ":",
            " 4x6 tall",
            " two photos",
            " no pic,",
            " skip,",
            " Fog,",
            " 2 pics, both tall.",
            " = landscape photo,",
            ": 3 eggs and",
            " - 14 years",
            " tall ships")
        .list()
        .ofMinSize(1)
        .ofMaxSize(30);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-02", "2024-02", "2026-06", "2026-12"})
  void anEmptyNoteHasEveryDayAndNothingToComplainOf(String text) {
    YearMonth month = YearMonth.parse(text);
    MonthNote note = NoteParser.parse(NoteWriter.blank(month));
    assertEquals(Optional.of(month), note.month());
    assertEquals(List.of(), note.remarks());
    assertEquals(month.lengthOfMonth(), note.days().size());
    assertTrue(note.days().stream().allMatch(day -> day.words().saysNothing()));
    assertTrue(note.days().stream().allMatch(day -> day.story().isEmpty()));
    assertEquals(text.equals("2024-02") ? 29 : month.lengthOfMonth(), note.days().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"de", "fr", "es", "it", "nl", "sv", "pl", "tr", "ja", "zh", "pt-BR", "ru", "el"})
  void anEmptyNoteInAnotherLanguageIsReadInThatLanguage(String tag) {
    Locale locale = Locale.forLanguageTag(tag);
    for (int month = 1; month <= 12; month++) {
      YearMonth of = YearMonth.of(2026, month);
      MonthNote note = NoteParser.parse(NoteWriter.blank(of, locale), locale);
      assertEquals(Optional.of(of), note.month(), tag);
      assertEquals(List.of(), note.remarks(), tag);
      assertEquals(of.lengthOfMonth(), note.days().size(), tag);
      assertTrue(note.days().stream().allMatch(day -> day.name().weekday().isPresent()), tag);
    }
  }

  @Test
  void whatStandsApartBelowTheLastDayIsPrintedAndPointedAtUnlessItIsAList() {
    String days = "June 2026\n28 ferry\n29 kitchen\n30 last day\n\n";
    MonthNote apart = NoteParser.parse(days + "the best June\n");
    assertEquals(1, apart.remarks().size());
    assertTrue(apart.remarks().get(0).text().contains("is printed with day 30"));
    assertTrue(apart.days().get(2).story().orElseThrow().contains("best June"));
    MonthNote list = NoteParser.parse(days + "to buy\nglue dots\n");
    assertEquals(List.of(), list.remarks());
    assertEquals(Optional.of("last day"), list.days().get(2).story());
  }

  @Test
  void everyExampleInTheHandbookIsReadWithoutARemarkUnlessItIsMarkedBroken() throws IOException {
    List<String> seen = new ArrayList<>();
    Matcher example =
        EXAMPLE.matcher(
            Files.readString(Path.of("docs/month-note.md"))
                + Files.readString(Path.of("docs/month-note-more.md")));
    while (example.find()) {
      MonthNote note = NoteParser.parse(example.group(2));
      boolean broken = example.group(1).equals("broken-note");
      assertEquals(broken, !note.remarks().isEmpty(), example.group(2) + note.remarks());
      assertTrue(!note.days().isEmpty(), example.group(2));
      seen.add(example.group(1));
    }
    assertTrue(seen.contains("note") && seen.contains("broken-note"), seen.toString());
  }

  @Test
  void aHugeNoteOfHostileLinesIsReadInReasonableTime() {
    String text =
        "June 2026\n1:\n"
            + "2 eggs\n".repeat(20_000)
            + "and ".repeat(50_000)
            + "\n3 4x6 "
            + "tall ".repeat(50_000)
            + "\n"
            + "3: 4x6 tall\n".repeat(5_000)
            + "4 and and and".repeat(20_000);
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long start = clock.getCurrentThreadCpuTime(); // what others do on the machine does not count
    MonthNote note = NoteParser.parse(text);
    double seconds = (clock.getCurrentThreadCpuTime() - start) / 1e9;
    assertEquals(text, NoteWriter.write(note));
    assertTrue(seconds < 30, "took " + seconds + " s of processor time");
  }
}
