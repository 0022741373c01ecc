package org.daymount.image.jpeg;

import java.io.IOException;
import java.nio.file.Files;
import org.daymount.benchmark.BenchmarkPhotos;
import org.daymount.benchmark.Microbenchmark;
import org.daymount.photo.Photo;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;

/** The reduced decoder on a photo of 12 megapixels that is in memory. */
public class DecodeBenchmark extends Microbenchmark {
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
  public byte[] brightness() throws IOException {
    return ReducedJpeg.decode(file, reduction).brightness();
  }

  @Benchmark
  public byte[] colour() throws IOException {
    return ReducedJpeg.decode(file, reduction).rgb();
  }

  /** Half the width and half the height. */
  @Benchmark
  public byte[] colourOfTheMiddle() throws IOException {
    return ReducedJpeg.decode(file, reduction, middle).rgb();
  }
}
