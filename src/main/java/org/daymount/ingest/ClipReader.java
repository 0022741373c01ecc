package org.daymount.ingest;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.daymount.clip.Clip;
import org.daymount.clip.ClipFile;
import org.daymount.clip.KeyFrame;
import org.daymount.file.Sha256;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.photo.PhotoFormat;
import org.daymount.photo.Taken;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/** One clip to the stills that may be taken from it, or a problem. Nothing is decoded. */
final class ClipReader {
  /** Stills a clip takes part with, spread evenly. */
  static final int MOST_STILLS = 40;

  private final IngestSettings settings;
  private final int most;
  private final LivePairs pairs;

  /**
   * @param most stills of a clip
   * @param pairs clips that are left alone
   */
  ClipReader(IngestSettings settings, int most, LivePairs pairs) {
    this.settings = settings;
    this.most = most;
    this.pairs = pairs;
  }

  /**
   * What one clip file gave.
   *
   * @param sums of the stills, in their order
   * @param fileTime the file's own time
   */
  record Found(
      PhotoFile file, Clip clip, List<KeyFrame> stills, List<String> sums, LocalDateTime fileTime) {

    List<Photo> photos(Taken start) {
      List<Photo> photos = new ArrayList<>();
      for (int i = 0; i < stills.size(); i++) {
        KeyFrame still = stills.get(i);
        photos.add(
            new Photo(
                file.still(still.at()),
                still.length(),
                sums.get(i),
                PhotoFormat.CLIP,
                clip.orientation().upright(clip.shown()),
                clip.orientation(),
                true,
                later(start, still),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
      }
      return photos;
    }

    private static Taken later(Taken start, KeyFrame still) {
      return new Taken(
          start.local().map(local -> start.hourKnown() ? local.plus(still.at()) : local),
          start.offset(),
          start.from(),
          start.hourKnown());
    }
  }

  /** At most one of the two is there; of the moving part of a photo neither. */
  record Outcome(PhotoFile file, Optional<Found> found, Optional<Problem> problem) {
    boolean isMovingPart() {
      return found.isEmpty() && problem.isEmpty();
    }
  }

  Outcome read(PhotoFile file) {
    try (ClipFile opened = ClipFile.open(file.path())) {
      if (pairs.has(file, opened.clip())) {
        return new Outcome(file, Optional.empty(), Optional.empty());
      }
      BasicFileAttributes attributes = Files.readAttributes(file.path(), BasicFileAttributes.class);
      List<KeyFrame> stills =
          most == 1 ? opened.clip().keyFrames().subList(0, 1) : opened.clip().spread(most);
      List<String> sums = new ArrayList<>();
      for (KeyFrame still : stills) {
        sums.add(sum(opened, still));
      }
      return new Outcome(
          file,
          Optional.of(
              new Found(
                  file,
                  opened.clip(),
                  stills,
                  sums,
                  LocalDateTime.ofInstant(
                      attributes.lastModifiedTime().toInstant(), settings.zone()))),
          Optional.empty());
    } catch (UnusablePicture e) {
      return lost(e.of(file));
    } catch (IOException | RuntimeException e) {
      return lost(
          new Problem(
              file,
              Problem.Kind.UNREADABLE,
              "cannot be read from the disk; check that it may be opened"));
    }
  }

  /** One that cannot be read is a loss only where no photo of its name shows the moment. */
  private Outcome lost(Problem problem) {
    return new Outcome(
        problem.file(),
        Optional.empty(),
        pairs.hasNamed(problem.file()) ? Optional.empty() : Optional.of(problem));
  }

  /**
   * SHA-256 of all that a still is made of: when it is, how it is coded, turned and coloured, and
   * its coded picture. The clip itself may have gigabytes and is not read for it.
   */
  private static String sum(ClipFile opened, KeyFrame still) throws IOException {
    Clip clip = opened.clip();
    MessageDigest digest = Sha256.digest();
    String how =
        String.join(
            " ",
            still.at().toString(),
            clip.codec().name(),
            clip.coded().toString(),
            clip.shown().toString(),
            clip.orientation().name(),
            clip.colour().toString());
    digest.update(how.getBytes(StandardCharsets.UTF_8));
    digest.update(opened.configuration());
    digest.update(opened.coded(still));
    return HexFormat.of().formatHex(digest.digest());
  }
}
