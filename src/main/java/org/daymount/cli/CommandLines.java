package org.daymount.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.daymount.output.OutputException;
import org.daymount.pipeline.RunFailed;
import org.daymount.unpack.CannotUnpack;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The command line as a function: arguments and surroundings in, exit code out. */
public final class CommandLines {
  private CommandLines() {}

  /**
   * The program as a person starts it: on this computer, now. Without arguments and without a
   * terminal, where there is a desktop, it was a double-click, and nobody would see the help.
   */
  public static int runHere(PrintStream out, PrintStream err, String... arguments) {
    CommandContext context = CommandContext.ofThisComputer(out, err);
    return arguments.length == 0 && !context.terminal() && SystemOpener.hasDesktop()
        ? run(context, "open")
        : run(context, arguments);
  }

  static int run(CommandContext context, String... arguments) {
    CommandLine line = line(context);
    if (List.of(arguments).contains("--no-color")) {
      line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    }
    line.setOut(context.out());
    line.setErr(context.err());
    line.setParameterExceptionHandler(CommandLines::wrongCommandLine);
    line.setExecutionExceptionHandler(CommandLines::failed);
    line.setUsageHelpAutoWidth(context.terminal());
    if (arguments.length == 0) {
      line.usage(context.err());
      return ExitCode.WRONG_COMMAND_LINE;
    }
    int code = line.execute(arguments);
    context.out().flush();
    context.err().flush();
    return code;
  }

  /** All commands and options, ready to parse. */
  static CommandLine line(CommandContext context) {
    CommandLine line = new CommandLine(new Daymount(), factory(context));
    Converters.register(line);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExpandAtFiles(false); // a picture may be called @june.jpg
    line.getSubcommands().get("generate-completion").getCommandSpec().usageMessage().hidden(true);
    return line;
  }

  /** Commands are made with the surroundings they run in. */
  private static IFactory factory(CommandContext context) {
    IFactory usual = CommandLine.defaultFactory();
    return new IFactory() {
      @Override
      public <K> K create(Class<K> type) throws Exception {
        return ContextCommand.class.isAssignableFrom(type)
            ? type.getDeclaredConstructor(CommandContext.class).newInstance(context)
            : usual.create(type);
      }
    };
  }

  private static int wrongCommandLine(ParameterException e, String[] arguments) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    String name = command.getCommandSpec().qualifiedName();
    err.println(
        "error: " + TerminalEscaper.of(oneLine(e.getMessage())) + "; see '" + name + " --help'");
    err.flush();
    return ExitCode.WRONG_COMMAND_LINE;
  }

  private static int failed(Exception e, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    err.println("error: " + TerminalEscaper.of(foreseen(e).orElseGet(() -> unforeseen(e))));
    if (parsed.expandedArgs().contains("--verbose") || parsed.expandedArgs().contains("-v")) {
      e.printStackTrace(err);
    }
    err.flush();
    return ExitCode.FAILED;
  }

  private static Optional<String> foreseen(Exception e) {
    if (e instanceof RunFailed || e instanceof OutputException) {
      return Optional.of(e.getMessage());
    }
    for (Throwable one = e; one != null; one = one.getCause()) {
      if (one instanceof UncheckedIOException io && io.getCause() instanceof CannotUnpack) {
        return Optional.of(io.getMessage());
      }
    }
    return Optional.empty();
  }

  private static String unforeseen(Exception e) {
    return "something went wrong that should not have ("
        + e
        + "); nothing was replaced; run it again with --verbose to see where";
  }

  private static String oneLine(String message) {
    String line = message.strip().replaceAll("\\s*\\R\\s*", " ");
    return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
  }
}
