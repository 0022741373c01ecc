package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The boxes are those a detector gave on photographs 640 pixels long. */
class AgreeingThingsTest {
  @Test
  void aCatSeenThreeTimesDoubtfullyIsOneCatSeenSurely() {
    List<LabelledDetection> cats =
        List.of(
            thing(ThingKind.CAT, 184, 42, 401, 389, 0.36),
            thing(ThingKind.CAT, 180, 37, 426, 402, 0.33),
            thing(ThingKind.CAT, 184, 37, 410, 403, 0.30));
    List<LabelledDetection> one = AgreeingThings.joined(cats);
    assertEquals(1, one.size());
    assertTrue(one.get(0).spot().confidence() >= 0.5, one.toString());
    assertEquals(184, one.get(0).spot().x());
  }

  @Test
  void aDogThatMayBeACatIsTheSurerOfTheTwo() {
    List<LabelledDetection> one =
        AgreeingThings.joined(
            List.of(
                thing(ThingKind.DOG, 114, 161, 154, 247, 0.195),
                thing(ThingKind.CAT, 114, 161, 154, 247, 0.152)));
    assertEquals(List.of(ThingKind.DOG), one.stream().map(LabelledDetection::kind).toList());
    assertTrue(one.get(0).spot().confidence() > 0.2);
  }

  @Test
  void twoGiraffesBesideEachOtherStayTwoAndSoDoACupAndTheTableUnderIt() {
    assertEquals(
        2,
        AgreeingThings.joined(
                List.of(
                    thing(ThingKind.GIRAFFE, 316, 128, 130, 170, 0.7),
                    thing(ThingKind.GIRAFFE, 260, 104, 131, 200, 0.6)))
            .size());
    assertEquals(
        2,
        AgreeingThings.joined(
                List.of(
                    thing(ThingKind.CUP, 100, 100, 200, 200, 0.7),
                    thing(ThingKind.DINING_TABLE, 100, 100, 200, 210, 0.6)))
            .size());
  }

  private static LabelledDetection thing(
      ThingKind kind, double x, double y, double width, double height, double confidence) {
    return new LabelledDetection(kind, new Detection(x, y, width, height, confidence));
  }
}
