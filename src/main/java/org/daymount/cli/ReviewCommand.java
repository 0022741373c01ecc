package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.YearMonth;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.daymount.cache.Cache;
import org.daymount.image.Pictures;
import org.daymount.month.MonthJson;
import org.daymount.output.Finished;
import org.daymount.pipeline.MonthMaker;
import org.daymount.pipeline.MonthWriter;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.pipeline.Survey;
import org.daymount.review.ReviewServer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code daymount review}: the month in the browser of this computer. */
@Command(
    name = "review",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount review Pictures/June --note june.txt --out June%n%n",
    header = "Shows the month in the browser of this computer, to agree or change it.",
    description = {
      "",
      "What you change is saved by itself in --out and obeyed by every later run. Only this"
          + " computer can open the page. Ctrl-C ends it.",
      ""
    },
    exitCodeListHeading = ExitCode.HEADING,
    exitCodeList = {ExitCode.IS_DONE, ExitCode.IS_FAILED, ExitCode.IS_WRONG},
    sortOptions = false)
final class ReviewCommand extends ContextCommand {
  private static final int TOKEN_BYTES = 16;
  private static final int LAST_PORT = 65535;

  @Spec CommandSpec spec;
  @Mixin PhotoOptions photos;

  @Mixin OutOptions out;

  @Option(
      names = {"-p", "--port"},
      paramLabel = "N",
      description =
          "The port on this computer that the page is served at. Default: any that is free.")
  int port;

  @Mixin PageOptions pages;

  @Mixin OutputOptions talk;

  ReviewCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() throws IOException {
    if (port < 0 || port > LAST_PORT) {
      throw new ParameterException(
          spec.commandLine(), "--port takes a number from 0 to " + LAST_PORT + ", was " + port);
    }
    Request request = request();
    refuseSecond(request);
    String token = token();
    try (ReviewServer server = ReviewServer.start(port, token)) {
      context
          .out()
          .println(
              "open this address in the browser of this computer (Ctrl-C here ends the review):");
      context.out().println("http://127.0.0.1:" + server.port() + "/#" + token);
      context.out().flush();
      open(server, request);
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitCode.DONE;
  }

  Request request() {
    return Requests.of(spec, context, photos, pages, Optional.ofNullable(out.out));
  }

  /** The page is there before the month is: it shows how far the look at the pictures has come. */
  void open(ReviewServer server, Request request) {
    Cache cache = out.cache(context, request);
    Progress terminal =
        talk.quiet ? Progress.SILENT : new TerminalProgress(context.err(), context.terminal());
    Pictures pictures = new Pictures();
    try {
      refuseSecond(request);
      Survey surveyed =
          new MonthMaker(pictures, terminal.and(server.opening()), cache)
              .survey(request, month -> refuseSecond(request, month));
      // kept at once: whoever ends the review now need not wait for all this again
      OutOptions.keep(cache, request.out().folder(surveyed.month()));
      server.opening().stage("choosing pictures", 0);
      server.prepare(
          pictures,
          (month, folder, force, progress) -> {
            Finished finished =
                sheets(pictures, progress, cache).write(month, folder, force, request.jobs());
            // what was drawn is remembered, so that the next time only what changed is drawn
            OutOptions.keep(cache, folder);
            return finished;
          },
          request,
          surveyed,
          cache);
      terminal.end();
      keep(cache, request.out().folder(surveyed.month()));
      if (!talk.quiet) {
        context.err().println("the month is open");
        context.err().flush();
      }
      server.open();
    } catch (RunFailed e) {
      terminal.end();
      server.fail(e.getMessage());
      throw e;
    }
  }

  /** At once where the folder was named; else when its month is known. */
  private static void refuseSecond(Request request) {
    request
        .out()
        .named()
        .ifPresent(
            named ->
                ReviewServer.refuseSecond(
                    request.out().here().resolve(named), request.daySettings().month()));
  }

  private static void refuseSecond(Request request, YearMonth month) {
    ReviewServer.refuseSecond(request.out().folder(month), Optional.of(month));
  }

  private MonthWriter sheets(Pictures pictures, Progress progress, Cache cache) {
    return new MonthWriter(
        pictures, new MonthJson(Version.tool(), photos.verboseRecord), progress, cache);
  }

  private void keep(Cache cache, Path folder) {
    Stream.concat(cache.notes().stream(), OutOptions.keep(cache, folder).stream())
        .filter(note -> !talk.quiet)
        .forEach(note -> context.err().println("note: " + TerminalEscaper.of(note)));
    context.err().flush();
  }

  static String token() {
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    return HexFormat.of().formatHex(random);
  }
}
