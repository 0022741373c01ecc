package org.daymount.image;

import java.time.Duration;
import java.util.List;
import org.daymount.Main;

/**
 * The program with HEIC and AVIF decoded in it, not in processes of their own: to measure what
 * those cost. Takes the program's arguments.
 */
final class TilesHere {
  private TilesHere() {}

  public static void main(String[] arguments) {
    TileReaders.startBy(
        new TileProcessCommand(
            TileServer.class, List.of("-XX:+NoSuchOption"), Duration.ofSeconds(1)));
    Main.main(arguments);
  }
}
