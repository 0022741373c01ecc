package org.daymount.pipeline;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.daymount.day.Days;
import org.daymount.ingest.Ingested;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Analysis;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Duplicates;
import org.daymount.problem.Problem;

/** One problem per file: what explains best why it is not printed. */
final class FileProblems {
  private FileProblems() {}

  /** Later ones only speak where nothing was said before: damage first, then copies, then dates. */
  static Map<PhotoFile, Problem> of(
      Ingested ingested, Days days, Duplicates copies, Analysis firstLook) {
    Map<PhotoFile, Problem> problems = new TreeMap<>();
    add(problems, ingested.problems());
    add(problems, firstLook.problems());
    for (AnalysedPhoto looked : firstLook.looked()) {
      looked
          .measures()
          .damage()
          .ifPresent(fact -> add(problems, List.of(damaged(looked.photo().file(), fact))));
    }
    add(problems, copies.problems());
    for (Photo photo : ingested.photos()) {
      photo
          .screenshot()
          .ifPresent(
              why ->
                  problems.putIfAbsent(
                      photo.file(),
                      new Problem(
                          photo.file(),
                          Problem.Kind.SCREENSHOT,
                          "is a picture of a screen: " + why)));
    }
    add(problems, days.problems());
    return problems;
  }

  private static Problem damaged(PhotoFile file, String fact) {
    return new Problem(
        file, Problem.Kind.DAMAGED, "is damaged: " + fact + "; copy it again from the phone");
  }

  private static void add(Map<PhotoFile, Problem> problems, List<Problem> more) {
    more.forEach(problem -> problems.putIfAbsent(problem.file(), problem));
  }
}
