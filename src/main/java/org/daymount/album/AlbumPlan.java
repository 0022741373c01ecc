package org.daymount.album;

import java.util.List;

/**
 * What each day's page is to hold.
 *
 * @param pages one for every day of the month, in order
 */
public record AlbumPlan(List<DayPage> pages, List<AlbumRemark> remarks) {
  public AlbumPlan {
    pages = List.copyOf(pages);
    remarks = List.copyOf(remarks);
  }
}
