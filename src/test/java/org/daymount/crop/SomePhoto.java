package org.daymount.crop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Fingerprint;
import org.daymount.look.Measures;
import org.daymount.look.SaliencyMap;
import org.daymount.look.Subject;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/** A photo with what was found in it. */
final class SomePhoto {
  private final PixelSize size;
  private final SaliencyMap map;
  private final List<Face> faces = new ArrayList<>();
  private final List<Subject> subjects = new ArrayList<>();

  SomePhoto(PixelSize size, SaliencyMap map) {
    this.size = size;
    this.map = map;
  }

  /** A photo all of which matters alike. */
  static SomePhoto of(int width, int height) {
    return new SomePhoto(new PixelSize(width, height), SaliencyMap.even(12, 9));
  }

  SomePhoto face(int x, int y, int width, int height, double confidence) {
    faces.add(new Face(new PixelBox(x, y, width, height).within(size), confidence));
    return this;
  }

  SomePhoto subject(int x, int y, int width, int height, String what, double confidence) {
    subjects.add(new Subject(new PixelBox(x, y, width, height).within(size), what, confidence));
    return this;
  }

  PixelSize size() {
    return size;
  }

  List<Face> faces() {
    return faces;
  }

  Measures measures() {
    Fingerprint print = new Fingerprint(0, 0, List.of());
    Measures measures = new Measures(1, 0.5, 0.8, print, map, Optional.empty());
    boolean any = !faces.isEmpty() || !subjects.isEmpty();
    return any ? measures.withClose(new Measures.CloseLook(faces, subjects, 1)) : measures;
  }

  AnalysedPhoto looked() {
    return new AnalysedPhoto(PhotoBuilder.named("a.jpg").size(size).photo(), measures());
  }
}
