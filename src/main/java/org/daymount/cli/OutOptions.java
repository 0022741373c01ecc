package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.cache.Cache;
import org.daymount.output.OutputFolder;
import org.daymount.pipeline.Request;
import picocli.CommandLine.Option;

/** Where everything is written, and what is kept there of what was measured. */
final class OutOptions {
  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "The folder everything is written to. Default: one named after the month, such as"
              + " daymount-2026-06, in the folder you are in.")
  Path out;

  @Option(
      names = "--no-cache",
      description =
          "Measures every picture again and keeps nothing for the next run in --out's"
              + " .daymount-cache.")
  boolean noCache;

  /**
   * What earlier runs of this build measured, of the folder named, or of all that runs without
   * --out left here. Nothing where nobody can say which build this is.
   */
  Cache cache(CommandContext context, Request request) {
    if (noCache) {
      return Cache.NONE;
    }
    List<Path> files =
        request.leaveOut().stream()
            .map(folder -> context.here().resolve(folder).resolve(Cache.FILE))
            .toList();
    return ProgramFiles.fingerprint().map(program -> Cache.read(files, program)).orElse(Cache.NONE);
  }

  /**
   * Only time is lost when it cannot be written.
   *
   * @return what to tell the person then
   */
  static Optional<String> keep(Cache cache, Path folder) {
    if (cache == Cache.NONE) {
      return Optional.empty();
    }
    try {
      OutputFolder.make(folder);
      cache.write(folder.resolve(Cache.FILE));
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          "what was measured could not be kept in " + folder + "; the next run measures it again");
    }
  }
}
