package org.daymount.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code daymount man-page}: for those who package the program. */
@Command(
    name = "man-page",
    hidden = true,
    mixinStandardHelpOptions = true,
    headerHeading = "For example: daymount man-page sheets > daymount-sheets.1%n%n",
    header = "Prints the manual page of the program or of one of its commands.")
final class ManPageCommand extends ContextCommand {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "COMMAND",
      arity = "0..1",
      description = "The command. Default: the program itself.")
  String command;

  ManPageCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() {
    CommandSpec page = spec.root();
    if (command != null) {
      if (!page.subcommands().containsKey(command)) {
        throw new ParameterException(spec.commandLine(), "there is no command " + command);
      }
      page = page.subcommands().get(command).getCommandSpec();
    }
    context.out().print(new ManPage(page, Version.tool()).text());
    return ExitCode.DONE;
  }
}
