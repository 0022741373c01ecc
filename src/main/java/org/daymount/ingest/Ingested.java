package org.daymount.ingest;

import java.util.List;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/**
 * All that a listing's files gave, in order of their names.
 *
 * @param photos pictures that can be used
 * @param unusable pictures that cannot, as far as they are known (day, size); each has a problem
 * @param problems of the listing and of single files
 * @param movingParts films that belong to a still: counted, no problem
 * @param others files that are neither picture nor film, counted by the end of their names
 * @param unmatchedClocks models named in a clock correction that no photo has
 * @param notes what should be known of the reading as a whole, in sentences
 * @param remarks what should be known of pictures that can be used all the same
 */
public record Ingested(
    List<Photo> photos,
    List<Photo> unusable,
    List<Problem> problems,
    List<PhotoFile> movingParts,
    SortedMap<String, Integer> others,
    List<String> unmatchedClocks,
    List<String> notes,
    List<Problem> remarks) {
  public Ingested {
    photos = List.copyOf(photos);
    unusable = List.copyOf(unusable);
    problems = List.copyOf(problems);
    movingParts = List.copyOf(movingParts);
    unmatchedClocks = List.copyOf(unmatchedClocks);
    notes = List.copyOf(notes);
    remarks = List.copyOf(remarks);
  }

  /** All pictures of which more than the name is known: those that can be used first. */
  public List<Photo> all() {
    return Stream.concat(photos.stream(), unusable.stream()).toList();
  }
}
