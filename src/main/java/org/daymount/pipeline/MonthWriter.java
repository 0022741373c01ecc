package org.daymount.pipeline;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.daymount.image.LabJpeg;
import org.daymount.image.Pictures;
import org.daymount.month.Month;
import org.daymount.month.MonthJson;
import org.daymount.month.MonthSheet;
import org.daymount.output.GuidePdf;
import org.daymount.output.IndexPage;
import org.daymount.output.OutputException;
import org.daymount.output.OutputFolder;
import org.daymount.output.SheetPainter;
import org.daymount.output.SheetsPdf;

/** Draws a finished month into its folder. */
public final class MonthWriter {
  private final Pictures pictures;
  private final MonthJson json;
  private final Progress progress;

  public MonthWriter(Pictures pictures, MonthJson json, Progress progress) {
    this.pictures = pictures;
    this.json = json;
    this.progress = progress;
  }

  /**
   * @return the names of the files that are new or changed; none when everything was as it is
   * @throws OutputException when the folder cannot be written; earlier files are then untouched
   */
  public List<String> write(Month month, Path out, boolean force, int jobs) throws IOException {
    try (OutputFolder folder = OutputFolder.open(out, force)) {
      Map<String, byte[]> sheets = sheets(month, jobs);
      progress.stage("writing", 0);
      for (Map.Entry<String, byte[]> sheet : sheets.entrySet()) {
        folder.stage(sheet.getKey(), sheet.getValue());
      }
      folder.stage("sheets.pdf", new SheetsPdf().write(month, sheets));
      folder.stage("guide.pdf", new GuidePdf().write(month));
      folder.stage("index.html", new IndexPage(pictures).write(month));
      folder.stage("month.json", json.write(month));
      return folder.finish();
    } finally {
      progress.end();
    }
  }

  private Map<String, byte[]> sheets(Month month, int jobs) throws IOException {
    progress.stage("painting sheets", month.sheets().size());
    SheetPainter painter = new SheetPainter(pictures);
    ExecutorService workers = Executors.newFixedThreadPool(jobs);
    try {
      Map<String, Future<byte[]>> running = new LinkedHashMap<>();
      for (MonthSheet sheet : month.sheets()) {
        running.put(
            sheet.file(),
            workers.submit(
                () -> {
                  byte[] jpeg =
                      LabJpeg.encode(
                          painter.paint(sheet, month.settings().ppi()), month.settings().ppi());
                  progress.step();
                  return jpeg;
                }));
      }
      Map<String, byte[]> painted = new LinkedHashMap<>();
      for (Map.Entry<String, Future<byte[]>> sheet : running.entrySet()) {
        painted.put(sheet.getKey(), sheet.getValue().get());
      }
      return painted;
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
}
