package org.daymount.look.detect;

import ai.onnxruntime.OrtException;
import java.awt.image.BufferedImage;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.daymount.look.Face;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Subject;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Finds faces and subjects in a picture. Safe to use from many threads at once; each look runs on
 * its caller's thread alone and gives the same answer every time.
 */
public final class Detectors implements AutoCloseable {
  /** A picture this long shows the detectors all they can use; more pixels only take time. */
  public static final int WORKING_LONG_EDGE = 640;

  /** Things less sure than this are not told. */
  public static final double SUBJECT = 0.2;

  /** Fainter things still say whose a face is. */
  private static final double FAINT_THING = 0.1;

  private static final int MESHES = 8;

  /** From here on a thing tells that the picture is the right way up. */
  private static final double SURE_THING = 0.4;

  private final BlazeFace blazeFace;
  private final FaceSsd faceSsd;
  private final CenterNet centerNet;
  private final FaceMesh faceMesh;

  private Detectors(BlazeFace blazeFace, FaceSsd faceSsd, CenterNet centerNet, FaceMesh faceMesh) {
    this.blazeFace = blazeFace;
    this.faceSsd = faceSsd;
    this.centerNet = centerNet;
    this.faceMesh = faceMesh;
  }

  /** Whether the part of ONNX Runtime for this computer's system is in the program, and loads. */
  public static boolean runHere() {
    try {
      return Model.environment() != null;
    } catch (IOException | LinkageError | IllegalStateException e) {
      return false;
    }
  }

  /**
   * Takes about a second and some 100 MB, so load once and only when there is something to look at.
   *
   * @throws DetectorsUnavailable when ONNX Runtime's native library cannot be loaded here, or the
   *     models are missing from the program
   */
  public static Detectors load() throws DetectorsUnavailable {
    return load(1);
  }

  /**
   * For looks on several threads at once. Each network takes half as many at a time, which costs no
   * time worth telling, for a look has other things to do as well, and saves the memory.
   */
  public static Detectors load(int threads) throws DetectorsUnavailable {
    int atOnce = Math.max(1, threads / 2);
    try {
      return new Detectors(
          BlazeFace.load(atOnce),
          FaceSsd.load(atOnce),
          CenterNet.load(atOnce),
          FaceMesh.load(atOnce));
    } catch (FileNotFoundException e) {
      throw new DetectorsUnavailable("the program was built without its models", e);
    } catch (IOException e) {
      throw new DetectorsUnavailable("ONNX Runtime " + e.getMessage(), e);
    } catch (OrtException | LinkageError | IllegalStateException e) {
      throw new DetectorsUnavailable("ONNX Runtime does not run on this computer", e);
    }
  }

  /**
   * @param upright a picture the right way up, best with a long edge of {@link #WORKING_LONG_EDGE}
   * @return boxes in pixels of that picture, surest first; the sharpness is left at 0
   */
  public CloseLook look(BufferedImage upright) {
    return look(Pixels.of(upright));
  }

  /**
   * As {@link #look}, for a picture that may lie on its side or on its head because its file does
   * not say: when nobody's face is surely seen, and nothing else that says what the picture is
   * about, it is turned and looked at again, and the turn with the surest faces counts.
   *
   * @return boxes in pixels of the picture as given
   */
  public CloseLook lookTurning(BufferedImage picture) {
    Pixels asGiven = Pixels.of(picture);
    CloseLook first = look(asGiven);
    if (sureness(first) > 0 || !mayShowPeople(first)) {
      return first;
    }
    CloseLook best = first;
    Pixels turned = asGiven;
    for (int quarters = 1; quarters < 4; quarters++) {
      turned = turned.turnedRight();
      CloseLook again = look(turned);
      if (sureness(again) > sureness(best)) {
        best = turnedBack(again, quarters, new PixelSize(turned.width(), turned.height()));
      }
    }
    return best;
  }

  /** The same look when the picture is seen at another size. */
  public static CloseLook scaled(CloseLook look, PixelSize from, PixelSize to) {
    return new CloseLook(
        look.faces().stream().map(face -> face.at(face.box().scaled(from, to))).toList(),
        look.subjects().stream()
            .map(s -> new Subject(s.box().scaled(from, to), s.what(), s.confidence()))
            .toList(),
        look.sharpnessThere(),
        look.main());
  }

