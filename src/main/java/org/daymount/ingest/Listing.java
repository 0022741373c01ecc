package org.daymount.ingest;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/**
 * The files found under the PHOTOS arguments, each real file once.
 *
 * @param pictures files to be read, in order of their names
 * @param clips MP4, MOV and 3GP files that stills may be taken from, in order of their names
 * @param problems unreadable folders, films, links to nothing; in order of their names
 * @param others files that are neither picture nor film, counted by the end of their names
 */
public record Listing(
    List<PhotoFile> pictures,
    List<PhotoFile> clips,
    List<Problem> problems,
    SortedMap<String, Integer> others) {
  public Listing {
    pictures = List.copyOf(pictures);
    clips = List.copyOf(clips);
    problems = List.copyOf(problems);
    others = Collections.unmodifiableSortedMap(new TreeMap<>(others));
  }
}
