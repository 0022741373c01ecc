package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.photo.Photo;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelBox;
import org.daymount.unit.PixelSize;

/**
 * One photograph of the evaluation set.
 *
 * @param picture upright, TYPE_INT_RGB
 * @param faces as a person marked them, from brow to chin
 * @param subject where the dominant subject is, as a person drew it; empty when nobody did
 */
record EvalPhoto(String name, BufferedImage picture, List<PixelBox> faces, Optional<Mask> subject) {

  PixelSize size() {
    return new PixelSize(picture.getWidth(), picture.getHeight());
  }

  /** As the program would hand it on; the content hash and the date are not known here. */
  Photo photo() {
    return PhotoBuilder.at(Path.of(""), name).size(size()).withoutOrientation().photo();
  }
}
