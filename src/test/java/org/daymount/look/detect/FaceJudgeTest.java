package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FaceJudgeTest {
  private static final int LONG_EDGE = 640;
  private static final Thing PERSON = thing(ThingKind.PERSON, 0.4);

  @Test
  void twoUnsureDetectorsThatAgreeAreSureTogether() {
    List<Spot> faces =
        FaceJudge.judge(List.of(face(0.5)), List.of(face(0.4)), List.of(PERSON), LONG_EDGE);

    assertEquals(1, faces.size());
    assertTrue(faces.get(0).confidence() >= FaceJudge.SCORE);
  }

  @Test
  void oneUnsureDetectorAloneIsNotBelieved() {
    assertEquals(
        List.of(), FaceJudge.judge(List.of(face(0.5)), List.of(), List.of(PERSON), LONG_EDGE));
    assertEquals(
        List.of(), FaceJudge.judge(List.of(), List.of(face(0.31)), List.of(PERSON), LONG_EDGE));
  }

  @Test
  void aDoubtfulFaceIsProtectedButDoesNotCount() {
    Spot only = FaceJudge.judge(List.of(face(0.65)), List.of(), List.of(PERSON), LONG_EDGE).get(0);

    assertTrue(only.confidence() >= FaceJudge.PROTECT && only.confidence() < FaceJudge.SCORE);
  }

  @Test
  void aDogsFaceIsNotAPersons() {
    List<Thing> dog = List.of(thing(ThingKind.DOG, 0.6));

    assertEquals(
        List.of(), FaceJudge.judge(List.of(face(0.9)), List.of(face(0.9)), dog, LONG_EDGE));
  }

  @Test
  void aPersonHoldingADogKeepsTheirFace() {
    List<Thing> both = List.of(thing(ThingKind.DOG, 0.6), PERSON);

    assertEquals(
        1, FaceJudge.judge(List.of(face(0.9)), List.of(face(0.9)), both, LONG_EDGE).size());
  }

  @Test
  void aFaceWithoutAPersonMustBeSurer() {
    assertEquals(List.of(), FaceJudge.judge(List.of(face(0.65)), List.of(), List.of(), LONG_EDGE));
    assertEquals(1, FaceJudge.judge(List.of(face(0.9)), List.of(), List.of(), LONG_EDGE).size());
  }

  @Test
  void aFaceTooSmallToSeeInPrintIsLeftOut() {
    Spot tiny = new Spot(100, 100, 12, 12, 0.9);

    assertEquals(
        List.of(), FaceJudge.judge(List.of(tiny), List.of(tiny), List.of(PERSON), LONG_EDGE));
  }

  private static Spot face(double confidence) {
    return new Spot(100, 100, 50, 50, confidence);
  }

  private static Thing thing(ThingKind kind, double confidence) {
    return new Thing(kind, new Spot(60, 80, 150, 300, confidence));
  }
}
