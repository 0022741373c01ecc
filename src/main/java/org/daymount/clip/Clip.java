package org.daymount.clip;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.ExifOrientation;
import org.daymount.unit.PixelSize;

/**
 * What a clip's description says; none of its pictures has been decoded.
 *
 * @param coded size of a picture as it is coded
 * @param shown size once its pixels are square, before it is turned upright
 * @param orientation by the track's matrix
 * @param length of the clip
 * @param keyFrames those that lie inside the file, in the order of time, no two in one second
 * @param camera what it was taken with
 * @param contentIdentifier what a live photo and its clip have in common
 */
public record Clip(
    Codec codec,
    PixelSize coded,
    PixelSize shown,
    ExifOrientation orientation,
    Optional<ClipColour> colour,
    Duration length,
    List<KeyFrame> keyFrames,
    ClipDates dates,
    Optional<String> camera,
    Optional<String> contentIdentifier) {
  public Clip {
    keyFrames = List.copyOf(keyFrames);
  }

  /**
   * Key frames spread evenly, the first and the last among them; at most {@code most} (2 or more).
   */
  public List<KeyFrame> spread(int most) {
    if (keyFrames.size() <= most) {
      return keyFrames;
    }
    List<KeyFrame> spread = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      spread.add(keyFrames.get((int) ((long) i * (keyFrames.size() - 1) / (most - 1))));
    }
    return List.copyOf(spread);
  }
}
