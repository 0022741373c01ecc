package org.daymount.ingest;

import java.nio.file.Path;

/** Reads a folder and prints a line for each photo and each problem. Argument: the folder. */
final class ListingWorker {
  private ListingWorker() {}

  public static void main(String[] arguments) {
    Ingested read = Reading.all(Path.of(arguments[0]));
    read.photos().forEach(photo -> System.out.println("photo " + photo.file()));
    read.problems()
        .forEach(problem -> System.out.println("problem " + problem.file() + " " + problem.text()));
  }
}
