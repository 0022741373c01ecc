package org.daymount.review;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is sent back. */
record ApiResponse(int status, String type, byte[] body) {
  static final int OK = 200;
  static final int FAILED = 500;
  private static final Pattern PAGE_FILE = Pattern.compile("[a-z]{1,20}\\.(html|css|svg|js)");

  static ApiResponse json(int status, Object node) {
    return new ApiResponse(
        status,
        "application/json; charset=utf-8",
        node.toString().getBytes(StandardCharsets.UTF_8));
  }

  static ApiResponse jpeg(byte[] jpeg) {
    return new ApiResponse(OK, "image/jpeg", jpeg);
  }

  /**
   * The type of one of the page's own files. They lie in one folder and are named with small
   * letters alone, so no path can lead elsewhere; whether there is such a file is another question.
   */
  static Optional<String> typeOf(String file) {
    Matcher name = PAGE_FILE.matcher(file);
    return name.matches()
        ? Optional.of(
            switch (name.group(1)) {
              case "html" -> "text/html; charset=utf-8";
              case "css" -> "text/css; charset=utf-8";
              case "svg" -> "image/svg+xml";
              default -> "text/javascript; charset=utf-8";
            })
        : Optional.empty();
  }
}
