package org.daymount.choices;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.daymount.photo.Taken;

/**
 * Everything a person changed in the review.
 *
 * @param days by date
 * @param photos by SHA-256 sum
 */
public record Choices(
    Map<LocalDate, DayChoice> days, Map<String, PhotoChoice> photos, UnknownFields other) {
  public static final Choices NONE = new Choices(Map.of(), Map.of(), UnknownFields.NONE);

  public Choices {
    days = Collections.unmodifiableMap(new TreeMap<>(days));
    photos = Collections.unmodifiableMap(new TreeMap<>(photos));
    Set<LocalDate> taken = new HashSet<>();
    Set<LocalDate> takers = new HashSet<>();
    days.forEach(
        (day, choice) ->
            choice
                .pageOf()
                .ifPresent(
                    from -> {
                      takers.add(day);
                      if (!taken.add(from)) {
                        throw new IllegalArgumentException(
                            "the page of " + from + " is given to two days");
                      }
                    }));
    if (!taken.equals(takers)) {
      throw new IllegalArgumentException(
          "swapped pages do not match: pages of " + taken + " on days " + takers);
    }
    photos.forEach(
        (sum, choice) -> {
          if (!sum.equals(choice.photo().sha256())) {
            throw new IllegalArgumentException("photo " + choice.photo() + " filed under " + sum);
          }
        });
  }

  /** The month that the days speak of, when none of them is in the month asked for. */
  public Optional<YearMonth> onlyOtherThan(YearMonth month) {
    return days.keySet().stream().map(YearMonth::from).anyMatch(month::equals)
        ? Optional.empty()
        : days.keySet().stream().map(YearMonth::from).findFirst();
  }

  public DayChoice day(LocalDate date) {
    return days.getOrDefault(date, DayChoice.NONE);
  }

  public SpaceChoice space(LocalDate date, int place) {
    return day(date).space(place);
  }

  /** Whether a photo is to be used, when the person said so. */
  public Optional<Boolean> used(String sha256) {
    return Optional.ofNullable(photos.get(sha256)).flatMap(PhotoChoice::used);
  }

  /** When a photo was taken, if a person said so. */
  public Optional<Taken> takenOf(String sha256) {
    return Optional.ofNullable(photos.get(sha256)).flatMap(PhotoChoice::taken);
  }

  /** The day whose page a day uses: its own unless pages were swapped. */
  public LocalDate pageOf(LocalDate date) {
    return day(date).pageOf().orElse(date);
  }

  public Choices withDay(LocalDate date, DayChoice changed) {
    return new Choices(put(days, date, changed), photos, other);
  }

  private static Map<LocalDate, DayChoice> put(
      Map<LocalDate, DayChoice> days, LocalDate date, DayChoice changed) {
    Map<LocalDate, DayChoice> copy = new TreeMap<>(days);
    if (changed.equals(DayChoice.NONE)) {
      copy.remove(date);
    } else {
      copy.put(date, changed);
    }
    return copy;
  }

  public Choices withPhoto(PhotoChoice changed) {
    Map<String, PhotoChoice> copy = new TreeMap<>(photos);
    copy.put(changed.photo().sha256(), changed);
    return new Choices(days, copy, other);
  }

  /**
   * A day's story in the person's words; without text, or with the note's own, as the note has it.
   *
   * @param noted the story in the note, which the person had before them
   */
  public Choices withStory(LocalDate date, Optional<String> text, Optional<String> noted) {
    Optional<String> own = text.filter(said -> !said.equals(noted.orElse("")));
    return withDay(date, day(date).withStory(own.map(said -> new StoryChoice(said, noted))));
  }

  /**
   * Two days change pages: the spaces, with the size and direction they were given, go with the
   * page; stories, photos and turns stay with the day; crops are dropped, since they were drawn for
   * the other page's spaces. Done twice, the pages are back.
   */
  public Choices withPagesSwapped(LocalDate one, LocalDate two) {
    if (one.equals(two)) {
      return this;
    }
    DayChoice first = onto(day(one), day(two), one, pageOf(two));
    DayChoice second = onto(day(two), day(one), two, pageOf(one));
    return new Choices(put(put(days, one, first), two, second), photos, other);
  }

  private static DayChoice onto(DayChoice day, DayChoice page, LocalDate date, LocalDate from) {
    Map<Integer, SpaceChoice> spaces = new TreeMap<>();
    Set<Integer> places = new HashSet<>(day.spaces().keySet());
    places.addAll(page.spaces().keySet());
    for (int place : places) {
      SpaceChoice moved =
          day.space(place)
              .withCrop(Optional.empty())
              .withDirection(page.space(place).direction())
              .withSize(page.space(place).size());
      if (!moved.equals(SpaceChoice.NONE)) {
        spaces.put(place, moved);
      }
    }
    return new DayChoice(
        spaces,
        day.story(),
        Optional.of(from).filter(other -> !other.equals(date)),
        page.page(),
        page.pageReplaced(),
        day.other());
  }
}
