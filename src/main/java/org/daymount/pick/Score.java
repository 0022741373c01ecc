package org.daymount.pick;

import java.util.List;

/** A sum of named parts, so that it can be explained. */
public record Score(List<Part> parts) {
  /**
   * @param name one or two words for a table: "faces", "light"
   * @param value what it adds; below zero takes away
   */
  public record Part(String name, double value) {}

  public Score {
    parts = List.copyOf(parts);
  }

  public double total() {
    return parts.stream().mapToDouble(Part::value).sum();
  }
}
