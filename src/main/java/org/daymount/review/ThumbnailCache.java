package org.daymount.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Semaphore;
import org.daymount.image.Pictures;
import org.daymount.image.Previews;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.UnusablePicture;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * Small copies of the photos for the page, made when they are first asked for and kept while there
 * is room. Photos are named by a number that means nothing outside this start of the program.
 */
final class ThumbnailCache {
  /** Long edges the page may ask for, in pixels. */
  static final Set<Integer> EDGES = Set.of(240, 480, 960, 1600);

  /** The edge of a picture in the month's view. */
  static final int FIRST_VIEW = 480;

  private static final long MOST_BYTES = 96_000_000;
  private static final double QUALITY = 0.78;
  private static final int DETAIL = 640; // pixels of the photo, shown one to one
  private static final double DETAIL_QUALITY =
      0.92; // so that it does not look less sharp than it is
  private static final int OVERSAMPLED = 2; // decoded at twice the size, so that scaling smooths

  private final Pictures pictures;
  private final List<Photo> photos;
  private final Map<PhotoFile, String> ids = new HashMap<>();
  private final Semaphore decoders;
  private final Map<Key, CompletableFuture<byte[]>> making = new HashMap<>();
  private final LinkedHashMap<Key, byte[]> kept = new LinkedHashMap<>(64, 0.75f, true);
  private long keptBytes;

  private record Key(String id, int quarterTurns, int edge) {}

  ThumbnailCache(Pictures pictures, List<Photo> photos, int jobs) {
    this.pictures = pictures;
    this.photos = new ArrayList<>(photos);
    this.decoders = new Semaphore(jobs);
    for (int i = 0; i < photos.size(); i++) {
      ids.put(photos.get(i).file(), "p" + i);
    }
  }

  String id(PhotoFile file) {
    return ids.get(file);
  }

  /** Quarter turns, clockwise, from the photo as it was taken to how it is shown. */
  int turns(Photo shown) {
    Photo asTaken = photo(id(shown.file())).orElseThrow();
    return shown.orientation().quarterTurnsFrom(asTaken.orientation());
  }

  Optional<Photo> photo(String id) {
    if (!id.matches("p\\d{1,7}")) {
      return Optional.empty();
    }
    int index = Integer.parseInt(id.substring(1));
    return index < photos.size() ? Optional.of(photos.get(index)) : Optional.empty();
  }

  /** All stills of its clip, or the photo alone. */
  List<Photo> ofSameFile(Photo photo) {
    return photo.file().frame().isEmpty()
        ? List.of(photo)
        : photos.stream().filter(other -> photo.file().path().equals(other.file().path())).toList();
  }

  /**
   * A JPEG.
   *
   * @throws UnusablePicture when the photo can no longer be read
   */
  byte[] jpeg(String id, int quarterTurns, int edge) throws HttpException, UnusablePicture {
    Photo photo =
        photo(id)
            .orElseThrow(
                () -> new HttpException(HttpException.NOT_FOUND, "there is no such picture"));
    if (!EDGES.contains(edge)) {
      throw new HttpException(HttpException.BAD_REQUEST, "pictures come with edges of " + EDGES);
    }
    Key key = new Key(id, quarterTurns & 3, edge);
    CompletableFuture<byte[]> mine = new CompletableFuture<>();
    CompletableFuture<byte[]> other;
    synchronized (this) {
      byte[] ready = kept.get(key);
      if (ready != null) {
        return ready;
      }
      other = making.putIfAbsent(key, mine);
    }
    return other == null ? make(key, photo, mine) : await(other);
  }

  /**
   * Part of a photo pixel for pixel, to see how sharp it is. Not kept: each place is looked at
   * once.
   *
   * @param atX the middle of the part, as a fraction of the photo's width
   */
  byte[] detail(String id, double atX, double atY) throws HttpException, UnusablePicture {
    Photo photo =
        photo(id)
            .orElseThrow(
                () -> new HttpException(HttpException.NOT_FOUND, "there is no such picture"));
    PixelSize whole = photo.size();
    int width = Math.min(DETAIL, whole.width());
    int height = Math.min(DETAIL, whole.height());
    PixelBox window =
        new PixelBox(
            start(atX, width, whole.width()), start(atY, height, whole.height()), width, height);
    decoders.acquireUninterruptibly();
    try {
      return Previews.jpeg(pictures.part(photo, window, window.size()), DETAIL, DETAIL_QUALITY);
    } finally {
      decoders.release();
    }
  }

  private static int start(double at, int length, int whole) {
    return (int) Math.max(0, Math.min(whole - length, Math.round(at * whole - length / 2.0)));
  }

  private byte[] make(Key key, Photo photo, CompletableFuture<byte[]> mine) throws UnusablePicture {
    decoders.acquireUninterruptibly();
    try {
      byte[] jpeg =
          Previews.jpeg(
              pictures.whole(photo.turned(key.quarterTurns), key.edge * OVERSAMPLED),
              key.edge,
              QUALITY);
      keep(key, jpeg);
      mine.complete(jpeg);
      return jpeg;
    } catch (UnusablePicture | RuntimeException e) {
      mine.completeExceptionally(e);
      throw e;
    } finally {
      decoders.release();
      synchronized (this) {
        making.remove(key);
      }
    }
  }

  private static byte[] await(CompletableFuture<byte[]> other) throws UnusablePicture {
    try {
      return other.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while waiting for a picture", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof UnusablePicture unusable) {
        throw unusable;
      }
      throw new IllegalStateException(e.getCause());
    }
  }

  private synchronized void keep(Key key, byte[] jpeg) {
    if (kept.put(key, jpeg) == null) {
      keptBytes += jpeg.length;
    }
    var oldest = kept.entrySet().iterator();
    while (keptBytes > MOST_BYTES && oldest.hasNext()) {
      keptBytes -= oldest.next().getValue().length;
      oldest.remove();
    }
  }
}