  private CloseLook look(Pixels picture) {
    Letterbox square = picture.topLeft(CenterNet.SIDE);
    List<LabelledDetection> things = centerNet.detect(square, FAINT_THING);
    PixelSize size = new PixelSize(picture.width(), picture.height());
    List<Face> faces = faces(picture, square, things);
    List<Subject> subjects = new ArrayList<>();
    for (LabelledDetection thing : AgreeingThings.joined(things)) {
      if (thing.spot().confidence() >= SUBJECT) {
        PixelBox box = thing.spot().box().within(size);
        subjects.add(new Subject(box, thing.kind().word(), thing.spot().confidence()));
      }
    }
    return new CloseLook(faces, subjects, 0);
  }

  /**
   * The costly looks are for pictures that may show people: where no person is seen, however
   * faintly, and the first of the two face detectors sees nothing in the whole picture that it is
   * sure of, that is all.
   */
  private List<Face> faces(Pixels picture, Letterbox square, List<LabelledDetection> things) {
    List<Detection> whole = blazeFace.detect(picture, FaceFusion.FAINT);
    int longEdge = Math.max(picture.width(), picture.height());
    List<Detection> persons = FaceFusion.persons(things, longEdge);
    if (!FaceFusion.mayShowFaces(whole, persons)) {
      return List.of();
    }
    List<Detection> ssd = faceSsd.detect(square, FaceFusion.FAINT);
    List<Detection> open = FaceFusion.open(whole, ssd, persons);
    List<Detection> blaze =
        Tiles.wholeAndParts(picture, whole, open, part -> blazeFace.detect(part, FaceFusion.FAINT));
    return asked(
        picture,
        FaceFusion.judge(blaze, ssd, things, longEdge),
        face -> FaceFusion.isSeconded(face, blaze, ssd));
  }

  /** Of many, the mesh is asked about the largest; those of a crowd are too small for it. */
  private List<Face> asked(Pixels picture, List<Detection> spots, Predicate<Detection> isSeconded) {
    PixelSize size = new PixelSize(picture.width(), picture.height());
    List<Detection> largest =
        spots.stream()
            .sorted(Comparator.comparingDouble((Detection spot) -> -spot.area()))
            .limit(MESHES)
            .toList();
    List<Face> faces = new ArrayList<>();
    for (Detection spot : spots) {
      double presence = largest.contains(spot) ? faceMesh.presence(picture, spot) : 0;
      Detection judged =
          FaceFusion.withSecondOpinion(spot, presence, isSeconded.test(spot), size.longEdge());
      Face face = new Face(judged.box().within(size), judged.confidence(), presence);
      if (face.isProtected()) {
        faces.add(face);
      }
    }
    faces.sort(Comparator.comparingDouble(Face::confidence).reversed());
    return faces;
  }

  /** A lying person is often taken for a person still, or for something else, but never surely. */
  private static boolean mayShowPeople(CloseLook look) {
    String person = ThingKind.PERSON.word();
    return look.subjects().stream()
        .allMatch(thing -> thing.what().equals(person) || thing.confidence() < SURE_THING);
  }

  private static double sureness(CloseLook look) {
    return look.faces().stream().filter(Face::counts).mapToDouble(Face::confidence).sum();
  }

  private static CloseLook turnedBack(CloseLook look, int quarters, PixelSize turned) {
    return new CloseLook(
        look.faces().stream()
            .map(face -> face.at(turnedBack(face.box(), quarters, turned)))
            .toList(),
        look.subjects().stream()
            .map(s -> new Subject(turnedBack(s.box(), quarters, turned), s.what(), s.confidence()))
            .toList(),
        look.sharpnessThere(),
        look.main());
  }

  /** Undoes quarter turns to the right. */
  private static PixelBox turnedBack(PixelBox box, int quarters, PixelSize turned) {
    PixelBox back = box;
    PixelSize size = turned;
    for (int i = 0; i < quarters; i++) {
      back = new PixelBox(back.y(), size.width() - back.right(), back.height(), back.width());
      size = size.turned();
    }
    return back;
  }

  @Override
  public void close() {
    blazeFace.close();
    faceSsd.close();
    centerNet.close();
    faceMesh.close();
  }
}
