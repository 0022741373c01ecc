package org.daymount.album;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/**
 * Reads album.txt. What is not understood is named with its line, and the rest holds:
 *
 * <pre>
 * page 6x8
 * have two 4x6, four 3x4, full
 *
 * base quay
 *   4x6 portrait on mat  at 1, 1/2      # inches from the left and the top of the page
 *   story 3x2            at 1 1/2, 6
 *   paper 6x8
 *   strip 1/8x6
 *   days 1-10, 15
 * </pre>
 */
public final class AlbumFileParser {
  private static final Pattern WORD =
      Pattern.compile("(page|have|base|days?|story|free|paper|strip)\\b(.*)");
  private static final Pattern AT =
      Pattern.compile("(.*?)\\s+at\\s+(.+?)\\s*(?:,\\s+|;\\s*|,(?=[^,]*$))(.+)");
  private static final Pattern DAYS = Pattern.compile("(\\d{1,2})(?:\\s*-\\s*(\\d{1,2}))?");

  private final List<String> remarks = new ArrayList<>();
  private final Map<String, BasePage> bases = new LinkedHashMap<>();
  private final List<List<PaperSize>> have = new ArrayList<>();
  private Optional<PaperSize> page = Optional.empty();
  private Optional<Draft> draft = Optional.empty();
  private int line;

  /** A ready-made page while it is being read. */
  private static final class Draft {
    private final String name;
    private final List<BasePlace> places = new ArrayList<>();
    private final List<PaperSize> papers = new ArrayList<>();
    private final Set<Integer> days = new TreeSet<>();

    private Draft(String name) {
      this.name = name;
    }
  }

  private AlbumFileParser() {}

  public static AlbumFile parse(String text) {
    return new AlbumFileParser().read(text);
  }

  private AlbumFile read(String text) {
    for (String raw : text.replace("\uFEFF", "").split("\r\n|\r|\n", -1)) {
      line++;
      String words = raw.replaceFirst("#.*", "").strip();
      if (words.isEmpty()) {
        continue;
      }
      try {
        read(words, words.toLowerCase(Locale.ROOT));
      } catch (IllegalArgumentException e) {
        remark(e.getMessage());
      }
    }
    closeDraft();
    return new AlbumFile(page, have, bases, remarks);
  }

  private void remark(String what) {
    remarks.add("line " + line + ": " + what);
  }

  private void read(String raw, String words) {
    Matcher first = WORD.matcher(words);
    String word = first.matches() ? first.group(1) : "";
    String rest = word.isEmpty() ? "" : raw.substring(word.length()).strip();
    switch (word) {
      case "page" -> page = Optional.of(SizeText.parseSize(rest));
      case "have" -> {
        for (String kind : rest.split("[,;]")) {
          have.add(pockets(kind.strip()));
        }
      }
      case "base" -> {
        closeDraft();
        if (NormalizedText.fold(rest).isBlank()) {
          throw new IllegalArgumentException("a base needs a name, such as: base quay");
        }
        draft = Optional.of(new Draft(rest));
      }
      default -> onBase(word, rest, raw);
    }
  }

  /** {@code two 4x6}, {@code 4x6 and two 3x4}; none for {@code full}. */
  private static List<PaperSize> pockets(String kind) {
    if (kind.toLowerCase(Locale.ROOT).matches("full(?: page)?|plain")) {
      return List.of();
    }
    return PageSpecParser.parse(kind).spaces().stream()
        .map(
            space ->
                space
                    .size()
                    .orElseThrow(
                        () ->
                            new IllegalArgumentException(
                                "'" + kind + "' has no size; write kinds like two 4x6, or full")))
        .toList();
  }

