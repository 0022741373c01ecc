package org.daymount.note;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;

/** What speaks for a line being a day, and what against it, by how the line goes on. */
final class DayWeigher {
  private static final Pattern MARK =
      Pattern.compile(
          "[ *_]*(?:(?:[)=→/|>,·]|[-.](?!\\d)|:(?!\\d\\d(?! *[x*\\d])))+|\\]|[*_]+)[ *_]*");
  private static final Pattern AFTER_WORDS = Pattern.compile("(?:[!?]+|\"(?= |$))+ *");

  /** A day's own line does not go on like this; the line of two days does. */
  private static final Pattern GOES_ON =
      Pattern.compile(
          " *(?:([&+/])|(?:and|und|et|y|och|en|thru|through|until|till)(?!\\p{L})) *\\d"
              + "| *, *\\d{1,2}(?:st|nd|rd|th)? *[:)]");

  private static final Pattern SPACES = Pattern.compile(" *");

  /** What stands before the number. */
  enum Lead {
    PLAIN,
    /** A minus, so that it may be a list. */
    MINUS,
    /** A word like "so". */
    WORD
  }

  private final DayNameReader names;
  private final Set<String> bases;

  DayWeigher(DayNameReader names, Set<String> bases) {
    this.names = names;
    this.bases = bases;
  }

  /**
   * @param days one, or all of a range
   * @param lead what stands before them
   * @param chat what a chat's stamp adds to the style; empty elsewhere
   * @param restFrom where the rest begins behind a chat's stamp; -1 elsewhere
   */
  Optional<DayCandidate> weigh(
      String line, List<DayName> days, Lead lead, String chat, int restFrom) {
    return new Weighing(line, days, lead, chat, restFrom).candidate();
  }

  private final class Weighing {
    private final String line;
    private final List<DayName> days;
    private final DayName first;
    private final DayName last;
    private final Lead lead;
    private final String chat;
    private final boolean stamped;
    private final int end;
    private final int markEnd;
    private final int rest;
    private final boolean marked;
    private final boolean ends;
    private final PageSpecParser.Read read;
    private final boolean words;
    private final RestOfLine goesOn;

    private Weighing(String line, List<DayName> days, Lead lead, String chat, int restFrom) {
      this.line = line;
      this.days = days;
      this.first = days.get(0);
      this.last = days.get(days.size() - 1);
      this.lead = lead;
      this.chat = chat;
      this.stamped = restFrom >= 0;
      this.end = stamped ? restFrom : last.end();
      this.markEnd = DayNameReader.end(MARK, line, end);
      this.marked = markEnd > end || stamped;
      this.rest = DayNameReader.end(SPACES, line, markEnd);
      this.ends = rest == line.length();
      this.goesOn = new RestOfLine(line, rest);
      this.read = PageSpecParser.read(line, rest, bases);
      // "1 tall ships" is a sentence
      this.words = read.any() && (read.definite() || RestOfLine.isAtMark(line, read.end()));
    }

    private Optional<DayCandidate> candidate() {
      if (isNoDay()) {
        return Optional.empty();
      }
      boolean slashed = isSeveral() && line.substring(first.end(), last.end()).contains("/");
      String mark = line.substring(end, markEnd).strip();
      return Optional.of(
          new DayCandidate(
              days.stream().map(DayName::date).toList(),
              chat + first.style() + (isSeveral() ? "" : marked ? mark : ""),
              strength(),
              doubt() + (slashed && words ? 0.5 : 0),
              !last.isForeign(names),
              !chat.isEmpty(),
              words ? read.words() : PageSpec.NONE,
              end,
              storyFrom(),
              guess(),
              !isSeveral() && first.isOpen() || isCounted()));
    }

    private boolean isSeveral() {
      return days.size() > 1;
    }

    private boolean isWeekdayAlone() {
      return first.style().startsWith(DayName.WEEKDAY_ALONE) || isNextDay();
    }

    private boolean isNextDay() {
      return first.style().equals(DayName.NEXT_DAY);
    }

