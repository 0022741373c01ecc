package org.daymount.review;

/**
 * An address that is answered, as the tables say that answer it: for tests that try them all.
 *
 * @param method GET or POST
 * @param address from its slash on; a star stands for what varies
 */
record Route(String method, String address) {
  static Route get(String address) {
    return new Route("GET", address);
  }

  static Route post(String address) {
    return new Route("POST", address);
  }

  boolean isPost() {
    return method.equals("POST");
  }
}
