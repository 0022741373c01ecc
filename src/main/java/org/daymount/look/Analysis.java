package org.daymount.look;

import java.util.List;
import org.daymount.problem.Problem;

/** What was measured, in the order the photos were given, and the files that could not be. */
public record Analysis(List<AnalysedPhoto> looked, List<Problem> problems) {
  public Analysis {
    looked = List.copyOf(looked);
    problems = List.copyOf(problems);
  }
}
