package org.daymount.choices;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.cfg.MutableCoercionConfig;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.type.LogicalType;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.function.Function;
import org.daymount.album.PageSpec;
import org.daymount.album.PageSpecParser;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.SizeText;

/** How choices.json is bound: strictly, with our types as the words that people write. */
final class ChoicesMapper {
  private ChoicesMapper() {}

  static JsonMapper create() {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .withCoercionConfig(LogicalType.Textual, ChoicesMapper::onlyTexts)
            .defaultSetterInfo(JsonSetter.Value.forContentNulls(Nulls.FAIL))
            .addModule(words())
            .build();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    mapper.setDefaultPrettyPrinter(
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
    return mapper;
  }

  private static void onlyTexts(MutableCoercionConfig coercions) {
    coercions
        .setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
        .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
        .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail);
  }

  private static SimpleModule words() {
    SimpleModule module = new SimpleModule();
    add(module, LocalDate.class, ChoicesMapper::date, LocalDate::toString);
    add(module, LocalTime.class, ChoicesMapper::time, LocalTime::toString);
    add(module, PageSpec.class, PageSpecParser::parse, PageSpecParser::text);
    add(module, Orientation.class, Orientation::parse, Orientation::word);
    add(module, PaperSize.class, SizeText::parseSize, SizeText::text);
    return module;
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("'" + text + "' is not a date like 2026-06-03");
    }
  }

  private static LocalTime time(String text) {
    try {
      return LocalTime.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("'" + text + "' is not a time like 14:25");
    }
  }

  private static <T> void add(
      SimpleModule module, Class<T> type, Function<String, T> parse, Function<T, String> text) {
    module.addDeserializer(
        type,
        new StdDeserializer<T>(type) {
          private static final long serialVersionUID = 1L;

          @Override
          public T deserialize(JsonParser parser, DeserializationContext context)
              throws IOException {
            if (parser.currentToken() != JsonToken.VALUE_STRING) {
              throw JsonMappingException.from(parser, "it is not a text");
            }
            try {
              return parse.apply(parser.getText());
            } catch (IllegalArgumentException wrong) {
              throw JsonMappingException.from(parser, wrong.getMessage());
            }
          }
        });
    module.addSerializer(
        type,
        new StdSerializer<T>(type) {
          private static final long serialVersionUID = 1L;

          @Override
          public void serialize(T value, JsonGenerator generator, SerializerProvider provider)
              throws IOException {
            generator.writeString(text.apply(value));
          }
        });
  }
}
