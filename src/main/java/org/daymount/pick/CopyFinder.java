package org.daymount.pick;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.TakenFrom;
import org.daymount.unit.PixelSize;

/** Finds files that repeat another: the same bytes, or the same picture saved smaller. */
public final class CopyFinder {
  private static final double ASPECTS_APART = 0.01;

  /** The one worth keeping first: better date, then more pixels, then more bytes, then name. */
  private static final Comparator<Photo> WORTH =
      Comparator.comparing((Photo photo) -> photo.taken().from())
          .thenComparing(photo -> -photo.size().area())
          .thenComparing(photo -> -photo.bytes())
          .thenComparing(Photo::file);

  /** Files with the same content as a better one; nothing needs to be decoded for it. */
  public List<Duplicate> exact(List<Photo> photos) {
    Map<String, Photo> kept = new HashMap<>();
    List<Duplicate> copies = new ArrayList<>();
    for (Photo photo : photos.stream().sorted(WORTH).toList()) {
      Photo first = kept.putIfAbsent(photo.sha256(), photo);
      if (first != null) {
        copies.add(new Duplicate(photo.file(), first.file(), true));
      }
    }
    return byFile(copies);
  }

  /**
   * Smaller re-saved copies, as chats and mail leave them: the same picture in the same shape with
   * fewer pixels, and with no date of its own that speaks against it. The copy points to the
   * largest original. Exact copies should be left out first.
   */
  public List<Duplicate> smaller(List<AnalysedPhoto> photos) {
    List<AnalysedPhoto> largestFirst =
        photos.stream()
            .sorted(
                Comparator.comparing((AnalysedPhoto looked) -> -looked.photo().size().area())
                    .thenComparing(AnalysedPhoto::photo, WORTH))
            .toList();
    Set<PhotoFile> known = new HashSet<>();
    List<Duplicate> copies = new ArrayList<>();
    for (AnalysedPhoto looked : largestFirst) {
      original(looked, largestFirst, known)
          .ifPresent(
              original -> {
                known.add(looked.photo().file());
                copies.add(new Duplicate(looked.photo().file(), original.photo().file(), false));
              });
    }
    return byFile(copies);
  }

  private static Optional<AnalysedPhoto> original(
      AnalysedPhoto looked, List<AnalysedPhoto> largestFirst, Set<PhotoFile> copies) {
    return largestFirst.stream()
        .takeWhile(other -> other.photo().size().area() > looked.photo().size().area())
        .filter(other -> !copies.contains(other.photo().file()))
        .filter(other -> !other.isDamaged() || looked.isDamaged()) // a sound copy is worth more
        .filter(
            other ->
                other.photo().file().frame().isPresent()
                    == looked.photo().file().frame().isPresent())
        .filter(other -> sameShape(other.photo().size(), looked.photo().size()))
        .filter(other -> datesAllow(looked.photo(), other.photo()))
        .filter(
            other ->
                NearDuplicates.anyTime(
                    other.measures().fingerprint(), looked.measures().fingerprint()))
        .findFirst();
  }

  private static boolean sameShape(PixelSize a, PixelSize b) {
    double wholePixels = 1.0 / Math.min(a.shortEdge(), b.shortEdge()); // what rounding may shift
    return Math.abs(a.aspect() / b.aspect() - 1) <= Math.max(ASPECTS_APART, wholePixels);
  }

  /**
   * A copy has no date, or a guessed one, or the original's to the second, or one made up from a
   * file name on the original's day (a chat names files by the day it sent them).
   */
  private static boolean datesAllow(Photo copy, Photo original) {
    if (!copy.taken().from().isTrusted()) {
      return true;
    }
    if (!original.taken().from().isTrusted()) {
      return false;
    }
    LocalDateTime copied = copy.taken().local().orElseThrow();
    LocalDateTime taken = original.taken().local().orElseThrow();
    boolean sameSecond =
        copied.truncatedTo(ChronoUnit.SECONDS).equals(taken.truncatedTo(ChronoUnit.SECONDS));
    boolean sentThatDay =
        copy.taken().from() == TakenFrom.NAME && copied.toLocalDate().equals(taken.toLocalDate());
    return sameSecond || sentThatDay;
  }

  private static List<Duplicate> byFile(List<Duplicate> copies) {
    return copies.stream().sorted(Comparator.comparing(Duplicate::file)).toList();
  }
}
