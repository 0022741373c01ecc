package org.daymount.start;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The person's own folders on this computer.
 *
 * @param home where the walk through folders begins
 * @param settings where the start page keeps what was chosen
 * @param drives where cards and disks are, mounted or not
 */
public record UserFolders(Path home, Path settings, List<Path> drives) {
  public UserFolders {
    drives = List.copyOf(drives);
  }

  /**
   * Settings lie where the system wants them: XDG Base Directory Specification 0.8 on Linux,
   * Apple's File System Programming Guide on macOS, the roaming folder on Windows.
   *
   * @param system as Java's os.name has it
   * @param environment of this process
   */
  public static UserFolders of(String system, Map<String, String> environment, Path home) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      List<Path> drives = new ArrayList<>();
      FileSystems.getDefault().getRootDirectories().forEach(drives::add);
      String roaming = environment.get("APPDATA");
      Path settings = roaming == null ? home.resolve("AppData/Roaming") : Path.of(roaming);
      return new UserFolders(home, settings.resolve("Daymount"), drives);
    }
    if (name.startsWith("mac")) {
      return new UserFolders(
          home, home.resolve("Library/Application Support/Daymount"), below(Path.of("/Volumes")));
    }
    String config = environment.getOrDefault("XDG_CONFIG_HOME", "");
    Path settings = config.startsWith("/") ? Path.of(config) : home.resolve(".config");
    List<Path> drives = new ArrayList<>();
    String user = home.getFileName() == null ? "" : home.getFileName().toString();
    for (String place : List.of("/media/" + user, "/run/media/" + user, "/mnt")) {
      drives.addAll(below(Path.of(place)));
    }
    return new UserFolders(home, settings.resolve("daymount"), drives);
  }

  /** Where months are made: a folder of ours that a person finds in their home. */
  public Path months() {
    return home.resolve("Daymount");
  }

  private static List<Path> below(Path place) {
    List<Path> found = new ArrayList<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(place, Files::isDirectory)) {
      all.forEach(found::add);
    } catch (IOException e) {
      return List.of(); // there is no such place here
    }
    found.sort(null);
    return found;
  }
}
