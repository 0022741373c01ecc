package org.daymount.output;

import java.util.Optional;

/**
 * What earlier runs drew, by the {@link Recipe} it was drawn from: of whole files as what they were
 * {@link Written}, of small pictures the pictures. Asked and told from several threads at once.
 */
public interface KeptDrawings {
  /** Everything is drawn. */
  KeptDrawings NONE =
      new KeptDrawings() {
        @Override
        public Optional<byte[]> drawn(String recipe) {
          return Optional.empty();
        }

        @Override
        public void keep(String recipe, byte[] drawn) {}
      };

  Optional<byte[]> drawn(String recipe);

  void keep(String recipe, byte[] drawn);
}
