package org.daymount.crop;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Something found in a picture and how much of it the picture is about: surer, larger and nearer
 * the middle counts more.
 *
 * @param weight as {@link Subject#weight}; less for what one sits at
 */
record WeightedBox(Subject subject, PixelBox box, double weight) {
  private static final double LIKELY = 0.25;
  private static final double LARGE = 0.2; // of the picture; so large a box is seldom nothing
  private static final Set<String> THINGS_TO_SIT_AT = Set.of("bench", "table");
  private static final double SITTING_AT = 0.3; // people are photographed at them, not they

  /** Whether a detector is sure of it: then its kind may be told. */
  boolean isSure() {
    return subject.confidence() >= Subject.SURE;
  }

  /** Whether something is there, whatever it is: a bed in a dark room, a heap of machines. */
  boolean isLikely(PixelSize picture) {
    return subject.confidence() >= LIKELY && box.area() >= LARGE * picture.area();
  }

  boolean isPerson() {
    return subject.isPerson();
  }

  /** Someone whose head is up where they stand. */
  boolean isLiving() {
    return isPerson() || subject.isAnimal();
  }

  /** What it is called in a reason. */
  String word() {
    return isSure() ? subject.what() : "main thing";
  }

  /** Heaviest first. A face that no person's box holds stands for the person below it. */
  static List<WeightedBox> all(Measures measures, PixelSize picture) {
    Stream<Subject> bodies =
        measures.faces().stream()
            .filter(face -> measures.subjects().stream().noneMatch(s -> isBodyOf(s, face)))
            .map(face -> face.headAndShoulders(picture));
    return Stream.concat(measures.subjects().stream(), bodies)
        .map(subject -> of(subject, picture))
        .sorted(Comparator.comparingDouble(WeightedBox::weight).reversed())
        .toList();
  }

  private static boolean isBodyOf(Subject subject, Face face) {
    return subject.isPerson() && subject.holds(face);
  }

  private static WeightedBox of(Subject subject, PixelSize picture) {
    PixelBox box = subject.box().within(picture);
    double weight = subject.weight(picture);
    return new WeightedBox(
        subject, box, THINGS_TO_SIT_AT.contains(subject.what()) ? SITTING_AT * weight : weight);
  }
}
