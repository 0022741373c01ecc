package org.daymount.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.daymount.output.FolderLock;
import org.daymount.pipeline.RunFailed;
import org.daymount.review.ReviewServer;
import org.daymount.review.RunningServer;
import org.daymount.start.StartSettings;
import org.daymount.start.UserFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code daymount open}: the way in without a terminal. */
@Command(
    name = "open",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount open%n%n",
    header = "Opens the start page in the browser, to choose folder, note and album there.",
    description = {
      "",
      "The same happens when daymount is started by a double-click. A second start opens the page"
          + " of the one that runs already. 'End Daymount' on the page ends it, or Ctrl-C.",
      ""
    },
    exitCodeListHeading = ExitCode.HEADING,
    exitCodeList = {ExitCode.IS_DONE, ExitCode.IS_FAILED, ExitCode.IS_WRONG},
    sortOptions = false)
final class OpenCommand extends ContextCommand {
  private static final String LOCK = "running";
  private static final int MOST_LOOKS = 20;
  private static final long BETWEEN_LOOKS = 100; // ms

  @Option(names = "--no-browser", description = "Prints the address only; no browser is opened.")
  boolean noBrowser;

  @Option(
      names = "--home",
      paramLabel = "DIR",
      hidden = true,
      description = "Another home folder, for tests.")
  Path home;

  @Mixin OutputOptions talk;

  OpenCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() throws IOException {
    String system = System.getProperty("os.name", "");
    SystemOpener opener = new SystemOpener(system);
    UserFolders user =
        home == null
            ? UserFolders.of(system, System.getenv(), Path.of(System.getProperty("user.home")))
            : new UserFolders(
                home.toAbsolutePath(),
                home.toAbsolutePath().resolve(".config/daymount"),
                List.of());
    Path settings = new StartSettings(user.settings()).folder();
    String token = ReviewCommand.token();
    try (ReviewServer server =
        ReviewServer.startWithPage(token, user, new MonthOpening(context, opener))) {
      String address = "http://127.0.0.1:" + server.port() + "/#" + token;
      Optional<FolderLock> lock = FolderLock.take(settings, LOCK, address);
      if (lock.isEmpty()) {
        String running = running(settings);
        if (!running.startsWith("http://127.0.0.1:")) {
          throw new RunFailed("daymount is running already; look for it in the browser");
        }
        context.out().println("daymount is running already, at this address:");
        show(opener, running, RunningServer.addressForOnce(running).orElse(running));
        return ExitCode.DONE;
      }
      FolderLock held = lock.get();
      try (held) {
        context.out().println("the start page is at this address, on this computer only:");
        show(opener, address, server.addressForOnce());
        server.awaitEnd();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitCode.DONE;
  }

  /** The address of the one that runs; one started this moment has not written it yet. */
  private static String running(Path settings) throws InterruptedException {
    String text = FolderLock.text(settings, LOCK).strip();
    for (int i = 0; i < MOST_LOOKS && text.isEmpty(); i++) {
      Thread.sleep(BETWEEN_LOOKS);
      text = FolderLock.text(settings, LOCK).strip();
    }
    return text;
  }

  /**
   * @param address for the person, who may copy it as often as they like
   * @param once for the browser's command line, which others on this computer can read
   */
  private void show(SystemOpener opener, String address, String once) {
    context.out().println(address);
    context.out().flush();
    if (!noBrowser && !opener.open(once)) {
      context.out().println("no browser could be opened; copy the address into one");
    }
    context.out().flush();
  }
}
