package org.daymount.review;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.month.MonthSheet;
import org.daymount.output.OutputException;
import org.daymount.pipeline.MonthWriter;
import org.daymount.pipeline.Progress;
import org.daymount.pipeline.Request;
import org.daymount.pipeline.RunFailed;
import org.daymount.sheet.PlacedPiece;

/** Makes the sheets when asked, one run at a time, and says how far it is. */
final class SheetRun {
  private final Pictures pictures;
  private final MonthJson json;
  private final Request request;
  private final Path folder;
  private State state = new State("idle", "", 0, 0);
  private List<MonthSheet> sheets = List.of();
  private long madeOf;
  private int runs;

  /**
   * How far it is.
   *
   * @param kind idle, running, done or failed
   * @param steps 0 when it cannot be known
   */
  record State(String kind, String words, int done, int steps) {
    ObjectNode node() {
      ObjectNode node = JsonNodeFactory.instance.objectNode();
      node.put("kind", kind);
      node.put("words", words);
      node.put("done", done);
      node.put("steps", steps);
      return node;
    }
  }

  SheetRun(Pictures pictures, MonthJson json, Request request, Path folder) {
    this.pictures = pictures;
    this.json = json;
    this.request = request;
    this.folder = folder;
  }

  /** Starts a run unless one is at work. */
  synchronized void start(Editing editing, long version) {
    if (state.kind.equals("running")) {
      return;
    }
    set(new State("running", "packing", 0, 0));
    Thread worker = new Thread(() -> run(editing, version), "sheets");
    worker.setDaemon(true);
    worker.start();
  }

  private void run(Editing editing, long version) {
    try {
      Month month = editing.finish(new Steps(), pictures);
      List<String> changed =
          new MonthWriter(pictures, json, new Steps()).write(month, folder, false, request.jobs());
      synchronized (this) {
        sheets = month.sheets();
        madeOf = version;
        runs++;
      }
      set(
          new State(
              "done",
              changed.isEmpty()
                  ? "everything was up to date already"
                  : changed.size() + (changed.size() == 1 ? " file" : " files") + " new or changed",
              0,
              0));
    } catch (OutputException | RunFailed e) {
      set(new State("failed", e.getMessage(), 0, 0));
    } catch (IOException | RuntimeException e) {
      set(
          new State(
              "failed",
              "something went wrong that should not have (" + e + "); nothing was replaced",
              0,
              0));
    }
  }

  private synchronized void set(State now) {
    state = now;
    notifyAll();
  }

  /** The state, once it is another than the one seen before or some time has passed. */
  synchronized State next(State seen, long millis) throws InterruptedException {
    if (state.equals(seen)) {
      wait(millis);
    }
    return state;
  }

  /** What was made last: empty before the first run. */
  synchronized ObjectNode made(long version) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.set("state", state.node());
    root.put("run", runs);
    root.put("upToDate", runs > 0 && madeOf == version);
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
  byte[] jpeg(int index) throws Refused, IOException {
    List<MonthSheet> made;
    synchronized (this) {
      made = sheets;
    }
    if (index < 0 || index >= made.size()) {
      throw new Refused(Refused.NOT_FOUND, "there is no such sheet");
    }
    Path file = folder.resolve(made.get(index).file());
    if (!Files.exists(file)) {
      throw new Refused(Refused.NOT_FOUND, "the sheet is gone; make the sheets again");
    }
    return Files.readAllBytes(file);
  }

  /** Passes a run's progress on. */
  private final class Steps implements Progress {
    @Override
    public void stage(String what, int steps) {
      set(new State("running", what, 0, steps));
    }

    @Override
    public void step() {
      synchronized (SheetRun.this) {
        set(new State("running", state.words, state.done + 1, state.steps));
      }
    }
  }
}
