package org.daymount.review;

import java.nio.charset.StandardCharsets;

/** What is sent back. */
record ApiResponse(int status, String type, byte[] body) {
  static final int OK = 200;
  static final int FAILED = 500;

  static ApiResponse json(int status, Object record) {
    return new ApiResponse(
        status,
        "application/json; charset=utf-8",
        ReviewJson.text(record).getBytes(StandardCharsets.UTF_8));
  }

  static ApiResponse jpeg(byte[] jpeg) {
    return new ApiResponse(OK, "image/jpeg", jpeg);
  }
}
