package org.daymount.image.jpeg;

import java.io.IOException;
import java.nio.file.Files;
import java.util.concurrent.TimeUnit;
import org.daymount.benchmark.BenchmarkPhotos;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The reduced decoder on a photo of 12 megapixels that is in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class DecodeBenchmark {
  @Param({"EIGHTH", "QUARTER"})
  public Reduction reduction;

  @Param({"baseline", "progressive"})
  public String coding;

  private byte[] file;
  private PixelBox middle;

  @Setup
  public void read() throws IOException {
    BenchmarkPhotos photos = BenchmarkPhotos.make();
    Photo photo = coding.equals("progressive") ? photos.progressive() : photos.baseline();
    file = Files.readAllBytes(photo.file().path());
    PixelSize size = photo.size();
    middle = new PixelBox(size.width() / 4, size.height() / 4, size.width() / 2, size.height() / 2);
  }

  @Benchmark
  public byte[] brightness() throws JpegRefused {
    return ReducedJpeg.decode(file, reduction).brightness();
  }

  @Benchmark
  public byte[] colour() throws JpegRefused {
    return ReducedJpeg.decode(file, reduction).rgb();
  }

  /** Half the width and half the height. */
  @Benchmark
  public byte[] colourOfTheMiddle() throws JpegRefused {
    return ReducedJpeg.decode(file, reduction, middle).rgb();
  }
}
