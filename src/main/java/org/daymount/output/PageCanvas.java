package org.daymount.output;

import java.io.IOException;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryNote;
import org.daymount.crop.Crop;
import org.daymount.photo.Photo;
import org.daymount.unit.PaperBox;

/**
 * What a page is drawn on: a PDF, a vector picture in a web page, or data for the review. Places
 * are on the page. What is turned lies on its side there, a quarter turn clockwise.
 */
public interface PageCanvas {
  /** How a rectangle looks. */
  enum Look {
    /** The page itself. */
    PAGE,
    /** A pocket of it. */
    POCKET,
    /** A pocket or place with nothing in it. */
    FREE,
    /** The edge of a place where something is written or glued by hand. */
    BY_HAND,
    /** Card behind a picture. */
    MAT,
    /** Where a picture is still missing. */
    MISSING,
    /** White paper: a print's border. */
    PRINT
  }

  void rectangle(PaperBox box, Look look) throws IOException;

  /** The part of the photo that is printed, filling the box. */
  void picture(Photo photo, Crop crop, PaperBox box, boolean turned) throws IOException;

  void card(StoryCard card, PaperBox box, boolean turned) throws IOException;

  /** A story that is to be written or glued there by hand, quietly. */
  void note(StoryNote note, PaperBox box) throws IOException;

  /** A word in the middle of the box. */
  void word(String word, PaperBox box) throws IOException;
}
