package org.daymount.review;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** What is sent back. */
record ApiResponse(int status, String type, byte[] body) {
  static final int OK = 200;
  static final int FAILED = 500;

  static ApiResponse json(int status, Object node) {
    return new ApiResponse(
        status,
        "application/json; charset=utf-8",
        node.toString().getBytes(StandardCharsets.UTF_8));
  }

  static ApiResponse jpeg(byte[] jpeg) {
    return new ApiResponse(OK, "image/jpeg", jpeg);
  }

  /** One of the page's own files; the list is closed, so no path can lead elsewhere. */
  static Optional<String> typeOf(String file) {
    return switch (file) {
      case "review.html" -> Optional.of("text/html; charset=utf-8");
      case "review.css" -> Optional.of("text/css; charset=utf-8");
      case "review.svg" -> Optional.of("image/svg+xml");
      case "review.js",
          "ask.js",
          "month.js",
          "day.js",
          "photos.js",
          "crop.js",
          "sheets.js",
          "parts.js",
          "opening.js",
          "side.js" ->
          Optional.of("text/javascript; charset=utf-8");
      default -> Optional.empty();
    };
  }
}
