package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.output.Finished;
import org.daymount.output.OutputException;
import org.daymount.photo.PhotoFile;
import org.daymount.pipeline.RunFailed;
import org.daymount.problem.Warning;
import org.daymount.sheet.PlacedPiece;

/** Makes the sheets when asked, one run at a time, and says how far it is. */
final class SheetJob {
  /** What a person opens of what was made. */
  static final List<String> FILES =
      List.of("sheets.pdf", "sheets", "guide.pdf", "pages.pdf", "index.html");

  private final Pictures pictures;
  private final SheetWriter writer;
  private final Path folder;
  private final ProgressState board = new ProgressState();
  private List<MonthSheet> sheets = List.of();
  private List<Warning> warnings = List.of();
  private long madeOf;
  private int runs;
  private volatile boolean inTheWay;

  SheetJob(Pictures pictures, SheetWriter writer, Path folder) {
    this.pictures = pictures;
    this.writer = writer;
    this.folder = folder;
  }

  ProgressState board() {
    return board;
  }

  /**
   * Starts a run unless one is at work.
   *
   * @param force as in {@link SheetWriter}
   */
  void start(Editing editing, Editing.Now now, boolean force) {
    if (!board.begin("packing")) {
      return;
    }
    Thread worker = new Thread(() -> run(editing, now, force), "sheets");
    worker.setDaemon(true);
    worker.start();
  }

  private void run(Editing editing, Editing.Now now, boolean force) {
    inTheWay = false;
    try {
      Month month = editing.finish(now, board, pictures);
      Finished finished = writer.write(month, folder, force, board);
      synchronized (this) {
        sheets = month.sheets();
        warnings = month.warnings();
        madeOf = now.version();
        runs++;
      }
      board.done(words(finished));
    } catch (OutputException e) {
      inTheWay = e.isInTheWay();
      board.failed(e.getMessage());
    } catch (RunFailed e) {
      board.failed(e.getMessage());
    } catch (IOException | RuntimeException e) {
      board.failed("something went wrong that should not have (" + e + "); nothing was replaced");
    }
  }

  private static String words(Finished finished) {
    int changed = finished.changed().size();
    String files =
        changed == 0
            ? "everything was up to date already"
            : changed + (changed == 1 ? " file" : " files") + " new or changed";
    return String.join("; ", Stream.concat(Stream.of(files), finished.notes().stream()).toList());
  }

  /** What was made last: empty before the first run. */
  synchronized ObjectNode made(long version) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.set("state", board.now().node());
    root.put("run", runs);
    root.put("inTheWay", inTheWay);
    root.put("upToDate", runs > 0 && madeOf == version);
    ArrayNode told = root.putArray("warnings");
    for (Warning warning : warnings) {
      ObjectNode one = told.addObject();
      one.put("code", warning.kind().code());
      one.put("file", warning.file().map(PhotoFile::name).orElse(null));
      one.put("day", warning.day().map(LocalDate::toString).orElse(null));
      one.put("text", warning.text());
    }
    ArrayNode files = root.putArray("files");
    FILES.stream().filter(name -> Files.exists(folder.resolve(name))).forEach(files::add);
    ArrayNode list = root.putArray("sheets");
    for (MonthSheet made : sheets) {
      ObjectNode sheet = list.addObject();
      sheet.put("file", made.file());
      sheet.put("width", made.sheet().size().width().inInches());
      sheet.put("height", made.sheet().size().height().inInches());
      sheet.put("cuts", made.sheet().cuts().size());
      ArrayNode pieces = sheet.putArray("pieces");
      for (PlacedPiece piece : made.sheet().pieces()) {
        pieces.add(piece.piece().label());
      }
    }
    return root;
  }

  /** The sheet as it will be sent to a lab. */
  byte[] jpeg(int index) throws HttpException, IOException {
    List<MonthSheet> made;
    synchronized (this) {
      made = sheets;
    }
    if (index < 0 || index >= made.size()) {
      throw new HttpException(HttpException.NOT_FOUND, "there is no such sheet");
    }
    Path file = folder.resolve(made.get(index).file());
    if (!Files.exists(file)) {
      throw new HttpException(HttpException.NOT_FOUND, "the sheet is gone; make the sheets again");
    }
    return Files.readAllBytes(file);
  }
}
