package org.daymount.pick;

import java.util.List;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.crop.Crop;
import org.daymount.crop.CropSettings;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Ppi;

/** A photo, and perhaps a crop, that a person chose for a space. */
final class ChosenCandidate {
  private ChosenCandidate() {}

  static SpaceTrial of(UserChoice.Chosen chosen, Space space, PickSettings settings) {
    Candidate contender = new Candidate(chosen.looked().orElseThrow(), List.of());
    Optional<Orientation> asked = chosen.direction().filter(space.ways()::contains);
    if (asked.isEmpty() && chosen.window().isEmpty()) {
      return SpaceTrial.best(contender, space, settings);
    }
    Orientation way = asked.orElseGet(() -> nearestWay(space, chosen.window().orElseThrow()));
    if (chosen.window().isEmpty()) {
      return SpaceTrial.in(contender, space, way, settings);
    }
    PaperSize piece = space.pieceSize(way);
    PixelBox window =
        exactAspect(
            chosen.window().get().within(chosen.looked().get().photo().size()), piece.aspect());
    Ppi ppi = Ppi.of(window.width(), piece.width());
    List<String> reasons =
        ppi.isBelow(settings.crop().minimum())
            ? List.of(CropSettings.softness(ppi, settings.crop().minimum()))
            : List.of();
    return SpaceTrial.of(
        contender, way, new Crop(window, piece, piece, Crop.Fit.FILL, ppi, 1, reasons), settings);
  }

  private static Orientation nearestWay(Space space, PixelBox window) {
    Orientation seen = window.size().direction();
    return space.ways().contains(seen) ? seen : space.ways().get(0);
  }

  /** The largest window of the exact aspect inside the one the person drew, about its centre. */
  private static PixelBox exactAspect(PixelBox drawn, double aspect) {
    int width = drawn.width();
    int height = (int) Math.round(width / aspect);
    if (height > drawn.height()) {
      height = drawn.height();
      width = Math.max(1, (int) Math.round(height * aspect));
    }
    return new PixelBox(
        drawn.x() + (drawn.width() - width) / 2,
        drawn.y() + (drawn.height() - height) / 2,
        width,
        Math.max(1, height));
  }
}
