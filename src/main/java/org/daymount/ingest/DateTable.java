package org.daymount.ingest;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.daymount.file.SmallFile;
import org.daymount.photo.PhotoFile;

/**
 * What a person knows of the dates of single files: a table with a line for each, {@code file,date}
 * or {@code file,date,time} (RFC 4180; a semicolon or a tab will do for the comma, as spreadsheets
 * write them). Immutable.
 */
public final class DateTable {
  public static final DateTable EMPTY = new DateTable(Map.of(), "");

  static final String LIKE = "; write it like 2026-06-03, and the time like 14:25";

  private static final int MOST_BYTES = 4_000_000;
  private static final int MOST_NAMED = 5;

  /** 3.6.2026: with dots the day comes first, wherever dates are written so. */
  private static final Pattern DOTTED = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

  /** By the file's name, with or without its folder. */
  private final Map<String, WallTime> times;

  private final String source;

  private DateTable(Map<String, WallTime> times, String source) {
    this.times = Map.copyOf(times);
    this.source = source;
  }

  /**
   * @param name what messages call it
   * @throws IllegalArgumentException when it cannot be read, or for a line that names no file or no
   *     date; says which
   */
  public static DateTable read(Path file, String name) {
    byte[] bytes;
    try {
      bytes = SmallFile.bytes(file, MOST_BYTES);
    } catch (SmallFile.Odd e) {
      throw new IllegalArgumentException(name + " " + e.getMessage(), e);
    }
    return parse(
        SmallFile.unicode(bytes)
            .filter(text -> text.indexOf('\0') < 0)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        name + " is no text in UTF-8; save it as CSV UTF-8")),
        name);
  }

  static DateTable parse(String text, String name) {
    Map<String, WallTime> times = new LinkedHashMap<>();
    CsvMapper mapper = new CsvMapper();
    mapper.enable(CsvParser.Feature.WRAP_AS_ARRAY);
    mapper.enable(CsvParser.Feature.TRIM_SPACES);
    CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator(text));
    try (MappingIterator<String[]> lines =
        mapper.readerFor(String[].class).with(schema).readValues(text)) {
      for (int row = 1; lines.hasNextValue(); row++) {
        String[] cells = lines.nextValue();
        boolean blank = Arrays.stream(cells).allMatch(String::isBlank);
        boolean heading =
            row == 1 && cells.length > 1 && Arrays.stream(cells).noneMatch(DateTable::hasDigit);
        if (!blank && !heading) {
          add(times, cells, name + ", row " + row);
        }
      }
    } catch (IOException e) {
      throw new IllegalArgumentException(
          name + " is no table of dates; write a line like IMG_1.jpg,2026-06-03,14:25", e);
    }
    return new DateTable(times, name);
  }

  private static char separator(String text) {
    String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    return first.indexOf('\t') >= 0 ? '\t' : first.indexOf(';') >= 0 ? ';' : ',';
  }

  private static boolean hasDigit(String cell) {
    return cell.chars().anyMatch(Character::isDigit);
  }

  private static void add(Map<String, WallTime> times, String[] cells, String where) {
    String file = cells[0].strip().replace('\\', '/');
    String date = cells.length > 1 ? cells[1].strip() : "";
    String time = cells.length > 2 ? cells[2].strip() : "";
    if (file.isEmpty()) {
      throw new IllegalArgumentException(where + ": no file is named; write its name first");
    }
    Optional<WallTime> read = written(date, time);
    if (read.isEmpty()) {
      throw new IllegalArgumentException(
          where + ": '" + (date + " " + time).strip() + "' is no date" + LIKE);
    }
    WallTime other = times.put(file, read.get());
    if (other != null && !other.equals(read.get())) {
      throw new IllegalArgumentException(
          where + ": " + file + " has another date further up; leave one of the two");
    }
  }

  /** A date and, unless it is blank, a time, as people write them. */
  static Optional<WallTime> written(String date, String time) {
    return WallTime.parse((iso(date.strip()) + " " + time.strip()).strip());
  }

  private static String iso(String date) {
    Matcher dotted = DOTTED.matcher(date);
    return dotted.matches()
        ? dotted.group(3) + "-" + dotted.group(2) + "-" + dotted.group(1)
        : date;
  }

  /** What it says of a file, by its name with the folder first. */
  Optional<WallTime> of(PhotoFile file) {
    return times.isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(times.get(file.name()))
            .or(() -> Optional.ofNullable(times.get(file.lastName())));
  }

  /**
   * Sentences about the files it names that are not there, and the days that cannot be.
   *
   * @param isBelievable whether a photo may have been taken that day
   */
  List<String> notes(Collection<PhotoFile> files, Predicate<LocalDate> isBelievable) {
    List<String> notes = new ArrayList<>();
    new TreeMap<>(times)
        .forEach(
            (name, time) -> {
              LocalDate day = time.local().toLocalDate();
              if (!isBelievable.test(day)) {
                notes.add(
                    source
                        + " says "
                        + day
                        + " of "
                        + name
                        + ", which cannot be; it is not followed, put it right");
              }
            });
    missing(files).ifPresent(notes::add);
    return notes;
  }

  private Optional<String> missing(Collection<PhotoFile> files) {
    List<String> missing =
        times.keySet().stream()
            .filter(
                name ->
                    files.stream()
                        .noneMatch(f -> f.name().equals(name) || f.lastName().equals(name)))
            .sorted()
            .toList();
    if (missing.isEmpty()) {
      return Optional.empty();
    }
    String named = missing.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
    String more =
        missing.size() > MOST_NAMED ? " and " + (missing.size() - MOST_NAMED) + " more" : "";
    return Optional.of(
        source
            + " names "
            + named
            + more
            + ", which is not among the pictures; look at the spelling");
  }
}
