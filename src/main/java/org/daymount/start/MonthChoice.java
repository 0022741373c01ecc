package org.daymount.start;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person chose on the start page.
 *
 * @param folders with the pictures
 * @param month as 2026-06
 * @param note the month note's file; empty: the one beside the pictures, if there is one
 * @param album what the album is: options of {@code daymount sheets} without their dashes
 * @param out where everything is written
 */
public record MonthChoice(
    List<Path> folders, String month, Optional<Path> note, Map<String, String> album, Path out) {
  public MonthChoice {
    folders = List.copyOf(folders);
    album = Collections.unmodifiableMap(new LinkedHashMap<>(album));
  }
}
