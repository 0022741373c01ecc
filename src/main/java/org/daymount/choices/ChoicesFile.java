package org.daymount.choices;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.exc.InvalidNullException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;

/**
 * Choices as the bytes of choices.json and back. Same choices, same bytes: days by date, spaces by
 * place, photos by file. Fields it does not know are kept, so that an older version does not undo
 * what a newer one wrote.
 */
public final class ChoicesFile {
  private static final String REMEDY =
      "; put back a copy of choices.json, or move it away to start without choices";
  private static final JsonMapper JSON = ChoicesMapper.create();

  private ChoicesFile() {}

  /** UTF-8, two blanks of indent, '\n' at line ends on every system. */
  public static byte[] write(Choices choices) {
    try {
      byte[] json =
          JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(ChoicesJson.of(choices));
      byte[] line = Arrays.copyOf(json, json.length + 1);
      line[json.length] = '\n';
      return line;
    } catch (JsonProcessingException cannotHappen) {
      throw new IllegalStateException("records of values could not be written", cannotHappen);
    }
  }

  /**
   * @throws UnreadableChoices when the bytes are not choices, or those of a newer version; the
   *     message names the line and the field
   */
  public static Choices read(byte[] bytes) throws UnreadableChoices {
    try {
      JsonNode root = JSON.readTree(bytes);
      if (!root.isObject()) {
        throw new UnreadableChoices("choices.json is empty or holds something else" + REMEDY);
      }
      JsonNode schema = root.path("schema");
      if (schema.isIntegralNumber() && schema.bigIntegerValue().longValue() > ChoicesJson.SCHEMA) {
        throw new UnreadableChoices(
            "choices.json was written by a newer Daymount (schema "
                + schema
                + ", this one knows "
                + ChoicesJson.SCHEMA
                + "); use that one, or move the file away to start without choices");
      }
      ChoicesJson read = JSON.readValue(bytes, ChoicesJson.class);
      Optional<JsonPointer> over = FieldPlace.passedOver(root, JSON.valueToTree(read));
      if (over.isPresent()) {
        throw damaged(
            FieldPlace.of(over.get(), bytes, JSON),
            field(over.get())
                + (root.at(over.get()).isNull()
                    ? "it is null; leave the field out where nothing is to be said"
                    : "it means nothing here"));
      }
      return read.choices();
    } catch (UnreadableChoices e) {
      throw e;
    } catch (JsonMappingException wrong) {
      throw damaged(wrong.getLocation(), field(wrong) + what(wrong));
    } catch (JsonProcessingException notJson) {
      throw damaged(notJson.getLocation(), "");
    } catch (IOException e) {
      throw damaged(null, "");
    }
  }

  private static UnreadableChoices damaged(JsonLocation place, String what) {
    return new UnreadableChoices(
        "choices.json is damaged"
            + (place == null
                ? ""
                : " at line " + place.getLineNr() + ", column " + place.getColumnNr())
            + (what.isEmpty() ? "" : ": " + what)
            + REMEDY);
  }

  /** {@code days[0].spaces[1].crop: }. */
  private static String field(JsonMappingException wrong) {
    StringBuilder path = new StringBuilder();
    for (JsonMappingException.Reference step : wrong.getPath()) {
      if (step.getFieldName() == null) {
        path.append('[').append(step.getIndex()).append(']');
      } else {
        path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
      }
    }
    return path.isEmpty() ? "" : path + ": ";
  }

  private static String field(JsonPointer place) {
    StringBuilder path = new StringBuilder();
    for (JsonPointer step = place; !step.matches(); step = step.tail()) {
      if (step.mayMatchElement()) {
        path.append('[').append(step.getMatchingIndex()).append(']');
      } else {
        path.append(path.isEmpty() ? "" : ".").append(step.getMatchingProperty());
      }
    }
    return path + ": ";
  }

  /** In words that name no class. */
  private static String what(JsonMappingException wrong) {
    if (wrong.getCause() instanceof IllegalArgumentException checked) {
      return checked.getMessage();
    }
    if (wrong instanceof InvalidNullException) {
      return "it is null; leave the field out where nothing is to be said";
    }
    if (wrong instanceof MismatchedInputException mismatched) {
      Class<?> wanted = mismatched.getTargetType();
      if (wanted == null || wanted.isRecord()) {
        return "it holds no fields";
      }
      if (Collection.class.isAssignableFrom(wanted)) {
        return "it is not a list";
      }
      return wanted == Boolean.class
          ? "it is not true or false"
          : wanted == Integer.class ? "it is not a whole number" : "it is not a text";
    }
    return wrong.getOriginalMessage();
  }
}
