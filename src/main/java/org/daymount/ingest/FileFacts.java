package org.daymount.ingest;

import java.util.Optional;
import org.daymount.image.PictureHeader;
import org.daymount.problem.Problem;

/**
 * All that is read from a file, before anything is made of it. It follows from the file's bytes
 * alone, whatever it is called and wherever it lies.
 *
 * @param sha256 of the whole file, lower case hexadecimal; see {@link FolderReader#forDates}
 * @param damage why it is not whole; empty when it is
 * @param damageText the fact and the next step; empty when it is whole
 * @param colourRemark why its colour profile is not followed; empty when it is
 */
record FileFacts(
    PictureHeader header,
    Tags tags,
    String sha256,
    Optional<Problem.Kind> damage,
    String damageText,
    Optional<String> colourRemark) {

  /**
   * As it is kept from run to run: what could tell of the person stays out. Of the camera's model
   * it is said only that there is one, of a comment nothing but that it says screenshot.
   */
  FileFacts impersonal() {
    return with(
        new Tags(
            tags.orientation(),
            tags.original(),
            tags.digitized(),
            tags.xmp(),
            tags.pngCreation(),
            tags.pngModified(),
            tags.gpsUtc(),
            tags.offsets(),
            tags.model().map(model -> Tags.UNNAMED),
            tags.userComment().filter(ScreenshotEvidence::saysSo),
            tags.burst(),
            tags.pair(),
            tags.cameraSettings()));
  }

  FileFacts with(Tags others) {
    return new FileFacts(header, others, sha256, damage, damageText, colourRemark);
  }
}
