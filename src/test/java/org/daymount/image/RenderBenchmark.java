package org.daymount.image;

import java.awt.image.BufferedImage;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.daymount.benchmark.BenchmarkPhotos;
import org.daymount.benchmark.Microbenchmark;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelSize;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;

/** A print of 6 by 4.5 inches at 300 ppi: the filter alone, and from the file on. */
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class RenderBenchmark extends Microbenchmark {
  private static final PixelSize PRINT = new PixelSize(1800, 1350);

  private final Pictures pictures = new Pictures();
  private BenchmarkPhotos photos;
  private BufferedImage decoded;

  @Setup
  public void decode() throws IOException {
    photos = BenchmarkPhotos.make();
    decoded = ImageIO.read(photos.baseline().file().path().toFile());
  }

  @Benchmark
  public BufferedImage lanczosFrom12Megapixels() {
    int width = decoded.getWidth();
    int height = decoded.getHeight();
    return Lanczos.resample(
        new SrgbRows(decoded),
        new LanczosTaps(width, 0, width, PRINT.width()),
        new LanczosTaps(height, 0, height, PRINT.height()));
  }

  @Benchmark
  public BufferedImage printOf12Megapixels() throws UnusablePicture {
    return print(photos.baseline());
  }

  @Benchmark
  public BufferedImage printOf12MegapixelsProgressive() throws UnusablePicture {
    return print(photos.progressive());
  }

  @Benchmark
  public BufferedImage printOf48Megapixels() throws UnusablePicture {
    return print(photos.large());
  }

  private BufferedImage print(Photo photo) throws UnusablePicture {
    return pictures.part(photo, photo.size().whole(), PRINT);
  }
}
