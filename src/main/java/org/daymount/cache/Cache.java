package org.daymount.cache;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.file.WholeFile;

/**
 * All that a run need not find out again. It saves time and changes nothing. Safe for several
 * threads.
 */
public final class Cache {
  /** The file's name in the folder that a run leaves its files in. */
  public static final String FILE = ".daymount-cache";

  /** Everything is found out. */
  public static final Cache NONE = new Cache("", Map.of(), List.of());

  /** How long a value is kept. */
  public enum Keep {
    /** While there is room: what was measured holds for the same picture in another month too. */
    MEASURED,

    /** While runs have a use for it: what was drawn for a month that is no more is dropped. */
    DRAWN
  }

  /** More than these, and what this run had no use for is dropped. */
  private static final int MOST_VALUES = 40_000;

  private final String maker;
  private final Map<String, byte[]> before;
  private final Map<String, byte[]> used = new ConcurrentHashMap<>();
  private final List<String> notes;

  private Cache(String maker, Map<String, byte[]> before, List<String> notes) {
    this.maker = maker;
    this.before = before;
    this.notes = List.copyOf(notes);
  }

  /** Remembers nothing yet. */
  public static Cache empty(String maker) {
    return new Cache(maker, Map.of(), List.of());
  }

  /**
   * @param files of earlier runs; those that are missing, of another maker or damaged hold nothing
   * @param maker this build of the program and what it runs on: another one may measure in another
   *     way, and another decoder's pixels may differ in the last bit
   */
  public static Cache read(List<Path> files, String maker) {
    Map<String, byte[]> values = new TreeMap<>();
    List<String> notes = new ArrayList<>();
    for (Path file : files) {
      CacheFile.Read read = CacheFile.read(file, maker);
      values.putAll(read.values());
      read.useless()
          .ifPresent(
              why ->
                  notes.add(file + " is not used, for " + why + "; everything is measured again"));
    }
    return new Cache(maker, values, notes);
  }

  /** What a person should hear about the files that were read. */
  public List<String> notes() {
    return notes;
  }

  /**
   * Puts everything into a file for the next run, with what another run has put there meanwhile.
   * Nothing is written when there is nothing new; what a run that died left of it goes either way.
   */
  public void write(Path file) throws IOException {
    if (this == NONE) {
      return;
    }
    if (used.keySet().stream().allMatch(before::containsKey) && Files.isRegularFile(file)) {
      WholeFile.clearParts(file);
      return;
    }
    Map<String, byte[]> all = new TreeMap<>(CacheFile.read(file, maker).values());
    all.putAll(before);
    all.keySet().removeIf(key -> key.startsWith(Keep.DRAWN.name()));
    if (all.size() + used.size() > MOST_VALUES) {
      all.clear();
    }
    all.putAll(used);
    CacheFile.write(file, maker, all);
  }

  /**
   * @param key tells all that the value follows from, but for this build of the program
   * @return empty when it is not known, or was kept in a way that cannot be
   */
  public <T extends Record> Optional<T> get(Keep keep, String key, Class<T> type) {
    String whole = key(keep, key, type);
    byte[] value = used.get(whole);
    if (value == null) {
      value = before.get(whole);
      if (value != null) {
        used.put(whole, value);
      }
    }
    return Optional.ofNullable(value).flatMap(bytes -> RecordCodec.record(bytes, type));
  }

  public void put(Keep keep, String key, Record value) {
    if (this != NONE) {
      used.put(key(keep, key, value.getClass()), RecordCodec.bytes(value));
    }
  }

  private static String key(Keep keep, String key, Class<? extends Record> type) {
    return keep + " " + type.getSimpleName() + " " + key;
  }
}
