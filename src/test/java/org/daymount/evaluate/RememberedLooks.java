package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.daymount.cache.Cache;
import org.daymount.look.LookCache;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.Photo;
import org.daymount.testphoto.PhotoBuilder;

/**
 * Keeps what detectors saw in a file, so that a rule of picking or cropping can be tried in
 * seconds. Delete the file after a change of the detectors.
 */
final class RememberedLooks implements Function<BufferedImage, CloseLook> {
  private static final String MAKER = "evaluation";

  private final Function<BufferedImage, CloseLook> detector;
  private final Path file;
  private final Cache cache;
  private final LookCache memory;

  RememberedLooks(Function<BufferedImage, CloseLook> detector, Path file) {
    this.detector = detector;
    this.file = file;
    this.cache = Cache.read(List.of(file), MAKER);
    this.memory = new LookCache(cache);
  }

  @Override
  public CloseLook apply(BufferedImage picture) {
    List<Photo> key = List.of(PhotoBuilder.named("any").sha256(hash(picture)).photo());
    return memory
        .closeLook(key)
        .flatMap(looks -> looks.get(0))
        .orElseGet(
            () -> {
              CloseLook look = detector.apply(picture);
              memory.keepCloseLook(key, List.of(Optional.of(look)));
              return look;
            });
  }

  void write() throws IOException {
    cache.write(file);
  }

  private static String hash(BufferedImage picture) {
    int width = picture.getWidth();
    int[] pixels = picture.getRGB(0, 0, width, picture.getHeight(), null, 0, width);
    return width + "-" + Arrays.hashCode(pixels);
  }
}
