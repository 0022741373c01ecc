package org.daymount.ingest;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.daymount.clip.Clip;
import org.daymount.photo.PhotoFile;

/**
 * Which clips are the moving parts of photos (live and motion photos): those that carry the
 * identifier of a photo, wherever they lie and whatever they are called; else those beside a photo
 * of the same name, where not both carry one and the clip is as short as such parts are.
 */
final class LivePairs {
  /** Phones film some three seconds around a photo (common practice, no source). */
  private static final Duration LONGEST = Duration.ofSeconds(10);

  private final Set<String> identifiers = new HashSet<>();
  private final Map<String, List<Optional<String>>> byName = new HashMap<>();

  private LivePairs() {}

  /** A clip whose photo cannot be used is no part of it: it may be all that is left. */
  static LivePairs of(List<PhotoReader.Outcome> outcomes) {
    LivePairs pairs = new LivePairs();
    for (PhotoReader.Outcome outcome : outcomes) {
      if (outcome.photo().isPresent() && outcome.problem().isEmpty()) {
        PhotoFile file = outcome.photo().get().file();
        outcome.pair().ifPresent(pairs.identifiers::add);
        pairs
            .byName
            .computeIfAbsent(key(file, FileKind.base(file.lastName())), any -> new ArrayList<>())
            .add(outcome.pair());
      }
    }
    return pairs;
  }

  boolean has(PhotoFile file, Clip clip) {
    Optional<String> own = clip.contentIdentifier().flatMap(PairTag::digest);
    return own.filter(identifiers::contains).isPresent()
        || clip.length().compareTo(LONGEST) <= 0
            && named(file).anyMatch(theirs -> own.isEmpty() || theirs.isEmpty());
  }

  /** Of a clip of which only the name is known. */
  boolean hasNamed(PhotoFile file) {
    return named(file).findAny().isPresent();
  }

  /** The identifiers of photos beside it: IMG_1.HEIC of IMG_1.MOV, PXL_1.MP.jpg of PXL_1.MP. */
  private Stream<Optional<String>> named(PhotoFile film) {
    return Stream.of(FileKind.base(film.lastName()), film.lastName())
        .map(base -> byName.getOrDefault(key(film, base), List.of()))
        .flatMap(List::stream);
  }

  private static String key(PhotoFile file, String base) {
    Path parent = file.path().getParent();
    return parent + "\0" + base.toLowerCase(Locale.ROOT);
  }
}
