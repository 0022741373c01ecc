package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.daymount.look.Measures.CloseLook;

/**
 * Processor time of one close look. A look runs on its caller's thread alone, native code included,
 * so that thread's time is all of it; other work on the computer still makes it longer.
 */
final class SpeedTable {
  private static final int WARMING_UP = 8;

  private SpeedTable() {}

  static void print(
      String name,
      Function<BufferedImage, CloseLook> detector,
      List<EvalPhoto> photos,
      PrintStream out) {
    photos.stream().limit(WARMING_UP).forEach(photo -> detector.apply(photo.picture()));
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    photos.forEach(photo -> detector.apply(photo.picture()));
    long used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    out.printf(
        Locale.ROOT,
        "%n%-34s %.0f ms of processor time a photo; wanted <= 200%n",
        "Speed: " + name,
        used / 1e6 / photos.size());
  }
}
