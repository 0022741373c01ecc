package org.daymount.look.detect;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiConsumer;
import java.util.function.IntConsumer;
import org.daymount.image.Pictures;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.LookCache;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/**
 * Looks for faces and subjects in pictures that were looked at once: frames of a burst together, of
 * a long one those that may be its best. What was seen before in the same frames is not looked for
 * again.
 */
public final class CloseLookStage {
  private final Pictures pictures;
  private final int jobs;
  private final LookCache remembered;
  private final IntConsumer starting;
  private final Runnable eachDone;
  private final DetectorsOnDemand detectors;
  private final BiConsumer<Photo, BufferedImage> shown;

  /**
   * @param remembered of earlier looks; saves time, changes nothing
   * @param starting is told how many groups there are to look at, if there are any
   * @param eachDone called after each group, from any thread
   */
  public CloseLookStage(
      Pictures pictures, int jobs, LookCache remembered, IntConsumer starting, Runnable eachDone) {
    this(
        pictures,
        jobs,
        remembered,
        starting,
        eachDone,
        new DetectorsOnDemand(jobs),
        (photo, picture) -> {});
  }

  /**
   * @param detectors closed at the end of a look
   * @param shown is handed each photo that is looked at alone as a picture with a long edge of
   *     {@link Detectors#WORKING_LONG_EDGE}
   */
  public CloseLookStage(
      Pictures pictures,
      int jobs,
      LookCache remembered,
      IntConsumer starting,
      Runnable eachDone,
      DetectorsOnDemand detectors,
      BiConsumer<Photo, BufferedImage> shown) {
    this.detectors = detectors;
    this.shown = shown;
    this.pictures = pictures;
    this.jobs = jobs;
    this.remembered = remembered;
    this.starting = starting;
    this.eachDone = eachDone;
  }

  /**
   * @param groups frames of one burst, or single pictures
   * @param chosen by a person: looked at too, so that their crops cut no face
   */
  public CloseLooks look(List<List<AnalysedPhoto>> groups, List<AnalysedPhoto> chosen) {
    try (detectors) {
      return lookAtBoth(groups, chosen);
    }
  }

  private CloseLooks lookAtBoth(List<List<AnalysedPhoto>> groups, List<AnalysedPhoto> chosen) {
    CloseLooks looks = look(groups);
    Set<PhotoFile> closely = new HashSet<>();
    looks.groups().values().stream()
        .flatMap(List::stream)
        .filter(frame -> frame.measures().close().isPresent())
        .forEach(frame -> closely.add(frame.photo().file()));
    return looks.and(
        look(
            chosen.stream()
                .filter(one -> !closely.contains(one.photo().file()))
                .map(List::of)
                .toList()));
  }

  private CloseLooks look(List<List<AnalysedPhoto>> groups) {
    Map<List<PhotoFile>, List<AnalysedPhoto>> seen = new HashMap<>();
    List<List<AnalysedPhoto>> unseen = new ArrayList<>();
    for (List<AnalysedPhoto> group : groups) {
      Optional<List<AnalysedPhoto>> known = recalled(group);
      known.ifPresentOrElse(
          frames -> seen.put(CloseLooks.files(group), frames), () -> unseen.add(group));
    }
    if (unseen.isEmpty()) {
      return new CloseLooks(seen, Optional.empty());
    }
    try {
      Detectors loaded = detectors.get();
      starting.accept(unseen.size());
      List<List<AnalysedPhoto>> looked = lookAt(unseen, loaded);
      for (int i = 0; i < unseen.size(); i++) {
        seen.put(CloseLooks.files(unseen.get(i)), looked.get(i));
      }
      return new CloseLooks(seen, Optional.empty());
    } catch (DetectorsUnavailable e) {
      return new CloseLooks(seen, Optional.of(e.getMessage()));
    }
  }

  /** What was seen before in these frames. */
  private Optional<List<AnalysedPhoto>> recalled(List<AnalysedPhoto> group) {
    return remembered
        .closeLook(photos(group))
        .map(
            looks -> {
              List<AnalysedPhoto> frames = new ArrayList<>();
              for (int i = 0; i < group.size(); i++) {
                AnalysedPhoto frame = group.get(i);
                frames.add(looks.get(i).map(frame::withClose).orElse(frame));
              }
              return List.copyOf(frames);
            });
  }

  private static List<Photo> photos(List<AnalysedPhoto> group) {
    return group.stream().map(AnalysedPhoto::photo).toList();
  }

  private List<List<AnalysedPhoto>> lookAt(List<List<AnalysedPhoto>> groups, Detectors loaded) {
    CloseLooker looker = new CloseLooker(pictures, loaded, shown);
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
                  eachDone.run();
                  return frames;
                }));
      }
      List<List<AnalysedPhoto>> looked = new ArrayList<>();
      for (Future<List<AnalysedPhoto>> one : running) {
        looked.add(one.get());
      }
      return looked;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("stopped while looking for faces and subjects");
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }
}
