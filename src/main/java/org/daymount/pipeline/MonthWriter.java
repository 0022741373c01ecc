package org.daymount.pipeline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.daymount.image.LabJpeg;
import org.daymount.image.Pictures;
import org.daymount.look.cache.Memory;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.month.MonthSheet;
import org.daymount.output.Finished;
import org.daymount.output.GuidePdf;
import org.daymount.output.IndexPage;
import org.daymount.output.KeptDrawings;
import org.daymount.output.LighterPictures;
import org.daymount.output.OutputException;
import org.daymount.output.OutputFolder;
import org.daymount.output.PagesPdf;
import org.daymount.output.Recipe;
import org.daymount.output.SheetPainter;
import org.daymount.output.SheetsPdf;
import org.daymount.output.Written;

/**
 * Draws a finished month into its folder. A file that an earlier run drew from the same, and that
 * nobody has changed since, is not drawn again.
 */
public final class MonthWriter {
  private final Pictures pictures;
  private final MonthJson json;
  private final Progress progress;
  private final KeptDrawings kept;

  public MonthWriter(Pictures pictures, MonthJson json, Progress progress) {
    this(pictures, json, progress, KeptDrawings.NONE);
  }

  /**
   * @param memory of earlier runs: saves time, changes nothing
   * @param program tells this program and all that its drawings depend on from any other
   */
  public MonthWriter(
      Pictures pictures, MonthJson json, Progress progress, Memory memory, String program) {
    this(pictures, json, progress, new RememberedDrawings(memory, program));
  }

  private MonthWriter(Pictures pictures, MonthJson json, Progress progress, KeptDrawings kept) {
    this.pictures = pictures;
    this.json = json;
    this.progress = progress;
    this.kept = kept;
  }

  /** Draws one file. */
  @FunctionalInterface
  private interface Drawing {
    byte[] draw() throws IOException;
  }

  /**
   * @return what is new or changed; nothing when everything was as it is
   * @throws OutputException when the folder cannot be written; earlier files are then untouched
   */
  public Finished write(Month month, Path out, boolean force, int jobs) throws IOException {
    try (OutputFolder folder = OutputFolder.open(out, force)) {
      List<String> sheets = sheets(month, folder, jobs);
      progress.stage("writing", 0);
      String all = Recipe.of("month", month);
      put(
          folder,
          "sheets.pdf",
          Recipe.of(
              "sheets.pdf", month.month(), month.settings(), month.units(), month.sheets(), sheets),
          () -> new SheetsPdf(month.month()).write(month, folder::content));
      put(
          folder,
          "pages.pdf",
          Recipe.of("pages.pdf", all),
          () -> new PagesPdf(pictures::part).write(month));
      put(
          folder,
          "guide.pdf",
          Recipe.of("guide.pdf", all),
          () -> new GuidePdf(pictures::part).write(month));
      put(
          folder,
          "index.html",
          Recipe.of("index.html", all),
          () -> new IndexPage(pictures, kept).write(month));
      put(folder, "month.json", Recipe.of("month.json", all), () -> json.write(month));
      return folder.finish();
    } finally {
      progress.end();
    }
  }

  private void put(OutputFolder folder, String name, String recipe, Drawing drawing)
      throws IOException {
    stage(folder, name, recipe, unlessThere(folder, name, recipe, drawing));
  }

  /** Empty when the file is there, drawn from the same. May be called from several threads. */
  private Optional<byte[]> unlessThere(
      OutputFolder folder, String name, String recipe, Drawing drawing) throws IOException {
    Optional<Written> before = before(recipe);
    return before.isPresent() && folder.isStill(name, before.get())
        ? Optional.empty()
        : Optional.of(drawing.draw());
  }

  /** What was drawn by that recipe. */
  private Optional<Written> before(String recipe) {
    return kept.drawn(recipe)
        .flatMap(text -> Written.parse(new String(text, StandardCharsets.US_ASCII)));
  }

  /**
   * @param drawn empty when the file that is there is to be kept
   * @return its SHA-256
   */
  private String stage(OutputFolder folder, String name, String recipe, Optional<byte[]> drawn)
      throws OutputException {
    if (drawn.isEmpty()) {
      Written before = before(recipe).orElseThrow();
      folder.keep(name, before);
      return before.sha256();
    }
    Written written = folder.stage(name, drawn.get());
    kept.keep(recipe, written.text().getBytes(StandardCharsets.US_ASCII));
    return written.sha256();
  }

  /** A sheet at work, or done. */
  private record Painting(String name, String recipe, Future<Optional<byte[]>> jpeg) {}

  /**
   * @return the SHA-256 of each sheet's file
   */
  private List<String> sheets(Month month, OutputFolder folder, int jobs) throws IOException {
    progress.stage("painting sheets", month.sheets().size());
    SheetPainter painter =
        new SheetPainter(new LighterPictures(pictures::part, month.settings().lighter()));
    ExecutorService workers = Executors.newFixedThreadPool(jobs);
    try {
      Queue<Painting> paintings = new ArrayDeque<>();
      for (MonthSheet sheet : month.sheets()) {
        paintings.add(painting(sheet, month, folder, painter, workers));
      }
      List<String> hashes = new ArrayList<>();
      while (!paintings.isEmpty()) { // a sheet is let go once it is staged
        Painting next = paintings.remove();
        hashes.add(stage(folder, next.name(), next.recipe(), next.jpeg().get()));
      }
      return hashes;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RunFailed("interrupted; nothing was replaced");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException unreadable) {
        throw new RunFailed(unreadable.getMessage() + "; run it again without that file");
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  private Painting painting(
      MonthSheet sheet,
      Month month,
      OutputFolder folder,
      SheetPainter painter,
      ExecutorService workers) {
    var ppi = month.settings().ppi();
    String recipe =
        Recipe.of("sheet", sheet.sheet(), sheet.content(), ppi, month.settings().lighter());
    Future<Optional<byte[]>> jpeg =
        workers.submit(
            () -> {
              Optional<byte[]> painted =
                  unlessThere(
                      folder,
                      sheet.file(),
                      recipe,
                      () -> LabJpeg.encode(painter.paint(sheet, ppi), ppi));
              progress.step();
              return painted;
            });
    return new Painting(sheet.file(), recipe, jpeg);
  }
}
