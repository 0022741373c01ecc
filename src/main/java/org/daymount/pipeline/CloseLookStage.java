package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.daymount.image.Pictures;
import org.daymount.look.Looked;
import org.daymount.look.Remembered;
import org.daymount.look.detect.CloseLooker;
import org.daymount.look.detect.Detectors;
import org.daymount.look.detect.DetectorsUnavailable;
import org.daymount.photo.Photo;
import org.daymount.pick.Burst;
import org.daymount.pick.BurstWinner;
import org.daymount.pick.Contender;

/**
 * Looks for faces and subjects where it can still change a pick: in the most promising bursts of
 * each day, and in the most promising frames of each burst. The others keep their first look.
 */
final class CloseLookStage {
  private static final int BURSTS_A_DAY = 8;
  private static final int FRAMES_A_BURST = 6;

  private final Pictures pictures;
  private final int jobs;
  private final Progress progress;
  private final Remembered remembered;

  CloseLookStage(Pictures pictures, int jobs, Progress progress) {
    this(pictures, jobs, progress, Remembered.NOTHING);
  }

  CloseLookStage(Pictures pictures, int jobs, Progress progress, Remembered remembered) {
    this.remembered = remembered;
    this.pictures = pictures;
    this.jobs = jobs;
    this.progress = progress;
  }

  CloseLooks look(Bursts bursts) {
    Set<Burst> promising = new HashSet<>();
    bursts.byDay().values().forEach(day -> promising.addAll(promising(day)));
    return look(bursts, promising);
  }

  CloseLooks lookAtAll(Bursts bursts) {
    return look(bursts, new HashSet<>(bursts.all()));
  }

  private CloseLooks look(Bursts bursts, Set<Burst> promising) {
    Map<Burst, List<Looked>> seen = new HashMap<>();
    Set<Burst> unknown = new HashSet<>();
    for (Burst burst : promising) {
      Optional<List<Looked>> frames = remembered(promisingFrames(burst));
      frames.ifPresentOrElse(known -> seen.put(burst, known), () -> unknown.add(burst));
    }
    if (unknown.isEmpty()) {
      return looks(bursts, seen, Optional.empty());
    }
    try (Detectors detectors = Detectors.load()) {
      progress.stage("looking for faces and subjects", unknown.size());
      seen.putAll(closely(bursts.all(), unknown, detectors));
      return looks(bursts, seen, Optional.empty());
    } catch (DetectorsUnavailable e) {
      return looks(bursts, Map.of(), Optional.of(e.getMessage()));
    }
  }

  private Optional<List<Looked>> remembered(List<Looked> frames) {
    return remembered
        .closeLook(photos(frames))
        .map(
            looks -> {
              List<Looked> known = new ArrayList<>();
              for (int i = 0; i < frames.size(); i++) {
                Looked frame = frames.get(i);
                known.add(looks.get(i).map(frame::withClose).orElse(frame));
              }
              return known;
            });
  }

  private static List<Photo> photos(List<Looked> frames) {
    return frames.stream().map(Looked::photo).toList();
  }

  private Map<Burst, List<Looked>> closely(
      List<Burst> all, Set<Burst> promising, Detectors detectors) {
    CloseLooker looker = new CloseLooker(pictures, detectors);
    ExecutorService workers = Executors.newFixedThreadPool(jobs);
    try {
      Map<Burst, Future<List<Looked>>> running = new LinkedHashMap<>();
      for (Burst burst : all) {
        if (promising.contains(burst)) {
          running.put(
              burst,
              workers.submit(
                  () -> {
                    List<Looked> frames = looker.look(promisingFrames(burst));
                    remembered.keepCloseLook(
                        photos(frames), frames.stream().map(f -> f.measures().close()).toList());
                    progress.step();
                    return frames;
                  }));
        }
      }
      Map<Burst, List<Looked>> seen = new HashMap<>();
      for (Map.Entry<Burst, Future<List<Looked>>> entry : running.entrySet()) {
        seen.put(entry.getKey(), entry.getValue().get());
      }
      return seen;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RunFailed("interrupted; nothing was written");
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  private static CloseLooks looks(
      Bursts bursts, Map<Burst, List<Looked>> seen, Optional<String> without) {
    Map<LocalDate, List<Contender>> contenders = new TreeMap<>();
    bursts
        .byDay()
        .forEach(
            (day, list) ->
                contenders.put(
                    day, list.stream().map(burst -> contender(burst, seen.get(burst))).toList()));
    return new CloseLooks(contenders, without);
  }

  /** Frames that nobody looked at closely cannot win over those that were. */
  private static Contender contender(Burst burst, List<Looked> seen) {
    if (seen == null) {
      return BurstWinner.of(burst.photos());
    }
    Contender best = BurstWinner.of(seen);
    List<Looked> alike = new ArrayList<>(best.alike());
    for (Looked frame : burst.photos()) {
      if (seen.stream().noneMatch(s -> s.photo().equals(frame.photo()))) {
        alike.add(frame);
      }
    }
    return new Contender(best.looked(), alike);
  }

  private static List<Burst> promising(List<Burst> day) {
    return day.stream()
        .sorted(Comparator.comparingDouble((Burst burst) -> -promise(burst)))
        .limit(BURSTS_A_DAY)
        .toList();
  }

  /** Light and crispness of its best frame, and a little for having been worth several. */
  private static double promise(Burst burst) {
    double best = 0;
    for (Looked frame : burst.photos()) {
      best = Math.max(best, frame.measures().exposure() + frame.measures().clarity());
    }
    return best + 0.1 * Math.min(5, burst.photos().size());
  }

  private static List<Looked> promisingFrames(Burst burst) {
    return burst.photos().stream()
        .sorted(Comparator.comparingDouble((Looked frame) -> -frame.measures().sharpness()))
        .limit(FRAMES_A_BURST)
        .toList();
  }
}
