package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.IngestSettings;
import org.daymount.output.Finished;
import org.daymount.pipeline.StripMaker;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code daymount strip}: a test print to choose a lightness by. */
@Command(
    name = "strip",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount strip IMG_0412.JPG%n%n",
    header = "Makes a test print: one picture at three brightnesses, to choose --lighter by.",
    description = {
      "",
      "One sheet with the picture as it is, 1/3 and 2/3 of a stop lighter, and a grey scale. Have"
          + " it printed where the month will be printed, look at it where the album will be looked"
          + " at, and give the one you like to 'daymount sheets --lighter'.",
      ""
    },
    sortOptions = false)
final class StripCommand extends ContextCommand {
  private static final Path OUT = Path.of("daymount-strip");
  private static final List<String> OF_A_MONTH = List.of("month.json", "choices.json");

  @Spec CommandSpec spec;

  @Parameters(paramLabel = "PHOTO", description = "The picture file; one that is usual for you.")
  Path photo;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "The folder to write to. Default: daymount-strip, in the folder you are in.")
  Path out = OUT;

  @Mixin PaperOptions paper;

  @Option(
      names = "--force",
      description = "Replaces files in --out even when daymount did not make them.")
  boolean force;

  StripCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() throws IOException {
    if (!Files.isRegularFile(context.here().resolve(photo))) {
      throw new ParameterException(
          spec.commandLine(), "there is no picture file " + photo + "; look at its spelling");
    }
    Path folder = context.here().resolve(out);
    if (OF_A_MONTH.stream().anyMatch(name -> Files.exists(folder.resolve(name)))) {
      throw new ParameterException(
          spec.commandLine(), "--out " + out + " holds a month; name another folder");
    }
    Finished finished =
        StripMaker.make(
            context.here().resolve(photo),
            new IngestSettings(ClockCorrections.NONE, context.today(), context.zone()),
            paper.strip(context.locale()),
            folder,
            force);
    context.out().println(told(finished));
    finished.notes().forEach(note -> context.err().println("note: " + TerminalEscaper.of(note)));
    return ExitCode.DONE;
  }

  private String told(Finished finished) {
    return finished.changed().isEmpty()
        ? "everything in " + out + " is up to date; nothing was rewritten"
        : "written to "
            + out
            + ": "
            + String.join(", ", finished.changed())
            + "; have it printed, and choose --lighter by it";
  }
}
