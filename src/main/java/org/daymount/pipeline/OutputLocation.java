package org.daymount.pipeline;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Where a run leaves its files.
 *
 * @param here the working directory
 * @param named the folder a person named; empty for the one called after the month
 */
public record OutputLocation(Path here, Optional<Path> named) {
  /** As a person would write it. */
  public Path name(YearMonth month) {
    return named.orElseGet(() -> Path.of("daymount-" + month));
  }

  public Path folder(YearMonth month) {
    return here.resolve(name(month));
  }

  /** The month's choices.json, whether or not it is there. */
  public Path choices(YearMonth month) {
    return folder(month).resolve("choices.json");
  }
}
