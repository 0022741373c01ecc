package org.daymount.day;

import java.time.LocalDate;
import java.util.List;
import org.daymount.photo.Photo;

/** One day and what was taken on it, earliest first; a day may be empty. */
public record PhotoDay(LocalDate day, List<Photo> photos) {
  public PhotoDay {
    photos = List.copyOf(photos);
  }
}
