package org.daymount.look;

import java.util.List;
import java.util.Optional;
import org.daymount.unit.PixelSize;

/**
 * What was measured in the pixels of one photo.
 *
 * @param sharpness variance of the Laplacian after a small blur, on the subject, at one working
 *     size; comparable only between pictures of one burst
 * @param clarity how crisp its strongest edges are, 0 (soft, or nothing to see) to 1; comparable
 *     between scenes
 * @param exposure 0 to 1: entropy less burnt, blocked and badly placed tones
 * @param map where the subject probably is, from the pixels alone
 * @param close what the detectors found; empty while nobody has looked that closely
 * @param damage what is wrong with its coded data, as the end of "is damaged: "; it can be decoded
 *     all the same, but nobody knows what a part of it showed
 */
public record Measures(
    double sharpness,
    double clarity,
    double exposure,
    Fingerprint fingerprint,
    SaliencyMap map,
    Optional<CloseLook> close,
    Optional<String> damage) {

  /** Of a picture whose file is in order. */
  public Measures(
      double sharpness,
      double clarity,
      double exposure,
      Fingerprint fingerprint,
      SaliencyMap map,
      Optional<CloseLook> close) {
    this(sharpness, clarity, exposure, fingerprint, map, close, Optional.empty());
  }

  /**
   * Faces and subjects, surest first.
   *
   * @param sharpnessThere inside what the burst is about; 0 when there is nothing, or no burst
   * @param main how the main thing looks; empty when nobody measured it
   */
  public record CloseLook(
      List<Face> faces, List<Subject> subjects, double sharpnessThere, Optional<MainLook> main) {
    public CloseLook {
      faces = List.copyOf(faces);
      subjects = List.copyOf(subjects);
    }

    public CloseLook(List<Face> faces, List<Subject> subjects, double sharpnessThere) {
      this(faces, subjects, sharpnessThere, Optional.empty());
    }

    public CloseLook with(MainLook look) {
      return new CloseLook(faces, subjects, sharpnessThere, Optional.of(look));
    }

    public CloseLook withSharpness(double sharpness) {
      return new CloseLook(faces, subjects, sharpness, main);
    }

    private CloseLook turned(PixelSize picture, int quarterTurns) {
      return new CloseLook(
          faces.stream().map(face -> face.at(face.box().turned(picture, quarterTurns))).toList(),
          subjects.stream()
              .map(
                  subject ->
                      new Subject(
                          subject.box().turned(picture, quarterTurns),
                          subject.what(),
                          subject.confidence()))
              .toList(),
          sharpnessThere,
          main);
    }
  }

  public List<Face> faces() {
    return close.map(CloseLook::faces).orElse(List.of());
  }

  public List<Subject> subjects() {
    return close.map(CloseLook::subjects).orElse(List.of());
  }

  /** As {@link MainFaces#of}. */
  public List<Face> mainFaces(PixelSize picture) {
    return MainFaces.of(faces(), subjects(), picture);
  }

  /** As {@link MainFaces#counted}. */
  public List<Face> countedFaces(PixelSize picture) {
    return MainFaces.counted(faces(), subjects(), picture);
  }

  /** Of the main thing where it was looked at, else of the whole picture. */
  public double clarityThere() {
    return close.flatMap(CloseLook::main).map(MainLook::clarity).orElse(clarity);
  }

  /**
   * Of the main thing or the whole picture, whichever is better: a bright, even sky behind a bird
   * is not bad light, nor is a dark room around a face that is lit.
   */
  public double light() {
    return Math.max(
        exposure, close.flatMap(CloseLook::main).map(MainLook::exposure).orElse(exposure));
  }

  /** Whether nobody would want it printed while there is another. */
  public boolean isSpoilt() {
    return close.flatMap(CloseLook::main).map(MainLook::isSpoilt).orElse(false);
  }

  /**
   * Where everything is after the picture was turned clockwise. The fingerprint stays: it is for
   * comparing pictures as they were taken.
   *
   * @param picture its size before
   */
  Measures turned(PixelSize picture, int quarterTurns) {
    return new Measures(
        sharpness,
        clarity,
        exposure,
        fingerprint,
        map.turned(quarterTurns),
        close.map(look -> look.turned(picture, quarterTurns)),
        damage);
  }

  public Measures withClose(CloseLook look) {
    return new Measures(sharpness, clarity, exposure, fingerprint, map, Optional.of(look), damage);
  }

  Measures withDamage(Optional<String> noticed) {
    return new Measures(sharpness, clarity, exposure, fingerprint, map, close, noticed);
  }
}
