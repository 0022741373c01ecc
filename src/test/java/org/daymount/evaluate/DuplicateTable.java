package org.daymount.evaluate;

import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Measurer;
import org.daymount.look.Measures;
import org.daymount.photo.Photo;
import org.daymount.photo.Taken;
import org.daymount.photo.TakenFrom;
import org.daymount.pick.BurstFinder;
import org.daymount.pick.CopyFinder;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelSize;

/** How often bursts and copies are found, and how often unrelated photographs pass for one. */
final class DuplicateTable {
  private static final long SEED = 20260604;
  private static final LocalDate DAY = LocalDate.of(2026, 6, 3);
  private static final LocalDateTime NOON = DAY.atTime(12, 0);
  private static final int FRAMES = 3;

  private final Measurer measurer = new Measurer();
  private final BurstFinder bursts = new BurstFinder();
  private final CopyFinder copies = new CopyFinder();
  private final PrintStream out;

  DuplicateTable(PrintStream out) {
    this.out = out;
  }

  void print(List<EvalPhoto> photos) {
    out.printf(Locale.ROOT, "%n%-34s %8s%n", "Bursts and copies", "found");
    Random random = new Random(SEED);
    List<Measures> originals = photos.stream().map(p -> measurer.measure(p.picture())).toList();
    List<List<Measures>> frames = new ArrayList<>();
    List<List<Measures>> resaved = new ArrayList<>();
    for (EvalPhoto photo : photos) {
      List<Measures> next = new ArrayList<>();
      for (int i = 0; i < FRAMES; i++) {
        next.add(measurer.measure(Alter.nextFrame(photo.picture(), random)));
      }
      frames.add(next);
      List<Measures> smaller = new ArrayList<>();
      for (double scale : new double[] {0.75, 0.5, 0.25}) {
        BufferedImage small = Alter.saved(Alter.smaller(photo.picture(), scale), 0.6f);
        smaller.add(measurer.measure(small));
      }
      resaved.add(smaller);
    }
    line("frames 2 s apart grouped", share(originals, frames, 2));
    line("frames a minute apart grouped", share(originals, frames, 60));
    line("smaller re-saved copies", copiesFound(photos, originals, resaved));
    out.printf(
        Locale.ROOT,
        "%-34s %7.3f%% of %d%n",
        "unrelated, 2 s apart, grouped",
        100 * falsePairs(originals, 2),
        pairs(originals));
    out.printf(
        Locale.ROOT,
        "%-34s %7.3f%% of %d%n",
        "unrelated, an hour apart, grouped",
        100 * falsePairs(originals, 3600),
        pairs(originals));
  }

  private void line(String name, double share) {
    out.printf(Locale.ROOT, "%-34s %7.1f%%%n", name, 100 * share);
  }

  private double share(List<Measures> originals, List<List<Measures>> frames, int seconds) {
    int found = 0;
    int all = 0;
    for (int i = 0; i < originals.size(); i++) {
      for (Measures frame : frames.get(i)) {
        all++;
        found += grouped(originals.get(i), frame, seconds) ? 1 : 0;
      }
    }
    return found / (double) all;
  }

  private double falsePairs(List<Measures> originals, int seconds) {
    long found = 0;
    for (int i = 0; i < originals.size(); i++) {
      for (int j = i + 1; j < originals.size(); j++) {
        found += grouped(originals.get(i), originals.get(j), seconds) ? 1 : 0;
      }
    }
    return found / (double) pairs(originals);
  }

  private static long pairs(List<Measures> originals) {
    return originals.size() * (originals.size() - 1L) / 2;
  }

  private boolean grouped(Measures one, Measures two, int seconds) {
    PixelSize size = new PixelSize(640, 480);
    AnalysedPhoto first = looked("a.jpg", size, Optional.of(NOON), one);
    AnalysedPhoto second = looked("b.jpg", size, Optional.of(NOON.plusSeconds(seconds)), two);
    return bursts.find(DAY, List.of(first, second)).size() == 1;
  }

  private double copiesFound(
      List<EvalPhoto> photos, List<Measures> originals, List<List<Measures>> resaved) {
    int found = 0;
    int all = 0;
    for (int i = 0; i < photos.size(); i++) {
      AnalysedPhoto original =
          looked("a.jpg", photos.get(i).size(), Optional.of(NOON), originals.get(i));
      for (Measures copy : resaved.get(i)) {
        PixelSize size = photos.get(i).size().within(photos.get(i).size().longEdge() / 2);
        AnalysedPhoto small = looked("b.jpg", size, Optional.empty(), copy);
        all++;
        found += copies.smaller(List.of(original, small)).size();
      }
    }
    return found / (double) all;
  }

  private static AnalysedPhoto looked(
      String name, PixelSize size, Optional<LocalDateTime> time, Measures measures) {
    Photo photo =
        PhotoBuilder.at(Path.of(""), name)
            .sha256(name)
            .size(size)
            .withoutOrientation()
            .taken(time.map(t -> Taken.at(t, TakenFrom.ORIGINAL)).orElse(Taken.UNKNOWN))
            .photo();
    return new AnalysedPhoto(photo, measures);
  }
}
