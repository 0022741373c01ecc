package org.daymount.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.daymount.album.NormalizedText;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/**
 * A note that is a table: its lines have columns, divided by tabs, bars, semicolons or commas. A
 * number alone in a column counts photos, where the column's title says so or none does otherwise.
 */
final class NoteColumns {
  private static final String DIVIDERS = "\t|;,";
  private static final double MOST_LINES = 0.6; // of the lines must have the same divider
  private static final int FEWEST_LINES = 3;
  private static final int MOST_PHOTOS = 6;
  private static final Pattern COUNT_TITLE =
      Pattern.compile(
          ".*(?:photo|pic|foto|bild|image|imag|immagin|zdjec|count|number|how many|qty"
              + "|anzahl|no\\.|#).*");
  private static final int FEWEST_COLUMNS = 3; // under titles, with commas and blanks between
  private static final Set<String> TITLE =
      Set.of(
          "date", "day", "datum", "tag", "fecha", "dia", "jour", "data", "giorno", "dag", "dzien");
  private static final Pattern NOTHING = Pattern.compile("[-\\s./]*");
  private static final Pattern TEXT_ALONE =
      Pattern.compile("(?:text|words|story|writing|texto?|texte|testo|tekst)");

  private final Divider divider;
  private final List<String> titles;
  private final List<Integer> counts;

  /**
   * One line of the table.
   *
   * @param storyFrom folded index at which the story starts
   * @param cuts raw parts of the line behind it that are not printed
   */
  record Row(PageSpec words, int storyFrom, List<NoteDay.Cut> cuts) {}

  /** A cell as typed, without quotes and blanks around it. */
  private record Cell(int from, int to, String folded) {}

  /**
   * What divides the columns.
   *
   * @param most columns; 0 for any number. The last keeps what stands behind it
   */
  private record Divider(char mark, boolean blankBehind, int most) {}

  private NoteColumns(Divider divider, List<String> titles, List<Integer> counts) {
    this.divider = divider;
    this.titles = titles;
    this.counts = counts;
  }

  /** Empty when the note is no table. */
  static Optional<NoteColumns> of(List<NoteLine> lines) {
    List<String> rows =
        lines.stream().map(NoteLine::content).filter(text -> !text.isBlank()).toList();
    for (char mark : DIVIDERS.toCharArray()) {
      Optional<NoteColumns> table = of(rows, new Divider(mark, mark != ',', 0));
      if (table.isPresent()) {
        return table;
      }
    }
    return rows.stream()
        .limit(FEWEST_LINES)
        .map(row -> cells(row, new Divider(',', true, 0)).stream().map(Cell::folded).toList())
        .filter(
            titles -> titles.size() >= FEWEST_COLUMNS && titles.stream().anyMatch(TITLE::contains))
        .findFirst()
        .flatMap(titles -> of(rows, new Divider(',', true, titles.size())))
        .filter(table -> !table.titles.isEmpty());
  }

  private static Optional<NoteColumns> of(List<String> rows, Divider divider) {
    List<List<Cell>> cells =
        rows.stream()
            .map(row -> cells(row, divider))
            .filter(row -> row.size() >= (divider.mark() == '\t' ? 2 : 3))
            .toList();
    if (cells.size() < FEWEST_LINES || cells.size() < MOST_LINES * rows.size()) {
      return Optional.empty();
    }
    List<String> first = cells.get(0).stream().map(Cell::folded).toList();
    boolean titled = first.stream().noneMatch(cell -> cell.matches(".*\\d.*"));
    List<List<Cell>> body = titled ? cells.subList(1, cells.size()) : cells;
    return Optional.of(
        new NoteColumns(divider, titled ? first : List.of(), counts(body, titled, first)));
  }

  /** Whether the line says what the columns are. */
  boolean isTitle(NoteLine line) {
    return !titles.isEmpty()
        && cells(line.content(), divider).stream().map(Cell::folded).toList().equals(titles);
  }

  /** The columns whose numbers count photos. */
  private static List<Integer> counts(List<List<Cell>> rows, boolean titled, List<String> titles) {
    List<Integer> counts = new ArrayList<>();
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    for (int i = 1; i < width; i++) {
      int column = i;
      List<String> numbers =
          rows.stream()
              .filter(row -> row.size() > column)
              .map(row -> row.get(column).folded())
              .filter(cell -> cell.matches("\\d+"))
              .toList();
      boolean few =
          numbers.stream()
              .allMatch(cell -> cell.length() == 1 && cell.charAt(0) <= '0' + MOST_PHOTOS);
      boolean named = titled && column < titles.size() && isPageTitle(titles.get(column));
      if (!numbers.isEmpty() && few && (named || !titled)) {
        counts.add(column);
      }
    }
    return counts;
  }