    /** What no reading of the whole note could make a day. */
    private boolean isNoDay() {
      boolean fraction =
          end + 1 < line.length()
              && "/-".indexOf(line.charAt(end)) >= 0
              && Character.isDigit(line.charAt(end + 1));
      boolean glued =
          !marked && rest == end && !ends && Character.isLetterOrDigit(line.charAt(rest));
      boolean decimal = first.style().endsWith("numeric.") && line.charAt(first.end() - 1) != '.';
      boolean measured = decimal && goesOn.isUnit(); // "3.6 km walked"
      boolean times =
          !isExplicit()
              && !ends
              && !marked
              && line.startsWith("x", rest)
              && rest + 1 < line.length()
              && !line.startsWith("xx", rest)
              && !words;
      boolean onlyLetters = first.slip() && !line.substring(0, first.end()).matches(".*\\d.*");
      boolean filled = lead == Lead.WORD && !(marked || ends || words || goesOn.isNotCounted());
      return (!isSeveral() && fraction && !stamped)
          || glued
          || (last.isForeign(names) && !(marked || ends))
          || measured
          || times
          || (onlyLetters && !(words && read.definite()))
          || filled;
    }

    private boolean isExplicit() {
      return first.month().isPresent()
          || first.weekday().isPresent()
          || first.style().contains("day")
          || first.style().contains("letter");
    }

    /** What it costs to take the line for story. Chosen on half of our own notes. */
    private double strength() {
      double strength;
      if (isWeekdayAlone()) {
        strength = marked || ends || words ? 2 : 1.2;
      } else if (isExplicit()) {
        strength = marked || ends || (words && read.definite()) ? 12 : 5;
      } else if (ends) {
        strength = 4;
      } else if (marked) {
        boolean dot = line.substring(end, markEnd).strip().equals(".");
        strength = dot ? 1.5 : line.charAt(end) == ':' ? 3.5 : 2.5;
      } else if (goesOn.isNotCounted()) {
        strength = 1.5;
      } else {
        strength = Character.isLowerCase(line.charAt(rest)) ? 0.9 : 0.6;
      }
      return strength + (words && read.definite() ? 3 : words ? 1.5 : 0);
    }

    /** What it costs to take the line for a day. */
    private double doubt() {
      double doubt = 0;
      boolean bare = !marked && !ends;
      if (isWeekdayAlone()) {
        doubt += bare && !words ? 0.6 : 0;
        doubt += first.style().equals(DayName.SHORT_WEEKDAY_ALONE) ? 1.5 : 0;
      } else if (isExplicit()) {
        doubt += first.weekdayIsWrong(names.month()) ? 1 : 0;
      } else if (bare) {
        doubt += goesOn.isUnit() ? 4 : 0;
        doubt += goesOn.isThings() ? 1 : 0;
      }
      doubt += lead == Lead.MINUS && !words ? 3 : 0;
      doubt += lead == Lead.WORD ? 0.5 : 0;
      doubt += first.slip() && !words && bare ? 1 : 0;
      if (isSeveral() && !words && first.weekday().isEmpty()) {
        boolean joined = line.substring(first.end(), last.end()).matches(".*(?:[&+]|[a-z] ).*");
        doubt += joined ? 0.3 : marked ? 1 : 1.2;
      }
      if (!isSeveral() && !stamped && DayNameReader.end(GOES_ON, line, end) > end) {
        doubt += 2;
      }
      return doubt;
    }

    private int storyFrom() {
      return words
          ? DayNameReader.end(AFTER_WORDS, line, DayNameReader.end(MARK, line, read.end()))
          : Math.min(rest, line.length());
    }

    private Optional<String> guess() {
      if (first.slip()) {
        return Optional.of("taken as day " + first.day());
      }
      if (isSeveral() && !words && !isWeekdayAlone()) {
        return Optional.of(
            "taken for days "
                + first.day()
                + " to "
                + last.day()
                + ", which share its page and story");
      }
      if (!isSeveral() && first.isOpen()) {
        return Optional.of(
            "taken as day " + first.day() + ", because that lies in the note's month");
      }
      if (isCounted()) {
        return Optional.of("taken as day " + first.day() + "; if it is story, put a \\ before it");
      }
      if (!words) {
        return Optional.empty();
      }
      return read.sizeGuessed()
          ? Optional.of(NoteRemarks.NAMED_SIZES)
          : RestOfLine.leftOver(line, read.end());
    }

    /** {@code 4 boats}: a number before what can be counted. */
    private boolean isCounted() {
      boolean bare = !marked && !ends && !words && !isExplicit();
      return bare && !isSeveral() && goesOn.isPlural();
    }
  }
}
