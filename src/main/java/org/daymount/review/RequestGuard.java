package org.daymount.review;

import com.sun.net.httpserver.Headers;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.List;
import java.util.Set;

/**
 * Who may ask. Any page on the web can make a browser send requests to this computer, so a request
 * must name this server as its host (a foreign name that resolves to the loopback address is turned
 * away), must not come from another origin, and must carry the word that only this start of the
 * program printed.
 */
final class RequestGuard {
  private final Set<String> hosts;
  private final Set<String> origins;
  private final byte[] token;

  RequestGuard(int port, String token) {
    this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    this.origins = Set.of("http://127.0.0.1:" + port, "http://localhost:" + port);
    this.token = token.getBytes(StandardCharsets.UTF_8);
  }

  /** For everything, the page's own files too. */
  void checkOrigin(Headers headers) throws HttpException {
    List<String> host = headers.getOrDefault("Host", List.of());
    if (host.size() != 1 || !hosts.contains(host.get(0))) {
      throw new HttpException(
          HttpException.FORBIDDEN, "this address is not one of the review's own");
    }
    for (String origin : headers.getOrDefault("Origin", List.of())) {
      if (!origins.contains(origin) || !origin.equals("http://" + host.get(0))) {
        throw new HttpException(HttpException.FORBIDDEN, "pages of other origins may not ask");
      }
    }
    // Browsers say themselves where a request comes from (W3C Fetch Metadata); tools say nothing.
    for (String site : headers.getOrDefault("Sec-Fetch-Site", List.of())) {
      if (!site.equals("same-origin") && !site.equals("none")) {
        throw new HttpException(HttpException.FORBIDDEN, "pages of other origins may not ask");
      }
    }
  }

  /** For everything that shows or changes something of the person's. */
  void checkToken(String given) throws HttpException {
    if (given == null || !MessageDigest.isEqual(given.getBytes(StandardCharsets.UTF_8), token)) {
      throw new HttpException(
          HttpException.FORBIDDEN,
          "this tab does not know the word of this start; start Daymount again, and it opens the"
              + " page, or open the whole address that was printed");
    }
  }
}
