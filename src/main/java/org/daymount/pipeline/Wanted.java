package org.daymount.pipeline;

import java.util.ArrayList;
import java.util.List;
import org.daymount.day.Days;
import org.daymount.day.PhotoDay;
import org.daymount.photo.Photo;

/** The photos worth decoding: those of the month's days, and the undated, which may be copies. */
final class Wanted {
  private Wanted() {}

  static List<Photo> of(Days days) {
    List<Photo> photos = new ArrayList<>();
    for (PhotoDay day : days.days()) {
      photos.addAll(day.photos());
    }
    photos.addAll(days.undated());
    return photos;
  }
}
