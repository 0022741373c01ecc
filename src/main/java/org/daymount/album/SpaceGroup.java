package org.daymount.album;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/** Spaces of one kind, while their words are being read. */
final class SpaceGroup {
  int count;
  Optional<PaperSize> size = Optional.empty();
  Optional<Orientation> direction = Optional.empty();
  boolean onMat;
  Optional<Length> reveal = Optional.empty();
  boolean onSide;
  boolean countedLast; // "landscape two", which only a size or a noun can follow
  boolean sizedBehind; // "two photos, 4x6"

  boolean isSmall;
  boolean isLarge;

  boolean isNamed() {
    return isSmall || isLarge;
  }

  /** Where nothing but {@code small} was said. */
  void sizeIfSmall() {
    size = isSmall ? size.or(() -> Optional.of(CommonPractice.SMALL_POCKET)) : size;
  }

  /** {@code one large} beside others; alone it is as large as usual. */
  void sizeIfLarge() {
    size = isLarge ? size.or(() -> Optional.of(CommonPractice.LARGE_POCKET)) : size;
  }

  void way(Orientation way) {
    direction = Optional.of(way);
  }

  void mat(Optional<Length> said) {
    onMat = true;
    reveal = said;
  }

  void side() {
    onSide = true;
  }

  boolean saysSomething() {
    return count > 0 || saysHow() || onSide || isNamed();
  }

  boolean isPlain() {
    return size.isEmpty() && !saysHow() && !isNamed();
  }

  boolean isOne() {
    return count <= 1;
  }

  boolean describes(SpaceGroup photos) {
    return size.isPresent() ? photos.size.isEmpty() : saysHow() || isNamed();
  }

  boolean saysHow() {
    return direction.isPresent() || onMat;
  }

  boolean contradicts(SpaceGroup other) {
    return (direction.isPresent() && other.direction.isPresent()) || (onMat && other.onMat);
  }

  List<WantedSpace> spaces() {
    WantedSpace space = new WantedSpace(size, direction, onMat, reveal, onSide);
    return Collections.nCopies(Math.max(1, count), space);
  }
}
