package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.daymount.look.Face;
import org.junit.jupiter.api.Test;

class FaceFusionTest {
  private static final int LONG_EDGE = 640;
  private static final LabelledDetection PERSON = thing(ThingKind.PERSON, 0.4);

  @Test
  void twoUnsureDetectorsThatAgreeAreSureTogether() {
    List<Detection> faces =
        FaceFusion.judge(List.of(face(0.5)), List.of(face(0.4)), List.of(PERSON), LONG_EDGE);

    assertEquals(1, faces.size());
    assertTrue(faces.get(0).confidence() >= Face.COUNTS_FROM);
  }

  @Test
  void oneUnsureDetectorAloneIsNotBelieved() {
    assertEquals(
        List.of(), FaceFusion.judge(List.of(face(0.49)), List.of(), List.of(PERSON), LONG_EDGE));
    assertEquals(
        List.of(), FaceFusion.judge(List.of(), List.of(face(0.23)), List.of(PERSON), LONG_EDGE));
  }

  @Test
  void aDoubtfulFaceIsProtectedButDoesNotCount() {
    Detection only =
        FaceFusion.judge(List.of(face(0.62)), List.of(), List.of(PERSON), LONG_EDGE).get(0);

    assertTrue(
        only.confidence() >= Face.PROTECTED_FROM && only.confidence() < Face.COUNTS_FROM,
        only.toString());
  }

  @Test
  void aDoubtfulFaceCountsWhenTheMeshSeesEyesNoseAndMouth() {
    assertTrue(after(face(0.55), 0.95) >= Face.COUNTS_FROM, "both doubted, the mesh is sure");
    assertTrue(after(face(0.55), 0.7) < Face.PROTECTED_FROM, "no one is sure");
    assertTrue(after(face(0.62), 0.7) >= Face.COUNTS_FROM, "a protected face, likely seen");
  }

  /** A bear's head beside a woman, a pan on a wall and a clock were .74, .88 and .66. */
  @Test
  void aLargeFaceThatOneDetectorAloneSeesAndTheMeshDoesNotIsNone() {
    Detection bear = new Detection(100, 100, 187, 187, 0.99);
    assertTrue(after(bear, 0.01) < Face.PROTECTED_FROM);
    Detection profile = FaceFusion.withSecondOpinion(bear, 0.01, true, LONG_EDGE);
    assertEquals(0.99, profile.confidence(), 1e-9, "both detectors know a face from the side");
  }

  @Test
  void aSmallFaceStaysThoughTheMeshDoesNotSeeIt() {
    Detection small = new Detection(100, 100, 20, 24, 0.9);
    assertEquals(0.9, after(small, 0.01), 1e-9);
  }

  private static double after(Detection face, double presence) {
    return FaceFusion.withSecondOpinion(face, presence, false, LONG_EDGE).confidence();
  }

  @Test
  void aDogsFaceIsNotAPersons() {
    List<LabelledDetection> dog = List.of(thing(ThingKind.DOG, 0.6));

    assertEquals(
        List.of(), FaceFusion.judge(List.of(face(0.9)), List.of(face(0.9)), dog, LONG_EDGE));
  }

  @Test
  void aPersonHoldingADogKeepsTheirFace() {
    List<LabelledDetection> both = List.of(thing(ThingKind.DOG, 0.6), PERSON);

    assertEquals(
        1, FaceFusion.judge(List.of(face(0.9)), List.of(face(0.9)), both, LONG_EDGE).size());
  }

  @Test
  void aFaceWithoutAPersonMustBeSurer() {
    assertEquals(List.of(), FaceFusion.judge(List.of(face(0.65)), List.of(), List.of(), LONG_EDGE));
    assertEquals(1, FaceFusion.judge(List.of(face(0.9)), List.of(), List.of(), LONG_EDGE).size());
  }

  @Test
  void aFaceTooSmallToSeeInPrintIsLeftOut() {
    Detection tiny = new Detection(100, 100, 12, 12, 0.9);

    assertEquals(
        List.of(), FaceFusion.judge(List.of(tiny), List.of(tiny), List.of(PERSON), LONG_EDGE));
  }

  private static Detection face(double confidence) {
    return new Detection(100, 100, 50, 50, confidence);
  }

  private static LabelledDetection thing(ThingKind kind, double confidence) {
    return new LabelledDetection(kind, new Detection(60, 80, 150, 300, confidence));
  }
}
