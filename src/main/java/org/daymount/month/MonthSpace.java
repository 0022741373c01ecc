package org.daymount.month;

import java.util.List;
import org.daymount.pick.SpacePick;

/**
 * A space with its pick and the pieces cut for it.
 *
 * @param pieces labels; one unless the space is larger than a sheet and is put together from parts
 */
public record MonthSpace(SpacePick pick, List<String> pieces) {
  public MonthSpace {
    pieces = List.copyOf(pieces);
  }
}
