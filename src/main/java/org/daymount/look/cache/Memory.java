package org.daymount.look.cache;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.file.Sha256;
import org.daymount.file.WholeFile;
import org.daymount.ingest.KnownContents;
import org.daymount.look.Measures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Remembered;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;

/**
 * All that a run need not find out again: what a file holds, by its length, its time and a checksum
 * of its bytes; and what was measured in a picture, by what the file holds. Safe for several
 * threads.
 */
public final class Memory implements Remembered, KnownContents {
  /** The file's name in the folder that a run leaves its files in. */
  public static final String FILE = ".daymount-cache";

  /** How the names of made things begin. */
  private static final String MADE = "made ";

  /** More than these, and what this run had no use for is dropped. */
  private static final int MOST_VALUES = 40_000;

  private final String maker;
  private final Map<String, byte[]> before;
  private final Map<String, byte[]> used = new ConcurrentHashMap<>();
  private final List<String> notes;

  private Memory(String maker, Map<String, byte[]> before, List<String> notes) {
    this.maker = maker;
    this.before = before;
    this.notes = List.copyOf(notes);
  }

  /** Remembers nothing yet. */
  public static Memory empty(String maker) {
    return new Memory(maker, Map.of(), List.of());
  }

  /**
   * @param files of earlier runs; those that are missing, of another maker or damaged hold nothing
   * @param maker this build of the program and what it runs on: another one may measure in another
   *     way, and another decoder's pixels may differ in the last bit
   */
  public static Memory read(List<Path> files, String maker) {
    Map<String, byte[]> values = new TreeMap<>();
    List<String> notes = new ArrayList<>();
    for (Path file : files) {
      KeptValues.Read read = KeptValues.read(file, maker);
      values.putAll(read.values());
      read.useless()
          .ifPresent(
              why ->
                  notes.add(file + " is not used, for " + why + "; everything is measured again"));
    }
    return new Memory(maker, values, notes);
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
    if (used.keySet().stream().allMatch(before::containsKey) && Files.isRegularFile(file)) {
      WholeFile.clearParts(file);
      return;
    }
    Map<String, byte[]> all = new TreeMap<>(KeptValues.read(file, maker).values());
    all.putAll(before);
    all.keySet().removeIf(key -> key.startsWith(MADE)); // of months that are no more
    if (all.size() + used.size() > MOST_VALUES) {
      all.clear();
    }
    all.putAll(used);
    KeptValues.write(file, maker, all);
  }

  @Override
  public byte[] content(Path file, long bytes, FileTime modified, Reading reading)
      throws IOException {
    String key = "file " + bytes + " " + modified.toMillis() + " " + QuickHash.of(file);
    Optional<byte[]> known = get(key);
    if (known.isPresent()) {
      return known.get();
    }
    byte[] content = reading.read();
    keep(key, content);
    return content;
  }

  /**
   * Something that was made in an earlier run.
   *
   * @param key must tell all that it was made from, and of what kind it is
   */
  public Optional<byte[]> made(String key) {
    return get(MADE + key);
  }

  public void keepMade(String key, byte[] value) {
    keep(MADE + key, value);
  }

  @Override
  public Optional<Measures> firstLook(Photo photo) {
    return get(firstKey(photo)).flatMap(MeasuresCodec::firstLook);
  }

  @Override
  public void keepFirstLook(Photo photo, Measures measures) {
    keep(firstKey(photo), MeasuresCodec.firstLook(measures));
  }

  @Override
  public Optional<List<Optional<CloseLook>>> closeLook(List<Photo> frames) {
    return get(closeKey(frames))
        .flatMap(MeasuresCodec::closeLooks)
        .filter(looks -> looks.size() == frames.size() && areIn(frames, looks));
  }

  /** Whether every box touches the picture that it was found in. */
  private static boolean areIn(List<Photo> frames, List<Optional<CloseLook>> looks) {
    for (int i = 0; i < frames.size(); i++) {
      PixelBox picture = frames.get(i).size().whole();
      Optional<CloseLook> look = looks.get(i);
      if (look.isPresent()
          && !(look.get().faces().stream().allMatch(face -> face.box().overlaps(picture))
              && look.get().subjects().stream().allMatch(s -> s.box().overlaps(picture)))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public void keepCloseLook(List<Photo> frames, List<Optional<CloseLook>> closeLooks) {
    keep(closeKey(frames), MeasuresCodec.closeLooks(closeLooks));
  }

  private static String firstKey(Photo photo) {
    return "first " + photo.sha256();
  }

  private static String closeKey(List<Photo> frames) {
    StringBuilder all = new StringBuilder();
    frames.forEach(frame -> all.append(frame.sha256()).append('\n'));
    return "close " + Sha256.hex(all.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private Optional<byte[]> get(String key) {
    byte[] value = used.get(key);
    if (value == null) {
      value = before.get(key);
      if (value != null) {
        used.put(key, value);
      }
    }
    return Optional.ofNullable(value);
  }

  private void keep(String key, byte[] value) {
    used.put(key, value);
  }
}
