package org.daymount.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.cache.Cache;

/**
 * Small pictures as JPEG, each drawn once: this run is asked for it first, then those before. Safe
 * for several threads.
 */
final class DrawnPictures {
  private final Cache kept;
  private final Map<String, byte[]> made = new ConcurrentHashMap<>();

  /** A picture as it is kept for the next run. */
  record KeptPicture(byte[] jpeg) {}

  /** Draws one. */
  @FunctionalInterface
  interface Drawing {
    byte[] jpeg() throws IOException;
  }

  /**
   * @param kept pictures of earlier runs
   */
  DrawnPictures(Cache kept) {
    this.kept = kept;
  }

  /**
   * @param recipe all that the picture follows from
   * @throws IOException when it has to be drawn and cannot be
   */
  byte[] get(String recipe, Drawing drawing) throws IOException {
    try {
      return made.computeIfAbsent(
          recipe,
          key ->
              kept.get(Cache.Keep.DRAWN, key, KeptPicture.class)
                  .map(KeptPicture::jpeg)
                  .orElseGet(() -> draw(key, drawing)));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private byte[] draw(String recipe, Drawing drawing) {
    try {
      byte[] jpeg = drawing.jpeg();
      kept.put(Cache.Keep.DRAWN, recipe, new KeptPicture(jpeg));
      return jpeg;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
