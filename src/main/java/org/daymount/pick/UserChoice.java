package org.daymount.pick;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.look.AnalysedPhoto;
import org.daymount.unit.Orientation;
import org.daymount.unit.PixelBox;

/** What a person has settled on; the picking leaves it alone. */
public interface UserChoice {
  /** Nothing settled: the tool proposes everything. */
  UserChoice NONE = (day, space) -> Optional.empty();

  /**
   * @param space index of the day's space, from 0
   */
  Optional<Chosen> of(LocalDate day, int space);

  /**
   * @param looked empty when the chosen photo is no longer there or cannot be used; {@code why}
   *     then says so
   * @param window the crop in upright pixels, when the person set one
   */
  record Chosen(
      Optional<AnalysedPhoto> looked,
      Optional<PixelBox> window,
      Optional<Orientation> direction,
      String why) {}
}
