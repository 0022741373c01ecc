package org.daymount.album;

import java.util.Optional;

/**
 * The form of a page, as far as a person said it.
 *
 * @param kind pockets, a whole page that things are glued on, or a ready-made page
 * @param base name of the ready-made page; present exactly when the kind is {@link Kind#BASE}
 */
public record PageForm(Kind kind, Optional<String> base) {
  /** What a page is made of. */
  public enum Kind {
    POCKET,
    FULL,
    BASE
  }

  public static final PageForm POCKET = new PageForm(Kind.POCKET, Optional.empty());
  public static final PageForm FULL = new PageForm(Kind.FULL, Optional.empty());

  public PageForm {
    if ((kind == Kind.BASE) != base.isPresent()) {
      throw new IllegalArgumentException("a ready-made page has a name, and only that has one");
    }
  }

  /** A ready-made page of the album, by its name there. */
  public static PageForm base(String name) {
    return new PageForm(Kind.BASE, Optional.of(name));
  }

  /** So that the words for a page give this form back: {@code full page}, {@code quay}. */
  public String text() {
    return switch (kind) {
      case POCKET -> "pocket page";
      case FULL -> "full page";
      case BASE -> base.get();
    };
  }
}
