package org.daymount.review;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.daymount.photo.PhotoFile;
import org.daymount.unit.Length;

/**
 * Records as the JSON that the page reads: lengths are inches, what is empty is null, a constant is
 * its name in small letters, a photo's file its name.
 */
final class ReviewJson {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .visibility(PropertyAccessor.ALL, Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .addModule(new Jdk8Module())
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDate.class, ToStringSerializer.instance)
                  .addSerializer(Path.class, ToStringSerializer.instance)
                  .addSerializer(
                      Length.class, written((length, to) -> to.writeNumber(length.inInches())))
                  .addSerializer(
                      PhotoFile.class, written((file, to) -> to.writeString(file.name())))
                  .addSerializer(
                      Enum.class,
                      written((one, to) -> to.writeString(one.name().toLowerCase(Locale.ROOT)))))
          .build();

  private interface Writing<T> {
    void write(T value, JsonGenerator to) throws IOException;
  }

  private ReviewJson() {}

  private static <T> StdSerializer<T> written(Writing<T> writing) {
    return new StdSerializer<>(Object.class, false) {
      private static final long serialVersionUID = 1;

      @Override
      public void serialize(T value, JsonGenerator to, SerializerProvider provider)
          throws IOException {
        writing.write(value, to);
      }
    };
  }

  static String text(Object record) {
    try {
      return JSON.writeValueAsString(record);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("records of values can always be written", e);
    }
  }
}
