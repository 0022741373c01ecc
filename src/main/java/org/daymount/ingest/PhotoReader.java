package org.daymount.ingest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.function.LongPredicate;
import org.daymount.cache.Cache;
import org.daymount.file.Sha256;
import org.daymount.image.ColourCheck;
import org.daymount.image.Completeness;
import org.daymount.image.HeifConverter;
import org.daymount.image.PictureHeader;
import org.daymount.image.PictureHeaders;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/** One file to one photo, one problem, or both. Safe to share between threads. */
final class PhotoReader {

  /**
   * @param photo what is known; empty when not even a size is
   * @param problem why it cannot be used; empty when it can
   * @param remark what should be known of it although it can be used
   * @param pair a digest of what it has in common with its moving part
   */
  record Outcome(
      Optional<Photo> photo,
      Optional<Problem> problem,
      Optional<Problem> remark,
      Optional<String> pair) {
    static Outcome lost(Problem problem) {
      return new Outcome(
          Optional.empty(), Optional.of(problem), Optional.empty(), Optional.empty());
    }
  }

  private final IngestSettings settings;
  private final TakenRules taken;
  private final TagReader tagReader = new TagReader();
  private final PictureHeaders headers = new PictureHeaders();
  private final Completeness completeness = new Completeness();
  private final ColourCheck colours = new ColourCheck();
  private final Cache known;
  private final LongPredicate isShared;
  private final boolean datesOnly;

  PhotoReader(IngestSettings settings) {
    this(settings, Cache.NONE);
  }

  PhotoReader(IngestSettings settings, Cache known) {
    this(settings, known, length -> true, false);
  }

  private PhotoReader(
      IngestSettings settings, Cache known, LongPredicate isShared, boolean datesOnly) {
    this.settings = settings;
    this.known = known;
    this.taken = new TakenRules(settings);
    this.isShared = isShared;
    this.datesOnly = datesOnly;
  }

  /**
   * Reads no more than is needed to tell days and copies.
   *
   * @param isShared whether several files have that length
   */
  static PhotoReader forDates(IngestSettings settings, LongPredicate isShared) {
    return new PhotoReader(settings, Cache.NONE, isShared, true);
  }

  Outcome read(PhotoFile file) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file.path(), BasicFileAttributes.class);
      FileFacts facts = facts(file.path(), attributes);
      Photo photo = photo(file, attributes, facts);
      Optional<Problem> problem = whyUnusable(photo, facts);
      return new Outcome(
          Optional.of(photo),
          problem,
          problem.isPresent()
              ? Optional.empty()
              : facts
                  .colourRemark()
                  .map(why -> new Problem(file, Problem.Kind.COLOUR_PROFILE_IGNORED, why))
                  .or(
                      () ->
                          Sidecar.remark(file.path(), photo.taken().from())
                              .map(why -> new Problem(file, Problem.Kind.SIDECAR_IGNORED, why))),
          facts.tags().pair());
    } catch (UnusablePicture e) {
      return Outcome.lost(e.of(file));
    } catch (IOException | RuntimeException | StackOverflowError e) {
      return Outcome.lost(
          new Problem(
              file,
              Problem.Kind.UNREADABLE,
              "cannot be read from the disk; check that it may be opened"));
    }
  }

  private FileFacts facts(Path path, BasicFileAttributes attributes) throws IOException {
    if (known == Cache.NONE) {
      return read(path, attributes.size());
    }
    String key =
        attributes.size()
            + " "
            + attributes.lastModifiedTime().toMillis()
            + " "
            + QuickHash.of(path);
    Optional<FileFacts> before = known.get(Cache.Keep.MEASURED, key, FileFacts.class);
    FileFacts facts;
    if (before.isPresent()) {
      facts = before.get();
    } else {
      facts = read(path, attributes.size()).impersonal();
      known.put(Cache.Keep.MEASURED, key, facts);
    }
    return settings.modelsWanted()
        ? facts.with(tagReader.read(path, facts.header().format()))
        : facts;
  }

  private FileFacts read(Path path, long bytes) throws IOException {
    PictureHeader header = headers.stated(path);
    Tags tags = tagReader.read(path, header.format());
    String sum = isShared.test(bytes) ? Sha256.ofFile(path) : "the only one of " + bytes + " bytes";
    Optional<String> colourRemark =
        datesOnly ? Optional.empty() : colours.whyIgnored(path, header.format());
    try {
      completeness.check(path, header.format());
      return new FileFacts(header, tags, sum, Optional.empty(), "", colourRemark);
    } catch (UnusablePicture e) {
      return new FileFacts(
          header, tags, sum, Optional.of(e.kind()), e.getMessage(), Optional.empty());
    }
  }

  private Photo photo(PhotoFile file, BasicFileAttributes attributes, FileFacts facts) {
    Tags tags = facts.tags();
    PictureHeader header = facts.header();
    Optional<ExifOrientation> told = orientation(header, tags);
    ExifOrientation orientation = told.orElse(ExifOrientation.TOP_LEFT);
    LocalDateTime fileTime =
        LocalDateTime.ofInstant(attributes.lastModifiedTime().toInstant(), settings.zone());
    var upright = orientation.upright(header.stored());
    return new Photo(
        file,
        attributes.size(),
        facts.sha256(),
        header.format(),
        upright,
        orientation,
        told.isPresent(),
        taken.judge(tags, file, fileTime),
        tags.model().filter(model -> !model.equals(Tags.UNNAMED)),
        tags.burst(),
        ScreenshotEvidence.in(file, header.format(), upright, tags));
  }

  private Optional<Problem> whyUnusable(Photo photo, FileFacts facts) {
    try {
      headers.refuseIfTooLarge(facts.header(), photo.bytes());
      if (facts.damage().isPresent()) {
        throw new UnusablePicture(facts.damage().get(), facts.damageText());
      }
      refuseIfNotReadable(facts.header().format());
      return Optional.empty();
    } catch (UnusablePicture e) {
      return Optional.of(e.of(photo.file()));
    }
  }

  /**
   * HEIF and AVIF turn by properties of their own, and the EXIF tag is to be ignored (ISO/IEC
   * 23000-22, 7.3.10.1).
   */
  private static Optional<ExifOrientation> orientation(PictureHeader header, Tags tags) {
    return switch (header.format()) {
      case HEIF, AVIF -> header.turned();
      default -> tags.orientation();
    };
  }

  private static void refuseIfNotReadable(PhotoFormat format) throws UnusablePicture {
    switch (format) {
      case HEIF, AVIF -> {
        Optional<UnusablePicture> why = HeifConverter.whyNot(format);
        if (why.isPresent()) {
          throw why.get();
        }
      }
      default -> {}
    }
  }
}
