package org.daymount.ingest;

import java.util.Locale;
import java.util.Set;

/** What a file's name says, before its bytes are asked. */
public final class FileKind {
  private static final Set<String> FILMS =
      Set.of(
          "mp4", "m4v", "mov", "qt", "3gp", "3g2", "avi", "mkv", "webm", "mts", "m2ts", "mpg",
          "mpeg", "wmv", "mp");

  /** Those that are no ISO media files. */
  private static final Set<String> OTHER_FILMS =
      Set.of("avi", "mkv", "webm", "mts", "m2ts", "mpg", "mpeg", "wmv");

  private static final Set<String> PICTURES =
      Set.of(
          "jpg", "jpeg", "jpe", "jfif", "png", "webp", "tif", "tiff", "gif", "bmp", "heic", "heif",
          "hif", "avif", "dng", "cr2", "cr3", "nef", "arw", "orf", "rw2", "raf", "pef", "srw");

  private static final Set<String> SYSTEM =
      Set.of(
          "thumbs.db",
          "ehthumbs.db",
          "desktop.ini",
          "icon\r",
          "__macosx",
          "@eadir",
          "$recycle.bin",
          "system volume information",
          "lost+found");

  private FileKind() {}

  /** Files and folders that systems keep for themselves, and all whose names begin with a dot. */
  public static boolean isHidden(String name) {
    return name.startsWith(".") || SYSTEM.contains(name.toLowerCase(Locale.ROOT));
  }

  public static boolean isFilm(String name) {
    return FILMS.contains(extension(name));
  }

  /** Whether a film is, by its name, of a kind that no still is taken from. */
  public static boolean isOtherFilm(String name) {
    return OTHER_FILMS.contains(extension(name));
  }

  public static boolean isPicture(String name) {
    return PICTURES.contains(extension(name));
  }

  /** Lower case, without the dot; empty when there is none. */
  static String extension(String name) {
    int dot = name.lastIndexOf('.');
    return dot <= 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
  }

  public static String base(String name) {
    int dot = name.lastIndexOf('.');
    return dot <= 0 ? name : name.substring(0, dot);
  }
}
