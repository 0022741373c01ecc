package org.daymount.look.detect;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.daymount.look.Face;

/**
 * Makes one list of faces out of what two face detectors and the detector of things say. Each face
 * detector alone takes pans, clocks and dogs for faces, but seldom the same ones.
 *
 * <p>The numbers were chosen on 128 photographs with 44 faces, in the middle of a range in which
 * every face is found.
 */
final class FaceFusion {
  /** Below this a spot is not a face, and a crop may cut it. */
  private static final double PROTECT = Face.PROTECTED_FROM;

  /** Below this even a face mesh does not make a face of a spot. */
  private static final double LEAST = 0.5;

  /** From here on a detector is listened to. */
  static final double FAINT = 0.3;

  /** Overlap above which two detectors mean the same face. */
  private static final double SAME_OVERLAP = 0.35;

  private static final double SAME_NESTING = 0.65;

  /** A face narrower than this part of the long edge is under 3 mm wide on a 6 in print. */
  private static final double SMALLEST = 1 / 50.0;

  /** What a face is worth where no person is seen. */
  private static final double WITHOUT_PERSON = 0.9;

  /** A detector that is this sure needs neither a person nor the other detector. */
  private static final double SURE_ALONE = PROTECT / WITHOUT_PERSON;

  private static final double SURE_SSD = 0.65;
  private static final double SURE_MESH = 0.8;
  private static final double LIKELY_MESH = 0.5;
  private static final double UNLIKELY_MESH = 0.1;
  private static final double LARGE = 0.06; // of the long edge
  private static final double NOT_SEEN_BY_MESH = 0.59; // the surest is no face then

  /** An animal this much surer than any person owns the face. */
  private static final double ANIMAL_OVER_PERSON = 2;

  private FaceFusion() {}

  /**
   * @param blazeFaces what BlazeFace saw
   * @param ssdFaces what the single-shot detector saw
   * @param things people and animals among them, faint ones too
   * @param longEdge of the picture, pixels
   * @return what may be faces, surest first; those under {@link Face#PROTECTED_FROM} only if a face
   *     mesh agrees
   */
  static List<Detection> judge(
      List<Detection> blazeFaces,
      List<Detection> ssdFaces,
      List<LabelledDetection> things,
      int longEdge) {
    List<Detection> faces = new ArrayList<>();
    for (Detection face : joined(blazeFaces, ssdFaces)) {
      double person = surest(face, things, kind -> kind == ThingKind.PERSON);
      double animal = surest(face, things, ThingKind::hasFaceOfItsOwn);
      double confidence = face.confidence() * (person > 0 ? 1 : WITHOUT_PERSON);
      if (confidence >= (person > 0 ? LEAST : PROTECT)
          && face.width() >= SMALLEST * longEdge
          && animal <= ANIMAL_OVER_PERSON * person) {
        faces.add(face.withConfidence(confidence));
      }
    }
    return NonMaximumSuppression.surest(faces, SAME_OVERLAP, SAME_NESTING);
  }

  /**
   * Whether a picture may show faces that matter, by what one detector saw in it as a whole and by
   * the persons large enough to have such a face.
   */
  static boolean mayShowFaces(List<Detection> blazeFaces, List<Detection> persons) {
    return !persons.isEmpty() || blazeFaces.stream().anyMatch(FaceFusion::isSureAlone);
  }

  private static boolean isSureAlone(Detection face) {
    return face.confidence() >= SURE_ALONE;
  }

  /** Persons that are not smaller than the smallest face that matters. */
  static List<Detection> persons(List<LabelledDetection> things, int longEdge) {
    return things.stream()
        .filter(thing -> thing.kind() == ThingKind.PERSON)
        .map(LabelledDetection::spot)
        .filter(spot -> Math.min(spot.width(), spot.height()) >= SMALLEST * longEdge)
        .toList();
  }

  /**
   * Where a nearer look may still find a face, or place one better: at persons, and at faces that
   * only one detector sees, if that one could be right.
   */
  static List<Detection> open(
      List<Detection> blazeFaces, List<Detection> ssdFaces, List<Detection> persons) {
    List<Detection> open = new ArrayList<>(persons);
    ssdFaces.stream().filter(face -> !seconded(face, blazeFaces)).forEach(open::add);
    blazeFaces.stream()
        .filter(face -> isSureAlone(face) && !seconded(face, ssdFaces))
        .forEach(open::add);
    return open;
  }

  private static boolean seconded(Detection face, List<Detection> others) {
    return others.stream().anyMatch(other -> face.overlap(other) > SAME_OVERLAP);
  }

  /**
   * What a face is worth when the face mesh has been asked. It is a third voice where it sees one.
   * Where it does not, a spot that only one of the two detectors sees is none, if it is large: what
   * a mesh misses is small or from the side, and of large profiles both detectors are sure.
   */
  static Detection withSecondOpinion(
      Detection face, double presence, boolean isSeconded, int longEdge) {
    double confidence = face.confidence();
    if (presence >= SURE_MESH || presence >= LIKELY_MESH && confidence >= PROTECT) {
      return face.withConfidence(1 - (1 - confidence) * (1 - presence));
    }
    boolean isLarge = Math.min(face.width(), face.height()) >= LARGE * longEdge;
    return isLarge && !isSeconded && presence < UNLIKELY_MESH
        ? face.withConfidence(confidence * NOT_SEEN_BY_MESH)
        : face;
  }

  /** Whether both detectors see a face there, or the more modest one is sure alone. */
  static boolean isSeconded(Detection face, List<Detection> blazeFaces, List<Detection> ssdFaces) {
    return ssdFaces.stream()
        .filter(other -> face.overlap(other) > SAME_OVERLAP)
        .anyMatch(other -> other.confidence() >= SURE_SSD || seconded(face, blazeFaces));
  }

  /** Both detectors' faces; where both see one, it is BlazeFace's box and doubted by neither. */
  private static List<Detection> joined(List<Detection> blazeFaces, List<Detection> ssdFaces) {
    List<Detection> joined = new ArrayList<>();
    List<Detection> ssdAlone = new ArrayList<>(ssdFaces);
    for (Detection face : blazeFaces) {
      double seconded = 0;
      for (Detection other : ssdFaces) {
        if (face.overlap(other) > SAME_OVERLAP) {
          seconded = Math.max(seconded, rescaled(other.confidence()));
          ssdAlone.remove(other);
        }
      }
      // wrong only if both are wrong, each on its own
      joined.add(face.withConfidence(1 - (1 - face.confidence()) * (1 - seconded)));
    }
    for (Detection face : ssdAlone) {
      joined.add(face.withConfidence(rescaled(face.confidence())));
    }
    return joined;
  }

  /** The single-shot detector is the more modest one: its .5 is as good as BlazeFace's .7. */
  private static double rescaled(double ssdConfidence) {
    return Math.sqrt(ssdConfidence);
  }

  /** The confidence of the surest thing of a kind around the middle of a face; 0 without one. */
  private static double surest(
      Detection face, List<LabelledDetection> things, Predicate<ThingKind> isMeant) {
    return things.stream()
        .filter(thing -> isMeant.test(thing.kind()) && face.isCentredIn(thing.spot()))
        .mapToDouble(thing -> thing.spot().confidence())
        .max()
        .orElse(0);
  }
}
