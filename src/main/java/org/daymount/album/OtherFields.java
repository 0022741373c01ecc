package org.daymount.album;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fields of a JSON object that this version does not know, kept so that saving loses nothing.
 *
 * @param json each field's value as JSON text, by name, sorted
 */
public record OtherFields(Map<String, String> json) {
  public static final OtherFields NONE = new OtherFields(Map.of());

  public OtherFields {
    json = Collections.unmodifiableMap(new TreeMap<>(json));
  }
}
