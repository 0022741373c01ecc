package org.daymount.output;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.temporal.TemporalAccessor;
import java.time.temporal.TemporalAmount;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.file.Sha256;
import org.daymount.look.SaliencyMap;

/**
 * The SHA-256 of all that something is drawn from. Records are taken apart component by component,
 * so what is added to one later is part of the recipe without anybody thinking of it.
 */
public final class Recipe {
  private static final Map<Class<?>, List<Method>> ACCESSORS = new ConcurrentHashMap<>();

  private final DataOutputStream out;

  private Recipe(DataOutputStream out) {
    this.out = out;
  }

  /**
   * @param kind what is drawn
   * @param parts records, lists, maps in a fixed order, texts, numbers, times and what these hold
   * @return 64 hexadecimal digits
   * @throws IllegalArgumentException for a part of which nobody has said how it is told apart
   */
  public static String of(String kind, Object... parts) {
    MessageDigest digest = Sha256.digest();
    try (DataOutputStream out =
        new DataOutputStream(
            new BufferedOutputStream(
                new DigestOutputStream(OutputStream.nullOutputStream(), digest)))) {
      Recipe recipe = new Recipe(out);
      recipe.text(kind);
      recipe.list(List.of(parts));
    } catch (IOException e) {
      throw new UncheckedIOException("a digest cannot be written to", e);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private void add(Object part) throws IOException {
    if (part instanceof Record record) {
      record(record);
    } else if (part instanceof List<?> list) {
      list(list);
    } else if (part instanceof Optional<?> optional) {
      list(optional.map(List::<Object>of).orElse(List.of()));
    } else if (part instanceof Map<?, ?> map) {
      out.writeInt(map.size());
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        add(entry.getKey());
        add(entry.getValue());
      }
    } else if (part instanceof SaliencyMap map) {
      subjects(map);
    } else if (part instanceof byte[] bytes) {
      out.writeInt(bytes.length);
      out.write(bytes);
    } else if (part instanceof CharSequence
        || part instanceof Number
        || part instanceof Boolean
        || part instanceof Enum<?>
        || part instanceof Path
        || part instanceof TemporalAccessor
        || part instanceof TemporalAmount) {
      text(part.getClass().getSimpleName());
      text(part instanceof Enum<?> one ? one.name() : part.toString());
    } else {
      throw new IllegalArgumentException("no recipe can be made of a " + part.getClass());
    }
  }

  private void record(Record record) throws IOException {
    text(record.getClass().getSimpleName());
    for (Method accessor : ACCESSORS.computeIfAbsent(record.getClass(), Recipe::accessors)) {
      try {
        add(accessor.invoke(record));
      } catch (IllegalAccessException | InvocationTargetException e) {
        throw new IllegalArgumentException("no recipe can be made of " + record.getClass(), e);
      }
    }
  }

  private static List<Method> accessors(Class<?> record) {
    List<Method> accessors =
        List.of(record.getRecordComponents()).stream().map(RecordComponent::getAccessor).toList();
    accessors.forEach(accessor -> accessor.setAccessible(true)); // of records within a package
    return accessors;
  }

  private void list(List<?> list) throws IOException {
    out.writeInt(list.size());
    for (Object one : list) {
      add(one);
    }
  }

  private void subjects(SaliencyMap map) throws IOException {
    out.writeInt(map.columns());
    out.writeInt(map.rows());
    float[] shares = map.shares();
    ByteBuffer bytes = ByteBuffer.allocate(Float.BYTES * shares.length);
    bytes.asFloatBuffer().put(shares);
    out.write(bytes.array());
  }

  private void text(String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }
}
