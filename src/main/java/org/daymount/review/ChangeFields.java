package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.daymount.unit.PixelBox;

/** The fields of what the page asks. */
final class ChangeFields {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private ChangeFields() {}

  /** Empty when the field is missing or null. */
  static Optional<String> text(JsonNode asked, String field) {
    return asked.hasNonNull(field) ? Optional.of(asked.get(field).asText()) : Optional.empty();
  }

  /**
   * @throws HttpException 400 when it is no whole number
   */
  static int whole(JsonNode asked, String field) throws HttpException {
    if (!asked.path(field).isIntegralNumber() || !asked.path(field).canConvertToInt()) {
      throw new HttpException(HttpException.BAD_REQUEST, field + " must be a whole number");
    }
    return asked.get(field).intValue();
  }

  /**
   * Upright pixels.
   *
   * @throws HttpException 400 when one of its numbers is none
   */
  static PixelBox box(JsonNode asked) throws HttpException {
    return new PixelBox(
        whole(asked, "x"), whole(asked, "y"), whole(asked, "width"), whole(asked, "height"));
  }

  /** As a person says it: {@code 4 June}. */
  static String words(LocalDate day) {
    return DAY.format(day);
  }
}
