package org.daymount.album;

import java.util.regex.Pattern;
import org.daymount.album.PageVocabulary.Word;

/** {@code small}, {@code large}: before a photo, for one, or behind it. */
final class NamedSizes {
  private static final Pattern SPACES = Pattern.compile(" +");

  /** Where an adjective stands for the noun. */
  private static final Pattern NOUN_ENDS =
      Pattern.compile(" *(?:$|[-.,;:!()+&#|\\]]|(?:and|y|et|und|e|i|en|och) )");

  private final PageCursor cursor;
  private final PageGroups groups;
  private boolean expectsPhoto;

  NamedSizes(PageCursor cursor, PageGroups groups) {
    this.cursor = cursor;
    this.groups = groups;
  }

  /** Whether the photo it was said of has yet to come. */
  boolean expectsPhoto() {
    return expectsPhoto;
  }

  /** Behind the word there; where it began if it is none. */
  int read(int at) {
    int small = cursor.small(at);
    int end = Math.max(small, cursor.large(at));
    expectsPhoto = false;
    if (end == at) {
      return at;
    }
    boolean ends = cursor.matcher(NOUN_ENDS, end).lookingAt();
    int next = cursor.end(SPACES, end);
    boolean photos = groups.end(SpaceGroup::isWithoutSize);
    boolean way = cursor.wayAt(next).isPresent(); // "small wide", "photo large wide"
    boolean before = isPhotoOrSize(next) || way && !photos;
    boolean alone = ends && !groups.isCounting();
    boolean another = alone && (photos ? groups.end(SpaceGroup::isNamed) : isSetOff(at));
    boolean behind = photos && !before && !another && (ends || way);
    boolean ofWay = ends && groups.pends(SpaceGroup::isDescribed); // "landscape, big"
    if (!groups.isCounting() && !before && !another && !behind && !ofWay) {
      return at;
    }
    groups.named(small > at, behind && !groups.isCounting(), at);
    if (another || ends && groups.isCounting()) {
      groups.close(); // "3 kleine"
    }
    expectsPhoto = !ends;
    return end;
  }

  private boolean isPhotoOrSize(int at) {
    return cursor.is(Word.PHOTO, at)
        || cursor.end(PageSpaces.ONE, at) > at
        || PageSizes.sizeAt(cursor.text(), at).isPresent();
  }

  /** {@code #small}, {@code [small]}: said of a photo, and no story's. */
  private boolean isSetOff(int at) {
    return at > 0 && "#[(".indexOf(cursor.text().charAt(at - 1)) >= 0 && !groups.isPending();
  }
}
