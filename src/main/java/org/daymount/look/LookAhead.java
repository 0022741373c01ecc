package org.daymount.look;

import java.awt.image.BufferedImage;
import org.daymount.photo.Photo;

/**
 * The close look at a photo that will be looked at closely and alone, as far as one can tell before
 * it is read: done with the first look, because reading the file once is enough for both.
 */
public interface LookAhead {
  /** Every photo is looked at once for now. */
  LookAhead NONE =
      new LookAhead() {
        @Override
        public boolean wants(Photo photo) {
          return false;
        }

        @Override
        public int longEdge() {
          return Measurer.WORKING_EDGE;
        }

        @Override
        public void look(AnalysedPhoto first, BufferedImage closer) {}
      };

  /** May be asked from several threads at once. */
  boolean wants(Photo photo);

  /** Pixels of the picture to look at. */
  int longEdge();

  /**
   * From several threads at once.
   *
   * @param closer the whole picture, {@link #longEdge} pixels long or as long as it is
   */
  void look(AnalysedPhoto first, BufferedImage closer);
}
