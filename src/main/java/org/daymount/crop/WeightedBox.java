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
 * @param weight confidence x square root of its share of the picture x a Gaussian around the middle
 *     (sigma 0.8 of each side)
 */
record WeightedBox(Subject subject, PixelBox box, double weight) {
  private static final String PERSON = "person";
  private static final double SURE = 0.5;
  private static final double LIKELY = 0.25;
  private static final double LARGE = 0.2; // of the picture; so large a box is seldom nothing
  private static final double MIDDLE_SIGMA = 0.8;
  private static final Set<String> THINGS_TO_SIT_AT = Set.of("bench", "table");
  private static final double SITTING_AT = 0.3; // people are photographed at them, not they

  /** Whether a detector is sure of it: then its kind may be told. */
  boolean isSure() {
    return subject.confidence() >= SURE;
  }

  /** Whether something is there, whatever it is: a bed in a dark room, a heap of machines. */
  boolean isLikely(PixelSize picture) {
    return subject.confidence() >= LIKELY && box.area() >= LARGE * picture.area();
  }

  boolean isPerson() {
    return subject.what().equals(PERSON);
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
            .map(face -> body(face, picture));
    return Stream.concat(measures.subjects().stream(), bodies)
        .map(subject -> of(subject, picture))
        .sorted(Comparator.comparingDouble(WeightedBox::weight).reversed())
        .toList();
  }

  private static boolean isBodyOf(Subject subject, Face face) {
    return subject.what().equals(PERSON)
        && subject.box().sharedArea(face.box()) > face.box().area() / 2;
  }

  /** Head and shoulders: half a face up, one to each side, two down. */
  private static Subject body(Face face, PixelSize picture) {
    int width = face.box().width();
    int height = face.box().height();
    PixelBox body = face.box().grown(width, height / 2, width, 2 * height).within(picture);
    return new Subject(body, PERSON, face.confidence());
  }

  private static WeightedBox of(Subject subject, PixelSize picture) {
    PixelBox box = subject.box().within(picture);
    double x = (box.centreX() / picture.width() - 0.5) / MIDDLE_SIGMA;
    double y = (box.centreY() / picture.height() - 0.5) / MIDDLE_SIGMA;
    double share = box.area() / (double) picture.area();
    double weight = subject.confidence() * Math.sqrt(share) * Math.exp(-(x * x + y * y) / 2);
    return new WeightedBox(
        subject, box, THINGS_TO_SIT_AT.contains(subject.what()) ? SITTING_AT * weight : weight);
  }
}
