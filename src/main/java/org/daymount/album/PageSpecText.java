package org.daymount.album;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Orientation;
import org.daymount.unit.SizeText;

/** Words for a page as {@link PageSpecParser} reads them back. */
final class PageSpecText {
  private PageSpecText() {}

  /** Empty for {@link PageSpec#NONE}. */
  static String text(PageSpec words) {
    List<String> parts = new ArrayList<>();
    switch (words.kind()) {
      case NO_PHOTO -> parts.add("no photo");
      case LEFT_OUT -> parts.add("leave out");
      case PICTURES -> words.spaces().forEach(space -> parts.add(text(space, words.dividesPage())));
    }
    words.form().map(PageForm::text).ifPresent(parts::add);
    if (words.storyCard()) {
      parts.add("journaling card");
    }
    return String.join(", ", parts);
  }

  /** A finished page as if a person had asked for each of its spaces, every reveal said. */
  static PageSpec words(DayPage page) {
    return new PageSpec(
        page.kind(),
        page.spaces().stream()
            .map(
                space ->
                    new WantedSpace(
                        Optional.of(space.size()),
                        space.direction().filter(way -> way != Orientation.SQUARE),
                        space.onMat(),
                        space.reveal(),
                        space.onSide()))
            .toList());
  }

  private static String text(WantedSpace space, boolean dividesPage) {
    List<String> words = new ArrayList<>();
    if (space.size().isEmpty() && dividesPage) {
      words.add("photo");
    }
    space.size().map(SizeText::text).ifPresent(words::add);
    space.direction().map(Orientation::word).ifPresent(words::add);
    if (space.onMat()) {
      words.add("on mat");
      space.reveal().map(SizeText::text).ifPresent(words::add);
    }
    if (space.onSide()) {
      words.add("on its side");
    }
    return String.join(" ", words);
  }
}
