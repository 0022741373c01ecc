package org.daymount.image;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.daymount.benchmark.Microbenchmark;
import org.daymount.file.FileBytes;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Setup;

/** What a process of its own costs: a phone's HEIC of 12 megapixels, 48 tiles, to samples. */
public class TileBenchmark extends Microbenchmark {
  private final List<byte[]> tiles = new ArrayList<>();
  private TileCoding coding;

  @Setup
  public void read() throws IOException {
    Path folder = Files.createTempDirectory("tiles");
    Path file = TestPhotos.fromJar("test-documents/IMG_1034.heic", folder);
    try (FileBytes bytes = FileBytes.open(file)) {
      HeifItems items = HeifItems.read(bytes);
      HeifPicture picture = HeifPicture.primary(bytes, items);
      HeifItems.Item first = picture.tiles().get(0);
      IsoBoxes.Box hvcC = first.property("hvcC").orElseThrow();
      coding =
          new TileCoding(
              first.type(), bytes.copy(hvcC.body(), (int) hvcC.length()), picture.tile());
      picture.tiles().forEach(tile -> tiles.add(data(items, tile)));
    }
    Files.delete(file);
    Files.delete(folder);
  }

  private static byte[] data(HeifItems items, HeifItems.Item tile) {
    try {
      return items.data(tile, 1 << 24);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Benchmark
  public int inThisProcess() throws IOException {
    return decoded(TileReader.here());
  }

  @Benchmark
  public int inItsOwnProcess() throws IOException {
    return decoded(TileReaders.open());
  }

  private int decoded(TileReader opened) throws IOException {
    int pixels = 0;
    try (TileReader reader = opened) {
      for (byte[] tile : tiles) {
        pixels += reader.decode(coding, tile).width();
      }
    }
    return pixels;
  }
}
