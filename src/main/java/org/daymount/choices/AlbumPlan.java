package org.daymount.choices;

import java.util.List;
import org.daymount.album.DayPage;
import org.daymount.problem.Warning;

/**
 * What each day's page is to hold.
 *
 * @param pages one for every day of the month, in order
 */
public record AlbumPlan(List<DayPage> pages, List<Warning> remarks) {
  public AlbumPlan {
    pages = List.copyOf(pages);
    remarks = List.copyOf(remarks);
  }
}
