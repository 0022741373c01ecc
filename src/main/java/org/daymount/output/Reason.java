package org.daymount.output;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.ReadOnlyFileSystemException;

/** What the file system complained of, in a person's words. */
final class Reason {
  private Reason() {}

  static String of(Exception e) {
    if (e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException) {
      return "writing is not allowed there";
    }
    if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
      return "a file of that name is in the way";
    }
    if (e instanceof NoSuchFileException) {
      return "the folder is gone";
    }
    String text = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : "";
    if (text.isEmpty()) {
      text = e instanceof IOException && e.getMessage() != null ? e.getMessage() : e.toString();
    }
    return text.toLowerCase(java.util.Locale.ROOT).contains("no space") ? "the disk is full" : text;
  }
}
