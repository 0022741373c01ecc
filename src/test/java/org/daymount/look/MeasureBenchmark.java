package org.daymount.look;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.daymount.benchmark.BenchmarkPhotos;
import org.daymount.image.Pictures;
import org.daymount.problem.UnusablePicture;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The first look at a photo of 12 megapixels, in its two parts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class MeasureBenchmark {
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
    return pictures.atLeast(photos.baseline(), Measurer.WORKING_EDGE);
  }

  @Benchmark
  public Measures measure() {
    return measurer.measure(picture);
  }
}
