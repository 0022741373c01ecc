package org.daymount.start;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.daymount.ingest.FileKind;

/**
 * Folders by name, with how many pictures each seems to hold. No file is opened: a picture is told
 * by its name. Folders are known outside by a number that means nothing elsewhere, and only those
 * that were listed have one. Links are resolved; hidden folders are left out, also those that a
 * link leads into.
 */
public final class FolderBrowser {
  /** Below home; a cloud's program for Windows moves some of them into a folder of its own. */
  private static final List<String> USUAL =
      List.of(
          "Pictures", "OneDrive/Pictures", "Downloads", "Desktop", "OneDrive/Desktop", "Documents");

  private final UserFolders user;
  private final Map<Path, String> ids = new HashMap<>();
  private final List<Path> paths = new ArrayList<>();

  public FolderBrowser(UserFolders user) {
    this.user = user;
  }

  /**
   * One folder.
   *
   * @param place where it really is, for the person to read
   * @param link whether the name is a link to that place
   * @param pictures in it and the folders below, by the endings of their names
   * @param clips the same; one beside a picture of the same name belongs to that picture
   * @param more whether counting was given up at that number
   * @param closed how many folders, this one or some below, may not be looked into
   */
  public record Folder(
      String id,
      String name,
      Path place,
      boolean link,
      int pictures,
      int clips,
      boolean more,
      int closed) {}

  /**
   * A folder opened.
   *
   * @param up the id of the one above; empty at the top
   */
  public record Opened(Folder folder, Optional<String> up, List<Folder> folders) {
    public Opened {
      folders = List.copyOf(folders);
    }
  }

  /** Where to begin: home, pictures, drives; only those that are there. */
  public synchronized List<Folder> places() {
    List<Folder> places = new ArrayList<>();
    for (String name : USUAL) {
      Path place = user.home().resolve(name);
      visible(place).ifPresent(real -> places.add(folder(name, place, real)));
    }
    Path home = user.home();
    visible(home).ifPresent(real -> places.add(folder("Your home folder", home, real)));
    for (Path drive : user.drives()) {
      visible(drive).ifPresent(real -> places.add(folder(drive, real)));
    }
    return places;
  }

  /**
   * @throws IOException in words for the person, when it cannot be listed
   */
  public synchronized Opened open(Path place) throws IOException {
    Path real =
        visible(place)
            .orElseThrow(() -> new IOException("this folder is not there, or is a hidden one"));
    List<Folder> below = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(real)) {
      for (Path each : all) {
        if (!FileKind.isHidden(each.getFileName().toString())) {
          visible(each).ifPresent(target -> below.add(folder(each, target)));
        }
      }
    } catch (IOException e) {
      throw new IOException("this folder may not be looked into: " + real);
    }
    below.sort(Comparator.comparing(f -> f.name().toLowerCase(Locale.ROOT)));
    Optional<String> up =
        Optional.ofNullable(real.getParent()).flatMap(this::visible).map(this::id);
    return new Opened(folder(real, real), up, below);
  }

  /** The folder of an id that was handed out; empty for any other. */
  public synchronized Optional<Path> path(String id) {
    if (!id.matches("f\\d{1,7}")) {
      return Optional.empty();
    }
    int index = Integer.parseInt(id.substring(1));
    return index < paths.size() ? Optional.of(paths.get(index)) : Optional.empty();
  }

  /**
   * A folder as a person types it.
   *
   * @throws IOException in words for the person, when there is none
   */
  public Path typed(String text) throws IOException {
    String stripped = text.strip().replaceAll("^\"(.*)\"$", "$1");
    try {
      Path path =
          stripped.startsWith("~/")
              ? user.home().resolve(stripped.substring(2))
              : user.home().resolve(stripped);
      if (Files.isDirectory(path)) {
        return path;
      }
    } catch (InvalidPathException e) {
      // said below
    }
    throw new IOException("there is no folder '" + stripped + "'; look at its spelling");
  }

  /** Where it really is, if it is a folder that nothing hides. */
  private Optional<Path> visible(Path place) {
    try {
      Path real = place.toRealPath();
      if (!Files.isDirectory(real)) {
        return Optional.empty();
      }
      for (Path part = real; part != null && part.getFileName() != null; part = part.getParent()) {
        if (part.getFileName().toString().startsWith(".") || Files.isHidden(part)) {
          return Optional.empty();
        }
      }
      return Optional.of(real);
    } catch (IOException | InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** A folder that was chosen before. */
  public synchronized Folder folder(Path place) {
    return folder(place, place);
  }

  private Folder folder(Path shown, Path real) {
    Path name = shown.getFileName() == null ? shown : shown.getFileName();
    return folder(name.toString(), shown, real);
  }

  private Folder folder(String name, Path shown, Path real) {
    FolderCount count = FolderCount.of(real);
    return new Folder(
        id(real),
        name,
        real,
        Files.isSymbolicLink(shown),
        count.pictures(),
        count.clips(),
        count.more(),
        count.closed());
  }

  private String id(Path real) {
    return ids.computeIfAbsent(
        real,
        any -> {
          paths.add(real);
          return "f" + (paths.size() - 1);
        });
  }
}
