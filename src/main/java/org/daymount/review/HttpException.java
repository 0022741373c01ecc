package org.daymount.review;

/** A request that is not answered as asked; the message is for the person. */
final class HttpException extends Exception {
  private static final long serialVersionUID = 1L;

  static final int BAD_REQUEST = 400;
  static final int FORBIDDEN = 403;
  static final int NOT_FOUND = 404;
  static final int WRONG_METHOD = 405;
  static final int CONFLICT = 409;
  static final int TOO_LARGE = 413;
  static final int NOT_YET = 503;

  private final int status;

  HttpException(int status, String message) {
    super(message);
    this.status = status;
  }

  int status() {
    return status;
  }
}
