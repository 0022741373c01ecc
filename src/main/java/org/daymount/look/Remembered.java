package org.daymount.look;

import java.util.List;
import java.util.Optional;
import org.daymount.photo.Photo;

/**
 * What was measured in earlier runs, by what the files hold. Asked and told from several threads at
 * once.
 */
public interface Remembered {
  /** Every photo is new. */
  Remembered NOTHING =
      new Remembered() {
        @Override
        public Optional<Measures> firstLook(Photo photo) {
          return Optional.empty();
        }

        @Override
        public void keepFirstLook(Photo photo, Measures measures) {}

        @Override
        public Optional<List<Optional<Measures.CloseLook>>> closeLook(List<Photo> frames) {
          return Optional.empty();
        }

        @Override
        public void keepCloseLook(
            List<Photo> frames, List<Optional<Measures.CloseLook>> closeLooks) {}
      };

  Optional<Measures> firstLook(Photo photo);

  void keepFirstLook(Photo photo, Measures measures);

  /**
   * @param frames that were looked at together, in that order, because a close look at one depends
   *     on what was seen in the others
   * @return one for each frame; empty for one that could not be read
   */
  Optional<List<Optional<Measures.CloseLook>>> closeLook(List<Photo> frames);

  void keepCloseLook(List<Photo> frames, List<Optional<Measures.CloseLook>> closeLooks);
}
