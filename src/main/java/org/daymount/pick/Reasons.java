package org.daymount.pick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.daymount.crop.Crop;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.MainLook;
import org.daymount.look.Measures.CloseLook;
import org.daymount.look.Subject;
import org.daymount.pick.DayOptions.Way;
import org.daymount.pick.Score.Part;

/** Says in a person's words why a picture was taken, came second, or is missing. */
final class Reasons {
  private static final double WORTH_SAYING = 0.08; // smaller differences in a part are not named
  private static final double SURE_SUBJECT = 0.5;
  private static final double NEARLY_THE_SAME = 0.5;
  private static final String[] NUMBERS = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
  };

  private Reasons() {}

  static List<String> hero(
      SpaceTrial hero, List<SpaceTrial> all, List<SpaceTrial> others, Way yesterday) {
    List<String> reasons = new ArrayList<>();
    hero.looked()
        .measures()
        .damage()
        .ifPresent(fact -> reasons.add("damaged (" + fact + "), but there is no sound one"));
    boolean still = isStill(hero.looked());
    still(hero.looked()).ifPresent(reasons::add);
    long alike = hero.contender().frames().filter(frame -> isStill(frame) == still).count();
    if (alike > 1) {
      reasons.add("sharpest of " + alike + " alike");
    } else if (all.size() == 1) {
      reasons.add("the day's only picture");
    }
    spoilt(hero).ifPresent(why -> reasons.add(why + ", but the day has nothing better"));
    whatIsInIt(hero).ifPresent(reasons::add);
    betterThan(hero, others).ifPresent(reasons::add);
    passedOver(hero, others, yesterday).ifPresent(reasons::add);
    addCrop(reasons, hero.crop());
    return reasons;
  }

  static List<String> byPerson(SpaceTrial hero) {
    List<String> reasons = new ArrayList<>();
    reasons.add("you chose it");
    still(hero.looked()).ifPresent(reasons::add);
    hero.looked().measures().damage().ifPresent(fact -> reasons.add("damaged (" + fact + ")"));
    addCrop(reasons, hero.crop());
    return reasons;
  }

  static List<String> runnerUp(SpaceTrial trial, SpaceTrial hero) {
    List<String> reasons = new ArrayList<>();
    still(trial.looked()).ifPresent(reasons::add);
    if (hero != null && hero.contender().alike().contains(trial.looked())) {
      reasons.add("another frame of the same moment");
    }
    if (hero != null) {
      largestLead(hero.score(), trial.score())
          .ifPresent(part -> reasons.add("less for " + wordsFor(part)));
    }
    spoilt(trial).ifPresent(reasons::add);
    whatIsInIt(trial).ifPresent(reasons::add);
    addCrop(reasons, trial.crop());
    return reasons;
  }

  private static boolean isStill(AnalysedPhoto looked) {
    return looked.photo().file().frame().isPresent();
  }

  private static Optional<String> still(AnalysedPhoto looked) {
    return looked
        .photo()
        .file()
        .frame()
        .map(frame -> "a still from the clip " + frame.lastName() + ", at " + frame.time());
  }

  private static Optional<String> spoilt(SpaceTrial trial) {
    return trial
        .looked()
        .measures()
        .close()
        .flatMap(CloseLook::main)
        .filter(MainLook::isSpoilt)
        .map(look -> look.isTooDark() ? "nearly black" : "out of focus or shaken");
  }

  static List<String> missing(DayOptions day, int space, Way way, PickSettings settings) {
    int pictures = day.contenders().size();
    if (pictures == 0) {
      return List.of("no picture was taken this day");
    }
    long acceptable = day.trials(space).stream().filter(SpaceTrial::isAcceptable).count();
    if (acceptable == 0) {
      return List.of(
          (pictures == 1 ? "the day's picture is" : "all " + pictures + " pictures are")
              + " too small to print well (below "
              + settings.crop().minimum()
              + ")");
    }
    return List.of(
        "only "
            + (pictures == 1 ? "one picture" : pictures + " pictures")
            + " for "
            + way.heroes().size()
            + " spaces (a burst counts once)");
  }

  private static Optional<String> whatIsInIt(SpaceTrial trial) {
    long faces = Scorer.sureFaces(trial.looked());
    if (faces > 0) {
      return Optional.of(faces == 1 ? "a face" : number(faces) + " faces");
    }
    return trial.looked().measures().subjects().stream()
        .filter(subject -> subject.confidence() >= SURE_SUBJECT)
        .map(Subject::what)
        .findFirst()
        .map(Reasons::withArticle);
  }

  private static Optional<String> betterThan(SpaceTrial hero, List<SpaceTrial> others) {
    return others.stream()
        .findFirst()
        .filter(next -> !hero.contender().alike().contains(next.looked()))
        .flatMap(next -> largestLead(hero.score(), next.score()))
        .map(part -> "ahead of the next best for " + wordsFor(part));
  }

  private static Optional<String> passedOver(
      SpaceTrial hero, List<SpaceTrial> others, Way yesterday) {
    for (SpaceTrial other : others) {
      if (other.score().total() <= hero.score().total()) {
        continue;
      }
      for (SpaceTrial before : yesterday.filled()) {
        if (Similarity.between(before.looked(), other.looked()) >= NEARLY_THE_SAME) {
          return Optional.of(
              "taken before "
                  + other.looked().photo().file().lastName()
                  + ", which is nearly the same as the day before's picture");
        }
      }
    }
    return Optional.empty();
  }

  /** What the crop says of itself, and its resolution where it does not say it. */
  private static void addCrop(List<String> reasons, Crop crop) {
    reasons.addAll(crop.reasons());
    if (crop.reasons().stream().noneMatch(reason -> reason.contains("ppi"))) {
      reasons.add("sharp in print (" + crop.ppi() + ")");
    }
  }

  private static Optional<String> largestLead(Score ahead, Score behind) {
    String name = null;
    double lead = WORTH_SAYING;
    for (Part part : ahead.parts()) {
      double difference = part.value() - valueOf(behind, part.name());
      if (difference > lead) {
        lead = difference;
        name = part.name();
      }
    }
    return Optional.ofNullable(name);
  }

  private static double valueOf(Score score, String name) {
    return score.parts().stream()
        .filter(part -> part.name().equals(name))
        .mapToDouble(Part::value)
        .sum();
  }

  private static String wordsFor(String part) {
    return switch (part) {
      case "faces" -> "its faces";
      case "spoilt" -> "being sound";
      case "dull" -> "what it shows";
      case "subject" -> "a clear subject";
      case "light" -> "its light";
      case "crispness" -> "being crisper";
      case "crop" -> "suiting the space";
      case "resolution" -> "its resolution";
      case Scorer.DAMAGE -> "not being damaged";
      default -> "its " + part;
    };
  }

  private static String number(long count) {
    return count < NUMBERS.length ? NUMBERS[(int) count] : Long.toString(count);
  }

  private static String withArticle(String what) {
    return ("aeiou".indexOf(what.charAt(0)) >= 0 ? "an " : "a ") + what;
  }
}
