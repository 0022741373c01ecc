package org.daymount.start;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Set;
import org.daymount.ingest.FileKind;

/** Counts pictures, and the folders nobody may look into, which other folders do not suffer. */
final class FolderCount extends SimpleFileVisitor<Path> {
  /** Looked at for one count; a folder with more is said to have "or more". */
  private static final int MOST_COUNTED = 4000;

  private static final int DEEPEST = 4;

  private int seen;
  private final Set<Path> pictures = new HashSet<>();
  private final Set<Path> clips = new HashSet<>(); // without their endings
  private int closed;

  /** Of a folder and those below. */
  static FolderCount of(Path folder) {
    FolderCount count = new FolderCount();
    try {
      Files.walkFileTree(folder, Set.of(), DEEPEST, count);
    } catch (IOException e) {
      count.closed++;
    }
    return count;
  }

  int pictures() {
    return pictures.size();
  }

  /** How many folders may not be looked into. */
  int closed() {
    return closed;
  }

  /** Whether counting was given up. */
  boolean more() {
    return seen >= MOST_COUNTED;
  }

  int clips() {
    Set<Path> stills = new HashSet<>();
    pictures.forEach(picture -> stills.add(base(picture)));
    return (int) clips.stream().filter(clip -> !stills.contains(clip)).count();
  }

  private static Path base(Path file) {
    return file.resolveSibling(FileKind.base(file.getFileName().toString()));
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes kind) {
    String name = file.getFileName().toString();
    if (kind.isRegularFile() && !FileKind.isHidden(name)) {
      if (FileKind.isPicture(name)) {
        pictures.add(file);
      } else if (FileKind.isFilm(name) && !FileKind.isOtherFilm(name)) {
        clips.add(base(file));
      }
    }
    return ++seen < MOST_COUNTED ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes kind) {
    if (seen > 0 && FileKind.isHidden(folder.getFileName().toString())) {
      return FileVisitResult.SKIP_SUBTREE;
    }
    return ++seen < MOST_COUNTED ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path folder, IOException e) {
    closed++;
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult postVisitDirectory(Path folder, IOException e) {
    if (e != null) {
      closed++; // its listing broke off: a card pulled out
    }
    return FileVisitResult.CONTINUE;
  }
}
