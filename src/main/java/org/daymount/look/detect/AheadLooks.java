package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.daymount.image.Pictures;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.LookAhead;
import org.daymount.look.LookCache;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/**
 * Looks closely at photos that will probably be looked at alone. What it finds is remembered and
 * stands only if the photo is alone when all are known: {@link CloseLookStage} recalls it then.
 */
public final class AheadLooks implements LookAhead {
  private final Set<PhotoFile> alone;
  private final DetectorsOnDemand detectors;
  private final LookCache remembered;
  private final BiConsumer<Photo, BufferedImage> shown;

  /**
   * @param alone photos that will probably be looked at alone
   * @param shown as {@link CloseLookStage} has it
   */
  public AheadLooks(
      Set<PhotoFile> alone,
      DetectorsOnDemand detectors,
      LookCache remembered,
      BiConsumer<Photo, BufferedImage> shown) {
    this.alone = Set.copyOf(alone);
    this.detectors = detectors;
    this.remembered = remembered;
    this.shown = shown;
  }

  @Override
  public boolean wants(Photo photo) {
    if (!alone.contains(photo.file()) || remembered.closeLook(List.of(photo)).isPresent()) {
      return false;
    }
    try {
      return detectors.get() != null;
    } catch (DetectorsUnavailable e) {
      return false; // the stage of the close look tells why
    }
  }

  @Override
  public int longEdge() {
    return Detectors.WORKING_LONG_EDGE;
  }

  @Override
  public void look(AnalysedPhoto first, BufferedImage closer) {
    try {
      AnalysedPhoto looked =
          new CloseLooker(new Pictures(), detectors.get(), shown).lookAlone(first, closer);
      remembered.keepCloseLook(List.of(first.photo()), List.of(looked.measures().close()));
    } catch (DetectorsUnavailable e) {
      throw new IllegalStateException(e); // they were there when asked whether it is wanted
    }
  }
}
