package org.daymount.note;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.album.PageSpec;
import org.daymount.album.WantedSpace;

/**
 * A month note as it was read. {@link NoteWriter} gives the text back, byte for byte.
 *
 * @param month as the note's top says; empty when it does not
 * @param days one for each day line, in the order typed; a day may be there twice
 * @param remarks in the order of the note
 * @param preamble everything above the first day line, exactly as typed
 * @param ending the line that ends the album ({@code stop}) and all below it, exactly as typed;
 *     empty when there is none
 * @param closes whether the note's last words sound like an end ({@code the end})
 */
public record MonthNote(
    Optional<YearMonth> month,
    List<NoteDay> days,
    List<NoteRemark> remarks,
    String preamble,
    String ending,
    boolean closes) {
  public MonthNote {
    days = List.copyOf(days);
    remarks = List.copyOf(remarks);
  }

  /**
   * What the note says of a date; a day typed twice is joined: its stories one below the other, its
   * spaces one after the other. When they differ in kind ({@code no photo}, then {@code 4x6}) the
   * later words hold.
   *
   * @param planned the month to take when the note names none
   */
  public Optional<Joined> on(LocalDate date, YearMonth planned) {
    YearMonth assumed = month.orElse(planned);
    List<NoteDay> named =
        days.stream()
            .filter(
                day ->
                    day.names().stream()
                        .anyMatch(name -> name.date(assumed).filter(date::equals).isPresent()))
            .toList();
    return named.isEmpty() ? Optional.empty() : Optional.of(join(named));
  }

  /** The last day of the note, when the person ended the album there in so many words. */
  public Optional<LocalDate> stopsAfter(YearMonth planned) {
    return ending.isEmpty() ? Optional.empty() : lastDay(planned);
  }

  /** The latest day that the note speaks of. */
  public Optional<LocalDate> lastDay(YearMonth planned) {
    return days.stream()
        .flatMap(day -> day.names().stream())
        .flatMap(name -> name.date(month.orElse(planned)).stream())
        .filter(date -> YearMonth.from(date).equals(planned))
        .max(LocalDate::compareTo);
  }

  private static Joined join(List<NoteDay> named) {
    PageSpec words = PageSpec.NONE;
    List<String> stories = new ArrayList<>();
    for (NoteDay day : named) {
      words = join(words, day.words());
      day.story().ifPresent(stories::add);
    }
    Optional<String> story =
        stories.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", stories));
    return new Joined(words, story, named.get(0).line());
  }

  private static PageSpec join(PageSpec first, PageSpec second) {
    if (second.saysNothing()) {
      return first;
    }
    boolean addable =
        first.kind() == second.kind()
            && !first.spaces().isEmpty()
            && first.spaces().stream().allMatch(space -> space.size().isPresent())
            && second.spaces().stream().allMatch(space -> space.size().isPresent());
    if (!addable) {
      return second;
    }
    List<WantedSpace> spaces = new ArrayList<>(first.spaces());
    spaces.addAll(second.spaces());
    return new PageSpec(
        first.kind(),
        spaces,
        second.form().or(first::form),
        first.storyCard() || second.storyCard());
  }

  /**
   * All that a note says of one date.
   *
   * @param line of its first day line
   */
  public record Joined(PageSpec words, Optional<String> story, int line) {}
}
