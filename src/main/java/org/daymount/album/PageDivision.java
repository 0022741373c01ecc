package org.daymount.album;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;

/**
 * Sizes for photos that were asked for by number alone. Common practice, no source: on 6 x 8 in two
 * are two 4x6 lying, or two 3x4 if they are to stand; three are one 4x6 and two 3x4; four are four
 * 3x4.
 */
public final class PageDivision {
  private PageDivision() {}

  /** The same spaces, each with a size. */
  public static List<WantedSpace> sized(List<WantedSpace> spaces) {
    int largeLeft = spaces.size() <= 2 ? spaces.size() : spaces.size() == 3 ? 1 : 0;
    largeLeft -= (int) spaces.stream().filter(space -> space.size().isPresent()).count();
    List<WantedSpace> sized = new ArrayList<>();
    int lying = (int) spaces.stream().filter(PageDivision::asksToLie).count();
    for (WantedSpace space : spaces) {
      if (space.size().isPresent()) {
        sized.add(space);
        continue;
      }
      boolean stands = space.direction().filter(Orientation.PORTRAIT::equals).isPresent();
      boolean keptForAnother = spaces.size() == 3 && lying > 0 && !asksToLie(space);
      boolean alone = spaces.size() == 1;
      boolean large = alone || (largeLeft > 0 && !stands && !keptForAnother);
      largeLeft -= large ? 1 : 0;
      PaperSize size = large ? CommonPractice.LARGE_POCKET : CommonPractice.SMALL_POCKET;
      Orientation usual = large ? Orientation.LANDSCAPE : Orientation.PORTRAIT;
      Optional<Orientation> way =
          alone ? space.direction() : space.direction().or(() -> Optional.of(usual));
      sized.add(
          new WantedSpace(Optional.of(size), way, space.onMat(), space.reveal(), space.onSide()));
    }
    return sized;
  }

  private static boolean asksToLie(WantedSpace space) {
    return space.size().isEmpty()
        && space.direction().filter(Orientation.LANDSCAPE::equals).isPresent();
  }
}
