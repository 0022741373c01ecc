package org.daymount.album;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * The spaces of a page while their words are being read: those that are done, and what was said
 * ahead of the next one.
 */
final class PageGroups {
  private final List<SpaceGroup> groups = new ArrayList<>();
  private SpaceGroup pending = new SpaceGroup();
  private int pendingFrom;
  private int countFrom;
  private boolean hashed; // a way of its own behind each mark
  private Consumer<SpaceGroup> forAll = group -> {};

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

  /** Whether the space to come is such a one. */
  boolean pends(Predicate<SpaceGroup> like) {
    return like.test(pending);
  }

  int pendingFrom() {
    return pendingFrom;
  }

  /**
   * A size that has only a name.
   *
   * @param ofLast whether it is said of the photos before
   */
  void named(boolean small, boolean ofLast, int from) {
    SpaceGroup group = ofLast ? last().orElseThrow() : pending;
    if (!ofLast) {
      startPending(from);
    }
    group.isSmall = small;
    group.isLarge = !small;
  }

  /** Whether a size was only named, so that it had to be guessed. */
  boolean isSizeGuessed() {
    return groups.stream().anyMatch(group -> group.isNamed() && group.size.isPresent());
  }

  /** Whether what was said last is such a space. */
  boolean end(Predicate<SpaceGroup> like) {
    return !isPending() && last().filter(like).isPresent();
  }

  /** Whether the space spoken of has a way already. */
  boolean isDirected(boolean afterGap) {
    SpaceGroup spoken = isPending() ? pending : last().orElse(pending);
    return spoken.direction.isPresent() && (isPending() || !afterGap);
  }

  private Optional<SpaceGroup> last() {
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
    pending.countedLast = pending.saysHow();
    countFrom = from;
    pending.count = value;
  }

  /** {@code tall x2}, {@code 3x4 x2}; whether there is something that has no number yet. */
  boolean times(int count) {
    boolean next = isPending() && pending.count == 0 && hasRoomFor(count);
    boolean before =
        !isPending() && hasRoomFor(count - 1) && last().filter(SpaceGroup::isOne).isPresent();
    if (next) {
      pending.count = count;
      close();
    } else if (before) {
      last().get().count = count;
    }
    return next || before;
  }

  /** {@code two photos, two photos}: said again, in another language. */
  boolean repeatsLast() {
    return pending.count > 1
        && !pending.saysHow()
        && last().filter(group -> group.isPlain() && group.count == pending.count).isPresent();
  }

  void forgetPending() {
    pending = new SpaceGroup();
  }

  /** The space that was spoken of is done. */
  void close() {
    groups.add(pending);
    pending = new SpaceGroup();
  }

  /** The same, with its size. */
  void close(int count, PaperSize size) {
    pending.count = count;
    pending.size = Optional.of(size);
    close();
  }

  /** {@code three pics (3x4)}. */
  void sizeOfLast(PaperSize size) {
    SpaceGroup photos = last().orElseThrow();
    photos.size = Optional.of(size);
    photos.sizedBehind = true;
  }

  void applyToAll(Consumer<SpaceGroup> change) {
    groups.forEach(change);
  }

  /**
   * To the space before or the one to come.
   *
   * @param from where the words stand
   * @param toNext whether they can only be for the next
   * @return whether they go together with what was said of it
   */
  boolean apply(int from, boolean toNext, Consumer<SpaceGroup> change) {
    SpaceGroup probe = new SpaceGroup();
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
  private void closeFew() {
    if (pending.count > 0 && pending.count <= 4 && pending.saysHow()) {
      close();
    }
  }

  /** {@code a full page}: the number is no photo's. */
  void dropOne() {
    if (pending.count == 1 && !pending.saysHow()) {
      pending = new SpaceGroup();
    }
  }

  /** {@code #wide #wide}. */
  void hash() {
    closeOneWay();
    hashed = true;
  }

  private void closeOneWay() {
    if (pending.count == 0 && pending.direction.isPresent()) {
      pending.count = 1;
      close();
    }
  }

  /** A way with nothing behind it that it is for, before another: a photo that lies so. */
  void closeWay(Orientation other) {
    if (isPending()) {
      if (pending.direction.filter(way -> way != other).isPresent()) {
        closeOneWay();
      }
      return;
    }
    last().flatMap(pair -> pair.halved(other)).ifPresent(half -> pending = half);
  }

  /** {@code 4x6 and two 3x4, on mat}. */
  void matForAll(Optional<Length> reveal) {
    forAll = group -> group.mat(reveal);
  }

  /**
   * Once all was said.
   *
   * @param end behind it
   * @return where the words really end: before a number of something else
   */
  int finish(int end) {
    boolean ofSomethingElse = pending.countedLast && pending.count > 0;
    if (ofSomethingElse) {
      pending.count = 0; // "landscape two trains"
    }
    closeFew();
    if (pending.isNamed() && pending.count == 0 && !pending.saysHow()) {
      forgetPending(); // "small photos", nobody knows how many
    }
    if (hashed) {
      closeOneWay(); // "#wide #wide"
    }
    SpaceGroup.refine(groups);
    pending.sizeIfNamed(); // "landscape, big"
    groups.forEach(forAll);
    return ofSomethingElse ? Math.min(end, countFrom) : end;
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
