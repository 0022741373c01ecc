package org.daymount.pipeline;

import java.io.IOException;
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
import org.daymount.cache.Cache;
import org.daymount.file.Sha256;
import org.daymount.image.Pictures;
import org.daymount.image.PrintJpegEncoder;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.month.MonthSheet;
import org.daymount.output.Finished;
import org.daymount.output.GuidePdf;
import org.daymount.output.IndexPage;
import org.daymount.output.LighterPictures;
import org.daymount.output.OutputException;
import org.daymount.output.OutputFolder;
import org.daymount.output.PagePictures;
import org.daymount.output.PagesPdf;
import org.daymount.output.Recipe;
import org.daymount.output.SheetPainter;
import org.daymount.output.SheetPrints;
import org.daymount.output.SheetsPdf;
import org.daymount.output.SmallCopies;
import org.daymount.output.Written;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFormat;
import org.daymount.sheet.PieceContent;

/**
 * Draws a finished month into its folder. A file that an earlier run drew from the same, and that
 * nobody has changed since, is not drawn again.
 */
public final class MonthWriter {
  private final Pictures pictures;
  private final MonthJson json;
  private final Progress progress;
  private final Cache kept;
  private final SmallCopies copies;

  /**
   * @param kept of earlier runs: whole files as what they were {@link Written}, by the {@link
   *     Recipe} that each was drawn from
   */
  public MonthWriter(Pictures pictures, MonthJson json, Progress progress, Cache kept) {
    this(pictures, json, progress, kept, new SmallCopies(pictures, kept));
  }

  /**
   * @param copies made when the month was
   */
  public MonthWriter(
      Pictures pictures, MonthJson json, Progress progress, Cache kept, SmallCopies copies) {
    this.copies = copies;
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
      String all = Recipe.of("month", month);
      SheetPrints prints = SheetPrints.of(month);
      PagePictures pagePictures = new PagePictures(pictures::glimpse, kept);
      List<Drawn> files =
          List.of(
              new Drawn(
                  "sheets.pdf",
                  Recipe.of("sheets.pdf", prints, sheets),
                  () -> SheetsPdf.write(prints, folder::content)),
              new Drawn(
                  "pages.pdf",
                  Recipe.of("pages.pdf", all),
                  () -> new PagesPdf(pagePictures).write(month)),
              new Drawn(
                  "guide.pdf",
                  Recipe.of("guide.pdf", all),
                  () -> new GuidePdf(pagePictures).write(month)),
              new Drawn(
                  "index.html",
                  Recipe.of("index.html", all),
                  () -> new IndexPage(copies).write(month)),
              new Drawn("month.json", Recipe.of("month.json", all), () -> json.write(month)));
      progress.stage("drawing album, guide and month at a glance", files.size());
      drawAll(folder, files, jobs);
      return folder.finish();
    } finally {
      progress.end();
    }
  }

  /** Empty when the file is there, drawn from the same. May be called from several threads. */
  private Optional<byte[]> unlessThere(OutputFolder folder, Drawn file) throws IOException {
    Optional<Written> before = before(file.recipe());
    return before.isPresent() && folder.isStill(file.name(), before.get())
        ? Optional.empty()
        : Optional.of(file.drawing().draw());
  }

  /** What was drawn by that recipe. */
  private Optional<Written> before(String recipe) {
    return kept.get(Cache.Keep.DRAWN, recipe, Written.class);
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
    kept.put(Cache.Keep.DRAWN, recipe, written);
    return written.sha256();
  }

  /** What is to be drawn into a file, and from what. */
  private record Drawn(String name, String recipe, Drawing drawing) {}

  /** A file at work, or done. */
  private record AtWork(Drawn file, Future<Optional<byte[]>> content) {}

  /**
   * @return the SHA-256 of each sheet's file
   */
  private List<String> sheets(Month month, OutputFolder folder, int jobs) throws IOException {
    progress.stage("painting sheets", month.sheets().size());
    SheetPainter painter =
        new SheetPainter(new LighterPictures(pictures::part, month.settings().lighter()));
    var ppi = month.settings().ppi();
    var margin = month.settings().margin();
    List<Drawn> files = new ArrayList<>();
    for (MonthSheet sheet : month.sheets()) {
      files.add(
          new Drawn(
              sheet.file(),
              Recipe.of(
                  "sheet", sheet.sheet(), sheet.content(), ppi, margin, month.settings().lighter()),
              () -> {
                byte[] painted = PrintJpegEncoder.encode(painter.paint(sheet, margin, ppi), ppi);
                refuseWhatChanged(sheet);
                return painted;
              }));
    }
    return drawAll(folder, files, jobs);
  }

  /** What is printed must be what was looked at and chosen. */
  private static void refuseWhatChanged(MonthSheet sheet) throws IOException {
    for (PieceContent content : sheet.content().values()) {
      if (content.picture().isPresent()) {
        Photo photo = content.picture().get().photo();
        if (photo.format() != PhotoFormat.CLIP
            && !Sha256.ofFile(photo.file().path()).equals(photo.sha256())) {
          throw new RunFailed(photo.file().name() + " was changed while this ran; run it again");
        }
      }
    }
  }

  /**
   * Draws several at once and stages them in their order.
   *
   * @return the SHA-256 of each file
   */
  private List<String> drawAll(OutputFolder folder, List<Drawn> files, int jobs)
      throws IOException {
    ExecutorService workers = Executors.newFixedThreadPool(jobs);
    try {
      Queue<AtWork> all = new ArrayDeque<>();
      for (Drawn file : files) {
        all.add(
            new AtWork(
                file,
                workers.submit(
                    () -> {
                      Optional<byte[]> content = unlessThere(folder, file);
                      progress.step();
                      return content;
                    })));
      }
      List<String> hashes = new ArrayList<>();
      while (!all.isEmpty()) { // each is let go once it is staged
        AtWork next = all.remove();
        hashes.add(stage(folder, next.file().name(), next.file().recipe(), next.content().get()));
      }
      return hashes;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RunFailed("interrupted; nothing was replaced");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException unreadable) {
        throw new RunFailed(unreadable.getMessage() + "; run it again without that file");
      }
      throw e.getCause() instanceof RunFailed changed
          ? changed
          : new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }
}
