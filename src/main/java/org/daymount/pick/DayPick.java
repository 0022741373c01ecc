package org.daymount.pick;

import java.util.List;
import org.daymount.album.DayPage;

/** A day's page with a pick for each of its spaces, in the page's order. */
public record DayPick(DayPage page, List<SpacePick> spaces) {
  public DayPick {
    spaces = List.copyOf(spaces);
  }
}
