package org.daymount.sheet;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.card.StoryCard;
import org.daymount.crop.Crop;
import org.daymount.photo.Photo;
import org.daymount.unit.PaperBox;

/**
 * What is printed on one piece: (part of) a crop, or a story card; exactly one of the two.
 *
 * @param space index of the day's space, from 0; for a card the index after the last space
 */
public record PieceContent(
    LocalDate day, int space, Optional<Picture> picture, Optional<StoryCard> card) {
  /**
   * A photo and the part of its crop that this piece shows.
   *
   * @param part from the top left of the crop's piece; the whole of it unless the space is put
   *     together from several pieces
   */
  public record Picture(Photo photo, Crop crop, PaperBox part) {}

  public PieceContent {
    if (picture.isPresent() == card.isPresent()) {
      throw new IllegalArgumentException("a piece shows either a picture or a card");
    }
  }
}
