package org.daymount.month;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
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

/**
 * Records as JSON, their components in order: what is empty is null, a constant is its name in
 * small letters with hyphens, a day is as ISO 8601 has it, a photo's file is its name.
 */
public final class RecordJson {
  /** How a value is written. */
  @FunctionalInterface
  public interface Writing<T> {
    void write(T value, JsonGenerator to) throws IOException;
  }

  private RecordJson() {}

  /**
   * @param values how lengths and other values are written
   */
  public static JsonMapper.Builder mapper(SimpleModule values) {
    return JsonMapper.builder()
        .visibility(PropertyAccessor.ALL, Visibility.NONE)
        .visibility(PropertyAccessor.FIELD, Visibility.ANY)
        .addModule(new Jdk8Module())
        .addModule(
            new SimpleModule("common")
                .addSerializer(LocalDate.class, ToStringSerializer.instance)
                .addSerializer(Path.class, ToStringSerializer.instance)
                .addSerializer(PhotoFile.class, written((file, to) -> to.writeString(file.name())))
                .addSerializer(
                    Enum.class, written((constant, to) -> to.writeString(word(constant)))))
        .addModule(values);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static <T> StdSerializer<T> written(Writing<T> writing) {
    return new StdSerializer<>(Object.class, false) {
      private static final long serialVersionUID = 1;

      @Override
      public void serialize(T value, JsonGenerator to, SerializerProvider provider)
          throws IOException {
        writing.write(value, to);
      }
    };
  }

  public static String text(ObjectWriter writer, Object record) {
    try {
      return writer.writeValueAsString(record);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("records of values can always be written", e);
    }
  }
}
