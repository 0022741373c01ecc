package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Contender;

/**
 * What is known after the close look.
 *
 * @param contenders per day, in order of time
 * @param others looked at although they are no contenders' first frames: a person chose them
 * @param without why faces and subjects were not looked for, if they were not
 */
record CloseLooks(
    Map<LocalDate, List<Contender>> contenders,
    Map<PhotoFile, AnalysedPhoto> others,
    Optional<String> without) {

  /** Every picture that can be picked, with all that was measured in it. */
  Map<PhotoFile, AnalysedPhoto> looked() {
    Map<PhotoFile, AnalysedPhoto> looked = new HashMap<>();
    for (List<Contender> day : contenders.values()) {
      for (Contender contender : day) {
        looked.put(contender.looked().photo().file(), contender.looked());
        contender.alike().forEach(frame -> looked.put(frame.photo().file(), frame));
      }
    }
    looked.putAll(others);
    return looked;
  }
}
