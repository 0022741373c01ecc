package org.daymount.album;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something about a day's page, or the whole album, that a person should know.
 *
 * @param code one or two words with a hyphen, stable: {@code story-conflict}
 * @param text the fact and the next step
 */
public record AlbumRemark(String code, Optional<LocalDate> day, String text) {
  public static AlbumRemark on(LocalDate day, String code, String text) {
    return new AlbumRemark(code, Optional.of(day), text);
  }

  public static AlbumRemark general(String code, String text) {
    return new AlbumRemark(code, Optional.empty(), text);
  }
}
