package org.daymount.review;

import java.io.IOException;
import java.nio.file.Path;
import org.daymount.month.Month;
import org.daymount.output.Finished;
import org.daymount.pipeline.Progress;

/** Draws a finished month into its folder as {@code daymount sheets} does, told how far it is. */
@FunctionalInterface
public interface SheetWriter {
  /**
   * @param force whether a file that this program did not make is set aside for one of its own
   * @throws org.daymount.output.OutputException when the folder cannot be written; earlier files
   *     are then untouched
   */
  Finished write(Month month, Path folder, boolean force, Progress progress) throws IOException;
}
