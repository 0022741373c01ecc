package org.daymount.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.daymount.unit.PixelSize;

/**
 * Tells the faces a picture is about from those of people who happen to be in it. Nobody is known
 * by name: a face is a main one by its size beside the others, by how near the middle it is and by
 * whether it looks at us.
 */
public final class MainFaces {
  /**
   * A main face is at least this part as tall as the tallest of those that matter. Of 48 bystanders
   * marked by hand those beside a main person measure up to .46 of them, main persons in one
   * picture from .52 on.
   */
  private static final double AS_TALL = 0.5;

  /** As prominent as this part of the most prominent one: its size is then the measure. */
  private static final double AS_PROMINENT = 0.5;

  /** An onlooker's weight beside the thing's: at most .40 of 4 onlookers, of riders from .51 on. */
  private static final double ONLOOKER = 0.45;

  private static final double NOT_PROMINENT = 0.3;

  private static final double SMALLEST = 0.02; // of the long edge: 3 mm on a 6 in print
  private static final double PORTRAIT = 0.12; // from here on a face fills its picture
  private static final double TURNED_AWAY = 0.5; // of the worth of one that looks at us
  private static final double AT_THE_EDGE = 0.3; // of the worth of one in the middle
  private static final double MIDDLE_SIGMA = 0.45; // of each side
  private static final double CUT_BY_PICTURE = 0.5;

  private MainFaces() {}

  /**
   * The protected faces of the people a picture is about, tallest first.
   *
   * @param things found in the picture: beside a large animal or bus a small face is an onlooker's
   */
  public static List<Face> of(List<Face> all, List<Subject> things, PixelSize picture) {
    List<Face> faces =
        all.stream()
            .filter(face -> face.isProtected() && !isOnlooker(face, things, picture))
            .toList();
    double most = faces.stream().mapToDouble(face -> prominence(face, picture)).max().orElse(0);
    int tallest =
        faces.stream()
            .filter(face -> prominence(face, picture) >= AS_PROMINENT * most)
            .mapToInt(face -> face.box().height())
            .max()
            .orElse(0);
    return faces.stream()
        .filter(face -> face.box().height() >= AS_TALL * tallest)
        .sorted(Comparator.comparingInt((Face face) -> -face.box().height()))
        .toList();
  }

  /** The protected faces that are not main ones: onlookers and passers-by. */
  public static List<Face> bystanders(List<Face> all, List<Subject> things, PixelSize picture) {
    List<Face> main = of(all, things, picture);
    List<Face> others = new ArrayList<>(all);
    others.removeIf(face -> !face.isProtected() || main.contains(face));
    return others;
  }

  /** The main faces that are sure enough to be spoken of. */
  public static List<Face> counted(List<Face> all, List<Subject> things, PixelSize picture) {
    return of(all, things, picture).stream().filter(Face::counts).toList();
  }

  /** Someone beside a giraffe, a driver in a bus: the thing is what the picture is about. */
  private static boolean isOnlooker(Face face, List<Subject> things, PixelSize picture) {
    double thing =
        things.stream()
            .filter(one -> !one.isPerson() && one.confidence() >= Subject.SURE)
            .mapToDouble(one -> one.weight(picture))
            .max()
            .orElse(0);
    double body =
        things.stream()
            .filter(one -> one.isPerson() && one.holds(face))
            .mapToDouble(one -> one.weight(picture))
            .max()
            .orElseGet(() -> face.headAndShoulders(picture).weight(picture));
    return body < ONLOOKER * thing && prominence(face, picture) < NOT_PROMINENT;
  }

  /**
   * How much a face is what its picture is about, 0 to 1: large, looking at us, near the middle,
   * not cut by the picture's edge.
   */
  public static double prominence(Face face, PixelSize picture) {
    double share = face.box().height() / (double) picture.longEdge();
    double size = Math.max(0, Math.min(1, (share - SMALLEST) / (PORTRAIT - SMALLEST)));
    double facing = face.isFacing() ? 1 : TURNED_AWAY;
    double x = (face.box().centreX() / picture.width() - 0.5) / MIDDLE_SIGMA;
    double y = (face.box().centreY() / picture.height() - 0.5) / MIDDLE_SIGMA;
    double middle = AT_THE_EDGE + (1 - AT_THE_EDGE) * Math.exp(-(x * x + y * y) / 2);
    return face.confidence() * size * facing * middle * (isCut(face, picture) ? CUT_BY_PICTURE : 1);
  }

  private static boolean isCut(Face face, PixelSize picture) {
    return face.box().x() <= 0
        || face.box().y() <= 0
        || face.box().right() >= picture.width()
        || face.box().bottom() >= picture.height();
  }
}
