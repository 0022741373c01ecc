package org.daymount.output;

import java.io.IOException;
import org.daymount.card.StoryCard;
import org.daymount.crop.Crop;
import org.daymount.photo.Photo;
import org.daymount.unit.PaperBox;

/** What a page is drawn on: a PDF, or a vector picture in a web page. Places are on the page. */
interface PageCanvas {
  /** How a rectangle looks. */
  enum Look {
    /** The page itself. */
    PAGE,
    /** A pocket of it. */
    POCKET,
    /** A pocket or place with nothing in it. */
    FREE,
    /** Card behind a picture. */
    MAT,
    /** Where a picture is still missing. */
    MISSING,
    /** White paper: a print's border. */
    PRINT
  }

  void rectangle(PaperBox box, Look look) throws IOException;

  /** The part of the photo that is printed, filling the box. */
  void picture(Photo photo, Crop crop, PaperBox box) throws IOException;

  void card(StoryCard card, PaperBox box) throws IOException;

  /** A word in the middle of the box. */
  void word(String word, PaperBox box) throws IOException;
}
