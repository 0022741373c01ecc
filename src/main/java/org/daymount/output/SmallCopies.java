package org.daymount.output;

import java.awt.image.BufferedImage;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.photo.Photo;
import org.daymount.problem.UnusablePicture;

/**
 * Small copies of photos for {@code index.html}. Of a photo that is decoded for another reason they
 * are made on the way and kept for the rest of the run. Safe for several threads.
 */
public final class SmallCopies {
  /** Long edge of the picture that copies are made of: as the detectors see it. */
  private static final int FROM_EDGE = 640;

  static final int HERO_EDGE = FROM_EDGE;
  static final int SMALL_EDGE = 200;

  private static final double QUALITY = 0.72;

  /** Photos; some 70 kB each. Of those beyond, copies are made when they are asked for. */
  private static final int MOST = 400;

  private final Map<String, byte[]> made = new ConcurrentHashMap<>();

  /**
   * @param picture the whole photo with a long edge of 640 pixels, or as long as it is
   */
  public void add(Photo photo, BufferedImage picture) {
    if (made.size() < 2 * MOST) {
      made.put(recipe(photo, HERO_EDGE), jpeg(picture, HERO_EDGE));
      made.put(recipe(photo, SMALL_EDGE), jpeg(picture, SMALL_EDGE));
    }
  }

  static String recipe(Photo photo, int longEdge) {
    return Recipe.of("small", photo.sha256(), photo.size(), photo.orientation(), longEdge, QUALITY);
  }

  byte[] of(Pictures pictures, Photo photo, int longEdge) throws UnusablePicture {
    Optional<byte[]> known = Optional.ofNullable(made.get(recipe(photo, longEdge)));
    return known.isPresent() ? known.get() : jpeg(pictures.whole(photo, FROM_EDGE), longEdge);
  }

  private static byte[] jpeg(BufferedImage picture, int longEdge) {
    return Previews.jpeg(picture, longEdge, QUALITY);
  }
}
