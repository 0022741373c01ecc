package org.daymount.pipeline;

import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.daymount.day.Days;
import org.daymount.ingest.Ingested;
import org.daymount.look.Analysis;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Duplicates;

/**
 * What is known of the pictures whatever a person chooses. It can be picked from again and again.
 *
 * @param found every file
 * @param days as the photos' own times tell
 * @param firstLook at the photos of the month's days, and at the undated
 */
public record Survey(
    YearMonth month, Ingested found, Days days, Duplicates copies, Analysis firstLook) {

  /** Every photo that could be read, in the order of their names. */
  public List<Photo> photos() {
    return found.photos();
  }

  /** Photos of these contents that were not looked at: of other months, or days not asked for. */
  List<Photo> notYetLookedAt(Set<String> contents) {
    Set<PhotoFile> known = new HashSet<>();
    firstLook.looked().forEach(one -> known.add(one.photo().file()));
    firstLook.problems().forEach(problem -> known.add(problem.file()));
    return copies.withoutCopies(found.photos()).stream()
        .filter(photo -> contents.contains(photo.sha256()) && !known.contains(photo.file()))
        .toList();
  }
}
