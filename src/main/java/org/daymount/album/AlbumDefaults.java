package org.daymount.album;

import java.util.List;
import org.daymount.unit.Length;

/**
 * What a page holds when nothing is said about it.
 *
 * @param spaces at least one
 * @param reveal the width of mat left showing on each side when a mat is asked for
 * @param album what the person wrote about it: its ready-made pages
 */
public record AlbumDefaults(List<Space> spaces, Length reveal, AlbumFile album) {
  /** One 4 x 6 in picture a day, the way it was taken. */
  public static final AlbumDefaults STANDARD =
      new AlbumDefaults(List.of(Space.free(CommonPractice.LARGE_POCKET)), CommonPractice.REVEAL);

  /** Without anything written about the album. */
  public AlbumDefaults(List<Space> spaces, Length reveal) {
    this(spaces, reveal, AlbumFile.NONE);
  }

  public AlbumDefaults with(AlbumFile written) {
    return new AlbumDefaults(spaces, reveal, written);
  }

  public AlbumDefaults {
    spaces = List.copyOf(spaces);
    if (spaces.isEmpty()) {
      throw new IllegalArgumentException("a page needs at least one space");
    }
  }

  /**
   * From the words of a command line, such as {@code "two 3x4 on mat"}.
   *
   * @throws IllegalArgumentException whose message says what was not understood
   */
  public static AlbumDefaults of(String spaceWords, Length reveal) {
    PageSpec words = PageSpecParser.parse(spaceWords);
    if (words.kind() != DayPage.Kind.PICTURES) {
      throw new IllegalArgumentException(
          "'" + spaceWords.strip() + "' cannot be the default for every day; say a size, like 4x6");
    }
    AlbumDefaults plain = new AlbumDefaults(STANDARD.spaces(), reveal);
    List<Space> spaces =
        words.spaces().stream().flatMap(space -> space.with(plain).stream()).toList();
    return new AlbumDefaults(spaces, reveal);
  }
}
