package org.daymount.look;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.daymount.image.Pictures;
import org.daymount.photo.Photo;
import org.daymount.problem.Problem;
import org.daymount.problem.UnusablePicture;

/** Looks at every photo once, several at a time. */
public final class PhotoAnalyser {
  /** Where decoded pictures come from. */
  @FunctionalInterface
  interface Source {
    Pictures.Examined examined(Photo photo, int longEdge) throws UnusablePicture;

    default Pictures.Both both(Photo photo, int longEdge, int closerEdge) throws UnusablePicture {
      throw new UnsupportedOperationException("nothing is looked at ahead");
    }
  }

  private record Decoding(Pictures pictures) implements Source {
    @Override
    public Pictures.Examined examined(Photo photo, int longEdge) throws UnusablePicture {
      return pictures.examined(photo, longEdge);
    }

    @Override
    public Pictures.Both both(Photo photo, int longEdge, int closerEdge) throws UnusablePicture {
      return pictures.both(photo, longEdge, closerEdge);
    }
  }

  private final Source source;
  private final LookCache remembered;
  private final LookAhead ahead;
  private final Measurer measurer = new Measurer();

  public PhotoAnalyser(Pictures pictures) {
    this(pictures, LookCache.NONE, LookAhead.NONE);
  }

  /**
   * @param remembered photos of earlier runs, which are not decoded again
   * @param ahead looks closely at photos of its choice while they are at hand
   */
  public PhotoAnalyser(Pictures pictures, LookCache remembered, LookAhead ahead) {
    this(new Decoding(pictures), remembered, ahead);
  }

  PhotoAnalyser(Source source) {
    this(source, LookCache.NONE);
  }

  PhotoAnalyser(Source source, LookCache remembered) {
    this(source, remembered, LookAhead.NONE);
  }

  private PhotoAnalyser(Source source, LookCache remembered, LookAhead ahead) {
    this.source = source;
    this.remembered = remembered;
    this.ahead = ahead;
  }

  /**
   * The first look: what the pixels alone say. At most {@code jobs} decoded pictures are held at
   * any time; nothing of a picture but its measures outlives the look at it. The order of the
   * photos is kept, whatever the number of jobs. A photo that cannot be decoded is a problem, not
   * an end.
   *
   * @param eachDone called after each photo, never by two threads at once
   */
  public Analysis first(List<Photo> photos, int jobs, Runnable eachDone) {
    Object turn = new Object();
    ExecutorService workers = Executors.newFixedThreadPool(Math.max(1, jobs));
    try {
      List<Future<Outcome>> outcomes = new ArrayList<>();
      for (Photo photo : photos) {
        outcomes.add(
            workers.submit(
                () -> {
                  Outcome outcome = look(photo);
                  synchronized (turn) {
                    eachDone.run();
                  }
                  return outcome;
                }));
      }
      return collected(outcomes);
    } finally {
      workers.shutdownNow();
    }
  }

  private sealed interface Outcome {}

  private record Done(AnalysedPhoto looked) implements Outcome {}

  private record Failed(Problem problem) implements Outcome {}

  private Outcome look(Photo photo) {
    Optional<Measures> known = remembered.firstLook(photo);
    if (known.isPresent()) {
      return new Done(new AnalysedPhoto(photo, known.get()));
    }
    Pictures.Examined examined;
    Optional<BufferedImage> closer = Optional.empty();
    try {
      if (ahead.wants(photo)) {
        Pictures.Both both = source.both(photo, Measurer.WORKING_EDGE, ahead.longEdge());
        examined = both.examined();
        closer = Optional.of(both.closer());
      } else {
        examined = source.examined(photo, Measurer.WORKING_EDGE);
      }
    } catch (UnusablePicture e) {
      return new Failed(e.of(photo.file()));
    } catch (RuntimeException e) { // a decoder that stumbles over one file must not end the run
      return new Failed(
          new Problem(
              photo.file(),
              Problem.Kind.UNREADABLE,
              "cannot be decoded (" + e + "); open and save it again in another program"));
    }
    Measures measures = measurer.measure(examined.picture()).withDamage(examined.damage());
    remembered.keepFirstLook(photo, measures);
    AnalysedPhoto looked = new AnalysedPhoto(photo, measures);
    closer.ifPresent(picture -> ahead.look(looked, picture));
    return new Done(looked);
  }

  private static Analysis collected(List<Future<Outcome>> outcomes) {
    List<AnalysedPhoto> looked = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (Future<Outcome> future : outcomes) {
      Outcome outcome = result(future);
      if (outcome instanceof Done done) {
        looked.add(done.looked());
      } else if (outcome instanceof Failed failed) {
        problems.add(failed.problem());
      }
    }
    return new Analysis(looked, problems);
  }

  private static Outcome result(Future<Outcome> future) {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("stopped while looking at the photos");
    } catch (ExecutionException e) {
      // not a bad photo (those are outcomes) but a fault of ours or of the machine
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(e.getCause());
    }
  }
}