  private void onBase(String word, String rest, String raw) {
    Draft on =
        draft.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'"
                        + raw
                        + "' is not understood; write page 6x8, have two 4x6, full, or base and a"
                        + " name"));
    switch (word) {
      case "paper", "strip" -> on.papers.addAll(papers(rest));
      case "day", "days" -> on.days.addAll(days(rest));
      case "story" -> add(on, BasePlace.What.STORY, rest);
      case "free" -> add(on, BasePlace.What.FREE, rest);
      default -> add(on, BasePlace.What.PHOTO, raw);
    }
  }

  /** A size, or several: {@code two 1/8x6} is said as {@code 1/8x6 x2}. */
  private static List<PaperSize> papers(String words) {
    Matcher times = Pattern.compile("(.+?)\\s+x\\s*(\\d{1,2})").matcher(words);
    boolean several = times.matches();
    PaperSize size =
        SizeText.parseSize((several ? times.group(1) : words).replaceFirst("\\s+at\\s.*", ""));
    int count = several ? Integer.parseInt(times.group(2)) : 1;
    return java.util.Collections.nCopies(count, size);
  }

  private static Set<Integer> days(String words) {
    Set<Integer> days = new TreeSet<>();
    for (String part : words.split("[,;]|\\band\\b")) {
      Matcher range = DAYS.matcher(part.strip());
      if (!range.matches()) {
        throw new IllegalArgumentException(
            "'" + part.strip() + "' is not a day; write days like 1-10, 15");
      }
      int from = Integer.parseInt(range.group(1));
      int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
      if (from < 1 || to > 31 || to < from) {
        throw new IllegalArgumentException("'" + part.strip() + "' is no part of a month");
      }
      for (int day = from; day <= to; day++) {
        days.add(day);
      }
    }
    return days;
  }

  private void add(Draft on, BasePlace.What what, String words) {
    Matcher at = AT.matcher(words);
    if (!at.matches()) {
      throw new IllegalArgumentException(
          "'"
              + words
              + "' has no place; add the inches from the left and the top of the page: at 1, 1/2");
    }
    Length left = SizeText.parseLength(at.group(2));
    Length top = SizeText.parseLength(at.group(3));
    String said = at.group(1).strip();
    PaperSize size;
    Optional<Length> reveal = Optional.empty();
    boolean onSide = false;
    if (what == BasePlace.What.PHOTO) {
      WantedSpace space = photo(said);
      size = asWritten(said).towards(space.direction().orElse(asWritten(said).direction()));
      onSide = space.onSide();
      // a direction says how the picture is read; without one the size is that of the page
      size = onSide && space.direction().isPresent() ? size.turned() : size;
      reveal = space.onMat() ? space.reveal().or(() -> Optional.of(CommonPractice.REVEAL)) : reveal;
    } else {
      size = SizeText.parseSize(said);
    }
    BasePlace place = new BasePlace(what, PaperBox.at(left, top, size), reveal, onSide);
    if (what == BasePlace.What.PHOTO) {
      place.space(); // says what is wrong with the reveal
    }
    PaperSize whole = page.orElse(CommonPractice.PAGE);
    if (place.box().right().isLongerThan(whole.width())
        || place.box().bottom().isLongerThan(whole.height())) {
      throw new IllegalArgumentException(
          "'" + words + "' reaches beyond the page of " + whole + " in; it is left out");
    }
    boolean coversPhoto =
        what == BasePlace.What.PHOTO
            && on.places.stream()
                .filter(other -> other.what() == BasePlace.What.PHOTO)
                .anyMatch(other -> other.box().overlaps(place.box()));
    if (coversPhoto) {
      remark("'" + words + "' lies over another photo of " + on.name);
    }
    on.places.add(place);
  }

  private static WantedSpace photo(String said) {
    List<WantedSpace> spaces = PageSpecParser.parse(said).spaces();
    if (spaces.size() != 1 || spaces.get(0).size().isEmpty()) {
      throw new IllegalArgumentException(
          "'" + said + "' is not one place; write a line for each, like 4x6 portrait at 1, 1/2");
    }
    return spaces.get(0);
  }

  /** Width first, as it was written; only the note takes either order for the same. */
  private static PaperSize asWritten(String said) {
    for (int at = 0; at < said.length(); at++) {
      Optional<SizeText.Found<PaperSize>> found = SizeText.sizeAt(said, at);
      if (found.isPresent()) {
        return found.get().value();
      }
    }
    throw new IllegalArgumentException("'" + said + "' has no size");
  }

  private void closeDraft() {
    draft.ifPresent(
        done -> {
          String name = NormalizedText.fold(done.name).strip();
          if (bases.containsKey(name)) {
            remark("there are two bases called " + done.name + "; the later holds");
          }
          bases.put(
              name, new BasePage(done.name, done.places, done.papers, List.copyOf(done.days)));
        });
    draft = Optional.empty();
  }
}
