package org.daymount.cache;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.dataformat.cbor.databind.CBORMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * Records to CBOR (RFC 8949) and back, every number bit for bit as it was; a record is the array of
 * its components. Records check themselves when they are made, these too.
 */
final class RecordCodec {
  private static final ObjectMapper CBOR =
      CBORMapper.builder()
          .annotationIntrospector(new RecordsAsArrays())
          .visibility(PropertyAccessor.ALL, Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .visibility(PropertyAccessor.CREATOR, Visibility.ANY)
          .enable(
              DeserializationFeature.FAIL_ON_TRAILING_TOKENS,
              DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
              DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .addModule(new Jdk8Module())
          .addModule(
              new SimpleModule()
                  .addSerializer(LocalDateTime.class, ToStringSerializer.instance)
                  .addDeserializer(LocalDateTime.class, new LocalDateTimes()))
          .build();

  private RecordCodec() {}

  static byte[] bytes(Record value) {
    try {
      return CBOR.writeValueAsBytes(value);
    } catch (IOException e) {
      throw new UncheckedIOException("a " + value.getClass() + " cannot be kept", e);
    }
  }

  /** Empty when these are not the bytes of such a record. */
  static <T extends Record> Optional<T> record(byte[] bytes, Class<T> type) {
    try {
      return Optional.of(CBOR.readValue(bytes, type));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Their order is the record's own; names would take more room than the values. */
  private static final class RecordsAsArrays extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1;

    @Override
    public JsonFormat.Value findFormat(Annotated given) {
      return given instanceof AnnotatedClass type && type.getRawType().isRecord()
          ? JsonFormat.Value.forShape(JsonFormat.Shape.ARRAY)
          : super.findFormat(given);
    }
  }

  private static final class LocalDateTimes extends StdScalarDeserializer<LocalDateTime> {
    private static final long serialVersionUID = 1;

    LocalDateTimes() {
      super(LocalDateTime.class);
    }

    @Override
    public LocalDateTime deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return LocalDateTime.parse(in.getText());
    }
  }
}
