package org.daymount.choices;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.daymount.album.DayPage;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.album.WantedSpace;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * What a person may change of one day's page, each made into new choices. The words of the page in
 * the note are kept with every change, so that a later edit of the note is noticed; changes that
 * were made before such an edit hold no more.
 */
public final class PageEdits {
  private static final PaperSize USUAL_SPACE = PaperSize.inches(4, 6);

  private final Choices choices;
  private final LocalDate day;
  private final PageSpec shown;
  private final String notedWords;

  /**
   * @param shown the page as the person sees it
   * @param noted the page as the note has it; of another day where pages were swapped
   */
  public PageEdits(Choices choices, LocalDate day, DayPage shown, Optional<DayPage> noted) {
    this.choices = choices;
    this.day = day;
    this.shown = PageSpecParser.words(shown);
    this.notedWords = noted.map(PageSpecParser::text).orElse("");
  }

  /** The size of one space; without it as the page says. The crop was for the other size. */
  public Choices size(int place, Optional<PaperSize> size) {
    return reshaped(place, space -> space.withSize(size));
  }

  /** The way one space lies; without it as the page says. The crop was for the other way. */
  public Choices direction(int place, Optional<Orientation> direction) {
    return reshaped(place, space -> space.withDirection(direction));
  }

  private Choices reshaped(int place, UnaryOperator<SpaceChoice> change) {
    DayChoice before = valid();
    return kept(
        before.withSpace(place, change.apply(before.space(place)).withCrop(Optional.empty())));
  }

  /** A space laid on a mat, or the mat taken away; the reveal is the usual one. */
  public Choices onMat(int place, boolean wanted) {
    return withSpace(place, space -> wanted ? space.onMat(space.reveal()) : space.withoutMat());
  }

  /** A picture that lies on its side on the page, or is read as the page is. */
  public Choices lyingOnSide(int place, boolean wanted) {
    return withSpace(place, space -> space.lyingOnSide(wanted));
  }

  private Choices withSpace(int place, UnaryOperator<WantedSpace> change) {
    List<WantedSpace> spaces = new ArrayList<>(shown.spaces());
    spaces.set(place, change.apply(spaces.get(place)));
    return page(new PageSpec(DayPage.Kind.PICTURES, spaces));
  }

  /**
   * The whole page in the words of the month note; without words as the note has it.
   *
   * @throws IllegalArgumentException if the words are none of a page
   */
  public Choices words(Optional<String> words) {
    Optional<String> said = words.filter(given -> !given.isBlank());
    return said.isEmpty() || said.get().equals(notedWords)
        ? asNoted()
        : kept(shaped(valid(), PageSpecParser.parse(said.get())));
  }

  private Choices page(PageSpec page) {
    return PageSpecParser.text(page).equals(notedWords) ? asNoted() : kept(shaped(valid(), page));
  }

  private Choices asNoted() {
    return kept(valid().withoutPageChanges());
  }

  /** One space more, like the last one. */
  public Choices withSpaceAdded() {
    List<WantedSpace> spaces = new ArrayList<>(shown.spaces());
    spaces.add(spaces.isEmpty() ? WantedSpace.of(USUAL_SPACE) : spaces.get(spaces.size() - 1));
    return kept(shaped(valid(), sayable(new PageSpec(DayPage.Kind.PICTURES, spaces))));
  }

  /** One space less; what lay in those behind it moves up. */
  public Choices withoutSpace(int place) {
    List<WantedSpace> spaces = new ArrayList<>(shown.spaces());
    spaces.remove(place);
    PageSpec page =
        new PageSpec(spaces.isEmpty() ? DayPage.Kind.NO_PHOTO : DayPage.Kind.PICTURES, spaces);
    return kept(
        valid().withSpaceTaken(place).withPage(Optional.of(sayable(page))).withoutSpaceShapes());
  }

  /** The day is no part of the album. */
  public Choices leftOut() {
    return kept(shaped(valid(), new PageSpec(DayPage.Kind.LEFT_OUT, List.of())));
  }

  /** The day's choices, without changes of the page that were made before the note was edited. */
  private DayChoice valid() {
    DayChoice now = choices.day(day);
    return now.pageReplaced().filter(before -> !before.equals(notedWords)).isPresent()
        ? now.withoutPageChanges()
        : now;
  }

  private Choices kept(DayChoice changed) {
    return choices.withDay(
        day,
        changed.withPageReplaced(
            changed.changesPage() ? Optional.of(notedWords) : Optional.empty()));
  }

  /** A crop stays where its space keeps its shape. */
  private DayChoice shaped(DayChoice before, PageSpec page) {
    DayChoice changed = before.withPage(Optional.of(page)).withoutSpaceShapes();
    for (int place : before.spaces().keySet()) {
      boolean same =
          place < shown.spaces().size()
              && place < page.spaces().size()
              && shown.spaces().get(place).equals(page.spaces().get(place));
      if (!same) {
        changed = changed.withSpace(place, changed.space(place).withCrop(Optional.empty()));
      }
    }
    return changed;
  }

  private static PageSpec sayable(PageSpec page) {
    if (page.spaces().size() > PageSpecParser.MOST_SPACES) {
      throw new IllegalArgumentException(
          "a page has at most " + PageSpecParser.MOST_SPACES + " spaces");
    }
    return page;
  }
}