  private static boolean isPageTitle(String title) {
    return COUNT_TITLE.matcher(title).matches()
        || title.contains("page")
        || title.contains("seite");
  }

  /**
   * @param nameEnd folded index behind the day's name
   * @return empty when the line is none of the table's
   */
  Optional<Row> row(NoteLine line, int nameEnd, Set<String> bases) {
    List<Cell> cells = cells(line.content(), divider);
    if (cells.size() < 2) {
      return Optional.empty();
    }
    int named = line.folded().rawIndex(nameEnd);
    List<Cell> story = new ArrayList<>();
    List<Cell> page = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      if (cell.from() < named || NOTHING.matcher(cell.folded()).matches()) {
        continue;
      }
      Optional<String> words = words(cell, i, bases);
      words.ifPresent(said::add);
      (words.isPresent() ? page : story).add(cell);
    }
    PageSpec words = page(said, bases);
    if (words.saysNothing() && !said.isEmpty()) {
      return Optional.empty();
    }
    int from = story.isEmpty() ? line.text().length() : folded(line, story.get(0).from());
    return Optional.of(new Row(words, from, cuts(line, story)));
  }

  private Optional<String> words(Cell cell, int column, Set<String> bases) {
    String text = cell.folded();
    if (text.matches("\\d+")) {
      return counts.contains(column) ? Optional.of(text) : Optional.empty();
    }
    boolean titled = column < titles.size() && isPageTitle(titles.get(column));
    PageSpecParser.Read read = PageSpecParser.read(text, 0, bases);
    if (read.any() && read.end() == text.length()) {
      boolean open = PagePhrase.of(text, read.words()) == PagePhrase.OPEN;
      return open && !titled && !titles.isEmpty() ? Optional.empty() : Optional.of(text);
    }
    return titled && TEXT_ALONE.matcher(text).matches()
        ? Optional.of("no photo")
        : Optional.empty();
  }

  /** {@code 2} and {@code 3x4} are two of them, {@code 2} alone two photos. */
  private static PageSpec page(List<String> said, Set<String> bases) {
    if (said.isEmpty()) {
      return PageSpec.NONE;
    }
    boolean countAlone = said.stream().allMatch(each -> each.matches("\\d+"));
    String text = String.join(" ", said) + (countAlone ? " photos" : "");
    for (String way :
        List.of(text, String.join(", ", said), said.get(said.size() - 1), said.get(0))) {
      PageSpecParser.Read read = PageSpecParser.read(way, 0, bases);
      if (read.any() && read.end() == way.length()) {
        return read.words();
      }
    }
    return PageSpecParser.read(text, 0, bases).words();
  }

  /** What stands behind the last cell with story in it. */
  private static List<NoteDay.Cut> cuts(NoteLine line, List<Cell> story) {
    int from = story.isEmpty() ? line.content().length() : story.get(story.size() - 1).to();
    return from == line.content().length()
        ? List.of()
        : List.of(new NoteDay.Cut(from, line.content().length()));
  }

  private static int folded(NoteLine line, int raw) {
    int at = 0;
    while (at < line.text().length() && line.folded().rawIndex(at) < raw) {
      at++;
    }
    return at;
  }

  private static List<Cell> cells(String row, Divider divider) {
    List<Cell> cells = new ArrayList<>();
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i <= row.length(); i++) {
      boolean ends = i == row.length();
      boolean last = cells.size() + 1 == divider.most();
      if (!ends && row.charAt(i) == '"' && divider.mark() != '\t') {
        quoted = !quoted;
      }
      boolean glued =
          divider.blankBehind() || ends || i + 1 == row.length() || row.charAt(i + 1) != ' ';
      if (ends || row.charAt(i) == divider.mark() && !quoted && glued && !last) {
        cells.add(cell(row, from, i));
        from = i + 1;
      }
    }
    return cells;
  }

  private static Cell cell(String row, int start, int end) {
    int from = start;
    int to = end;
    while (from < to && Character.isWhitespace(row.charAt(from))) {
      from++;
    }
    while (to > from && Character.isWhitespace(row.charAt(to - 1))) {
      to--;
    }
    if (to - from >= 2 && row.charAt(from) == '"' && row.charAt(to - 1) == '"') {
      from++;
      to--;
    }
    return new Cell(from, to, NormalizedText.fold(row.substring(from, to)).strip());
  }
}
