package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import org.daymount.note.NoteParser;
import org.daymount.pipeline.RunFailed;
import org.daymount.start.FolderBrowser;
import org.daymount.start.MadeBefore;
import org.daymount.start.MonthChoice;
import org.daymount.start.MonthText;
import org.daymount.start.SampleMonth;
import org.daymount.start.StartSettings;
import org.daymount.start.UserFolders;

/**
 * The addresses of the start page, {@code /api/start…}: choosing a month, and ending the program.
 * Folders go by the numbers of {@link FolderBrowser} and a path stands in no address. All but the
 * page itself is posted, so that no other page can have a folder listed by a link.
 */
final class StartApi {
  private static final long LAST_ANSWER = 400; // ms, so that the page hears that it is the end
  private static final int FIRST_SHEET_MOST = 20_000_000; // bytes

  private interface Reply {
    Object to(StartApi page, JsonNode body) throws HttpException, IOException;
  }

  private static final Map<String, Reply> POSTED =
      Map.of(
          "folder", StartApi::folder,
          "missing", (page, body) -> Map.of("missing", page.opener.missing()),
          "dates", (page, body) -> page.opener.dates(page.reader.folders(body)),
          "texts", (page, body) -> page.view.texts(page.reader.wish(body)),
          "again", (page, body) -> page.again(body.path("month").asInt(-1)),
          "open", StartApi::openAsked,
          "sample", (page, body) -> page.open(SampleMonth.unpack(page.user.months())),
          "earlier", (page, body) -> page.open(page.earlier(body.path("month").asInt(-1))),
          "show", (page, body) -> page.show(body.path("file").asText("")),
          "quit", (page, body) -> page.quit(body.path("sure").asBoolean()));

  private final UserFolders user;
  private final StartSettings settings;
  private final MonthOpener opener;
  private final FolderBrowser folders;
  private final ChoiceReader reader;
  private final StartView view;
  private final ReviewServer server;
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile MonthChoice opened;

  StartApi(UserFolders user, MonthOpener opener, ReviewServer server) {
    this.user = user;
    this.settings = new StartSettings(user.settings());
    this.opener = opener;
    this.folders = new FolderBrowser(user);
    this.reader = new ChoiceReader(user, folders, opener, settings);
    this.view = new StartView(user, folders, opener, settings);
    this.server = server;
  }

  static boolean isOfStart(String what) {
    return what.equals("start") || what.startsWith("start/");
  }

  /** What is posted below {@code start/}. */
  static Set<String> posted() {
    return POSTED.keySet();
  }

  /**
   * @param what the address below /api/
   * @param posted the body of what is posted; empty for GET
   */
  Object reply(String what, Optional<JsonNode> posted) throws HttpException, IOException {
    if (what.equals("start") && posted.isEmpty()) {
      return view.start(server.isOpen(), server.isOpening());
    }
    Reply reply = POSTED.get(what.replaceFirst("^start/", ""));
    if (reply == null || posted.isEmpty()) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such page");
    }
    return reply.to(this, posted.get());
  }

  /** The first sheet of an earlier month. */
  byte[] firstSheet(int index) throws HttpException, IOException {
    Path file = StartView.firstSheet(earlier(index));
    if (!Files.isRegularFile(file) || Files.size(file) > FIRST_SHEET_MOST) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such picture");
    }
    return Files.readAllBytes(file);
  }

  void awaitEnd() throws InterruptedException {
    ended.await();
  }

  private FolderBrowser.Opened folder(JsonNode body) throws HttpException {
    try {
      return folders.open(
          body.hasNonNull("typed")
              ? folders.typed(body.path("typed").asText())
              : reader.path(body.path("in").asText()));
    } catch (IOException e) {
      throw new HttpException(HttpException.BAD_REQUEST, e.getMessage());
    }
  }

  /** An earlier month laid out to be changed before it is opened again. */
  private record Again(
      String month, Path out, List<FolderBrowser.Folder> folders, Map<String, String> album) {}

  private Again again(int index) throws HttpException {
    MonthChoice month = earlier(index);
    return new Again(
        month.month(),
        month.out(),
        month.folders().stream().map(folders::folder).toList(),
        month.album());
  }

  /** Asks first where another month was made in the folder. */
  private Object openAsked(JsonNode body) throws HttpException, IOException {
    MonthChoice wish = reader.wish(body);
    Optional<YearMonth> other =
        body.path("sure").asBoolean() ? Optional.empty() : MadeBefore.otherMonth(wish);
    if (other.isEmpty()) {
      return open(reader.choice(body));
    }
    String month = NoteParser.name(YearMonth.parse(wish.month()));
    String before = NoteParser.name(other.get());
    return Map.of(
        "asks",
        wish.out()
            + " holds "
            + before
            + ". When the sheets of "
            + month
            + " are made there, those of "
            + before
            + " give way to them. Pictures and notes stay.");
  }

  private Object open(MonthChoice choice) throws HttpException, IOException {
    Optional<String> wrong = opener.wrong(choice);
    if (wrong.isPresent()) {
      throw new HttpException(HttpException.BAD_REQUEST, wrong.get());
    }
    if (!server.beginMonth()) {
      throw new HttpException(
          HttpException.CONFLICT, "something is being made just now; wait for its end");
    }
    settings.remember(choice, !SampleMonth.is(choice, user.months()));
    opened = choice;
    Thread worker = new Thread(() -> opener(choice), "opening a month");
    worker.setDaemon(true);
    worker.start();
    return Map.of();
  }

  private void opener(MonthChoice choice) {
    try {
      opener.open(choice, server);
    } catch (RunFailed e) {
      // the server was told
    } catch (RuntimeException e) {
      server.fail("something went wrong that should not have (" + e + ")");
    }
  }

  /** As it was opened; a text whose file is gone since is looked for anew. */
  private MonthChoice earlier(int index) throws HttpException {
    List<MonthChoice> months = settings.months();
    if (index < 0 || index >= months.size()) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such month");
    }
    MonthChoice month = months.get(index);
    Map<MonthText, Path> texts = new EnumMap<>(MonthText.class);
    for (MonthText text : MonthText.values()) {
      Optional.ofNullable(month.texts().get(text))
          .filter(Files::isRegularFile)
          .or(() -> text.find(month.folders(), month.out()))
          .ifPresent(file -> texts.put(text, file));
    }
    return month.with(texts);
  }

  /** Whether a window was opened for a file; a person can look for it too. */
  private record Shown(boolean shown, Path place) {}

  private Shown show(String name) throws HttpException {
    MonthChoice month = opened;
    if (month == null || !name.isEmpty() && !SheetJob.FILES.contains(name)) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such file");
    }
    Path file = month.out().resolve(name);
    if (!Files.exists(file)) {
      throw new HttpException(HttpException.NOT_FOUND, "it is not made yet; make the sheets first");
    }
    return new Shown(opener.show(file), file);
  }

  private Object quit(boolean sure) {
    if (server.isBusy() && !sure) {
      return Map.of("asks", "Something is still being made. Stop it and end Daymount?");
    }
    Thread last =
        new Thread(
            () -> {
              try {
                Thread.sleep(LAST_ANSWER);
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              }
              ended.countDown();
            },
            "quit");
    last.setDaemon(true);
    last.start();
    return Map.of("ended", true);
  }
}
