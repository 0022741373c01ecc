package org.daymount.start;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a person chose on the start page.
 *
 * @param folders with the pictures
 * @param month as 2026-06
 * @param texts the files of the note, the album and the dates; one that is not named is the one
 *     beside the pictures, if there is one
 * @param album what the album is: options of {@code daymount sheets} without their dashes; "yes"
 *     for one that takes no value, and a line for each value of one that may be given several times
 * @param out where everything is written
 */
public record MonthChoice(
    List<Path> folders,
    String month,
    Map<MonthText, Path> texts,
    Map<String, String> album,
    Path out) {
  public MonthChoice {
    folders = List.copyOf(folders);
    texts = Map.copyOf(texts);
    album = Collections.unmodifiableMap(new LinkedHashMap<>(album));
  }

  public MonthChoice with(Map<MonthText, Path> others) {
    return new MonthChoice(folders, month, others, album, out);
  }
}
