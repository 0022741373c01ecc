package org.daymount.pick;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.daymount.album.DayPage;
import org.daymount.album.Space;
import org.daymount.look.AnalysedPhoto;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.DayOptions.Way;
import org.daymount.pick.SpacePick.ChosenBy;
import org.daymount.unit.Orientation;

/**
 * Chooses the picture for every space of the month: each day's spaces by best assignment, the days
 * among each other by variety, and a person's own choices before all.
 */
public final class HeroPicker {
  private static final int RUNNERS_UP = 3;

  private final PickSettings settings;
  private final Trials trials;
  private final UserChoice choices;

  public HeroPicker(PickSettings settings, UserChoice choices) {
    this(new Trials(settings), choices);
  }

  /**
   * @param trials of earlier picks from the same pictures
   */
  public HeroPicker(Trials trials, UserChoice choices) {
    this.settings = trials.settings();
    this.trials = trials;
    this.choices = choices;
  }

  /**
   * @param pages every day of the album, in order
   * @param contenders per day, in order of time; a day without pictures may be absent
   */
  public List<DayPick> pick(List<DayPage> pages, Map<LocalDate, List<Candidate>> contenders) {
    List<DayOptions> days = new ArrayList<>();
    for (DayPage page : pages) {
      days.add(
          new DayOptions(page, contenders.getOrDefault(page.day(), List.of()), choices, trials));
    }
    List<Integer> path = MonthPath.best(days);
    List<DayPick> picks = new ArrayList<>();
    Way yesterday = new Way(List.of(), 0);
    for (int d = 0; d < days.size(); d++) {
      Way today = days.get(d).ways().get(path.get(d));
      picks.add(dayPick(days.get(d), today, yesterday));
      yesterday = today;
    }
    return picks;
  }

  private DayPick dayPick(DayOptions day, Way way, Way yesterday) {
    Set<PhotoFile> heroes = new HashSet<>();
    way.filled().forEach(trial -> heroes.add(trial.looked().photo().file()));
    List<SpacePick> picks = new ArrayList<>();
    for (int i = 0; i < day.page().spaces().size(); i++) {
      picks.add(spacePick(day, i, way, heroes, yesterday));
    }
    return new DayPick(day.page(), picks);
  }

  private SpacePick spacePick(
      DayOptions day, int index, Way way, Set<PhotoFile> heroes, Way yesterday) {
    Space space = day.page().spaces().get(index);
    Optional<SpaceTrial> hero = way.heroes().get(index);
    List<SpaceTrial> others = runnersUp(day, index, space, hero, heroes);
    Optional<UserChoice.Chosen> person = choices.of(day.page().day(), index);
    boolean byPerson = person.flatMap(UserChoice.Chosen::looked).isPresent();
    if (hero.isEmpty()) {
      String why = person.map(UserChoice.Chosen::why).orElse("");
      List<String> reasons =
          why.isEmpty() ? Reasons.missing(day, index, way, settings) : List.of(why);
      return new SpacePick(
          space,
          missingWay(space, others),
          Optional.empty(),
          person.isPresent() ? ChosenBy.PERSON : ChosenBy.TOOL,
          others(others, null),
          reasons);
    }
    SpaceTrial trial = hero.get();
    List<String> reasons =
        byPerson
            ? Reasons.byPerson(trial)
            : Reasons.hero(trial, day.trials(index), others, yesterday);
    return new SpacePick(
        space,
        trial.way(),
        Optional.of(trial.candidate(reasons)),
        byPerson ? ChosenBy.PERSON : ChosenBy.TOOL,
        others(others, trial),
        reasons);
  }

  private static Orientation missingWay(Space space, List<SpaceTrial> others) {
    return others.isEmpty() ? space.ways().get(0) : others.get(0).way();
  }

  private static List<ScoredCandidate> others(List<SpaceTrial> others, SpaceTrial hero) {
    return others.stream().map(trial -> trial.candidate(Reasons.runnerUp(trial, hero))).toList();
  }

  /** Pictures of other bursts first; if they are too few, other frames of the hero's burst. */
  private List<SpaceTrial> runnersUp(
      DayOptions day, int index, Space space, Optional<SpaceTrial> hero, Set<PhotoFile> heroes) {
    List<SpaceTrial> found =
        new ArrayList<>(
            day.trials(index).stream()
                .filter(trial -> !heroes.contains(trial.looked().photo().file()))
                .sorted(
                    Comparator.comparingDouble((SpaceTrial trial) -> -trial.score().total())
                        .thenComparing(trial -> trial.looked().photo().file()))
                .limit(RUNNERS_UP)
                .toList());
    List<AnalysedPhoto> alike = hero.map(trial -> trial.contender().alike()).orElse(List.of());
    for (AnalysedPhoto frame : alike) {
      if (found.size() < RUNNERS_UP) {
        found.add(trials.best(new Candidate(frame, List.of()), space));
      }
    }
    return found;
  }
}
