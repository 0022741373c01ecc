package org.daymount.review;

import java.io.IOException;
import java.io.InputStream;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.daymount.output.Finished;

/**
 * The page's own files. They lie in one folder and are named with small letters alone, so no path
 * can lead elsewhere.
 */
final class PageFiles {
  private static final Pattern FILE = Pattern.compile("/([a-z]+\\.(html|css|js|svg))");

  private PageFiles() {}

  /**
   * @param path of the address; / is the page itself
   */
  static ApiResponse at(String path) throws HttpException, IOException {
    Matcher name = FILE.matcher(path.equals("/") ? "/review.html" : path);
    if (name.matches()) {
      try (InputStream in = resource(name.group(1))) {
        if (in != null) {
          return new ApiResponse(ApiResponse.OK, type(name.group(2)), in.readAllBytes());
        }
      }
    }
    throw new HttpException(HttpException.NOT_FOUND, "there is no such page");
  }

  /** The look of a drawn page lies with the output, because index.html has it too. */
  private static InputStream resource(String file) {
    InputStream ours = PageFiles.class.getResourceAsStream(file);
    return ours != null ? ours : Finished.class.getResourceAsStream(file);
  }

  private static String type(String ending) {
    return switch (ending) {
      case "html" -> "text/html; charset=utf-8";
      case "css" -> "text/css; charset=utf-8";
      case "svg" -> "image/svg+xml";
      default -> "text/javascript; charset=utf-8";
    };
  }
}
