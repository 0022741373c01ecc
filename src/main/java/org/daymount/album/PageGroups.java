package org.daymount.album;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * The spaces of a page while their words are being read: those that are done, and what was said
 * ahead of the next one.
 */
final class PageGroups {
  private final List<Group> groups = new ArrayList<>();
  private Group pending = new Group();
  private int pendingFrom;

  /** Spaces of one kind. */
  static final class Group {
    private int count;
    private Optional<PaperSize> size = Optional.empty();
    private Optional<Orientation> direction = Optional.empty();
    private boolean onMat;
    private Optional<Length> reveal = Optional.empty();
    private boolean onSide;

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

    private boolean saysSomething() {
      return count > 0 || saysHow() || onSide;
    }

    private boolean isOne() {
      return count <= 1;
    }

    private boolean describes(Group photos) {
      return size.isPresent() ? photos.size.isEmpty() : saysHow();
    }

    private boolean saysHow() {
      return direction.isPresent() || onMat;
    }

    private boolean contradicts(Group other) {
      return (direction.isPresent() && other.direction.isPresent()) || (onMat && other.onMat);
    }

    private List<WantedSpace> spaces() {
      WantedSpace space = new WantedSpace(size, direction, onMat, reveal, onSide);
      return Collections.nCopies(Math.max(1, count), space);
    }
  }

  boolean isEmpty() {
    return groups.isEmpty();
  }

  /** Whether something was said for a space that has yet to come. */
  boolean isPending() {
    return pending.saysSomething();
  }

  boolean isCounting() {
    return pending.count > 0;
  }

  /** Whether the space to come lies in a way that was said, or on a mat. */
  boolean isPendingHow() {
    return pending.saysHow();
  }

  int pendingFrom() {
    return pendingFrom;
  }

  /** Whether what was said last is a size. */
  boolean endsWithSize() {
    return !isPending() && last().filter(group -> group.size.isPresent()).isPresent();
  }

  /** Whether it is photos without a size. */
  boolean endsWithPhotos() {
    return !isPending() && last().filter(group -> group.size.isEmpty()).isPresent();
  }

  /** Whether the space spoken of has a way already. */
  boolean isDirected(boolean afterGap) {
    Group spoken = last().orElse(pending);
    return pending.direction.isPresent() || spoken.direction.isPresent() && !afterGap;
  }

  private Optional<Group> last() {
    return groups.isEmpty() ? Optional.empty() : Optional.of(groups.get(groups.size() - 1));
  }

  /** Whether as many more go on one page. */
  boolean hasRoomFor(int count) {
    int all = groups.stream().mapToInt(group -> Math.max(1, group.count)).sum();
    return count + all <= PageSpecParser.MOST_SPACES;
  }

  int pendingCount() {
    return Math.max(1, pending.count);
  }

  void count(int value, int from) {
    startPending(from);
    pending.count = value;
  }

  /** {@code tall x2}, {@code 3x4 x2}; whether there is something that has no number yet. */
  boolean times(int count) {
    boolean next = isPending() && pending.count == 0 && hasRoomFor(count);
    boolean before =
        !isPending() && hasRoomFor(count - 1) && last().filter(Group::isOne).isPresent();
    if (next) {
      pending.count = count;
      close();
    } else if (before) {
      last().get().count = count;
    }
    return next || before;
  }

  /** The space that was spoken of is done. */
  void close() {
    groups.add(pending);
    pending = new Group();
  }

  /** The same, with its size. */
  void close(int count, PaperSize size) {
    pending.count = count;
    pending.size = Optional.of(size);
    close();
  }

  /** {@code three pics (3x4)}. */
  void sizeOfLast(PaperSize size) {
    last().orElseThrow().size = Optional.of(size);
  }

  void applyToAll(Consumer<Group> change) {
    groups.forEach(change);
  }

  /**
   * To the space before or the one to come.
   *
   * @param from where the words stand
   * @param toNext whether they can only be for the next
   * @return whether they go together with what was said of it
   */
  boolean apply(int from, boolean toNext, Consumer<Group> change) {
    Group probe = new Group();
    change.accept(probe);
    boolean startsNext =
        groups.isEmpty() || isPending() || last().get().contradicts(probe) || toNext;
    if (startsNext && pending.contradicts(probe)) {
      return false;
    }
    if (startsNext) {
      startPending(from);
      change.accept(pending);
    } else {
      change.accept(last().get());
    }
    return true;
  }

  private void startPending(int from) {
    pendingFrom = isPending() ? pendingFrom : from;
  }

  /** {@code two tall}, with no noun behind it. */
  void closeFew() {
    if (pending.count > 0 && pending.count <= 4 && pending.saysHow()) {
      close();
    }
  }

  /** A number of photos with no noun behind it. */
  void closeCount() {
    if (pending.count == 1 && !pending.saysHow()) {
      pending = new Group();
    } else if (pending.count > 1) {
      close();
    }
  }

  /** A way with nothing behind it that it is for, before another: a photo that lies so. */
  void closeWay(Orientation other) {
    if (isPending()) {
      if (pending.count == 0 && pending.direction.filter(way -> way != other).isPresent()) {
        pending.count = 1;
        close();
      }
      return;
    }
    last()
        .filter(
            group -> group.count == 2 && group.direction.filter(way -> way != other).isPresent())
        .ifPresent(
            pair -> {
              pair.count = 1; // "two photos, tall and wide"
              pending.count = 1;
              pending.size = pair.size;
            });
  }

  /** {@code two photos, one tall, one wide}: the latter say how the former lie. */
  void refine() {
    if (groups.size() < 2) {
      return;
    }
    Group first = groups.get(0);
    List<Group> rest = groups.subList(1, groups.size());
    int told = rest.stream().mapToInt(group -> group.count).sum();
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

  List<WantedSpace> spaces() {
    List<WantedSpace> spaces = new ArrayList<>();
    groups.forEach(group -> spaces.addAll(group.spaces()));
    return spaces;
  }

  List<WantedSpace> pendingSpaces() {
    return pending.spaces();
  }
}
