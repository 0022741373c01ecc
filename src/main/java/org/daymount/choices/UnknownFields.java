package org.daymount.choices;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fields of a JSON object that this version does not know, kept so that saving loses nothing.
 *
 * @param json each field's value as JSON text, by name, sorted
 */
public record UnknownFields(Map<String, String> json) {
  public static final UnknownFields NONE = new UnknownFields(Map.of());

  public UnknownFields {
    json = Collections.unmodifiableMap(new TreeMap<>(json));
  }
}
