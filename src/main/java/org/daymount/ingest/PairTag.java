package org.daymount.ingest;

import com.drew.metadata.Metadata;
import com.drew.metadata.exif.makernotes.AppleMakernoteDirectory;
import java.util.Objects;
import java.util.Optional;

/**
 * What a phone marks a photo and its moving part with: the content identifier (tag 0x0011) of one
 * maker's note, which the clip repeats among its metadata (from memory; exiftool and
 * metadata-extractor know both). Only a digest is handed on, as of a burst's mark.
 */
final class PairTag {
  private PairTag() {}

  static Optional<String> in(Metadata metadata) {
    return metadata.getDirectoriesOfType(AppleMakernoteDirectory.class).stream()
        .map(note -> note.getString(AppleMakernoteDirectory.TAG_CONTENT_IDENTIFIER))
        .filter(Objects::nonNull)
        .findFirst()
        .flatMap(PairTag::digest);
  }

  /** Empty for a blank identifier. */
  static Optional<String> digest(String identifier) {
    return Optional.of(identifier.strip()).filter(id -> !id.isEmpty()).map(BurstTag::digest);
  }
}
