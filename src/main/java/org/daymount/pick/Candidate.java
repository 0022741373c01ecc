package org.daymount.pick;

import java.util.List;
import java.util.stream.Stream;
import org.daymount.look.AnalysedPhoto;

/**
 * A picture that may become a day's hero: the best frame of its burst, or a picture taken once.
 *
 * @param alike the other frames of the burst, best first
 */
public record Candidate(AnalysedPhoto looked, List<AnalysedPhoto> alike) {
  public Candidate {
    alike = List.copyOf(alike);
  }

  /** The picture and those alike, best first. */
  public Stream<AnalysedPhoto> frames() {
    return Stream.concat(Stream.of(looked), alike.stream());
  }

  public int burstSize() {
    return 1 + alike.size();
  }
}
