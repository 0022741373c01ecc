package org.daymount.choices;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;

/** Finds fields that binding passed over, such as ones that are null, and where they stand. */
final class FieldPlace {
  private FieldPlace() {}

  /**
   * The first field that is given and was not understood.
   *
   * @param understood what was understood, written again
   */
  static Optional<JsonPointer> passedOver(JsonNode given, JsonNode understood) {
    return passedOver(JsonPointer.empty(), given, understood);
  }

  private static Optional<JsonPointer> passedOver(
      JsonPointer at, JsonNode given, JsonNode understood) {
    if (understood == null) {
      return saysNothing(given) ? Optional.empty() : Optional.of(at);
    }
    if (given.isNull() && !understood.isNull()) {
      return Optional.of(at);
    }
    for (Map.Entry<String, JsonNode> field : given.properties()) {
      Optional<JsonPointer> found =
          passedOver(
              at.appendProperty(field.getKey()), field.getValue(), understood.get(field.getKey()));
      if (found.isPresent()) {
        return found;
      }
    }
    for (int i = 0; given.isArray() && i < given.size(); i++) {
      Optional<JsonPointer> found = passedOver(at.appendIndex(i), given.get(i), understood.get(i));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** No quarter turn, no space: as if the field were left out. */
  private static boolean saysNothing(JsonNode given) {
    return (given.isContainerNode() && given.isEmpty())
        || (given.isIntegralNumber() && given.asLong() == 0);
  }

  static JsonLocation of(JsonPointer field, byte[] bytes, ObjectMapper mapper) throws IOException {
    try (JsonParser parser = mapper.createParser(bytes)) {
      while (parser.nextToken() != null) {
        if (parser.getParsingContext().pathAsPointer().equals(field)) {
          return parser.currentTokenLocation();
        }
      }
      return parser.currentLocation();
    }
  }
}
