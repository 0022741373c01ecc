package org.daymount.look;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.daymount.cache.Cache;
import org.daymount.file.Sha256;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;

/**
 * What was measured in earlier runs, by what the files hold. What no measuring gives (a number that
 * is none, a confidence over 1, a face beside its picture) is measured again. Safe for several
 * threads.
 */
public final class LookCache {
  /** Every photo is new. */
  public static final LookCache NONE = new LookCache(Cache.NONE);

  private final Cache cache;

  public LookCache(Cache cache) {
    this.cache = cache;
  }

  /** All but the close look, as it is kept. */
  private record FirstLook(
      double sharpness,
      double clarity,
      double exposure,
      Fingerprint fingerprint,
      int columns,
      int rows,
      float[] shares,
      Optional<String> damage) {
    static FirstLook of(Measures measures) {
      SaliencyMap map = measures.map();
      return new FirstLook(
          measures.sharpness(),
          measures.clarity(),
          measures.exposure(),
          measures.fingerprint(),
          map.columns(),
          map.rows(),
          map.shares(),
          measures.damage());
    }

    boolean isSound() {
      return finite(sharpness, clarity, exposure)
          && fingerprint.moments().stream().allMatch(Float::isFinite)
          && columns > 0
          && rows > 0
          && (long) columns * rows == shares.length
          && IntStream.range(0, shares.length).allMatch(i -> shares[i] >= 0);
    }

    Measures measures() {
      return new Measures(
          sharpness,
          clarity,
          exposure,
          fingerprint,
          SaliencyMap.ofShares(columns, rows, shares),
          Optional.empty(),
          damage);
    }
  }

  /** Of frames that were looked at together. */
  private record CloseLooks(List<Optional<CloseLook>> looks) {}

  public Optional<Measures> firstLook(Photo photo) {
    return cache
        .get(Cache.Keep.MEASURED, photo.sha256(), FirstLook.class)
        .filter(FirstLook::isSound)
        .map(FirstLook::measures);
  }

  public void keepFirstLook(Photo photo, Measures measures) {
    cache.put(Cache.Keep.MEASURED, photo.sha256(), FirstLook.of(measures));
  }

  /**
   * @param frames that were looked at together, in that order, because a close look at one depends
   *     on what was seen in the others
   * @return one for each frame; empty for one that could not be read
   */
  public Optional<List<Optional<CloseLook>>> closeLook(List<Photo> frames) {
    return cache
        .get(Cache.Keep.MEASURED, key(frames), CloseLooks.class)
        .map(CloseLooks::looks)
        .filter(looks -> looks.size() == frames.size() && areSound(frames, looks));
  }

  public void keepCloseLook(List<Photo> frames, List<Optional<CloseLook>> closeLooks) {
    cache.put(Cache.Keep.MEASURED, key(frames), new CloseLooks(closeLooks));
  }

  private static String key(List<Photo> frames) {
    StringBuilder all = new StringBuilder();
    frames.forEach(frame -> all.append(frame.sha256()).append('\n'));
    return Sha256.hex(all.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private static boolean areSound(List<Photo> frames, List<Optional<CloseLook>> looks) {
    for (int i = 0; i < frames.size(); i++) {
      PixelBox picture = frames.get(i).size().whole();
      if (!looks.get(i).map(look -> isSound(look, picture)).orElse(true)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSound(CloseLook look, PixelBox picture) {
    return look.faces().stream()
            .allMatch(
                face -> face.box().overlaps(picture) && areShares(face.confidence(), face.facing()))
        && look.subjects().stream()
            .allMatch(subject -> subject.box().overlaps(picture) && areShares(subject.confidence()))
        && finite(look.sharpnessThere())
        && look.main()
            .map(main -> finite(main.clarity(), main.exposure(), main.highlights()))
            .orElse(true);
  }

  /** 0 to 1. */
  private static boolean areShares(double... values) {
    return DoubleStream.of(values).allMatch(value -> value >= 0 && value <= 1);
  }

  private static boolean finite(double... values) {
    return DoubleStream.of(values).allMatch(Double::isFinite);
  }
}
