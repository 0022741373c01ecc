package org.daymount.look.detect;

import ai.onnxruntime.OrtException;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.daymount.benchmark.BenchmarkPhotos;
import org.daymount.benchmark.Microbenchmark;
import org.daymount.image.Pictures;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.TearDown;

/**
 * The detectors one by one, and the whole look at a picture without and with people. The people are
 * in a photograph that comes with the weights of a detector ({@code DetectorsTest}); at least three
 * faces of it are seen, so that all three networks and the parts of the picture take their turn.
 */
public class DetectorBenchmark extends Microbenchmark {
  private static final Path PEOPLE =
      Path.of("target/weights/node_modules/@vladmandic/face-api/demo/sample1.jpg");

  private BlazeFace blazeFace;
  private FaceSsd faceSsd;
  private CenterNet centerNet;
  private Detectors detectors;
  private BufferedImage nobody;
  private BufferedImage people;
  private Pixels pixels;
  private Letterbox square;

  @Setup
  public void load() throws IOException, OrtException, UnusablePicture, DetectorsUnavailable {
    blazeFace = BlazeFace.load(1);
    faceSsd = FaceSsd.load(1);
    centerNet = CenterNet.load(1);
    detectors = Detectors.load();
    nobody = working(BenchmarkPhotos.make().baseline());
    people = working(BenchmarkPhotos.read(PEOPLE));
    pixels = Pixels.of(people);
    square = pixels.topLeft(CenterNet.SIDE);
    if (detectors.look(people).faces().size() < 3 || !detectors.look(nobody).faces().isEmpty()) {
      throw new IllegalStateException("these are not the pictures that this was written for");
    }
  }

  private static BufferedImage working(Photo photo) throws UnusablePicture {
    return new Pictures().whole(photo, Detectors.WORKING_LONG_EDGE);
  }

  @TearDown
  public void close() {
    blazeFace.close();
    faceSsd.close();
    centerNet.close();
    detectors.close();
  }

  @Benchmark
  public List<Detection> blazeFace() {
    return blazeFace.detect(pixels, FaceFusion.FAINT);
  }

  @Benchmark
  public List<Detection> faceSsd() {
    return faceSsd.detect(square, FaceFusion.FAINT);
  }

  @Benchmark
  public List<LabelledDetection> centerNet() {
    return centerNet.detect(square, Detectors.SUBJECT);
  }

  @Benchmark
  public CloseLook lookWithoutPeople() {
    return detectors.look(nobody);
  }

  @Benchmark
  public CloseLook lookWithPeople() {
    return detectors.look(people);
  }
}
