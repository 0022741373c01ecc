package org.daymount.album;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.daymount.album.PageVocabulary.Word;

/** What kind of page is asked for, its form, and whether it has a card for the story. */
final class PageKinds {
  private final PageCursor cursor;
  private final Set<String> bases;
  private Optional<DayPage.Kind> kind = Optional.empty();
  private Optional<PageForm> form = Optional.empty();
  private boolean storyCard;

  PageKinds(PageCursor cursor, Set<String> bases) {
    this.cursor = cursor;
    this.bases = bases;
  }

  Optional<DayPage.Kind> kind() {
    return kind;
  }

  boolean isLeftOut() {
    return kind.equals(Optional.of(DayPage.Kind.LEFT_OUT));
  }

  boolean hasForm() {
    return form.isPresent();
  }

  boolean any() {
    return kind.isPresent() || form.isPresent() || storyCard;
  }

  /**
   * @param spaces of a page with pictures
   */
  PageSpec page(List<WantedSpace> spaces) {
    return new PageSpec(
        kind.orElse(DayPage.Kind.PICTURES), kind.isPresent() ? List.of() : spaces, form, storyCard);
  }

  /** {@code no photo}, {@code leave out}, {@code just a card}. */
  int readKind(int at) {
    int end = cursor.end(Word.CARD_ONLY, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.NO_PHOTO);
      storyCard = true;
      return end;
    }
    end = cursor.end(Word.NO_PHOTO, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.NO_PHOTO);
      return end;
    }
    end = kind.isPresent() && !isLeftOut() ? at : cursor.end(Word.LEAVE_OUT, at);
    if (end > at) {
      kind = Optional.of(DayPage.Kind.LEFT_OUT);
    }
    return end;
  }

  int readCard(int at) {
    int end = cursor.end(Word.STORY_CARD, at);
    storyCard |= end > at;
    return end;
  }

  /**
   * @param counting whether a number stands before it, so that no page is named
   */
  int readForm(int at, boolean counting) {
    if (form.isPresent()) {
      return at;
    }
    String text = cursor.text();
    for (String base : counting ? Set.<String>of() : bases) {
      int end = at + base.length();
      boolean whole = cursor.isEnd(end) || !Character.isLetterOrDigit(text.charAt(end));
      if (text.startsWith(base, at) && whole) {
        form = Optional.of(PageForm.base(base));
        return end;
      }
    }
    int full = cursor.end(Word.FULL_PAGE, at);
    if (full > at) {
      form = Optional.of(PageForm.FULL);
      return full;
    }
    int pocket = counting ? at : cursor.end(Word.POCKET_PAGE, at);
    if (pocket > at) {
      form = Optional.of(PageForm.POCKET);
    }
    return pocket;
  }
}
