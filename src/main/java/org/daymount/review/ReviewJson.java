package org.daymount.review;

import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.module.SimpleModule;
import org.daymount.month.RecordJson;
import org.daymount.unit.Length;

/** Records as the JSON that the page reads: lengths are inches. */
final class ReviewJson {
  private static final ObjectWriter JSON =
      RecordJson.mapper(
              new SimpleModule("review")
                  .addSerializer(
                      Length.class,
                      RecordJson.written((length, to) -> to.writeNumber(length.inInches()))))
          .build()
          .writer();

  private ReviewJson() {}

  static String text(Object record) {
    return RecordJson.text(JSON, record);
  }
}
