package org.daymount.output;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.photo.Photo;

/**
 * Small copies of photos for {@code index.html}. Of a photo that is decoded for another reason they
 * are made on the way and held until they are asked for. Safe for several threads.
 */
public final class SmallCopies {
  /** Long edge of the picture that copies are made of: as the detectors see it. */
  private static final int FROM_EDGE = 640;

  static final int HERO_EDGE = FROM_EDGE;
  static final int SMALL_EDGE = 200;

  private static final double QUALITY = 0.72;

  /** Photos; some 70 kB each. Of those beyond, copies are made when they are asked for. */
  private static final int MOST = 400;

  private final Pictures pictures;
  private final DrawnPictures drawn;
  private final Map<String, byte[]> madeOnTheWay = new ConcurrentHashMap<>();

  /**
   * @param kept copies of earlier runs
   */
  public SmallCopies(Pictures pictures, Cache kept) {
    this.pictures = pictures;
    this.drawn = new DrawnPictures(kept);
  }

  /**
   * @param picture the whole photo with a long edge of 640 pixels, or as long as it is
   */
  public void add(Photo photo, BufferedImage picture) {
    if (madeOnTheWay.size() < 2 * MOST) {
      madeOnTheWay.put(recipe(photo, HERO_EDGE), jpeg(picture, HERO_EDGE));
      madeOnTheWay.put(recipe(photo, SMALL_EDGE), jpeg(picture, SMALL_EDGE));
    }
  }

  /** A copy as the address of an image in a page; empty when the photo can no longer be read. */
  Optional<String> dataAddress(Photo photo, int longEdge) {
    String recipe = recipe(photo, longEdge);
    try {
      byte[] jpeg = drawn.get(recipe, () -> draw(photo, longEdge, recipe));
      return Optional.of("data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private byte[] draw(Photo photo, int longEdge, String recipe) throws IOException {
    byte[] ready = madeOnTheWay.remove(recipe);
    return ready != null ? ready : jpeg(pictures.whole(photo, FROM_EDGE), longEdge);
  }

  private static String recipe(Photo photo, int longEdge) {
    return Recipe.of("small", photo.sha256(), photo.size(), photo.orientation(), longEdge, QUALITY);
  }

  private static byte[] jpeg(BufferedImage picture, int longEdge) {
    return Previews.jpeg(picture, longEdge, QUALITY);
  }
}
