package org.daymount.look;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.daymount.benchmark.BenchmarkPhotos;
import org.daymount.benchmark.Microbenchmark;
import org.daymount.image.Pictures;
import org.daymount.problem.UnusablePicture;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;

/** The first look at a photo of 12 megapixels, in its two parts. */
public class MeasureBenchmark extends Microbenchmark {
  private final Pictures pictures = new Pictures();
  private final Measurer measurer = new Measurer();
  private BenchmarkPhotos photos;
  private BufferedImage picture;

  @Setup
  public void decode() throws IOException, UnusablePicture {
    photos = BenchmarkPhotos.make();
    picture = fileToPicture();
  }

  /** 504 by 378 pixels. */
  @Benchmark
  public BufferedImage fileToPicture() throws UnusablePicture {
    return pictures.examined(photos.baseline(), Measurer.WORKING_EDGE).picture();
  }

  @Benchmark
  public Measures measure() {
    return measurer.measure(picture);
  }
}
