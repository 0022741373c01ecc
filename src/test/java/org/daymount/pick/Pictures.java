package org.daymount.pick;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.daymount.crop.CropSettings;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Fingerprint;
import org.daymount.look.Measures;
import org.daymount.look.SaliencyMap;
import org.daymount.photo.Photo;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;
import org.daymount.unit.Ppi;

/** Photos with measures made up for a test of the picking. */
final class Pictures {
  static final PixelSize LANDSCAPE = new PixelSize(4032, 3024);
  static final PixelSize PORTRAIT = new PixelSize(3024, 4032);
  static final PickSettings SETTINGS =
      new PickSettings(CropSettings.of(Ppi.ppi(300), Ppi.ppi(200)));

  private Pictures() {}

  /**
   * @param scene pictures of one scene look nearly the same, those of others do not
   * @param light 0 to 1: the better one wins when all else is equal
   */
  static AnalysedPhoto of(String name, PixelSize size, int scene, double light) {
    return of(name, size, scene, light, 100);
  }

  static AnalysedPhoto of(String name, PixelSize size, int scene, double light, double sharpness) {
    Random colours = new Random(scene);
    Fingerprint fingerprint =
        new Fingerprint(
            colours.nextLong(), colours.nextLong(), Collections.nCopies(81, colours.nextFloat()));
    Measures measures =
        new Measures(sharpness, 0.5, light, fingerprint, SaliencyMap.even(4, 3), Optional.empty());
    return new AnalysedPhoto(photo(name, size), measures);
  }

  static Photo photo(String name, PixelSize size) {
    return PhotoBuilder.at(Path.of("june"), name).bytes(1_000_000).sha256(name).size(size).photo();
  }

  static Candidate alone(AnalysedPhoto looked) {
    return new Candidate(looked, List.of());
  }
}
