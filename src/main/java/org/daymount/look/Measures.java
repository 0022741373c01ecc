package org.daymount.look;

import java.util.List;
import java.util.Optional;
import org.daymount.unit.PixelSize;

/**
 * What was measured in the pixels of one photo.
 *
 * @param sharpness variance of the Laplacian after a small blur, on the subject, at one working
 *     size; comparable only between pictures of one burst
 * @param clarity how little a re-blur changes the picture, 0 (soft) to 1 (crisp); comparable
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

  /** Faces and subjects, surest first, and the sharpness inside them (0 when there are none). */
  public record CloseLook(List<Face> faces, List<Subject> subjects, double sharpnessThere) {
    public CloseLook {
      faces = List.copyOf(faces);
      subjects = List.copyOf(subjects);
    }

    private CloseLook turned(PixelSize picture, int quarterTurns) {
      return new CloseLook(
          faces.stream()
              .map(face -> new Face(face.box().turned(picture, quarterTurns), face.confidence()))
              .toList(),
          subjects.stream()
              .map(
                  subject ->
                      new Subject(
                          subject.box().turned(picture, quarterTurns),
                          subject.what(),
                          subject.confidence()))
              .toList(),
          sharpnessThere);
    }
  }

  public List<Face> faces() {
    return close.map(CloseLook::faces).orElse(List.of());
  }

  public List<Subject> subjects() {
    return close.map(CloseLook::subjects).orElse(List.of());
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
