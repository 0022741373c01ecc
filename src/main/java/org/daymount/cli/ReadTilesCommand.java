package org.daymount.cli;

import org.daymount.image.TileServer;
import picocli.CommandLine.Command;

/**
 * {@code daymount read-tiles}: how the program starts itself once more to decode HEIC, where it
 * came with a Java that has no command of its own. Not for people.
 */
@Command(
    name = TileServer.COMMAND,
    hidden = true,
    header = "Decodes tiles of HEIC pictures for another daymount.")
final class ReadTilesCommand extends ContextCommand {
  ReadTilesCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() {
    TileServer.serve();
    return ExitCode.DONE;
  }
}
