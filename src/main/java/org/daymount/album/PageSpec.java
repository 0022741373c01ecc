package org.daymount.album;

import java.util.List;

/**
 * What a person said about one page.
 *
 * @param spaces in the order they were said; none: the default spaces
 */
public record PageSpec(DayPage.Kind kind, List<WantedSpace> spaces) {
  /** Nothing was said: pictures, in the default spaces. */
  public static final PageSpec NONE = new PageSpec(DayPage.Kind.PICTURES, List.of());

  public PageSpec {
    spaces = List.copyOf(spaces);
    if (kind != DayPage.Kind.PICTURES && !spaces.isEmpty()) {
      throw new IllegalArgumentException("a page of kind " + kind + " has no spaces");
    }
    if (spaces.size() > 1 && spaces.stream().anyMatch(space -> space.size().isEmpty())) {
      throw new IllegalArgumentException("of several spaces each needs a size");
    }
  }

  public boolean saysNothing() {
    return equals(NONE);
  }
}
