package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.look.cache.Memory;
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
  Optional<Memory> memory(CommandContext around, Request request) {
    if (noCache) {
      return Optional.empty();
    }
    List<Path> files =
        request.leaveOut().stream()
            .map(folder -> around.here().resolve(folder).resolve(Memory.FILE))
            .toList();
    return ProgramFiles.fingerprint().map(program -> Memory.read(files, program));
  }

  /**
   * Only time is lost when it cannot be written.
   *
   * @return what to tell the person then
   */
  static Optional<String> keep(Memory memory, Path folder) {
    try {
      OutputFolder.make(folder);
      memory.write(folder.resolve(Memory.FILE));
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          "what was measured could not be kept in " + folder + "; the next run measures it again");
    }
  }
}
