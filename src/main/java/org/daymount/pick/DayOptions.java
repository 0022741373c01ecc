package org.daymount.pick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;
import org.daymount.pick.BestAssignment.Assignment;

/**
 * The good ways to fill one day's spaces, best first. Each space holds its trials with every
 * contender; a space that a person has settled has only that one.
 */
final class DayOptions {
  private static final int KEPT = 12; // ways per day that the month may choose between
  private static final double SAME_ON_ONE_PAGE = 0.9;
  private static final double SCENE_TWICE = 2; // more than sound pictures of a day differ by

  private final DayPage page;
  private final List<Candidate> contenders;
  private final Trials known;
  private final List<List<SpaceTrial>> trials;
  private final List<Way> ways;

  /**
   * One way to fill the day.
   *
   * @param heroes per space
   * @param worth sum of scores less what pictures nearly the same on one page cost
   */
  record Way(List<Optional<SpaceTrial>> heroes, double worth) {
    Way {
      heroes = List.copyOf(heroes);
    }

    List<SpaceTrial> filled() {
      return heroes.stream().flatMap(Optional::stream).toList();
    }
  }

  DayOptions(DayPage page, List<Candidate> contenders, UserChoice choices, Trials known) {
    this.page = page;
    this.contenders = List.copyOf(contenders);
    this.known = known;
    this.trials = new ArrayList<>();
    List<Optional<SpaceTrial>> settled = new ArrayList<>();
    List<Boolean> away = new ArrayList<>();
    for (int i = 0; i < page.spaces().size(); i++) {
      Space space = page.spaces().get(i);
      trials.add(contenders.stream().map(c -> known.best(c, space)).toList());
      settled.add(settledBy(choices, i, space, known.settings()));
      away.add(settled.get(i).isEmpty() && choices.of(page.day(), i).isPresent());
    }
    this.ways = waysToFill(settled, away);
  }

  DayPage page() {
    return page;
  }

  List<Candidate> contenders() {
    return contenders;
  }

  List<SpaceTrial> trials(int space) {
    return trials.get(space);
  }

  List<Way> ways() {
    return ways;
  }

  private Optional<SpaceTrial> settledBy(
      UserChoice choices, int index, Space space, PickSettings settings) {
    return choices
        .of(page.day(), index)
        .filter(chosen -> chosen.looked().isPresent())
        .map(chosen -> ChosenCandidate.of(chosen, space, settings));
  }

  /**
   * @param away per space, whether a person chose a picture for it that is not there now: the space
   *     waits for it
   */
  private List<Way> waysToFill(List<Optional<SpaceTrial>> settled, List<Boolean> away) {
    int spaces = settled.size();
    double[][] worth = new double[spaces][contenders.size()];
    for (int i = 0; i < spaces; i++) {
      for (int j = 0; j < contenders.size(); j++) {
        SpaceTrial trial = trials.get(i).get(j);
        boolean free =
            settled.get(i).isEmpty()
                && !away.get(i)
                && !isSettledElsewhere(contenders.get(j), settled);
        worth[i][j] = free && trial.isAcceptable() ? trial.score().total() : Double.NaN;
      }
    }
    List<Assignment> ranked = new ArrayList<>(BestAssignment.ranked(worth, KEPT));
    if (spaces > 1) {
      BestAssignment.ranked(eachSceneOnce(worth), KEPT).stream()
          .filter(assignment -> !ranked.contains(assignment))
          .forEach(ranked::add);
    }
    List<Way> found = new ArrayList<>();
    for (Assignment assignment : ranked) {
      List<Optional<SpaceTrial>> heroes = new ArrayList<>();
      for (int i = 0; i < spaces; i++) {
        int column = assignment.columns().get(i);
        heroes.add(
            settled.get(i).isPresent() || column == BestAssignment.NONE
                ? settled.get(i)
                : Optional.of(trials.get(i).get(column)));
      }
      found.add(new Way(heroes, assignment.worth() - samenessOnPage(heroes)));
    }
    int most = found.stream().mapToInt(way -> way.filled().size()).max().orElse(0);
    found.removeIf(way -> way.filled().size() < most); // variety never costs a picture
    found.sort((a, b) -> Double.compare(b.worth(), a.worth()));
    return List.copyOf(found);
  }

  /** A day of many tries at one scene would be offered in no other way. */
  private double[][] eachSceneOnce(double[][] worth) {
    List<Candidate> bestFirst =
        IntStream.range(0, contenders.size())
            .boxed()
            .filter(j -> best(worth, j) > Double.NEGATIVE_INFINITY)
            .sorted(Comparator.comparingDouble((Integer j) -> -best(worth, j)))
            .map(contenders::get)
            .toList();
    Set<Candidate> again = SameScene.triedAgain(bestFirst, known);
    double[][] once = new double[worth.length][];
    for (int i = 0; i < worth.length; i++) {
      once[i] = worth[i].clone();
      for (int j = 0; j < once[i].length; j++) {
        once[i][j] = again.contains(contenders.get(j)) ? Double.NaN : once[i][j];
      }
    }
    return once;
  }

  private static double best(double[][] worth, int column) {
    return Arrays.stream(worth)
        .mapToDouble(row -> row[column])
        .filter(value -> !Double.isNaN(value))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  private static boolean isSettledElsewhere(
      Candidate contender, List<Optional<SpaceTrial>> settled) {
    return settled.stream()
        .flatMap(Optional::stream)
        .map(trial -> trial.looked().photo().file())
        .anyMatch(file -> contender.frames().anyMatch(frame -> frame.photo().file().equals(file)));
  }

  private double samenessOnPage(List<Optional<SpaceTrial>> heroes) {
    List<SpaceTrial> filled = heroes.stream().flatMap(Optional::stream).toList();
    double sum = 0;
    for (int i = 0; i < filled.size(); i++) {
      for (int j = i + 1; j < filled.size(); j++) {
        AnalysedPhoto one = filled.get(i).looked();
        AnalysedPhoto other = filled.get(j).looked();
        sum +=
            Math.max(
                SAME_ON_ONE_PAGE * Similarity.between(one, other),
                SCENE_TWICE * known.sameScene(one, other));
      }
    }
    return sum;
  }
}
