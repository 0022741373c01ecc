package org.daymount.pipeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Remembered;
import org.daymount.look.detect.CloseLooker;
import org.daymount.look.detect.Detectors;
import org.daymount.look.detect.DetectorsUnavailable;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Burst;
import org.daymount.pick.BurstWinner;
import org.daymount.pick.Contender;

/**
 * Looks for faces and subjects where it can still change a pick: in the most promising bursts of
 * each day, and of a long burst in the frames that may be its best. The others keep their first
 * look. What was seen is remembered, so that the same pictures are not looked at again.
 */
final class CloseLookStage {
  private static final int BURSTS_A_DAY = 8;

  private final Pictures pictures;
  private final int jobs;
  private final Progress progress;
  private final Remembered remembered;
  private final Map<List<PhotoFile>, List<AnalysedPhoto>> seen = new HashMap<>();
  private Optional<String> without = Optional.empty();

  CloseLookStage(Pictures pictures, int jobs, Progress progress) {
    this(pictures, jobs, progress, Remembered.NOTHING);
  }

  /**
   * @param remembered of earlier runs
   */
  CloseLookStage(Pictures pictures, int jobs, Progress progress, Remembered remembered) {
    this.remembered = remembered;
    this.pictures = pictures;
    this.jobs = jobs;
    this.progress = progress;
  }

  /**
   * @param chosen by a person: looked at closely too, so that their crops cut no face
   */
  CloseLooks look(Bursts bursts, List<AnalysedPhoto> chosen) {
    Set<Burst> promising = new HashSet<>();
    bursts.byDay().values().forEach(day -> promising.addAll(promising(day)));
    return look(bursts, promising, chosen);
  }

  CloseLooks lookAtAll(Bursts bursts) {
    return look(bursts, new HashSet<>(bursts.all()), List.of());
  }

  private CloseLooks look(Bursts bursts, Set<Burst> promising, List<AnalysedPhoto> chosen) {
    List<List<AnalysedPhoto>> groups =
        bursts.all().stream().filter(promising::contains).map(Burst::photos).toList();
    lookAt(groups);
    Set<PhotoFile> closely = new HashSet<>();
    for (List<AnalysedPhoto> group : groups) {
      seen(group).stream()
          .filter(frame -> frame.measures().close().isPresent())
          .forEach(frame -> closely.add(frame.photo().file()));
    }
    List<AnalysedPhoto> alone =
        chosen.stream().filter(one -> !closely.contains(one.photo().file())).toList();
    Optional<String> without = lookAt(alone.stream().map(List::of).toList());
    Map<LocalDate, List<Contender>> contenders = new TreeMap<>();
    bursts
        .byDay()
        .forEach(
            (day, list) ->
                contenders.put(
                    day,
                    list.stream()
                        .map(burst -> contender(burst, promising.contains(burst)))
                        .toList()));
    Map<PhotoFile, AnalysedPhoto> others = new HashMap<>();
    alone.forEach(one -> others.put(one.photo().file(), seen(List.of(one)).get(0)));
    return new CloseLooks(contenders, others, without);
  }

  /** Looks at those that were not looked at before; says why if that is not possible. */
  private Optional<String> lookAt(List<List<AnalysedPhoto>> groups) {
    groups.forEach(this::recall);
    List<List<AnalysedPhoto>> unseen =
        groups.stream().filter(group -> !seen.containsKey(files(group))).toList();
    if (unseen.isEmpty()) {
      return without;
    }
    try (Detectors detectors = Detectors.load(jobs)) {
      progress.stage("looking for faces and subjects", unseen.size());
      lookAt(unseen, detectors);
    } catch (DetectorsUnavailable e) {
      without = Optional.of(e.getMessage());
    }
    return without;
  }

  /** What an earlier run saw in these frames counts as seen. */
  private void recall(List<AnalysedPhoto> group) {
    if (seen.containsKey(files(group))) {
      return;
    }
    remembered
        .closeLook(photos(group))
        .ifPresent(
            looks -> {
              List<AnalysedPhoto> frames = new ArrayList<>();
              for (int i = 0; i < group.size(); i++) {
                AnalysedPhoto frame = group.get(i);
                frames.add(looks.get(i).map(frame::withClose).orElse(frame));
              }
              seen.put(files(group), frames);
            });
  }

  private static List<Photo> photos(List<AnalysedPhoto> group) {
    return group.stream().map(AnalysedPhoto::photo).toList();
  }

  private void lookAt(List<List<AnalysedPhoto>> groups, Detectors detectors) {
    CloseLooker looker = new CloseLooker(pictures, detectors);
    ExecutorService workers = Executors.newFixedThreadPool(jobs);
    try {
      List<Future<List<AnalysedPhoto>>> running = new ArrayList<>();
      for (List<AnalysedPhoto> group : groups) {
        running.add(
            workers.submit(
                () -> {
                  List<AnalysedPhoto> frames = looker.look(group);
                  remembered.keepCloseLook(
                      photos(group), frames.stream().map(f -> f.measures().close()).toList());
                  progress.step();
                  return frames;
                }));
      }
      for (int i = 0; i < groups.size(); i++) {
        seen.put(files(groups.get(i)), running.get(i).get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new RunFailed("interrupted; nothing was written");
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  private static List<PhotoFile> files(List<AnalysedPhoto> group) {
    return group.stream().map(one -> one.photo().file()).toList();
  }

  /** As they were before where nobody could look. */
  private List<AnalysedPhoto> seen(List<AnalysedPhoto> group) {
    return seen.getOrDefault(files(group), group);
  }

  /** Frames that nobody looked at closely cannot win over those that were. */
  private Contender contender(Burst burst, boolean promising) {
    List<AnalysedPhoto> frames = promising ? seen(burst.photos()) : burst.photos();
    boolean anySound = frames.stream().anyMatch(frame -> !frame.isDamaged());
    List<AnalysedPhoto> close =
        frames.stream()
            .filter(f -> f.measures().close().isPresent() && !(anySound && f.isDamaged()))
            .toList();
    if (close.isEmpty()) {
      return BurstWinner.of(frames);
    }
    Contender best = BurstWinner.of(close);
    List<AnalysedPhoto> alike = new ArrayList<>(best.alike());
    frames.stream().filter(f -> !close.contains(f)).forEach(alike::add);
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
    for (AnalysedPhoto frame : burst.photos()) {
      if (frame.isDamaged()) {
        continue; // the last resort
      }
      best = Math.max(best, frame.measures().exposure() + frame.measures().clarity());
    }
    return best + 0.1 * Math.min(5, burst.photos().size());
  }
}
