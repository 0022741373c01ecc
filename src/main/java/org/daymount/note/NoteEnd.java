package org.daymount.note;

import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Where a note ends: by a line of its own, or by words that only sound like it. */
final class NoteEnd {
  private static final Pattern STOP = Pattern.compile("[ #*=-]*(?:stop|end)[ .!#*=-]*");

  private static final String LAST_WORDS =
      "(?:and )?(?:(?:that'?s )?the end(?: of (?:the|my|this) .{2,20})?|(?:i'?m |we'?re )?stopping here|(?:the )?last page"
          + "|that'?s (?:it|all)(?: for now| folks)?|thats (?:it|all)|ende|schluss|fin|fine|einde"
          + "|fim|koniec|slut|סוף|النهاية)[ .!)]*";

  /** Last words that sound like an end. */
  private static final Pattern CLOSING = Pattern.compile("(?:.*[.!?,;:-] *)?" + LAST_WORDS);

  private static final Pattern CLOSING_LINE =
      Pattern.compile(
          "(?:\\[?\\d[^\\]]{5,30}\\]? ?-? ?[^:]{1,30}: )?[ #*=_~(-]*" + LAST_WORDS + "[*=_~-]*");

  /** What a phone or a mail program adds by itself. Common practice, no source. */
  private static final Pattern SIGNATURE =
      Pattern.compile("[ -]*(?:sent|written|typed|shared) (?:from|with|on|via) my .{2,30}");

  /** Above what the writer has yet to buy or to do, or thinks of for another month. */
  private static final String TO_DO =
      "[^\\p{L}\\p{N}]*(?:(?:things|stuff|still|also|noch|nog|encore|ancora|jeszcze|todavia|aun"
          + "|ainda|kvar) )*(?:(?:to )?(?:buy|get|need|needed|order|do|print|pick up|ask|take|pack|bring)"
          + "|to-?do|(?:shopping|to-?do|packing|wish) ?list|shopping|remember|reminders?"
          + "|(?:note|memo)s? to self|(?:zu )?(?:kaufen|besorgen|erledigen|bestellen)"
          + "|einkaufen|einkaufsliste|(?:a )?(?:acheter|faire|commander)|courses"
          + "|(?:a |por |para )?(?:comprar|hacer|fazer)|compras|(?:da )?(?:comprare|fare)"
          + "|spesa|(?:te )?(?:kopen|doen|bestellen)|boodschappen"
          + "|(?:do )?(?:kupic|kupienia|zrobienia)|zakupy|(?:att )?(?:kopa|gora)|inkop"
          + "|(?:ideas?|plans?|next month|ideen|plane|idees|projets|planes|idee|piani"
          + "|ideeen|plannen|ideias|planos|pomysly|plany|ideer|planer)"
          + "(?: (?:for|fur|pour|para|per|voor|na|for|till|de|di|van) .{2,20})?)"
          + "(?: list)?";

  private static final Pattern LIST_HEADING = Pattern.compile(TO_DO + "[ .:!)*=_~-]*");
  private static final Pattern LIST_ON_A_LINE =
      Pattern.compile(
          "(?:" + TO_DO + "|(?:for|para|pour|fur|per|voor|na|till|do) \\p{L}{3,12}) *: *\\S.*");

  /** What the writer's own short words mean: {@code P = portrait}. */
  private static final Pattern KEY =
      Pattern.compile("[ #*(_-]*(?:\\p{L}{1,3} *= *[^=]{2,20}?(?:[,;/]? +|[ )*_]*$)){1,6}");

  /** {@code milk, batteries, card for Joss}: things with commas and nothing else. */
  private static final Pattern THINGS =
      Pattern.compile("(?:(?:[^\\s,.!?;:]+ ?){1,4}, *){2,}(?:[^\\s,.!?;:]+ ?){1,4}");

  private static final Pattern ITEM = Pattern.compile("(?=.{1,40}$)(?:\\S+ +){0,5}\\S*[^\\s.!?]");
  private static final int FEWEST_ITEMS = 3; // with a heading
  private static final int FEWEST_DAYS = 5;

  private NoteEnd() {}

  static boolean isStop(NoteLine line) {
    return STOP.matcher(line.text()).matches();
  }

  /** The line below the last day that ends the album; the number of lines when there is none. */
  static int stop(List<NoteLine> lines, int lastDay) {
    for (int i = lastDay + 1; i < lines.size(); i++) {
      if (isStop(lines.get(i))) {
        return i;
      }
    }
    return lines.size();
  }

  /** Whether the note's last words sound like an end. */
  static boolean closes(List<NoteLine> lines) {
    return lines.stream()
        .map(NoteLine::text)
        .filter(text -> !text.isBlank())
        .reduce((before, last) -> last)
        .filter(text -> CLOSING.matcher(text.strip()).matches())
        .isPresent();
  }

