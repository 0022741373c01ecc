package org.daymount.ingest;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.daymount.image.PictureHeaders;
import org.daymount.photo.PhotoFile;
import org.daymount.problem.Problem;

/**
 * Walks the PHOTOS arguments. Links are followed last, so that a file keeps the name of the folder
 * it really is in, and a folder or file that was seen is not seen again: loops end there.
 */
final class FolderLister {
  private static final String MADE = ".daymount-made";
  private static final long MOST_RECORD = 10_000_000; // bytes

  private record Step(Path folder, Path path) {}

  private final PictureHeaders headers = new PictureHeaders();
  private final Set<Path> leftOut = new HashSet<>();
  private final Set<Path> seen = new HashSet<>();
  private final Deque<Step> waiting = new ArrayDeque<>();
  private final Deque<Step> links = new ArrayDeque<>();
  private final List<PhotoFile> pictures = new ArrayList<>();
  private final List<PhotoFile> films = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final SortedMap<String, Integer> others = new TreeMap<>();

  /**
   * @param leaveOut folders that are not walked into: the program's own output
   */
  Listing list(List<Path> arguments, List<Path> leaveOut) {
    for (Path folder : leaveOut) {
      try {
        leftOut.add(folder.toRealPath());
      } catch (IOException e) {
        // a folder that is not there holds nothing to leave out
      }
    }
    for (Path argument : arguments) {
      waiting.add(new Step(folderOf(argument), argument));
      walk(waiting);
    }
    while (!links.isEmpty()) {
      waiting.add(links.poll());
      walk(waiting);
    }
    return sorted();
  }

  private static Path folderOf(Path argument) {
    if (Files.isDirectory(argument)) {
      return argument;
    }
    Path parent = argument.getParent();
    return parent == null ? Path.of("") : parent;
  }

  private void walk(Deque<Step> steps) {
    while (!steps.isEmpty()) {
      Step step = steps.poll();
      try {
        Path real = step.path().toRealPath();
        if (!seen.add(real) || leftOut.contains(real)) {
          continue;
        }
        if (Files.isDirectory(real)) {
          leaveOutWhatWasMadeIn(real);
          addEntries(step);
        } else {
          addFile(step);
        }
      } catch (IOException e) {
        addUnreachable(step);
      }
    }
  }

  /**
   * In a folder that a run wrote to, what it made is no photo: its record (docs/choices.md) tells
   * the files, a sum and a name a line. Pictures that lie beside them are a person's.
   */
  private void leaveOutWhatWasMadeIn(Path folder) {
    Path record = folder.resolve(MADE);
    try {
      if (!Files.isRegularFile(record) || Files.size(record) > MOST_RECORD) {
        return;
      }
      leftOut.add(folder.resolve("set-aside"));
      for (String line : new String(Files.readAllBytes(record), UTF_8).split("\n")) {
        leftOut.add(folder.resolve(line.substring(line.indexOf("  ") + 1).strip()));
      }
    } catch (IOException | InvalidPathException e) {
      // no record of a run: everything is a person's
    }
  }

  private void addEntries(Step step) {
    List<Path> entries = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(step.path())) {
      stream.forEach(entries::add);
    } catch (IOException | DirectoryIteratorException e) {
      problems.add(
          problem(
              step,
              Problem.Kind.FOLDER_UNREADABLE,
              "is a folder that may not be opened; give yourself the right to read it"));
      return;
    }
    Collections.sort(entries);
    for (Path entry : entries) {
      if (!FileKind.isHidden(entry.getFileName().toString())) {
        boolean link = Files.isSymbolicLink(entry);
        (link ? links : waiting).add(new Step(step.folder(), entry));
      }
    }
  }

  private void addFile(Step step) {
    String name = step.path().getFileName().toString();
    PhotoFile file = photoFile(step);
    if (!reachesBack(file, step.path())) {
      problems.add(
          new Problem(
              file,
              Problem.Kind.UNREADABLE,
              "has a name that this system's language setting cannot spell; rename it, or run with"
                  + " LC_ALL=C.UTF-8"));
      return;
    }
    if (!Files.isRegularFile(step.path())) {
      addWhatIsNoFile(step, name);
      return;
    }
    try {
      if (FileKind.isFilm(name) || headers.isFilm(step.path())) {
        films.add(file);
      } else if (FileKind.isPicture(name) || headers.format(step.path()).isPresent()) {
        pictures.add(file);
      } else {
        count(name);
      }
    } catch (IOException e) {
      // a file that may not be opened: of interest only if it calls itself a picture
      if (FileKind.isPicture(name)) {
        pictures.add(file);
      } else {
        count(name);
      }
    }
  }

  private void addWhatIsNoFile(Step step, String name) {
    if (FileKind.isPicture(name) || FileKind.isFilm(name)) {
      String text = "is a pipe or a device; copy the picture itself";
      problems.add(problem(step, Problem.Kind.UNREADABLE, text));
    } else {
      count(name);
    }
  }

  private void count(String name) {
    others.merge(FileKind.extension(name), 1, Integer::sum);
  }

  private void addUnreachable(Step step) {
    if (Files.isSymbolicLink(step.path())) {
      problems.add(
          problem(
              step,
              Problem.Kind.UNREADABLE,
              "is a link to something that is not there; copy the picture itself"));
    } else if (Files.exists(step.path(), LinkOption.NOFOLLOW_LINKS)) {
      problems.add(
          problem(
              step,
              Problem.Kind.FOLDER_UNREADABLE,
              "cannot be reached; give yourself the right to read it"));
    } else {
      problems.add(
          problem(
              step, Problem.Kind.FOLDER_UNREADABLE, "is not there; check how its name is spelled"));
    }
  }

  private static Problem problem(Step step, Problem.Kind kind, String text) {
    return new Problem(photoFile(step), kind, text);
  }

  private static PhotoFile photoFile(Step step) {
    Path folder = step.folder();
    Path path = step.path();
    if (path.equals(folder)) { // an argument itself
      Path parent = path.getParent();
      Path last = path.getFileName();
      return new PhotoFile(
          parent == null ? Path.of("") : parent, last == null ? path.toString() : last.toString());
    }
    List<String> parts = new ArrayList<>();
    folderless(folder, path).forEach(part -> parts.add(part.toString()));
    return new PhotoFile(folder, String.join("/", parts));
  }

  private static Path folderless(Path folder, Path path) {
    return folder.toString().isEmpty() ? path : folder.relativize(path);
  }

  private static boolean reachesBack(PhotoFile file, Path path) {
    try {
      return file.path().equals(path);
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private Listing sorted() {
    List<PhotoFile> clips = new ArrayList<>();
    for (PhotoFile film : films) {
      if (!FileKind.isOtherFilm(film.lastName())) {
        clips.add(film);
      } else {
        problems.add(
            new Problem(
                film, Problem.Kind.VIDEO, "is a film; save one frame as a picture to print it"));
      }
    }
    Collections.sort(pictures);
    Collections.sort(clips);
    problems.sort(Comparator.naturalOrder());
    return new Listing(pictures, clips, problems, others);
  }
}
