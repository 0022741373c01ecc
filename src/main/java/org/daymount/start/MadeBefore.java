package org.daymount.start;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Optional;

/** What an earlier run made in a folder. */
public final class MadeBefore {
  private MadeBefore() {}

  /** The month that was made where another is to be made. */
  public static Optional<YearMonth> otherMonth(MonthChoice wish) {
    return month(wish.out().resolve("month.json"))
        .filter(made -> !made.equals(YearMonth.parse(wish.month())));
  }

  /** As the file says near its beginning; none of a file that is not there or not ours. */
  private static Optional<YearMonth> month(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try (JsonParser parser = new JsonFactory().createParser(file.toFile())) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String field = parser.currentName();
        parser.nextToken();
        if (field.equals("month")) {
          return Optional.of(YearMonth.parse(parser.getText()));
        }
        parser.skipChildren();
      }
    } catch (IOException | DateTimeException notOurs) {
      return Optional.empty();
    }
    return Optional.empty();
  }
}
