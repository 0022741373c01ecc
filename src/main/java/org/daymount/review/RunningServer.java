package org.daymount.review;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.Proxy;
import java.net.URI;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The server of another start of the program, on this computer. */
public final class RunningServer {
  private static final int PATIENCE = 5_000; // ms
  private static final Pattern ADDRESS =
      Pattern.compile("(http://127\\.0\\.0\\.1:\\d{1,5})/#([0-9a-f]{32})");

  private RunningServer() {}

  /**
   * @param address with its token, as that start noted it
   * @return an address that lets one browser in, once; empty when nothing of ours answers there
   */
  public static Optional<String> addressForOnce(String address) {
    Matcher parts = ADDRESS.matcher(address);
    if (!parts.matches()) {
      return Optional.empty();
    }
    try {
      // no proxy: some are set up for every address, this computer's too
      HttpURLConnection asked =
          (HttpURLConnection)
              URI.create(parts.group(1) + "/api/ticket").toURL().openConnection(Proxy.NO_PROXY);
      asked.setConnectTimeout(PATIENCE);
      asked.setReadTimeout(PATIENCE);
      asked.setRequestMethod("POST");
      asked.setRequestProperty("X-Review-Token", parts.group(2));
      try (InputStream body = asked.getInputStream()) {
        String given = new ObjectMapper().readTree(body).path("address").asText("");
        return Optional.of(given).filter(found -> found.startsWith(parts.group(1) + "/#"));
      } finally {
        asked.disconnect();
      }
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