  /** Whether a line closes the note, with nothing or a blank line below it. */
  private static boolean closesAt(List<NoteLine> lines, int index, int end) {
    return CLOSING_LINE.matcher(lines.get(index).text().strip()).matches()
        && (index + 1 >= end || lines.get(index + 1).text().isBlank());
  }

  /** Whether a list of what the writer has yet to do begins below a blank line. */
  private static boolean startsList(List<NoteLine> lines, int index, int end) {
    return LIST_HEADING.matcher(lines.get(index).text().strip()).matches()
        && lines.get(index - 1).text().isBlank()
        && index + 1 < end
        && !lines.get(index + 1).text().isBlank();
  }

  /**
   * Where below the last day begins what belongs to none; {@code end} when nothing does.
   *
   * @param days the indexes of the lines that start a day
   */
  static int below(List<NoteLine> lines, List<Integer> days, int end) {
    int last = days.get(days.size() - 1);
    boolean listed = eachParagraphIsDays(lines, days);
    int list = listed ? listAtTheEnd(lines, last + 1, end) : end;
    for (int i = last + 1; i < end; i++) {
      if (i == list || saysSo(lines, i, end) || listed && isListOnALine(lines, i)) {
        return i;
      }
    }
    return end;
  }

  /** Whether a line says in so many words that no story follows. */
  static boolean saysSo(List<NoteLine> lines, int index, int end) {
    return closesAt(lines, index, end) || startsList(lines, index, end);
  }

  private static boolean isListOnALine(List<NoteLine> lines, int index) {
    String text = lines.get(index).text().strip();
    return lines.get(index - 1).text().isBlank()
        && (LIST_ON_A_LINE.matcher(text).matches() || KEY.matcher(text).matches());
  }

  /**
   * Paragraphs between two days that are a list to oneself, in a note whose days have no other
   * second paragraph: what is to be bought.
   *
   * @param days the indexes of the lines that start a day
   */
  static List<Integer> listsBetween(List<NoteLine> lines, List<Integer> days) {
    List<Integer> seconds = secondParagraphs(lines, days);
    boolean allLists =
        days.size() >= FEWEST_DAYS
            && seconds.stream().allMatch(i -> isAlone(lines, i, days) && isList(lines, i));
    return allLists ? seconds : List.of();
  }

  private static boolean isAlone(List<NoteLine> lines, int index, List<Integer> days) {
    return lines.get(index + 1).text().isBlank() || Collections.binarySearch(days, index + 1) >= 0;
  }

  private static boolean isList(List<NoteLine> lines, int index) {
    return isListOnALine(lines, index) || THINGS.matcher(lines.get(index).text().strip()).matches();
  }

  private static List<Integer> secondParagraphs(List<NoteLine> lines, List<Integer> days) {
    return IntStream.range(days.get(0) + 1, days.get(days.size() - 1))
        .filter(i -> lines.get(i - 1).text().isBlank() && !lines.get(i).text().isBlank())
        .filter(i -> Collections.binarySearch(days, i) < 0)
        .boxed()
        .toList();
  }

  /** Whether no story has a blank line in it, so that a last paragraph is none's. */
  private static boolean eachParagraphIsDays(List<NoteLine> lines, List<Integer> days) {
    return days.size() >= FEWEST_DAYS
        && secondParagraphs(lines, days).size() == listsBetween(lines, days).size();
  }

  /** Where short lines and nothing else begin behind a blank one, whatever they are for. */
  private static int listAtTheEnd(List<NoteLine> lines, int from, int end) {
    int list = end;
    int items = 0;
    for (int i = end - 1; i >= from; i--) {
      String text = lines.get(i).text().strip();
      if (text.isEmpty()) {
        continue;
      }
      if (!ITEM.matcher(text).matches()) {
        break;
      }
      items++;
      list = items >= FEWEST_ITEMS && lines.get(i - 1).text().isBlank() ? i : list;
    }
    return list;
  }

  /** Whether a line is no story, but says that the note is over, or who sent it. */
  static boolean isNoStory(NoteLine line) {
    String text = line.text().strip();
    return CLOSING_LINE.matcher(text).matches() || SIGNATURE.matcher(text).matches();
  }

  /**
   * The first line behind the last blank one below the last day, in a note whose days have none
   * otherwise: words to oneself sooner than that day's story.
   *
   * @param days the indexes of the lines that start a day
   * @param end behind the last line
   */
  static OptionalInt paragraphBelow(List<NoteLine> lines, List<Integer> days, int end) {
    int last = days.get(days.size() - 1);
    boolean spaced =
        days.size() < 3
            || lines.subList(days.get(0), last).stream().anyMatch(line -> line.text().isBlank());
    if (spaced) {
      return OptionalInt.empty();
    }
    for (int i = last + 1; i < end; i++) {
      if (lines.get(i - 1).text().isBlank() && !lines.get(i).text().isBlank()) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }
}
