package org.daymount.output;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Files on their way to their places, in a folder of their own beside them: whatever else lies
 * about, of whatever name, is no part of them. Used under the folder's lock.
 */
final class Staging implements AutoCloseable {
  static final String FOLDER = ".daymount-staged";

  private final Path folder;
  private int files;

  private Staging(Path folder) {
    this.folder = folder;
  }

  /** Takes away what a killed run left. */
  static Staging in(Path out) throws IOException {
    Staging staging = new Staging(out.resolve(FOLDER));
    if (Files.exists(staging.folder, LinkOption.NOFOLLOW_LINKS)) {
      if (!Files.isDirectory(staging.folder, LinkOption.NOFOLLOW_LINKS)) {
        throw new OutputException(
            staging.folder + " is in the way of files to be written; move it away");
      }
      staging.clear();
    }
    return staging;
  }

  /** A new file; what a full disk leaves of it goes with the others. */
  Path write(byte[] content) throws IOException {
    Files.createDirectories(folder);
    Path file = folder.resolve(Integer.toString(++files));
    Files.write(file, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    return file;
  }

  private void clear() throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, "[0-9]*")) {
      for (Path file : left) {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
            && file.getFileName().toString().matches("\\d+")) {
          Files.delete(file);
        }
      }
    }
    try {
      Files.delete(folder);
    } catch (DirectoryNotEmptyException e) {
      // something that is not ours lies in it
    }
  }

  @Override
  public void close() {
    try {
      if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        clear();
      }
    } catch (IOException e) {
      // the next run takes it away
    }
  }
}
