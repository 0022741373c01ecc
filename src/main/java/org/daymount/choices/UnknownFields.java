package org.daymount.choices;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fields of a JSON object that this version does not know, kept so that saving loses nothing.
 *
 * @param fields each field's value by its name, sorted
 */
public record UnknownFields(Map<String, JsonNode> fields) {
  public static final UnknownFields NONE = new UnknownFields(Map.of());

  public UnknownFields {
    fields = Collections.unmodifiableMap(new TreeMap<>(fields));
  }
}
