package org.daymount.album;

import java.util.List;
import java.util.Optional;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * A ready-made page: one that is made ahead, before there are pictures for it.
 *
 * @param name as the person wrote it
 * @param places in the order of the file
 * @param papers card and paper the page is made of, mats not among them
 * @param days of the month that are to have it; none: any day
 */
public record BasePage(
    String name, List<BasePlace> places, List<PaperSize> papers, List<Integer> days) {
  public BasePage {
    places = List.copyOf(places);
    papers = List.copyOf(papers);
    days = List.copyOf(days);
  }

  /** The spaces of its photos, in the order of the file. */
  public List<Space> spaces() {
    return photos().stream().map(BasePlace::space).toList();
  }

  public List<BasePlace> photos() {
    return places.stream().filter(place -> place.what() == BasePlace.What.PHOTO).toList();
  }

  /** Where its story goes; the first place for one. */
  public Optional<PaperBox> story() {
    return places.stream()
        .filter(place -> place.what() == BasePlace.What.STORY)
        .map(BasePlace::box)
        .findFirst();
  }
}
