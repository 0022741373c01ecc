package org.daymount.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthSheet;
import org.daymount.output.Finished;
import org.daymount.output.OutputException;
import org.daymount.photo.PhotoFile;
import org.daymount.pipeline.RunFailed;
import org.daymount.problem.Warning;
import org.daymount.sheet.Sheet;
import org.daymount.unit.Length;

/** Makes the sheets when asked, one run at a time, and says how far it is. */
final class SheetJob {
  /** What a person opens of what was made. */
  static final List<String> FILES =
      List.of("sheets.pdf", "sheets", "guide.pdf", "pages.pdf", "index.html");

  private final Pictures pictures;
  private final SheetWriter writer;
  private final Path folder;
  private final ProgressState state = new ProgressState();
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

  ProgressState state() {
    return state;
  }

  /**
   * Starts a run unless one is at work.
   *
   * @param force as in {@link SheetWriter}
   */
  void start(Editing editing, Editing.Now now, boolean force) {
    if (!state.begin("packing")) {
      return;
    }
    Thread worker = new Thread(() -> run(editing, now, force), "sheets");
    worker.setDaemon(true);
    worker.start();
  }

  private void run(Editing editing, Editing.Now now, boolean force) {
    inTheWay = false;
    try {
      Month month = editing.finish(now, state, pictures);
      Finished finished = writer.write(month, folder, force, state);
      synchronized (this) {
        sheets = month.sheets();
        warnings = month.warnings();
        madeOf = now.version();
        runs++;
      }
      state.done(words(finished));
    } catch (OutputException e) {
      inTheWay = e.isInTheWay();
      state.failed(e.getMessage());
    } catch (RunFailed e) {
      state.failed(e.getMessage());
    } catch (IOException | RuntimeException e) {
      state.failed("something went wrong that should not have (" + e + "); nothing was replaced");
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

  /**
   * How far it is, and what was made last: nothing before the first run.
   *
   * @param run how many there were
   * @param files that are there
   */
  record Made(
      ProgressState.State state,
      int run,
      boolean inTheWay,
      boolean upToDate,
      List<ShownWarning> warnings,
      List<String> files,
      List<MadeSheet> sheets) {}

  /** A warning. */
  record ShownWarning(
      String code, Optional<PhotoFile> file, Optional<LocalDate> day, String text) {}

  /** A sheet. */
  record MadeSheet(String file, Length width, Length height, int cuts, List<String> pieces) {}

  synchronized Made made(long version) {
    return new Made(
        state.now(),
        runs,
        inTheWay,
        runs > 0 && madeOf == version,
        warnings.stream()
            .map(each -> new ShownWarning(each.kind().code(), each.file(), each.day(), each.text()))
            .toList(),
        FILES.stream().filter(name -> Files.exists(folder.resolve(name))).toList(),
        sheets.stream().map(SheetJob::told).toList());
  }

  private static MadeSheet told(MonthSheet made) {
    Sheet sheet = made.sheet();
    return new MadeSheet(
        made.file(),
        sheet.size().width(),
        sheet.size().height(),
        sheet.cuts().size(),
        sheet.pieces().stream().map(placed -> placed.piece().label()).toList());
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
