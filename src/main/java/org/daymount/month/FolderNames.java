package org.daymount.month;

import java.nio.file.Path;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.daymount.photo.PhotoFile;

/**
 * What the PHOTOS folders are called in files that may be given away: by their last names, since
 * the way to them often holds a person's.
 */
final class FolderNames {
  private final Map<Path, String> names = new LinkedHashMap<>();
  private final boolean whole;

  /**
   * @param files in the order that decides which of two folders of the same name gets a number
   * @param whole whether to give the folders as they were typed
   */
  FolderNames(Collection<PhotoFile> files, boolean whole) {
    this.whole = whole;
    Set<String> taken = new HashSet<>();
    for (PhotoFile file : files) {
      names.computeIfAbsent(file.folder(), folder -> free(lastName(folder), taken));
    }
  }

  private static String lastName(Path folder) {
    Path last = folder.getFileName();
    return last == null ? "" : last.toString();
  }

  private static String free(String name, Set<String> taken) {
    String free = name;
    for (int number = 2; !taken.add(free); number++) {
      free = name + " (" + number + ")";
    }
    return free;
  }

  String of(PhotoFile file) {
    return whole
        ? file.folder().toString().replace('\\', '/')
        : names.getOrDefault(file.folder(), lastName(file.folder()));
  }
}
