package org.daymount.pick;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/** Files that repeat another one, and the one each of them repeats. */
public record Duplicates(List<Duplicate> all, Map<PhotoFile, Duplicate> byFile) {

  public static Duplicates exact(List<Photo> photos) {
    return of(new CopyFinder().exact(photos));
  }

  public Duplicates andSmaller(List<AnalysedPhoto> looked) {
    List<Duplicate> more = new ArrayList<>(all);
    more.addAll(
        new CopyFinder()
            .smaller(looked.stream().filter(l -> l.photo().screenshot().isEmpty()).toList()));
    return of(more);
  }

  private static Duplicates of(List<Duplicate> copies) {
    Map<PhotoFile, Duplicate> byFile = new TreeMap<>();
    copies.forEach(copy -> byFile.put(copy.file(), copy));
    return new Duplicates(List.copyOf(copies), byFile);
  }

  public boolean isCopy(Photo photo) {
    return byFile.containsKey(photo.file());
  }

  public Optional<PhotoFile> original(PhotoFile file) {
    return Optional.ofNullable(byFile.get(file)).map(Duplicate::original);
  }

  public List<Photo> withoutCopies(List<Photo> photos) {
    return photos.stream().filter(photo -> !isCopy(photo)).toList();
  }

  public List<Problem> problems() {
    return all.stream().map(Duplicate::problem).toList();
  }
}
