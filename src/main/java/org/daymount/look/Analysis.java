package org.daymount.look;

import java.util.List;
import java.util.stream.Stream;
import org.daymount.problem.Problem;

/** What was measured, in the order the photos were given, and the files that could not be. */
public record Analysis(List<AnalysedPhoto> looked, List<Problem> problems) {
  public Analysis {
    looked = List.copyOf(looked);
    problems = List.copyOf(problems);
  }

  /** Both, this one first. */
  public Analysis and(Analysis more) {
    return new Analysis(
        Stream.concat(looked.stream(), more.looked.stream()).toList(),
        Stream.concat(problems.stream(), more.problems.stream()).toList());
  }
}
