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

  /** {@code one small}, {@code two large}. */
  void sizeIfNamed() {
    size = isSmall ? size.or(() -> Optional.of(CommonPractice.SMALL_POCKET)) : size;
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

  /** {@code two photos, tall and wide}: one of two that lie in another way, taken off the pair. */
  Optional<SpaceGroup> halved(Orientation other) {
    if (count != 2 || direction.filter(way -> way != other).isEmpty()) {
      return Optional.empty();
    }
    count = 1;
    SpaceGroup half = new SpaceGroup();
    half.count = 1;
    half.size = size;
    return Optional.of(half);
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

  /** Whether more than a number was said: a way, a mat, {@code small}. */
  boolean isDescribed() {
    return saysHow() || isNamed();
  }

  boolean isWithoutSize() {
    return size.isEmpty();
  }

  boolean contradicts(SpaceGroup other) {
    return (direction.isPresent() && other.direction.isPresent()) || (onMat && other.onMat);
  }

  List<WantedSpace> spaces() {
    WantedSpace space = new WantedSpace(size, direction, onMat, reveal, onSide);
    return Collections.nCopies(Math.max(1, count), space);
  }

  /** {@code two photos, one tall, one wide}: the latter say how the former lie. */
  static void refine(List<SpaceGroup> groups) {
    groups.forEach(SpaceGroup::sizeIfNamed);
    if (groups.size() < 2) {
      return;
    }
    SpaceGroup first = groups.get(0);
    List<SpaceGroup> rest = groups.subList(1, groups.size());
    int told = rest.stream().mapToInt(group -> group.count).sum();
    int others = rest.stream().mapToInt(group -> Math.max(1, group.count)).sum();
    if (first.sizedBehind && first.count == others + 1) {
      first.count = 1; // "two photos, 4x6 and 3x4"
      return;
    }
    boolean describes =
        first.count >= 2
            && !first.saysHow()
            && (first.size.isPresent() ? told == first.count : told <= first.count)
            && rest.stream().allMatch(group -> group.count > 0 && group.describes(first));
    if (!describes) {
      return;
    }
    rest.forEach(group -> group.size = group.size.or(() -> first.size));
    first.count -= told;
    if (first.count == 0) {
      groups.remove(0);
    } else {
      groups.add(groups.remove(0)); // those that were not told of
    }
  }
}
